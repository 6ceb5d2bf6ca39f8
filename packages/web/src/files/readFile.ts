import type { ProblemCode } from '@sagwright/records/problem';
import { readJob } from '@sagwright/records/read';
import { readTemplate } from '@sagwright/records/readTemplate';
import type { JobDocument } from '@sagwright/records/schema';
import type { Template } from '@sagwright/records/schema/template';
import { broken as words } from '../words/files.ts';
import type { PageProblem } from '../worker/messages.ts';
import { isMendable } from './mendable.ts';

/** A text that was read: a job, a template, or all that keeps it from being one, with what can be shown of it. */
export type ReadFile =
  | { readonly kind: 'job'; readonly job: JobDocument }
  | { readonly kind: 'template'; readonly template: Template }
  | BrokenRead;

export interface BrokenRead {
  readonly kind: 'broken';
  readonly verdict: 'newer version' | 'no job' | 'unreadable' | 'problems';
  readonly problems: readonly PageProblem[];
  /** Null where nothing of it could be read. */
  readonly rest: FileRest | null;
  /** The file as data, where it can be laid on the table to be mended there without loss; null where it cannot. */
  readonly mendable: unknown;
}

/** What could be read of a broken file. */
export interface FileRest {
  readonly name: string | null;
  readonly machine: string | null;
  readonly springs: readonly string[];
  readonly loads: readonly string[];
}

export function readFile(text: string): ReadFile {
  if (text.trim() === '') return unreadable(words.empty);
  const read = readJob(text);
  if (read.ok) return { kind: 'job', job: read.job };
  const { problems, partial } = read;
  const codes = new Set(problems.map(({ code }) => code));
  const asTemplate = codes.has('notAJob') ? readTemplate(text) : null;
  if (asTemplate?.ok) return { kind: 'template', template: asTemplate.template };
  const mendable = isMendable(partial, problems) ? partial : null;
  return { kind: 'broken', verdict: verdictOn(codes), problems, rest: restOf(partial), mendable };
}

/** A file of which nothing can be read, and why. */
export function unreadable(message: string): BrokenRead {
  const problems = [{ path: '', message }];
  return { kind: 'broken', verdict: 'unreadable', problems, rest: null, mendable: null };
}

function verdictOn(codes: ReadonlySet<ProblemCode>): BrokenRead['verdict'] {
  if (codes.has('newerVersion')) return 'newer version';
  if (codes.has('notAJob')) return 'no job';
  return codes.has('notJson') || codes.has('fileTooLong') || codes.has('tooDeep') ? 'unreadable' : 'problems';
}

function restOf(partial: unknown): FileRest | null {
  if (!isRecord(partial)) return null;
  const name = textOf(partial.name);
  const machine = isRecord(partial.machine) ? textOf(partial.machine.name) : null;
  const [springs, loads] = [namesOf(partial.springs), namesOf(partial.loadCases)];
  const found = name ?? machine ?? springs[0] ?? loads[0];
  return found === undefined || found === null ? null : { name, machine, springs, loads };
}

function namesOf(list: unknown): readonly string[] {
  if (!isRecord(list)) return [];
  return Object.entries(list)
    .slice(0, 50)
    .map(([id, member]) => (isRecord(member) ? (textOf(member.name) ?? id) : id));
}

function textOf(value: unknown): string | null {
  return typeof value === 'string' ? value.slice(0, 120) : null;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
