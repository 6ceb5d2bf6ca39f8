import './QuantityField.css';
import type { Quantity } from '@sagwright/records/schema/quantity';
import { type Dimension, type Unit, unitsOf } from '@sagwright/records/units';
import type { ReadingKind } from '@sagwright/workbench/inputs/widths';
import type { KeyboardEvent } from 'react';
import * as words from '../words/fields.ts';
import type { Assumed } from './assumed.ts';
import { FieldFace } from './FieldFace.tsx';
import { stepText } from './figureText.ts';
import { type BoundName, outOfBounds } from './judge.ts';
import { KeypadSheet } from './KeypadSheet.tsx';
import { focusNextField } from './nextField.ts';
import { Steppers } from './Steppers.tsx';
import { sheetOf } from './sheet.ts';
import { stepIn, usualStep } from './steps.ts';
import { unreadIn } from './unread.ts';
import { useQuantityField } from './useQuantityField.ts';

export interface QuantityFieldProps {
  readonly label: string;
  /** Where the figure stands in the job, `machine.rear.shock.stroke`: a problem leads to the field of its path. */
  readonly path: string;
  /** As the job has it; a file that was opened to be mended may have something else there. */
  readonly quantity: Quantity | undefined;
  readonly dimension: Dimension;
  /** The bound in records that judges the figure. */
  readonly bound?: BoundName;
  /** What kind of reading it is: it tells which ± are offered. */
  readonly reading?: ReadingKind;
  readonly assumed?: Assumed;
  /** One step, in SI. With it the field has − and + beside it. */
  readonly step?: number;
  /** The unit to show the figure in; what was typed stays, and stands beside it. */
  readonly showIn?: Unit;
  readonly onCommit: (quantity: Quantity | null) => void;
  readonly small?: boolean;
  /** What stands there where the figure may well be left out; else it says that it is needed. */
  readonly empty?: string;
}

/** A figure with its unit, ± and origin; a tap opens the keypad sheet, a digit typed onto it does too. */
export function QuantityField(props: QuantityFieldProps) {
  const { label, path, dimension, bound, assumed, step, small } = props;
  const unread = unreadIn(props.quantity, dimension);
  const quantity = unread === null ? props.quantity : undefined;
  const rules = { dimension, bound, step: step ?? usualStep[dimension] };
  const { state, act, open } = useQuantityField(rules, quantity ?? null, props.onCommit);
  const { committed } = state;
  const fault = committed && bound ? outOfBounds(committed, bound) : null;

  function openByTyping(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey || !/^[\d.,−-]$/.test(event.key)) return;
    event.preventDefault();
    event.stopPropagation();
    open(event.key);
  }

  return (
    <div
      className="quantity-field"
      id={path}
      data-small={small || undefined}
      data-state={committed ? 'given' : assumed && !unread ? 'assumed' : 'needed'}
    >
      <div className="quantity-field-row">
        <button
          type="button"
          className="quantity-field-face"
          data-field-face
          aria-haspopup="dialog"
          aria-invalid={fault || unread ? true : undefined}
          onClick={() => open(unread?.number)}
          onKeyDown={openByTyping}
        >
          <span className="quantity-field-label">{label}</span>
          <FieldFace
            committed={committed}
            unread={unread}
            assumed={assumed}
            unit={props.showIn ?? committed?.unit ?? unitsOf(dimension)[0]!}
            step={step}
            empty={props.empty}
          />
        </button>
        {step !== undefined && committed && (
          <Steppers
            label={label}
            step={`${stepText(stepIn(step, committed.unit), committed.unit)}${words.afterNumber(committed.unit)}`}
            onStep={(times) => act({ kind: 'nudge', times })}
          />
        )}
      </div>
      {(fault ?? unread) && <p className="quantity-field-fault">{(fault ?? unread)?.why}</p>}
      {state.entry && (
        <KeypadSheet
          label={label}
          reading={props.reading}
          assumed={assumed}
          sheet={sheetOf(state, state.entry, act)}
          onWritten={(next) => next && focusNextField(path)}
        />
      )}
    </div>
  );
}
