import type { Quantity } from '@sagwright/records/schema/quantity';
import { differenceToSI, toSI } from '@sagwright/records/units';
import { defaultWidth } from '@sagwright/workbench/inputs/widths';
import type { AssumedFigure, PageView } from '@sagwright/workbench/page/shapes';
import { jobOf, useTable } from '../app/useJob.ts';
import { writeFigure } from '../job/figures.ts';
import { fuel as words } from '../words/machine.ts';
import { assumedAt } from './assumedAt.ts';
import { SteppedFigure } from './SteppedFigure.tsx';

/** How far one press goes [m³]. */
const STEP = 0.001;

/** The fuel of a load: as it was at the weighing until somebody says otherwise. */
export function FuelFields({ view, load }: { readonly view: PageView; readonly load: string }) {
  const { state, store } = useTable();
  const job = jobOf(state);
  const { tank, weighing } = job.machine;
  const path = `loadCases.${load}.fuel`;
  if (tank === undefined) return <p>{words.noTank}</p>;
  const weighed =
    weighing.fuel === undefined ? assumedAt(view, 'machine.weighing.fuel') : asWeighed(weighing.fuel);
  return (
    <div className="sheet-fields">
      <SteppedFigure
        label={words.label}
        path={path}
        quantity={job.loadCases[load]?.fuel}
        dimension="volume"
        bound="fuel"
        reading="fuel"
        step={STEP}
        assumed={weighed}
        onCommit={(quantity) => store.act(words.act, (document) => writeFigure(document, path, quantity))}
      />
    </div>
  );
}

function asWeighed({ value, unit, plusMinus, origin }: Quantity): AssumedFigure {
  const width = plusMinus ?? defaultWidth('fuel', origin);
  const si = toSI(value, unit);
  const halfWidth = width.unit === '%' ? (si * width.value) / 100 : differenceToSI(width.value, width.unit);
  return { value: si, halfWidth, unit, why: words.asWeighed };
}
