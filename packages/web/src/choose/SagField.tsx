import { Line } from '../fields/Line.tsx';
import { readCount } from '../fields/readCount.ts';
import { Steppers } from '../fields/Steppers.tsx';
import { useLine } from '../fields/useLine.ts';
import { type BandUnit, limitsOf, sagStep, withSag } from '../job/band.ts';
import type { TargetRow } from '../job/targets.ts';
import { unitWord } from '../words/fields.ts';
import { targets as words } from '../words/targets.ts';

interface SagFieldProps {
  readonly path: string;
  readonly name: 'low' | 'aim' | 'high';
  readonly wanted: TargetRow['wanted'];
  readonly onChange: (wanted: TargetRow['wanted']) => void;
}

/** One of the three figures of a wanted sag. A target is no reading: it has no ± and no origin. */
export function SagField({ path, name, wanted, onChange }: SagFieldProps) {
  const { value, unit } = wanted[name];
  const { least, most } = limitsOf(wanted, name);
  const line = useLine<number | null>(
    value,
    (sag) => String(sag ?? ''),
    (text) => readCount(text, { least, most, unit: unitWord(unit), whole: false }),
    (sag) => sag !== null && onChange(withSag(wanted, name, sag)),
  );
  const step = (times: 1 | -1): void => {
    const next = Number((value + times * sagStep(unit)).toPrecision(12));
    onChange(withSag(wanted, name, Math.max(least, Math.min(most, next))));
  };
  return (
    <Line label={words[name]} path={`${path}.${name}`} line={line} inputMode="decimal" unit={unitWord(unit)}>
      <Steppers label={words[name]} step={stepWords(unit)} onStep={step} />
    </Line>
  );
}

function stepWords(unit: BandUnit): string {
  return `${sagStep(unit)} ${unitWord(unit)}`;
}
