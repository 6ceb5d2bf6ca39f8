import { readFileSync } from 'node:fs';
import { readJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import type { Quantity } from '@sagwright/records/schema/quantity';
import type { Dimension, UnitOf } from '@sagwright/records/units';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { type JobPlan, planJob } from '../path.ts';
import { resultJson } from '../result/result.ts';
import { tourerWith } from '../testing/tourerJob.ts';
import { narrowingWords } from '../words/assumed.ts';
import { collarFault, type FirstEntries } from './entries.ts';
import { firstJob } from './firstJob.ts';
import { usual } from './usual.ts';

function q<D extends Dimension>(value: number, unit: UnitOf<D>): Quantity<D> {
  return { value, unit } as Quantity<D>;
}

const mass = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((value) => q<'mass'>(value, 'kg'));

const millimetres = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((value) => q<'length'>(value, 'mm'));

/** What a technician meets: heavy machines with people and luggage on them. */
const entries: fc.Arbitrary<FirstEntries> = fc
  .record({
    rider: mass(50, 140),
    passenger: fc.option(mass(40, 110)),
    behind: fc.option(mass(2, 40)),
    rear: mass(140, 240),
    shocks: fc.constantFrom(1 as const, 2 as const),
    rate: fc.integer({ min: 18, max: 40 }).map((value) => q<'rate'>(value, 'N/mm')),
    collar: fc.option(fc.record({ now: millimetres(0, 20), most: millimetres(20, 40) })),
  })
  .map(({ collar, ...each }) => ({
    ...each,
    // One shock that moves half as far as each of two: 2 · (2.2 / 1.15)² times the rate for the same at the wheel.
    rate: each.shocks === 1 ? q<'rate'>(7 * each.rate.value, 'N/mm') : each.rate,
    collarNow: collar?.now ?? null,
    collarMost: collar?.most ?? null,
  }));

describe('Eight entries', () => {
  test('make a job that can be read and planned, with every load that they speak of', () => {
    fc.assert(
      fc.property(entries, (given) => {
        const planned = planOf(firstJob(given, 'first'));
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
        ...firstJob(eightOf(job, load), 'forgotten'),
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
      rear: q(210, 'kg'),
      shocks: 2,
      rate: q(24, 'N/mm'),
      collarNow: q(10, 'mm'),
      collarMost: q(25, 'mm'),
    };
    const planned = planOf(firstJob(given, 'first'));
    const said = narrowingWords(planned, 'rear', unitsFor('metric', planned.job, '.'));
    expect(said).toMatch(/^Worth reading first: ratio of wheel to shock\./);
  });
});

describe('What eight entries do not tell', () => {
  const entries: FirstEntries = {
    rider: q(98, 'kg'),
    passenger: q(152, 'lb'),
    behind: null,
    rear: q(463, 'lb'),
    shocks: 1,
    rate: q(140, 'N/mm'),
    collarNow: null,
    collarMost: null,
  };

  test('is told in the note of the job, each with its ± and its reason', () => {
    const { note, machine } = firstJob(entries, 'first');
    // 0.85 of 463 lb.
    expect(machine.weighing.front).toEqual({
      value: 394,
      unit: 'lb',
      plusMinus: { value: 14, unit: '%' },
      origin: 'usual',
    });
    for (const said of ['2.2 ± 0.5', usual.ratio[1].why, '0.85 ± 14 %', usual.frontOfRear.why]) {
      expect(note).toContain(said);
    }
    expect(note).toContain('How often each load is ridden was not asked');
    expect(firstJob({ ...entries, passenger: null }, 'first').note).not.toContain('How often');
  });

  test('stands among what is assumed, since nobody has read it on the machine', () => {
    const assumedValues = (job: JobDocument): readonly string[] =>
      resultJson(planOf(job)).assumptions.flatMap(({ path, assumed }) => (assumed === 'value' ? [path] : []));
    const [collarNow, collarMost] = [q<'length'>(0.5, 'in'), q<'length'>(1, 'in')];
    expect(assumedValues(firstJob(entries, 'first'))).toEqual(
      expect.arrayContaining([
        'machine.weighing.front',
        'machine.rear.travel.ratio',
        'setups.asFound.rear.single.at.preload',
      ]),
    );
    expect(assumedValues(firstJob({ ...entries, collarNow, collarMost }, 'first'))).toContain(
      'machine.rear.shock.adjuster.lead',
    );
  });

  test('is the preload of a shock without a collar, the thread of one with it', () => {
    const without = firstJob(entries, 'first');
    expect(without.machine.rear.shock.adjuster).toEqual({ kind: 'none' });
    expect(without.note).toContain(usual.preload.why);
    expect(without.note).not.toContain(usual.lead.why);
    const [collarNow, collarMost] = [q<'length'>(0.5, 'in'), q<'length'>(1, 'in')];
    const collar = firstJob({ ...entries, collarNow, collarMost }, 'first');
    expect(collar.machine.rear.shock.adjuster).toMatchObject({
      least: { value: 0, unit: 'in' },
      most: collarMost,
    });
    expect(collar.note).toContain(usual.lead.why);
    expect(collar.note).not.toContain(usual.preload.why);
  });
});

test('a collar stands between its ends, and has two', () => {
  expect(collarFault(q(12, 'mm'), q(1, 'in'))).toBeNull();
  expect(collarFault(q(25.4, 'mm'), q(1, 'in'))).toBeNull();
  expect(collarFault(q(26, 'mm'), q(1, 'in'))).toBe('beyond its end');
  expect(collarFault(q(0, 'mm'), q(0, 'in'))).toBe('nothing to set');
});

/** Preload that the aim wants of the fitted spring [m], with its ±: the collar's own zero is not asked in three minutes. */
function rearAim(planned: JobPlan, load: string): { readonly value: number; readonly plusMinus: number } {
  const spring = planned.plan.rear.springs.find(({ fitted }) => fitted);
  const cell = spring?.cells.find(({ loadCase }) => loadCase === load);
  if (cell?.kind !== 'planned' || cell.cell.preload === null) throw new Error(`no aim for ${load}`);
  return { value: cell.cell.preload.value, plusMinus: cell.cell.preload.plusMinus ?? 0 };
}

/** The eight entries that a full job holds for its rider alone. */
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
    rear: weighing.rear,
    shocks: count,
    rate: rate.rate,
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
