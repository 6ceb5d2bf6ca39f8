import type { Quantity } from '@sagwright/records/schema/quantity';
import type { AssumedFigure } from '@sagwright/workbench/page/shapes';
import { stepText } from '../fields/figureText.ts';
import { QuantityField, type QuantityFieldProps } from '../fields/QuantityField.tsx';
import { Steppers } from '../fields/Steppers.tsx';
import { stepIn } from '../fields/steps.ts';
import { afterNumber } from '../words/fields.ts';
import { asQuantity } from './assumedAt.ts';
import './steppedFigure.css';

type SteppedFigureProps = Omit<QuantityFieldProps, 'assumed' | 'step'> & {
  /** One step, in SI. */
  readonly step: number;
  readonly assumed: AssumedFigure | undefined;
};

/** A figure with − and + beside it, also while it is assumed: a step from there keeps the whole ± of the assumption. */
export function SteppedFigure({ assumed, ...props }: SteppedFigureProps) {
  if (props.quantity !== undefined || assumed === undefined) {
    return <QuantityField {...props} {...(assumed && { assumed })} />;
  }
  const usual = asQuantity(assumed);
  const step = stepIn(props.step, usual.unit);
  return (
    <div className="stepped-figure">
      <QuantityField {...props} small assumed={assumed} />
      <Steppers
        label={props.label}
        step={`${stepText(step, usual.unit)}${afterNumber(usual.unit)}`}
        onStep={(times) =>
          props.onCommit({
            ...usual,
            value: Number((usual.value + times * step).toPrecision(12)),
          } as Quantity)
        }
      />
    </div>
  );
}
