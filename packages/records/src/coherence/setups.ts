import { type FieldPath, type Problem, problem } from '../problem.ts';
import type { Adjuster, Setting } from '../schema/adjusters.ts';
import { adjusterAt } from '../schema/machine.ts';
import type { End } from '../schema/names.ts';
import type { EndSetting, Side } from '../schema/setups.ts';
import type { JobDocument } from '../schema.ts';
import { asTyped, isBetween } from './compare.ts';
import { noSuch } from './references.ts';

/** Springs that exist and belong to that end, in as many struts as there are, set where their adjuster can stand. */
export function* setupProblems(job: JobDocument): Generator<Problem> {
  const { rear, front } = job.setups.asFound;
  const path = ['setups', 'asFound'];
  yield* countProblems(rear, [...path, 'rear'], job.machine.rear.shock.count);
  yield* endProblems(rear, 'rear', [...path, 'rear'], job);
  if (front) yield* endProblems(front, 'front', [...path, 'front'], job);
  for (const end of ['rear', 'front'] as const) {
    const picked = job.choice?.[end];
    if (picked !== undefined) yield* springProblems(picked, end, ['choice', end], job);
  }
}

function* countProblems(rear: EndSetting, path: FieldPath, count: 1 | 2): Generator<Problem> {
  if (count === 1 && !('single' in rear)) yield problem(path, 'sidesOfOneShock');
  if (count === 2 && 'single' in rear) yield problem([...path, 'single'], 'oneSideOfTwo');
}

function* endProblems(setting: EndSetting, end: End, path: FieldPath, job: JobDocument): Generator<Problem> {
  const adjuster = adjusterAt(job.machine, end);
  for (const [name, { spring, at }] of Object.entries(setting) as [string, Side][]) {
    yield* springProblems(spring, end, [...path, name, 'spring'], job);
    yield* settingProblems(at, adjuster ?? { kind: 'none' }, [...path, name, 'at']);
  }
}

function* springProblems(
  id: string,
  end: End,
  path: FieldPath,
  { springs, machine }: JobDocument,
): Generator<Problem> {
  const spring = springs[id];
  if (!spring) yield noSuch(path, 'spring', id, springs);
  else if (spring.end !== end) yield problem(path, 'springOfOtherEnd', id, spring.end, end);
  else if (spring.rate.kind === 'none' && (end === 'front' || machine.rear.shock.air === undefined)) {
    yield problem(path, 'coilMissing');
  }
}

/** The name of the setting that each kind of adjuster has. */
const settingOf = {
  collar: 'reading',
  cap: 'turns',
  cam: 'step',
  clicks: 'click',
  spacer: 'spacer',
  none: 'preload',
} as const satisfies Record<Adjuster['kind'], string>;

/** A setting told in its adjuster's own terms, and within its ends. */
export function* settingProblems(at: Setting, adjuster: Adjuster, path: FieldPath): Generator<Problem> {
  const given = Object.keys(at).find((name) => name !== 'preload') ?? 'preload';
  const needed = settingOf[adjuster.kind];
  if (given !== 'preload' && given !== needed) {
    yield problem([...path, given], 'settingOfOtherAdjuster', given, adjuster.kind, needed);
    return;
  }
  const beyond = beyondEnds(at, adjuster);
  if (beyond) yield problem([...path, given], 'outsideEnds', ...beyond);
}

/** A setting and the two ends that it is not between; undefined where it is, or where the adjuster has no ends. */
function beyondEnds(at: Setting, adjuster: Adjuster): [string, string, string] | undefined {
  if ('reading' in at && adjuster.kind === 'collar') {
    const { least, most } = adjuster;
    return isBetween(at.reading, least, most)
      ? undefined
      : [asTyped(at.reading), asTyped(least), asTyped(most)];
  }
  if ('spacer' in at && adjuster.kind === 'spacer') {
    const { least, most } = adjuster;
    return isBetween(at.spacer, least, most)
      ? undefined
      : [asTyped(at.spacer), asTyped(least), asTyped(most)];
  }
  if ('turns' in at && adjuster.kind === 'cap') return beyondCount(at.turns, 0, adjuster.turns);
  if ('step' in at && adjuster.kind === 'cam') return beyondCount(at.step, 1, adjuster.steps.length);
  if ('click' in at && adjuster.kind === 'clicks') return beyondCount(at.click, 0, adjuster.count);
  return undefined;
}

function beyondCount(at: number, least: number, most: number): [string, string, string] | undefined {
  return at >= least && at <= most ? undefined : [String(at), String(least), String(most)];
}
