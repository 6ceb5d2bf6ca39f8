import type { JobDocument } from '@sagwright/records/schema';
import { formatFigure } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import { words } from '../words/catalogue.ts';
import { measure as say } from '../words/english/measure.ts';
import { fieldName, loadName } from '../words/names.ts';
import type { FoundDocument, MeasuredDocument, Suspected } from './document.ts';

/** What a reading is called: its load, end and field. */
export function readingName(job: JobDocument, id: string): string {
  const [reading, field] = id.split('.') as [string, string];
  const of = job.readings![reading]!;
  const load = of.loadCase === undefined ? say.alone : loadName(job, of.loadCase);
  const place =
    of.kind === 'sag' ? [say.ends[of.end], ...(of.side === undefined ? [] : [say.sides[of.side]])] : [];
  const turned = of.kind === 'sag' && of.adjusters !== undefined ? [say.turned] : [];
  return [load, ...place, ...turned, say.fields[field] ?? field].join(', ');
}

function suspectedName(job: JobDocument, { kind, id }: Suspected): string {
  return kind === 'figure' ? readingName(job, id) : fieldName(job, id);
}

/** What does not fit, in sentences; or that nothing stands out. */
export function suspectWords(
  job: JobDocument,
  found: FoundDocument,
  sags: MeasuredDocument['sags'],
  units: Units,
): readonly string[] {
  const { suspect, beyondChance } = found;
  if (suspect === null) {
    const [misfit, freedom] = [found.misfit.toFixed(1), found.freedom.toFixed(0)];
    if (beyondChance) return [say.allOff(misfit, freedom)];
    const isApart = sags.some(({ verdict }) => verdict === 'apart');
    return [say.sound(misfit, freedom), ...(isApart ? [say.explained] : [])];
  }
  const name = suspectedName(job, suspect);
  const score = suspect.score.toFixed(1);
  return [
    suspect.dimension === null
      ? say.offUnnamed(name, score)
      : say.off(name, formatFigure(suspect.off, suspect.dimension, units), score),
    ...(suspect.alike.length === 0
      ? []
      : [say.alike(words.list(suspect.alike.map((each) => suspectedName(job, each))))]),
    say.notToSetBy,
  ];
}
