import type { TargetSet } from '@sagwright/records/schema/targets';
import { shippedTargets } from '@sagwright/workbench/targets/shipped';
import { newId } from '../app/newId.ts';
import { jobOf, useTable } from '../app/useJob.ts';
import { setsInOrder, takeOwnSet, takeShippedSet } from '../job/targets.ts';
import { targets as words } from '../words/targets.ts';

interface SetListProps {
  /** The job's own set that is used; null where it is none of its own. */
  readonly used: string | null;
  readonly onTaken: () => void;
}

/** Every set to choose from: the job's own, then those that come with the program; one of these is copied into the job. */
export function SetList({ used, onTaken }: SetListProps) {
  const { store, state } = useTable();
  const job = jobOf(state);
  const own = setsInOrder(job);
  const names = new Set(own.map(([, { name }]) => name));
  const take = (name: string, edits: () => ReturnType<typeof takeOwnSet>): void => {
    store.act(words.takeAct(name), edits);
    onTaken();
  };
  return (
    <ul className="set-list" aria-label={words.sets}>
      {own.map(([id, set]) => (
        <SetKey
          key={id}
          set={set}
          whose={words.own}
          used={id === used}
          onTake={() => take(set.name, () => takeOwnSet(job, id))}
        />
      ))}
      {Object.entries(shippedTargets).map(([id, set]) => (
        <SetKey
          key={`shipped ${id}`}
          set={set}
          whose={words.shipped}
          used={false}
          onTake={() => {
            const name = names.has(set.name) ? words.copyName(set.name) : set.name;
            take(name, () => takeShippedSet(job, newId('set'), set, name));
          }}
        />
      ))}
    </ul>
  );
}

interface SetKeyProps {
  readonly set: TargetSet;
  readonly whose: string;
  readonly used: boolean;
  readonly onTake: () => void;
}

function SetKey({ set, whose, used, onTake }: SetKeyProps) {
  return (
    <li>
      <button type="button" className="key" aria-pressed={used} onClick={onTake}>
        <b>{set.name}</b>
        <span>
          {whose}; {set.origin}
        </span>
      </button>
    </li>
  );
}
