import { jobOf, useTable } from '../../app/useJob.ts';
import { write } from '../../job/edits.ts';
import { found as words } from '../../words/figures.ts';

/** Where nobody looked into the fork: says so, and lets it be entered once the job has a fork spring. */
export function FoundFork() {
  const { state, store } = useTable();
  const job = jobOf(state);
  if (job.setups.asFound.front !== undefined) return null;
  const spring = Object.entries(job.springs).find(([, { end }]) => end === 'front')?.[0];
  const look = (): void =>
    store.act(words.front, (document) => [
      write(document, ['setups', 'asFound', 'front'], { both: { spring, at: {} } }),
    ]);
  return (
    <section className="sheet-part">
      <h3>{words.front}</h3>
      <p>{spring === undefined ? words.notLookedNoSpring : words.notLooked}</p>
      {spring !== undefined && (
        <button type="button" className="key" onClick={look}>
          {words.look}
        </button>
      )}
    </section>
  );
}
