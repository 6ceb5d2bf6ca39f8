import { jobOf, useTable } from '../app/useJob.ts';
import { thing as words } from '../words/machine.ts';
import { whole } from '../words/whole.ts';
import { FuelFields } from './FuelFields.tsx';
import { PlaceFields } from './PlaceFields.tsx';
import { SheetFrame } from './SheetFrame.tsx';
import type { SheetProps } from './sheets.ts';
import { ThingFields, ThingKeys } from './ThingFields.tsx';

/** One thing aboard: what it does on the scales, its mass, where it lies; taken off or put elsewhere. */
export default function ThingSheet({ view, load, id, onSheet }: SheetProps & { readonly id: string }) {
  const { state } = useTable();
  const shown = load.things.find((each) => each.aboardId === id);
  const close = (): void => onSheet(null);
  if (load.id === null || shown === undefined) return null;
  const place = aboardOf(jobOf(state), load.id, id)?.place ?? shown.place;
  return (
    <SheetFrame title={shown.label} note={words.onLoad(load.letter ?? '', load.name)} onClose={close}>
      {shown.effect !== null && <p className="sheet-says">{whole(shown.effect.says)}</p>}
      {shown.kind === 'fuel' && <FuelFields view={view} load={load.id} onSheet={onSheet} />}
      {(shown.kind === 'person' || shown.kind === 'item') && <ThingFields load={load.id} aboardId={id} />}
      {place !== '' && <PlaceFields view={view} id={place} />}
      {shown.thing !== '' && <ThingKeys load={load.id} aboardId={id} onGone={close} />}
    </SheetFrame>
  );
}

function aboardOf(job: ReturnType<typeof jobOf>, load: string, id: string): { place: string } | undefined {
  const loadCase = job.loadCases[load];
  return loadCase !== undefined && 'aboard' in loadCase ? loadCase.aboard[id] : undefined;
}
