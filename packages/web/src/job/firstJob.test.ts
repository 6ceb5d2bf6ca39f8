import { readFileSync } from 'node:fs';
import { readJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import type { Quantity } from '@sagwright/records/schema/quantity';
import type { Dimension, UnitOf } from '@sagwright/records/units';
import { unitsFor } from '@sagwright/workbench/format/units';
import { type JobPlan, planJob } from '@sagwright/workbench/path';
import { tourerWith } from '@sagwright/workbench/testing/tourerJob';
import { narrowingWords } from '@sagwright/workbench/words/assumed';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { firstWords } from '../words/first.ts';
import { type FirstEntries, firstJob } from './firstJob.ts';

function q<D extends Dimension>(value: number, unit: UnitOf<D>): Quantity<D> {
  return { value, unit } as Quantity<D>;
}

const mass = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((value) => q<'mass'>(value, 'kg'));

/** What a technician meets: heavy machines with people and luggage on them. */
const entries: fc.Arbitrary<FirstEntries> = fc
  .record({
    rider: mass(50, 140),
    passenger: fc.option(mass(40, 110)),
    behind: fc.option(mass(2, 40)),
    front: mass(130, 210),
    rear: mass(140, 240),
    shocks: fc.constantFrom(1 as const, 2 as const),
    rate: fc.integer({ min: 18, max: 40 }).map((value) => q<'rate'>(value, 'N/mm')),
    ratio: fc.option(
      fc.integer({ min: 105, max: 130 }).map((value) => q<'leverage'>(value / 100, 'wheel/shock')),
    ),
    collarNow: fc.integer({ min: 0, max: 20 }).map((value) => q<'length'>(value, 'mm')),
    collarMost: fc.integer({ min: 20, max: 40 }).map((value) => q<'length'>(value, 'mm')),
  })
  .map((each) =>
    each.shocks === 1
      ? { ...each, ratio: q<'leverage'>(2.2, 'wheel/shock'), rate: q<'rate'>(4 * each.rate.value, 'N/mm') }
      : each,
  );

describe('Eight entries', () => {
  test('make a job that can be read and planned, with every load that they speak of', () => {
    fc.assert(
      fc.property(entries, (given) => {
        const planned = planOf(firstJob(given, firstWords(given.ratio === null)));
        const loads = 1 + (given.passenger === null ? 0 : 1) + (given.behind === null ? 0 : 1);
        expect(planned.plan.loadCases).toHaveLength(loads);
        const shares = Object.values(planned.job.loadCases).map(({ share }) => share);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBe(100);
      }),
      { seed: 5, numRuns: 60 },
    );
  });

  test.each([
    [
      'two-and-a-box',
      read(readFileSync(new URL('../../../../examples/two-and-a-box.json', import.meta.url), 'utf8')),
      'slip',
    ],
    ['the tourer', tourerWith(), 'work'],
  ] as const)(
    'give a wide, honest ±: what %s says with everything known lies within it',
    (_name, job, load) => {
      // The same machine with all but its eight entries forgotten, and the same sag wanted of it.
      const { targetSets, targetSet } = job;
      const forgotten = {
        ...firstJob(eightOf(job, load), firstWords(true)),
        targetSets,
        ...(targetSet !== undefined && { targetSet }),
      };
      const known = rearAim(planOf(job), load);
      const first = rearAim(planOf(forgotten), 'alone');
      expect(first.plusMinus).toBeGreaterThan(2 * known.plusMinus);
      expect(Math.abs(first.value - known.value)).toBeLessThan(first.plusMinus);
    },
  );

  test('tell the one reading that would narrow the collar most', () => {
    const given: FirstEntries = {
      rider: q(98, 'kg'),
      passenger: null,
      behind: null,
      front: q(170, 'kg'),
      rear: q(210, 'kg'),
      shocks: 2,
      rate: q(24, 'N/mm'),
      ratio: null,
      collarNow: q(10, 'mm'),
      collarMost: q(25, 'mm'),
    };
    const planned = planOf(firstJob(given, firstWords(true)));
    const said = narrowingWords(planned, 'rear', unitsFor('metric', planned.job, '.'));
    expect(said).toMatch(/^Worth reading first: ratio of wheel to shock\./);
  });
});

/** Preload that the aim wants of the fitted spring [m], with its ±: the collar's own zero is not asked in three minutes. */
function rearAim(planned: JobPlan, load: string): { readonly value: number; readonly plusMinus: number } {
  const spring = planned.plan.rear.springs.find(({ fitted }) => fitted);
  const cell = spring?.cells.find(({ loadCase }) => loadCase === load);
  if (cell?.kind !== 'planned' || cell.cell.preload === null) throw new Error(`no aim for ${load}`);
  return { value: cell.cell.preload.value, plusMinus: cell.cell.preload.plusMinus ?? 0 };
}

/** The eight entries that a full job holds for its rider alone; the ratio forgotten. */
function eightOf(job: JobDocument, load: string): FirstEntries {
  const { weighing, rear } = job.machine;
  const { count } = rear.shock;
  const setting = job.setups.asFound.rear;
  const side = 'single' in setting ? setting.single : 'both' in setting ? setting.both : setting.left;
  const { rate } = job.springs[side.spring]!;
  const loadCase = job.loadCases[load]!;
  if (!('aboard' in loadCase) || rate.kind !== 'linear') throw new Error('the example is told otherwise');
  const rider = job.things[Object.values(loadCase.aboard)[0]!.thing]!.mass;
  return {
    rider,
    passenger: null,
    behind: null,
    front: weighing.front,
    rear: weighing.rear,
    shocks: count,
    rate: rate.rate,
    ratio: null,
    collarNow: q(10, 'mm'),
    collarMost: q(25, 'mm'),
  };
}

function planOf(job: JobDocument): JobPlan {
  const planned = planJob(read(JSON.stringify(job)));
  if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
  return planned;
}

function read(text: string): JobDocument {
  const answer = readJob(text);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.job;
}
