import { jobOf, useTable } from '../../app/useJob.ts';
import { write } from '../../job/edits.ts';
import { stanceFigures as words } from '../../words/stance.ts';

const HEIGHT = ['machine', 'weighing', 'massCentreHeight'];
const RAISED = ['machine', 'weighing', 'raised'];

/** Whether the height of the mass centre is typed, or comes of a wheel that was raised: one takes the place of the other. */
export function RaisedWheel() {
  const { state, store } = useTable();
  const isRaised = jobOf(state).machine.weighing.raised !== undefined;
  const swap = (): void =>
    store.act(words.raised, (document) => [
      write(document, HEIGHT, undefined),
      write(document, RAISED, isRaised ? undefined : { wheel: 'front', scale: 'front' }),
    ]);
  return (
    <section className="sheet-part">
      <h3>{words.raised}</h3>
      <p>{words.raisedNote}</p>
      <div className="sheet-keys">
        <button type="button" className="key" onClick={swap}>
          {isRaised ? words.noRaise : words.raise}
        </button>
      </div>
    </section>
  );
}
