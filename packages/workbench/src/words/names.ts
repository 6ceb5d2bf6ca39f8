import type { ToTape } from '@sagwright/model/rear/tape';
import type { JobDocument } from '@sagwright/records/schema';
import type { PointLength } from '@sagwright/records/schema/pointTape';
import { inOrder } from '../inputs/desk.ts';
import type { Strut } from '../inputs/sides.ts';
import { words } from './catalogue.ts';

/** Names as the technician typed them, quoted so that they stand out of a sentence. */
export function loadName(job: JobDocument, id: string): string {
  return words.quoted(job.loadCases[id]?.name ?? id);
}

export function springName(job: JobDocument, id: string): string {
  return words.quoted(job.springs[id]?.name ?? id);
}

export function placeName(job: JobDocument, id: string): string {
  return words.quoted(job.machine.places[id]?.name ?? id);
}

/** What a figure of the job is called, by its path. */
export function fieldName(job: JobDocument, path: string): string {
  return figureName(job, path) ?? path;
}

/** What a figure of the job is called; null where the catalogue has no name for it. */
export function figureName(job: JobDocument, path: string): string | null {
  const row = /\.rows\.(\d+)\./.exec(path);
  if (row !== null) {
    const name = nameFrom(words.fields, job, path.replace(row[0], '.rows.'));
    return name === null ? null : words.inRow(name, Number(row[1]) + 1);
  }
  const section = /^springs\.([^.]+)\.rate\.sections\.([^.]+)\./.exec(path);
  if (section === null) return nameFrom(words.fields, job, path);
  const [, spring, id] = section;
  const name = nameFrom(words.fields, job, path.replace(`.sections.${id}.`, '.sections.'));
  return name === null ? null : words.inSection(name, sectionsOf(job, spring!).indexOf(id!) + 1);
}

/** Ids of the sections of a wound spring, in their order. */
function sectionsOf({ springs }: JobDocument, spring: string): readonly string[] {
  const rate = springs[spring]?.rate;
  return rate?.kind === 'wound' ? inOrder(rate.sections).map(([id]) => id) : [];
}

/** What a catalogue calls a field of the job; null where it has no name for it. */
export function nameFrom(catalogue: typeof words.fields, job: JobDocument, path: string): string | null {
  const plain = catalogue[path];
  if (plain !== undefined) return plain('');
  const steps = path.replace(/\.readings\.\d+\./, '.readings.').split('.');
  for (const [i, id] of steps.entries()) {
    const say = catalogue[steps.map((step, j) => (i === j ? '*' : step)).join('.')];
    if (say !== undefined) return say(nameIn(job, steps[i - 1]!, id));
  }
  return null;
}

function nameIn(job: JobDocument, list: string, id: string): string {
  switch (list) {
    case 'places':
      return placeName(job, id);
    case 'clearances':
      return words.quoted(job.machine.clearances?.[id]?.name ?? id);
    case 'points':
      return words.quoted(job.machine.points?.[id]?.name ?? id);
    case 'springs':
      return springName(job, id);
    case 'loadCases':
      return loadName(job, id);
    case 'steps':
      return String(Number(id) + 1);
    case 'tape':
      return tapeName(job, id);
    case 'things':
      return words.quoted(job.things[id]?.name ?? id);
    case 'knobs':
      return words.quoted(job.machine.knobs?.[id]?.name ?? id);
    default:
      return words.settings.strut[id as Strut] ?? id;
  }
}

/** The same of a reading that hard points come of: a length of the tape by what it goes from and to. */
export function readingName(job: JobDocument, path: string): string {
  const [, id] = /^machine\.rear\.travel\.tape\.([^.]+)\.length$/.exec(path) ?? [];
  return id === undefined ? fieldName(job, path) : tapeName(job, id);
}

/** "from pivot to arm eye" */
function tapeName({ machine }: JobDocument, id: string): string {
  const { travel } = machine.rear;
  const tape: Readonly<Record<string, PointLength>> =
    'tape' in travel && travel.tape !== undefined ? travel.tape : {};
  const each = tape[id];
  return each === undefined ? id : lengthName(each);
}

/** What a length of the tape goes from and to. */
export function lengthName(each: PointLength | ToTape): string {
  return each.kind === 'between'
    ? words.tape.lengths.between(each.from, each.to)
    : words.tape.lengths[each.kind](each.of);
}
