import { useState } from 'react';
import { jobOf, useTable } from '../app/useJob.ts';
import { formerScales, goByScales, type Scales } from '../job/weighed.ts';
import { load as words } from '../words/machine.ts';
import { ScaleReadings } from './ScaleReadings.tsx';

/** The other way to tell a load: two scales with all of it aboard. Nothing of the job changes until both were read. */
export function ScalesInstead({ load, name }: { readonly load: string; readonly name: string }) {
  const { state, store } = useTable();
  const [{ front, rear, ...more }, setRead] = useState<Partial<Scales>>(
    () => formerScales(state.changes, load) ?? {},
  );
  const scales = front === undefined || rear === undefined ? null : { ...more, front, rear };
  return (
    <details className="sheet-more">
      <summary>{words.weighed}</summary>
      <div className="sheet-part">
        <p>{words.weighedNote}</p>
        <div className="sheet-fields">
          <ScaleReadings
            path="weighed"
            read={{ ...(front && { front }), ...(rear && { rear }) }}
            onCommit={(end, reading) => setRead((read) => ({ ...read, [end]: reading ?? undefined }))}
          />
        </div>
        <button
          type="button"
          className="key sheet-do"
          data-do
          disabled={scales === null}
          onClick={() =>
            scales !== null && store.act(words.didWeigh(name), () => goByScales(jobOf(state), load, scales))
          }
        >
          {words.weigh}
        </button>
      </div>
    </details>
  );
}
