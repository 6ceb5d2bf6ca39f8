import type { Quantity } from '@sagwright/records/schema/quantity';
import { useState } from 'react';
import { newId } from '../../app/newId.ts';
import { jobOf, useTable } from '../../app/useJob.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { choicesOf } from '../../fields/choicesOf.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { newSpring } from '../../job/springs.ts';
import { springs as words } from '../../words/figures.ts';
import { NewMember } from './NewMember.tsx';

/** A spring that the job did not know: where it goes, its name, its rate; the rest at its own fields once it is there. */
export function NewSpring() {
  const { state, store } = useTable();
  const [end, setEnd] = useState<'rear' | 'front'>('rear');
  const [name, setName] = useState('');
  const [rate, setRate] = useState<Quantity | null>(null);
  const add = (): void => {
    if (rate === null) return;
    const called = name === '' ? words.unnamed : name;
    store.act(words.added(called), () =>
      newSpring(jobOf(state), newId('spring'), { name: called, end, rate: rate as Quantity<'rate'> }),
    );
    setName('');
    setRate(null);
  };
  return (
    <NewMember title={words.addTitle} doWord={words.add} onMake={rate === null ? null : add}>
      <ChoiceField
        label={words.isFor}
        path="new-spring.end"
        value={end}
        choices={choicesOf(words.ends2)}
        onCommit={setEnd}
      />
      <TextField label={words.name} path="new-spring.name" value={name} most={120} onCommit={setName} />
      <QuantityField
        label={words.rate}
        path="new-spring.rate"
        quantity={rate ?? undefined}
        dimension="rate"
        bound="springRate"
        reading="springRate"
        onCommit={setRate}
      />
    </NewMember>
  );
}
