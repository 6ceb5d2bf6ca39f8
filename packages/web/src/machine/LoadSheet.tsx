import { usePageWide } from '../app/pageWidth.ts';
import { jobOf, useTable } from '../app/useJob.ts';
import { ShareField } from '../fields/ShareField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { write } from '../job/edits.ts';
import { loads as loadWords, load as words } from '../words/machine.ts';
import { FuelFields } from './FuelFields.tsx';
import LimitList from './LimitList.tsx';
import { LoadKeys } from './LoadKeys.tsx';
import { ScaleFields } from './ScaleFields.tsx';
import { ScalesInstead } from './ScalesInstead.tsx';
import { SheetFrame } from './SheetFrame.tsx';
import type { SheetProps } from './sheets.ts';
import { ThingList } from './ThingList.tsx';

/** The load that is looked at: its name, its share of the riding, its fuel, what is aboard, its limits. */
export default function LoadSheet({ view, load, onChoose, onSheet }: SheetProps) {
  const { state, store } = useTable();
  const stays = usePageWide();
  const onClose = stays ? null : () => onSheet(null);
  const { id } = load;
  const loadCase = id === null ? undefined : jobOf(state).loadCases[id];
  if (id === null || loadCase === undefined) {
    return (
      <SheetFrame title={loadWords.alone} note={words.aloneNote} onClose={onClose}>
        <LoadKeys load={load} onChoose={onChoose} onSheet={onSheet} />
        {stays && <LimitList load={load} onSheet={onSheet} />}
      </SheetFrame>
    );
  }
  const set = (name: string, act: string, value: unknown): void =>
    store.act(act, (document) => [write(document, ['loadCases', id, name], value)]);
  return (
    <SheetFrame title={words.title(load.letter ?? '')} onClose={onClose}>
      <div className="sheet-fields">
        <TextField
          label={words.name}
          path={`loadCases.${id}.name`}
          value={loadCase.name}
          most={120}
          onCommit={(name) => name !== '' && set('name', words.renamed(loadCase.name), name)}
        />
        <ShareField
          label={words.share}
          path={`loadCases.${id}.share`}
          value={loadCase.share}
          onCommit={(share) => set('share', words.shareOf(loadCase.name), share ?? 0)}
        />
      </div>
      {loadCase.share === 0 && <p>{words.notRidden}</p>}
      {'scales' in loadCase ? (
        <ScaleFields view={view} load={id} />
      ) : (
        <>
          <ThingList load={load} onSheet={onSheet} />
          <ScalesInstead key={id} load={id} name={loadCase.name} />
        </>
      )}
      {!load.things.some(({ kind }) => kind === 'fuel') && (
        <FuelFields view={view} load={id} onSheet={onSheet} />
      )}
      <LoadKeys load={load} onChoose={onChoose} onSheet={onSheet} />
      {stays && <LimitList load={load} onSheet={onSheet} />}
    </SheetFrame>
  );
}
