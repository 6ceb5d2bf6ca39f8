import { readNumber } from '@sagwright/workbench/format/readNumber';
import * as words from '../words/fields.ts';
import type { LineRead } from './useLine.ts';

export interface CountRange {
  readonly least: number;
  readonly most: number | undefined;
  readonly unit: string;
  readonly whole: boolean;
}

/** A count or a share as typed: within its range, whole where it counts things; an empty line is none. */
export function readCount(text: string, { least, most, unit, whole }: CountRange): LineRead<number | null> {
  const read = readNumber(text);
  if (read.kind === 'empty') return { ok: true, value: null };
  if (read.kind !== 'number') return { ok: false, why: read.why };
  const { value } = read;
  if (whole && !Number.isInteger(value)) return { ok: false, why: words.wholeOnly(text.trim()) };
  const outside = value < least || (most !== undefined && value > most);
  return outside ? { ok: false, why: words.outOfCount(text.trim(), least, most, unit) } : { ok: true, value };
}
