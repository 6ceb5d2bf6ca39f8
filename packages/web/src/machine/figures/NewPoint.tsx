import type { Quantity } from '@sagwright/records/schema/quantity';
import type { StancePoint } from '@sagwright/records/schema/stance';
import { useState } from 'react';
import { newId } from '../../app/newId.ts';
import { jobOf, useTable } from '../../app/useJob.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { write } from '../../job/edits.ts';
import { stanceFigures as words } from '../../words/stance.ts';

type Place = Readonly<Record<'x' | 'height' | 'sideways', Quantity | null>>;

const NOWHERE: Place = { x: null, height: null, sideways: null };

const axes = [
  ['x', words.x, 'forwardOfRearAxle'],
  ['height', words.height, 'height'],
  ['sideways', words.sideways, 'fromMiddle'],
] as const;

/** A peg, a part, the stand's foot or the lamp that the job did not know; the beam; and keys that take one out. */
export function NewPoint() {
  const { state, store } = useTable();
  const job = jobOf(state);
  const points = Object.entries(job.machine.points ?? {});
  const [kind, setKind] = useState<StancePoint['kind']>('rider peg');
  const [typed, setName] = useState('');
  const [at, setAt] = useState(NOWHERE);
  const name = typed === '' ? words.unnamed(kind) : typed;
  const add = (): void => {
    const { x, height, sideways } = at;
    const order = Math.max(0, ...points.map(([, each]) => each.order)) + 1;
    const point = { name, order, kind, at: { x, height }, ...(sideways !== null && { sideways }) };
    store.act(words.added(name), (document) => [
      write(document, ['machine', 'points', newId('point')], point),
    ]);
    setName('');
    setAt(NOWHERE);
  };
  const remove = (id: string, called: string): void =>
    store.act(words.removed(called), (document) => {
      const isLast = points.length === 1;
      return [write(document, isLast ? ['machine', 'points'] : ['machine', 'points', id], undefined)];
    });
  return (
    <>
      <fieldset className="sheet-new">
        <legend>{words.addTitle}</legend>
        <div className="sheet-fields">
          <ChoiceField
            label={words.kind}
            path="new-point.kind"
            value={kind}
            choices={(Object.keys(words.kinds) as StancePoint['kind'][]).map((value) => ({
              value,
              word: words.kinds[value],
            }))}
            onCommit={setKind}
          />
          <TextField label={words.name} path="new-point.name" value={name} most={120} onCommit={setName} />
          {axes.map(([axis, label, bound]) => (
            <QuantityField
              key={axis}
              label={label}
              path={`new-point.${axis}`}
              quantity={at[axis] ?? undefined}
              dimension="length"
              bound={bound}
              reading="geometry"
              onCommit={(quantity) => setAt({ ...at, [axis]: quantity })}
            />
          ))}
          <button
            type="button"
            className="key"
            data-do
            disabled={at.x === null || at.height === null}
            onClick={add}
          >
            {words.add}
          </button>
        </div>
      </fieldset>
      <div className="sheet-keys">
        <BeamKey />
        {points.map(([id, { name: called }]) => (
          <button key={id} type="button" className="key" onClick={() => remove(id, called)}>
            {words.remove(called)}
          </button>
        ))}
      </div>
    </>
  );
}

function BeamKey() {
  const { state, store } = useTable();
  const isRead = jobOf(state).machine.beam !== undefined;
  const swap = (): void =>
    store.act(words.beam, (document) => [write(document, ['machine', 'beam'], isRead ? undefined : {})]);
  return (
    <button type="button" className="key" onClick={swap}>
      {isRead ? words.noBeam : words.readBeam}
    </button>
  );
}
