import type { Knob } from '@sagwright/records/schema/limits';
import { useState } from 'react';
import { newId } from '../../app/newId.ts';
import { jobOf, useTable } from '../../app/useJob.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { choicesOf } from '../../fields/choicesOf.ts';
import { TextField } from '../../fields/TextField.tsx';
import { write } from '../../job/edits.ts';
import { nextOrder } from '../../job/nextOrder.ts';
import { limitFigures as words } from '../../words/limitFigures.ts';
import { NewMember } from './NewMember.tsx';
import { NumberField } from './NumberField.tsx';

/** A damper's knob with all its clicks; where it stands has its field once it is there. */
export function NewKnob() {
  const { state, store } = useTable();
  const known = jobOf(state).machine.knobs ?? {};
  const [end, setEnd] = useState<Knob['end']>('rear');
  const [name, setName] = useState<string>(words.knob);
  const [count, setCount] = useState<number | null>(null);
  const add = (): void => {
    const called = name === '' ? words.knob : name;
    store.act(words.added(called), (document) => [
      write(document, ['machine', 'knobs', newId('knob')], {
        name: called,
        order: nextOrder(known),
        end,
        count,
      }),
    ]);
    setCount(null);
  };
  return (
    <NewMember title={words.addKnob} doWord={words.add} onMake={count === null ? null : add}>
      <ChoiceField
        label={words.end}
        path="new-knob.end"
        value={end}
        choices={choicesOf(words.ends)}
        onCommit={setEnd}
      />
      <TextField label={words.knobName} path="new-knob.name" value={name} most={120} onCommit={setName} />
      <NumberField
        label={words.clicks.count}
        path="new-knob.count"
        value={count ?? undefined}
        unit={words.clicks.unit}
        least={1}
        most={100}
        whole
        onCommit={setCount}
      />
    </NewMember>
  );
}
