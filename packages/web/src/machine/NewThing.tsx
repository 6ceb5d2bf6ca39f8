import type { Quantity } from '@sagwright/records/schema/quantity';
import { useState } from 'react';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { QuantityField } from '../fields/QuantityField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { thing as words } from '../words/machine.ts';

/** Somebody or something that the job did not know. */
export interface ThingMade {
  readonly name: string;
  readonly kind: 'person' | 'item';
  readonly mass: Quantity;
}

interface NewThingProps {
  readonly made: ThingMade | null;
  /** Null until it has a mass. */
  readonly onMade: (thing: ThingMade | null) => void;
}

/** Who or what it is and how heavy; it is made once it has a mass, and named by its kind until it has a name. */
export function NewThing({ made, onMade }: NewThingProps) {
  const [kind, setKind] = useState<ThingMade['kind']>('item');
  const [typed, setName] = useState('');
  const name = typed === '' ? words.unnamed[kind] : typed;
  const remake = (change: Partial<ThingMade>): void => {
    const mass = change.mass ?? made?.mass;
    onMade(mass === undefined ? null : { name, kind, mass, ...change });
  };
  return (
    <fieldset className="sheet-new">
      <legend>{words.newThing}</legend>
      <div className="sheet-fields">
        <QuantityField
          label={words.mass}
          path="new-thing.mass"
          quantity={made?.mass}
          dimension="mass"
          bound="thingMass"
          reading={kind}
          step={kind === 'person' ? 1 : 0.5}
          onCommit={(mass) => (mass === null ? onMade(null) : remake({ mass }))}
        />
        <TextField
          label={words.name}
          path="new-thing.name"
          value={typed}
          most={120}
          onCommit={(value) => {
            setName(value);
            remake({ name: value === '' ? words.unnamed[kind] : value });
          }}
        />
        <ChoiceField
          label={words.isA}
          path="new-thing.kind"
          value={kind}
          choices={[
            { value: 'item', word: words.kind.item },
            { value: 'person', word: words.kind.person },
          ]}
          onCommit={(value) => {
            setKind(value);
            remake({ kind: value, name: typed === '' ? words.unnamed[value] : typed });
          }}
        />
      </div>
    </fieldset>
  );
}
