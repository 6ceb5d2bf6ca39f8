import { Line } from './Line.tsx';
import { readCount } from './readCount.ts';
import { Steppers } from './Steppers.tsx';
import { useLine } from './useLine.ts';

interface CountFieldProps {
  readonly label: string;
  readonly path: string;
  readonly value: number | undefined;
  /** What is counted: "clicks". */
  readonly unit: string;
  readonly least?: number;
  readonly most?: number;
  readonly onCommit: (value: number | null) => void;
}

/** A whole number of clicks, steps or turns of a key, with − and + beside it. */
export function CountField({ label, path, value, unit, least = 0, most, onCommit }: CountFieldProps) {
  const range = { least, most, unit, whole: true };
  const line = useLine(
    value ?? null,
    (count) => String(count ?? ''),
    (text) => readCount(text, range),
    onCommit,
  );
  const step = (by: number) => {
    const next = Math.max(least, Math.min(most ?? Number.POSITIVE_INFINITY, (value ?? least) + by));
    if (next !== value) onCommit(next);
  };
  return (
    <Line label={label} path={path} line={line} inputMode="numeric" unit={unit}>
      <Steppers label={label} step={`1 ${unit}`} onStep={step} />
    </Line>
  );
}
