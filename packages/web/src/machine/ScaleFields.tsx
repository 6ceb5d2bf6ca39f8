import type { PageView } from '@sagwright/workbench/page/shapes';
import { jobOf, useTable } from '../app/useJob.ts';
import { QuantityField } from '../fields/QuantityField.tsx';
import { writeFigure } from '../job/figures.ts';
import { goByThings } from '../job/weighed.ts';
import { load as words } from '../words/machine.ts';
import { assumedAt } from './assumedAt.ts';
import { ScaleReadings } from './ScaleReadings.tsx';

/** A load that was weighed with all of it aboard: two readings, how high it lies, and the way back to what is listed. */
export function ScaleFields({ view, load }: { readonly view: PageView; readonly load: string }) {
  const { state, store } = useTable();
  const job = jobOf(state);
  const loadCase = job.loadCases[load];
  if (loadCase === undefined || !('scales' in loadCase)) return null;
  const path = `loadCases.${load}.scales`;
  const usual = assumedAt(view, `${path}.addedHeight`);
  return (
    <>
      <div className="sheet-fields">
        <ScaleReadings
          path={path}
          read={loadCase.scales}
          onCommit={(end, quantity) =>
            store.act(words.scale[end], (document) => writeFigure(document, `${path}.${end}`, quantity))
          }
        />
        <QuantityField
          label={words.addedHeight}
          path={`${path}.addedHeight`}
          quantity={loadCase.scales.addedHeight}
          dimension="length"
          bound="addedHeight"
          reading="placeHeight"
          {...(usual && { assumed: usual })}
          onCommit={(quantity) =>
            store.act(words.addedHeight, (document) => writeFigure(document, `${path}.addedHeight`, quantity))
          }
        />
      </div>
      <button
        type="button"
        className="key"
        onClick={() => store.act(words.listed(loadCase.name), () => goByThings(job, state.changes, load))}
      >
        {words.list}
      </button>
    </>
  );
}
