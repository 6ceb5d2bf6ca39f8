import { Line } from '../../fields/Line.tsx';
import { readCount } from '../../fields/readCount.ts';
import { useLine } from '../../fields/useLine.ts';

interface NumberFieldProps {
  readonly label: string;
  readonly path: string;
  readonly value: number | undefined;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  readonly whole: boolean;
  readonly onCommit: (value: number | null) => void;
}

/** A number that is counted or read off a tyre: no unit to choose, no ±. */
export function NumberField({ label, path, value, unit, least, most, whole, onCommit }: NumberFieldProps) {
  const range = { least, most, unit, whole };
  const line = useLine(
    value ?? null,
    (number) => String(number ?? ''),
    (text) => readCount(text, range),
    onCommit,
  );
  return <Line label={label} path={path} line={line} inputMode={whole ? 'numeric' : 'decimal'} unit={unit} />;
}
