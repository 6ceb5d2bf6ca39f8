import type { Place } from '@sagwright/records/schema/machine';
import type { Quantity } from '@sagwright/records/schema/quantity';
import type { PageView } from '@sagwright/workbench/page/shapes';
import { useState } from 'react';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { choicesOf } from '../fields/choicesOf.ts';
import { TextField } from '../fields/TextField.tsx';
import { place as words } from '../words/machine.ts';
import { asQuantity } from './assumedAt.ts';
import { SteppedFigure } from './SteppedFigure.tsx';

interface NewPlaceProps {
  readonly view: PageView;
  /** What the key that makes it says. */
  readonly doWord: string;
  readonly onMake: (place: Pick<Place, 'name' | 'kind' | 'at'>) => void;
}

/** A place that the machine did not have: its kind tells where it usually is; a figure goes before that. */
export function NewPlace({ view, doWord, onMake }: NewPlaceProps) {
  const [kind, setKind] = useState<Place['kind']>('rack');
  const [typed, setName] = useState('');
  const [at, setAt] = useState<{ readonly x?: Quantity; readonly height?: Quantity }>({});
  const usual = view.usualPlaces[kind];
  const name = typed === '' ? words.kind[kind] : typed;
  const make = (): void => {
    if (at.x === undefined && at.height === undefined) {
      onMake({ name, kind });
      return;
    }
    const both = { x: at.x ?? asQuantity(usual.x), height: at.height ?? asQuantity(usual.height) };
    onMake({ name, kind, at: both } as Pick<Place, 'name' | 'kind' | 'at'>);
  };
  return (
    <fieldset className="sheet-new sheet-wide">
      <legend>{words.newPlace}</legend>
      <div className="sheet-fields">
        <ChoiceField
          label={words.whatKind}
          path="new-place.kind"
          value={kind}
          choices={choicesOf(words.kind)}
          onCommit={setKind}
        />
        <TextField label={words.name} path="new-place.name" value={name} most={120} onCommit={setName} />
        {(['x', 'height'] as const).map((axis) => (
          <SteppedFigure
            key={axis}
            label={words.at[axis]}
            path={`new-place.${axis}`}
            quantity={at[axis]}
            dimension="length"
            bound={axis === 'x' ? 'forwardOfRearAxle' : 'height'}
            reading={axis === 'x' ? 'luggagePlace' : 'placeHeight'}
            step={0.01}
            assumed={at[axis] === undefined ? usual[axis] : undefined}
            onCommit={(quantity) => {
              const { [axis]: _before, ...other } = at;
              setAt(quantity === null ? other : { ...other, [axis]: quantity });
            }}
          />
        ))}
        <button type="button" className="key" data-do onClick={make}>
          {doWord}
        </button>
      </div>
    </fieldset>
  );
}
