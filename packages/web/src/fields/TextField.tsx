import * as words from '../words/fields.ts';
import { Line } from './Line.tsx';
import { useLine } from './useLine.ts';

interface TextFieldProps {
  readonly label: string;
  readonly path: string;
  readonly value: string;
  /** Letters at most, as the job allows. */
  readonly most: number;
  readonly onCommit: (value: string) => void;
}

/** A name, or a few words. */
export function TextField({ label, path, value, most, onCommit }: TextFieldProps) {
  const read = (text: string) => {
    const value = text.trim();
    if (value.length > most) return { ok: false, why: words.tooLong(value.length, most) } as const;
    return { ok: true, value } as const;
  };
  return <Line label={label} path={path} line={useLine(value, (text) => text, read, onCommit)} />;
}
