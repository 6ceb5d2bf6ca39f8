import type { Quantity } from '@sagwright/records/schema/quantity';
import type { StancePoint } from '@sagwright/records/schema/stance';
import { useState } from 'react';
import { newId } from '../../app/newId.ts';
import { jobOf, useTable } from '../../app/useJob.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { choicesOf } from '../../fields/choicesOf.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { write } from '../../job/edits.ts';
import { nextOrder } from '../../job/nextOrder.ts';
import { stanceFigures as words } from '../../words/stance.ts';
import { NewMember } from './NewMember.tsx';
import { RemoveKeys } from './RemoveKeys.tsx';

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
  const known = jobOf(state).machine.points ?? {};
  const [kind, setKind] = useState<StancePoint['kind']>('rider peg');
  const [typed, setName] = useState('');
  const [at, setAt] = useState(NOWHERE);
  const name = typed === '' ? words.unnamed(kind) : typed;
  const add = (): void => {
    const { x, height, sideways } = at;
    const point = {
      name,
      order: nextOrder(known),
      kind,
      at: { x, height },
      ...(sideways !== null && { sideways }),
    };
    store.act(words.added(name), (document) => [
      write(document, ['machine', 'points', newId('point')], point),
    ]);
    setName('');
    setAt(NOWHERE);
  };
  return (
    <>
      <NewMember
        title={words.addTitle}
        doWord={words.add}
        onMake={at.x === null || at.height === null ? null : add}
      >
        <ChoiceField
          label={words.kind}
          path="new-point.kind"
          value={kind}
          choices={choicesOf(words.kinds)}
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
      </NewMember>
      <div className="sheet-keys">
        <BeamKey />
        <RemoveKeys list="points" members={known} />
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
