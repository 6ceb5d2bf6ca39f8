import { type Unit, unitsOf } from '@sagwright/records/units';
import * as words from '../words/fields.ts';
import { numberIn } from './figureText.ts';
import { readFigure } from './readEntry.ts';
import type { Sheet } from './sheet.ts';

/** The units of a dimension with the figure in each; choosing one reads the typed number in that unit. */
export function UnitKeys({ sheet: { state, entry, act } }: { readonly sheet: Sheet }) {
  const units = unitsOf(state.rules.dimension);
  if (units.length < 2) return null;
  const figure = readFigure(entry);

  function figureIn(unit: Unit): string {
    if (figure === null) return '–';
    return unit === entry.unit ? entry.text : `= ${numberIn(figure, unit)}`;
  }

  return (
    <fieldset className="unit-keys">
      <legend>{words.whichUnit(entry.text.trim())}</legend>
      {units.map((unit) => (
        <button
          key={unit}
          type="button"
          className="key"
          aria-pressed={unit === entry.unit}
          onMouseDown={(event) => event.preventDefault()} // the line keeps the focus
          onClick={() => act({ kind: 'unit', unit })}
        >
          <b>{words.unitWord(unit)}</b>
          <span className="unit-keys-figure">{figureIn(unit)}</span>
        </button>
      ))}
    </fieldset>
  );
}
