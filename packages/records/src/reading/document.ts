import type * as z from 'zod/mini';
import { type Problem, problem } from '../problem.ts';
import { found } from '../wording/found.ts';
import { shapeProblems } from '../wording/shape.ts';
import { nestingProblems } from './nesting.ts';
import { textFaults } from './textFaults.ts';

/** A kind of file of ours: what it begins with, its shape, and what one part of it says against another. */
export interface DocumentKind<T> {
  readonly format: string;
  readonly version: number;
  /** What is said of a file that is none. */
  readonly stranger: 'notAJob' | 'notATemplate';
  readonly schema: z.ZodMiniType<T>;
  readonly incoherences: (document: T) => readonly Problem[];
}

/**
 * A document, or all that keeps it from being one. `partial` is what the file holds, as it stands, so that an edge can still
 * show the rest; it is there wherever the text was JSON of an ordinary depth, and it must not be computed with.
 */
export type DocumentResult<T> = { readonly ok: true; readonly document: T } | Refused;

export interface Refused {
  readonly ok: false;
  readonly problems: readonly Problem[];
  readonly partial?: unknown;
}

const charactersAtMost = 4_000_000;
const problemsAtMost = 200;

/** Reads a file's text. Never throws: whatever is wrong is in the result, in the order in which it must be mended. */
export function readDocument<T>(text: string, kind: DocumentKind<T>): DocumentResult<T> {
  if (text.length > charactersAtMost) {
    return refuse([problem([], 'fileTooLong', text.length, charactersAtMost)]);
  }
  const plain = text.startsWith('\uFEFF') ? text.slice(1) : text; // some editors put a byte order mark first
  const { fault, twice } = textFaults(plain);
  if (fault) return refuse([notJson(plain, fault.offset, fault.needed)]);
  const value: unknown = JSON.parse(plain);
  if (twice.length === 0) return parseDocument(value, kind);
  const problems = twice.map(({ path, offset }) =>
    problem(path, 'nameTwice', String(path.at(-1)), placeOf(plain, offset).line),
  );
  return refuse(problems, value);
}

/** Reads a document from plain data, as `readDocument` does from text. */
export function parseDocument<T>(value: unknown, kind: DocumentKind<T>): DocumentResult<T> {
  const nested = nestingProblems(value);
  if (nested.some(({ code }) => code === 'tooDeep')) return refuse(nested);
  if (nested.length > 0) return refuse(nested, value);
  const stranger = formatProblem(value, kind);
  if (stranger) return refuse([stranger], value);
  const read = kind.schema.safeParse(value);
  if (!read.success) return refuse(shapeProblems(kind.schema, value), value);
  const problems = kind.incoherences(read.data);
  return problems.length > 0 ? refuse(problems, value) : { ok: true, document: read.data };
}

function refuse(problems: readonly Problem[], partial?: unknown): Refused {
  const left = problems.length - problemsAtMost;
  const listed =
    left > 0 ? [...problems.slice(0, problemsAtMost), problem([], 'moreProblems', left)] : problems;
  return partial === undefined ? { ok: false, problems: listed } : { ok: false, problems: listed, partial };
}

/** A file of another kind or version: named before anything in it is judged by rules that are not its own. */
function formatProblem(
  value: unknown,
  { format, version, stranger }: Pick<DocumentKind<unknown>, 'format' | 'version' | 'stranger'>,
): Problem | undefined {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return problem([], stranger, found(value));
  }
  const given = value as { format?: unknown; version?: unknown };
  if (given.format !== format) return problem(['format'], stranger, found(given.format));
  if (given.version === version) return undefined;
  return typeof given.version === 'number' && given.version > version
    ? problem(['version'], 'newerVersion', given.version, version)
    : problem(['version'], 'wrongVersion', found(given.version), version);
}

function notJson(text: string, offset: number, needed: string): Problem {
  const { line, column } = placeOf(text, offset);
  const sign = text[offset];
  return problem(
    [],
    'notJson',
    line,
    column,
    sign === undefined ? 'the end of the file' : found(sign),
    needed,
  );
}

/** Line and column as an editor counts them, from 1. */
function placeOf(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset).split('\n');
  return { line: before.length, column: before.at(-1)!.length + 1 };
}
