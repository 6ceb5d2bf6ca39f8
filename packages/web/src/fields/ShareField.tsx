import { Line } from './Line.tsx';
import { readCount } from './readCount.ts';
import { Steppers } from './Steppers.tsx';
import { useLine } from './useLine.ts';

interface ShareFieldProps {
  readonly label: string;
  readonly path: string;
  /** In percent, as the job holds it. */
  readonly value: number | undefined;
  readonly onCommit: (value: number | null) => void;
}

const range = { least: 0, most: 100, unit: '%', whole: false };
const step = 5;

/** A load case's share of the riding, in percent. */
export function ShareField({ label, path, value, onCommit }: ShareFieldProps) {
  const line = useLine(
    value ?? null,
    (share) => String(share ?? ''),
    (text) => readCount(text, range),
    onCommit,
  );
  const nudge = (times: 1 | -1) => {
    const next = Math.max(range.least, Math.min(range.most, (value ?? 0) + times * step));
    if (next !== value) onCommit(next);
  };
  return (
    <Line label={label} path={path} line={line} inputMode="decimal" unit={range.unit}>
      <Steppers label={label} step={`${step} %`} onStep={nudge} />
    </Line>
  );
}
