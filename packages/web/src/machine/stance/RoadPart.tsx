import type { Quantity } from '@sagwright/records/schema/quantity';
import type { StanceView } from '@sagwright/workbench/page/stanceView';
import { jobOf, useTable } from '../../app/useJob.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { write } from '../../job/edits.ts';
import { stance as words } from '../../words/stance.ts';

/** What is looked at first; a question, not a figure of the machine. */
const first = {
  braking: { deceleration: { value: 0.5, unit: 'g' }, frontShare: { value: 70, unit: '%' } },
  driving: { acceleration: { value: 0.2, unit: 'g' } },
} as const;

/** Held braking and driving: what is stated, and what the machine does. */
export function RoadPart({ view }: { readonly view: StanceView }) {
  return (
    <section className="sheet-part">
      <h3>{words.road}</h3>
      <p>{words.roadNote}</p>
      {view.steady.map((steady) => (
        <Action key={steady.action} steady={steady} />
      ))}
      {view.brakeNotes.map((text) => (
        <p key={text}>{text}</p>
      ))}
    </section>
  );
}

function Action({ steady }: { readonly steady: StanceView['steady'][number] }) {
  const { state, store } = useTable();
  const { action, says } = steady;
  const stated = jobOf(state).steady?.[action];
  const set = (label: string, value: unknown): void =>
    store.act(label, (document) => [write(document, ['steady', action], value)]);
  if (stated === undefined) {
    return (
      <div className="sheet-keys">
        <button type="button" className="key" onClick={() => set(words.look[action], first[action])}>
          {words.look[action]}
        </button>
      </div>
    );
  }
  return (
    <div className="stance-road">
      <div className="sheet-fields">
        {Object.entries(stated).map(([name, quantity]) => (
          <StatedField key={name} action={action} name={name as StatedName} quantity={quantity} />
        ))}
      </div>
      <ul>
        {says.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      <div className="sheet-keys">
        <button
          type="button"
          className="key"
          onClick={() =>
            store.act(words.noLook[action], (document) => {
              const other = action === 'braking' ? 'driving' : 'braking';
              const isLast = jobOf({ ...state, document }).steady?.[other] === undefined;
              return [write(document, isLast ? ['steady'] : ['steady', action], undefined)];
            })
          }
        >
          {words.noLook[action]}
        </button>
      </div>
    </div>
  );
}

type StatedName = keyof typeof words.steady;

const bounds = {
  deceleration: ['acceleration', 'acceleration'],
  acceleration: ['acceleration', 'acceleration'],
  frontShare: ['share', 'frontShare'],
  thrust: ['force', 'thrust'],
} as const;

function StatedField({
  action,
  name,
  quantity,
}: {
  readonly action: 'braking' | 'driving';
  readonly name: StatedName;
  readonly quantity: Quantity;
}) {
  const { store } = useTable();
  const [dimension, bound] = bounds[name];
  const label = words.steady[name];
  return (
    <QuantityField
      label={label}
      path={`steady.${action}.${name}`}
      quantity={quantity}
      dimension={dimension}
      bound={bound}
      reading="stated"
      onCommit={(next) => {
        if (next !== null) store.act(label, (document) => [write(document, ['steady', action, name], next)]);
      }}
    />
  );
}
