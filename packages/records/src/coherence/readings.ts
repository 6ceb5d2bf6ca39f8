import { type FieldPath, type Problem, problem } from '../problem.ts';
import type { Setting } from '../schema/adjusters.ts';
import { adjusterAt } from '../schema/machine.ts';
import type { SagReading } from '../schema/readings.ts';
import type { JobDocument } from '../schema.ts';
import { noSuch } from './references.ts';
import { settingProblems } from './setups.ts';

/** Readings are of loads that exist, read something, and tell adjusters in their own terms, one for each strut. */
export function* readingProblems({
  readings = {},
  loadCases,
  machine,
  setups,
}: JobDocument): Generator<Problem> {
  for (const [id, reading] of Object.entries(readings)) {
    const path = ['readings', id];
    const { loadCase } = reading;
    if (loadCase !== undefined && !loadCases[loadCase])
      yield noSuch([...path, 'loadCase'], 'load case', loadCase, loadCases);
    const figures =
      reading.kind === 'sag'
        ? [reading.hanging, reading.afterPush, reading.afterLift]
        : [reading.front, reading.rear];
    if (figures.every((figure) => figure === undefined)) yield problem(path, 'nothingRead', reading.kind);
    if (reading.kind === 'sag') yield* adjustersProblems([...path, 'adjusters'], reading, machine, setups);
  }
}

/** Adjusters of a reading are those of the end as found, each strut once. */
function* adjustersProblems(
  path: FieldPath,
  { adjusters, end }: SagReading,
  machine: JobDocument['machine'],
  { asFound }: JobDocument['setups'],
): Generator<Problem> {
  if (adjusters === undefined) return;
  const found = asFound[end];
  if (found === undefined) {
    yield problem(path, 'adjustersWithoutFound', end);
    return;
  }
  if ('single' in adjusters !== 'single' in found) {
    yield problem(path, 'single' in found ? 'sidesOfOneShock' : 'oneSideOfTwo');
    return;
  }
  const adjuster = adjusterAt(machine, end);
  for (const [side, at] of Object.entries(adjusters) as [string, Setting][])
    yield* settingProblems(at, adjuster ?? { kind: 'none' }, [...path, side]);
}
