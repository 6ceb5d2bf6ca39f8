import type { Quantity } from '@sagwright/records/schema/quantity';
import type { Unit } from '@sagwright/records/units';
import * as words from '../words/fields.ts';
import type { Assumed } from './assumed.ts';
import { figureNumber, numberIn, typedFigure, typedNumber } from './figureText.ts';
import { decimalsOf, stepIn } from './steps.ts';
import type { Unread } from './unread.ts';

interface FieldFaceProps {
  readonly committed: Quantity | null;
  /** What the job has there that is no figure. */
  readonly unread: Unread | null;
  readonly assumed: Assumed | undefined;
  readonly unit: Unit;
  readonly step: number | undefined;
  /** What stands there where a figure may well be left out. */
  readonly empty: string | undefined;
}

/** What a closed field shows below its label: the figure, what is assumed in its place, that it is needed or to be mended. */
export function FieldFace({ committed, unread, assumed, unit, step, empty }: FieldFaceProps) {
  if (committed) return <Given quantity={committed} unit={unit} step={step} />;
  if (unread) {
    return (
      <span className="quantity-field-needed">
        {unread.typed} <b>{words.mendFigure}</b>
      </span>
    );
  }
  if (assumed) {
    return (
      <>
        <Figure unit={unit}>
          <span>{figureNumber(assumed.value, assumed.halfWidth, unit)}</span>
        </Figure>
        <span className="quantity-field-notes">
          <b>{words.assumedWord}</b>: {assumed.why}
        </span>
      </>
    );
  }
  return (
    <span className="quantity-field-needed">
      {empty ?? words.figureNeeded} <b>{words.addFigure}</b>
    </span>
  );
}

function Given({ quantity, unit, step }: { quantity: Quantity; unit: Unit; step: number | undefined }) {
  const { value, plusMinus, origin } = quantity;
  const asTyped = unit === quantity.unit;
  const decimals = step === undefined ? 0 : decimalsOf(stepIn(step, unit));
  const notes = [
    asTyped ? undefined : words.typedAs(typedFigure(quantity)),
    plusMinus && `± ${typedFigure(plusMinus)}`,
    origin,
  ].filter((note) => note !== undefined);
  return (
    <>
      <Figure unit={unit}>
        <b>{asTyped ? typedNumber(value, decimals) : numberIn(quantity, unit)}</b>
      </Figure>
      {notes.length > 0 && <span className="quantity-field-notes">{notes.join(' · ')}</span>}
    </>
  );
}

function Figure({ unit, children }: { unit: Unit; children: React.ReactNode }) {
  return (
    <span className="quantity-field-figure">
      {children}
      <span className="quantity-field-unit" data-tight={unit === 'deg' || undefined}>
        {words.afterNumber(unit)}
      </span>
    </span>
  );
}
