import type { Clearance } from '@sagwright/records/schema/limits';
import type { Quantity } from '@sagwright/records/schema/quantity';
import { useState } from 'react';
import { newId } from '../../app/newId.ts';
import { jobOf, useTable } from '../../app/useJob.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { choicesOf } from '../../fields/choicesOf.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { write } from '../../job/edits.ts';
import { nextOrder } from '../../job/nextOrder.ts';
import { limitFigures as words } from '../../words/limitFigures.ts';
import { NewMember } from './NewMember.tsx';

type Reading = Readonly<Record<'travel' | 'gap', Quantity | null>>;

const NOTHING: Reading = { travel: null, gap: null };

/** A room between two parts, with its first reading; more readings and the room to keep have their fields once it is there. */
export function NewClearance() {
  const { state, store } = useTable();
  const known = jobOf(state).machine.clearances ?? {};
  const [kind, setKind] = useState<Clearance['kind']>('tyre and guard');
  const [end, setEnd] = useState<Clearance['end']>('rear');
  const [typed, setName] = useState('');
  const [reading, setReading] = useState(NOTHING);
  const name = typed === '' ? words.kinds[kind] : typed;
  const add = (): void => {
    const clearance = { name, order: nextOrder(known), end, kind, readings: [reading] };
    store.act(words.added(name), (document) => [
      write(document, ['machine', 'clearances', newId('clearance')], clearance),
    ]);
    setName('');
    setReading(NOTHING);
  };
  return (
    <NewMember
      title={words.addClearance}
      doWord={words.add}
      onMake={reading.travel === null || reading.gap === null ? null : add}
    >
      <ChoiceField
        label={words.kind}
        path="new-clearance.kind"
        value={kind}
        choices={choicesOf(words.kinds)}
        onCommit={setKind}
      />
      <ChoiceField
        label={words.end}
        path="new-clearance.end"
        value={end}
        choices={choicesOf(words.ends)}
        onCommit={setEnd}
      />
      <TextField label={words.name} path="new-clearance.name" value={name} most={120} onCommit={setName} />
      {(['travel', 'gap'] as const).map((part) => (
        <QuantityField
          key={part}
          label={part === 'travel' ? words.readAt : words.gapRead}
          path={`new-clearance.${part}`}
          quantity={reading[part] ?? undefined}
          dimension="length"
          bound={part === 'travel' ? 'wheelTravel' : 'gap'}
          reading="tape"
          onCommit={(quantity) => setReading({ ...reading, [part]: quantity })}
        />
      ))}
    </NewMember>
  );
}
