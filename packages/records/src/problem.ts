import { sentences } from './wording/sentences.ts';
import { whereInWords } from './wording/where.ts';

export type Sentences = typeof sentences;
export type ProblemCode = keyof Sentences;

/** The way to a field: names, ids as they stand, and places in a table counted from 0. */
export type FieldPath = readonly (string | number)[];

/** What is wrong with a job, and where. A problem is data: it goes straight to the field that caused it. */
export interface Problem {
  /** As in `machine.rear.shock.stroke`; '' for the file as a whole. */
  readonly path: string;
  readonly code: ProblemCode;
  /** Where, what was found with its unit, what is allowed, what to do. */
  readonly message: string;
}

/** A problem in our own words, with the figures that its sentence needs. */
export function problem<C extends ProblemCode>(
  path: FieldPath,
  code: C,
  ...figures: Parameters<Sentences[C]>
): Problem {
  const say = sentences[code] as (...figures: Parameters<Sentences[C]>) => string;
  return { path: path.join('.'), code, message: `${whereInWords(path)}: ${say(...figures)}` };
}
