import type { KeepView, StanceView } from '@sagwright/workbench/page/stanceView';
import { capital } from '@sagwright/workbench/words/capital';
import { jobOf, useTable } from '../../app/useJob.ts';
import { choose } from '../../job/choice.ts';
import { stance as words } from '../../words/stance.ts';

/** Which change brings a part of the attitude back, or which two bring two, and a key that puts it in the plan. */
export function KeepPart({ view }: { readonly view: StanceView }) {
  const { state, store } = useTable();
  const put = (set: KeepView['set']): void => {
    const name = set.length === 1 ? words.didPut[set[0]!.part] : words.didPut.both;
    store.act(name, () =>
      set.flatMap(({ part, mm }) => choose(jobOf(state), part, { value: mm, unit: 'mm' })),
    );
  };
  return (
    <section className="sheet-part">
      <h3>{words.keep}</h3>
      <p>{view.keep.length === 0 ? words.none : words.keepNote}</p>
      <ul className="stance-keep">
        {view.keep.map((keep) => (
          <li key={`${keep.wanted} ${keep.does}`}>
            <span>
              {capital(keep.wanted)}: <b>{keep.does}</b>
              {keep.verdict !== '' && `; ${keep.verdict}`}
            </span>
            {keep.set.length > 0 && (
              <button
                type="button"
                className="key"
                aria-label={`${words.put}: ${keep.does}`}
                onClick={() => put(keep.set)}
              >
                {words.put}
              </button>
            )}
          </li>
        ))}
      </ul>
      {view.keep.length > 0 && <p>{view.look}</p>}
    </section>
  );
}
