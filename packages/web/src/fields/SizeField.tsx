import { ofSize } from '@sagwright/records/schema/stance';
import { sentences } from '@sagwright/records/wording/sentences';
import { sentence } from '../words/fields.ts';
import { Line } from './Line.tsx';
import { useLine } from './useLine.ts';

interface SizeFieldProps {
  readonly label: string;
  readonly path: string;
  /** As it was typed; '' where there is none. */
  readonly value: string;
  readonly onCommit: (size: string) => void;
}

/** A tyre's metric size as on its wall, or nothing. */
export function SizeField({ label, path, value, onCommit }: SizeFieldProps) {
  const read = (text: string) => {
    const size = text.trim();
    if (size !== '' && !ofSize.test(size)) return { ok: false, why: sentence(sentences.badSize()) } as const;
    return { ok: true, value: size } as const;
  };
  return <Line label={label} path={path} line={useLine(value, (text) => text, read, onCommit)} />;
}
