import { readJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import type { PageProblem } from '../worker/messages.ts';

/** A file that was opened: a job, or all that keeps it from being one, with what can be shown of it and its text as it was. */
export type OpenedFile = { readonly kind: 'job'; readonly job: JobDocument } | BrokenFileOpened;

export interface BrokenFileOpened {
  readonly kind: 'broken';
  readonly name: string;
  readonly text: string;
  readonly problems: readonly PageProblem[];
  readonly rest: FileRest;
  /** The file as data, where it can be laid on the table to be mended there; null where it is no job at all. */
  readonly mendable: unknown;
}

/** What could be read of a broken file. */
export interface FileRest {
  readonly name: string | null;
  readonly machine: string | null;
  readonly springs: readonly string[];
  readonly loads: readonly string[];
}

export function readFile(name: string, text: string): OpenedFile {
  const read = readJob(text);
  if (read.ok) return { kind: 'job', job: read.job };
  const { problems, partial } = read;
  const mendable = isJobLike(partial) ? partial : null;
  return { kind: 'broken', name, text, problems, rest: restOf(partial), mendable };
}

/** Of our format and version, with the lists that the page walks through: it can be shown while fields of it are wrong. */
function isJobLike(value: unknown): boolean {
  if (!isRecord(value) || value.format !== 'sagwright-job' || value.version !== 1) return false;
  const { machine } = value;
  const lists = [value.springs, value.things, value.loadCases, value.targetSets];
  return (
    isRecord(machine) &&
    lists.every(isListOfRecords) &&
    isListOfRecords(machine.places) &&
    isRecord(value.setups)
  );
}

function restOf(partial: unknown): FileRest {
  if (!isRecord(partial)) return { name: null, machine: null, springs: [], loads: [] };
  return {
    name: textOf(partial.name),
    machine: isRecord(partial.machine) ? textOf(partial.machine.name) : null,
    springs: namesOf(partial.springs),
    loads: namesOf(partial.loadCases),
  };
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

function isListOfRecords(value: unknown): boolean {
  return isRecord(value) && Object.values(value).every(isRecord);
}
