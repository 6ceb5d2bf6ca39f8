import type { Quantity } from '@sagwright/records/schema/quantity';
import { type Dimension, type Unit, unitsOf } from '@sagwright/records/units';
import * as words from '../words/fields.ts';
import type { Entry } from './draft.ts';
import { numberIn } from './figureText.ts';

interface UnitKeysProps {
  readonly dimension: Dimension;
  readonly entry: Entry;
  /** What the entry says; null where it says no number. */
  readonly quantity: Quantity | null;
  readonly onUnit: (unit: Unit) => void;
}

/** The units of a dimension with the figure in each; choosing one reads the typed number in that unit. */
export function UnitKeys({ dimension, entry, quantity, onUnit }: UnitKeysProps) {
  const units = unitsOf(dimension);
  if (units.length < 2) return null;
  return (
    <fieldset className="unit-keys">
      <legend>{words.whichUnit(entry.text)}</legend>
      {units.map((unit) => (
        <button
          key={unit}
          type="button"
          className="key"
          aria-pressed={unit === entry.unit}
          onMouseDown={(event) => event.preventDefault()}
          onClick={() => onUnit(unit)}
        >
          <b>{words.unitWord(unit)}</b>
          <span className="unit-keys-figure">{figureOf(quantity, entry, unit)}</span>
        </button>
      ))}
    </fieldset>
  );
}

function figureOf(quantity: Quantity | null, entry: Entry, unit: Unit): string {
  if (quantity === null) return '–';
  return unit === entry.unit ? entry.text : `= ${numberIn(quantity, unit)}`;
}
