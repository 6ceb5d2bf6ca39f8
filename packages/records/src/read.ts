import { incoherences } from './coherence.ts';
import { type Problem, problem } from './problem.ts';
import { nestingProblems } from './reading/nesting.ts';
import { textFaults } from './reading/textFaults.ts';
import { type JobDocument, job, jobFormat, jobVersion } from './schema.ts';
import { found } from './wording/found.ts';
import { shapeProblems } from './wording/shape.ts';

/**
 * A job, or all that keeps it from being one. `partial` is what the file holds, as it stands, so that an edge can still
 * show the rest; it is there wherever the text was JSON of an ordinary depth, and it must not be computed with.
 */
export type JobResult =
  | { readonly ok: true; readonly job: JobDocument }
  | { readonly ok: false; readonly problems: readonly Problem[]; readonly partial?: unknown };

const charactersAtMost = 4_000_000;
const problemsAtMost = 200;

/** Reads a job file's text. Never throws: whatever is wrong is in the result, in the order in which it must be mended. */
export function readJob(text: string): JobResult {
  if (text.length > charactersAtMost) {
    return refuse([problem([], 'fileTooLong', text.length, charactersAtMost)]);
  }
  const plain = text.startsWith('\uFEFF') ? text.slice(1) : text; // some editors put a byte order mark first
  const { fault, twice } = textFaults(plain);
  if (fault) return refuse([notJson(plain, fault.offset, fault.needed)]);
  const value: unknown = JSON.parse(plain);
  if (twice.length === 0) return parseJob(value);
  const problems = twice.map(({ path, offset }) =>
    problem(path, 'nameTwice', String(path.at(-1)), placeOf(plain, offset).line),
  );
  return refuse(problems, value);
}

/** Reads a job from plain data, as `readJob` does from text. */
export function parseJob(value: unknown): JobResult {
  const nested = nestingProblems(value);
  if (nested.some(({ code }) => code === 'tooDeep')) return refuse(nested);
  if (nested.length > 0) return refuse(nested, value);
  const stranger = formatProblem(value);
  if (stranger) return refuse([stranger], value);
  const read = job.safeParse(value);
  if (!read.success) return refuse(shapeProblems(job, value), value);
  const problems = incoherences(read.data);
  return problems.length > 0 ? refuse(problems, value) : { ok: true, job: read.data };
}

function refuse(problems: readonly Problem[], partial?: unknown): JobResult {
  const left = problems.length - problemsAtMost;
  const listed =
    left > 0 ? [...problems.slice(0, problemsAtMost), problem([], 'moreProblems', left)] : problems;
  return partial === undefined ? { ok: false, problems: listed } : { ok: false, problems: listed, partial };
}

/** A file of another kind or version: named before anything in it is judged by rules that are not its own. */
function formatProblem(value: unknown): Problem | undefined {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return problem([], 'notAJob', found(value));
  }
  const { format, version } = value as { format?: unknown; version?: unknown };
  if (format !== jobFormat) return problem(['format'], 'notAJob', found(format));
  if (version === jobVersion) return undefined;
  return typeof version === 'number' && version > jobVersion
    ? problem(['version'], 'newerVersion', version, jobVersion)
    : problem(['version'], 'wrongVersion', found(version), jobVersion);
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
