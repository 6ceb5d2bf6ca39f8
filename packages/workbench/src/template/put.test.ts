import { parseJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import type { TemplateOf } from '@sagwright/records/schema/template';
import { keepTemplate } from '@sagwright/records/template/keep';
import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planJob } from '../path.ts';
import { resultJson } from '../result/result.ts';
import { tourerWith } from '../testing/tourerJob.ts';
import { jobFrom } from './begin.ts';
import { put } from './put.ts';

const q = (value: number, unit: string) => ({ value, unit });

function kept<K extends 'machine' | 'shock' | 'fork'>(
  job: JobDocument,
  kind: K,
  name = 'kept',
): TemplateOf<K> {
  const result = keepTemplate(job, kind, name);
  if (!result.ok) throw new Error(result.problems[0]!.message);
  return result.template as TemplateOf<K>;
}

function putInto(template: TemplateOf<'shock' | 'fork'>, job: JobDocument) {
  const result = put(template, job);
  if (!result.ok) throw new Error(result.problems[0]!.message);
  return result;
}

const otherShock = () =>
  kept(
    tourerWith(
      ['machine.rear.shock.stroke', q(75, 'mm')],
      ['machine.rear.shock.length', q(345, 'mm')],
      ['springs.fitted.rate.rate', q(30, 'N/mm')],
    ),
    'shock',
  );

describe('A shock or a fork', () => {
  test('taken out of a job and put into the same job changes nothing, the plan included', () => {
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        for (const kind of ['shock', 'fork'] as const) {
          const result = keepTemplate(job, kind, 'kept');
          if (!result.ok) continue;
          const back = putInto(result.template as TemplateOf<'shock' | 'fork'>, job);
          expect(back).toMatchObject({ same: true, dropped: [], readAgain: [] });
          expect(back.job).toBe(job);
        }
      }),
      { seed: 95, numRuns: 100 },
    );
  });

  test('put into any job makes a whole job, or says where it does not fit', () => {
    fc.assert(
      fc.property(arbitraryJob, arbitraryJob, (one, other) => {
        for (const kind of ['shock', 'fork'] as const) {
          const result = keepTemplate(one, kind, 'kept');
          if (!result.ok) continue;
          const there = put(result.template as TemplateOf<'shock' | 'fork'>, other);
          if (there.ok) expect(parseJob(there.job)).toMatchObject({ ok: true });
          else expect(there.problems.every(({ path }) => path !== '')).toBe(true);
        }
      }),
      { seed: 96, numRuns: 100 },
    );
  });

  test('of another machine drops what was read of the one before, and says so', () => {
    const job = tourerWith(
      ['choice', { rear: 'c2', shockLength: q(4, 'mm'), clampHeight: q(2, 'mm') }],
      ['machine.rear.shock.adjuster.touches', q(9, 'mm')],
    );
    const { job: made, dropped, readAgain } = putInto(otherShock(), job);
    expect(dropped).toEqual([
      'setups.asFound.rear',
      'choice.rear',
      'choice.shockLength',
      'machine.rear.shock.adjuster.touches',
    ]);
    expect(made.choice).toEqual({ clampHeight: q(2, 'mm') });
    expect(made.machine.rear.shock.adjuster).not.toHaveProperty('touches');
    expect(readAgain).toEqual(['setups.asFound.rear', 'machine.weighing', 'machine.rear.measuredAt']);
    // The usual preload where nobody has read one, with its ±.
    const unread = { spring: 'fitted-2', at: { preload: { ...q(10, 'mm'), plusMinus: q(8, 'mm') } } };
    expect(made.setups.asFound.rear).toEqual({ left: unread, right: unread });
    expect(planJob(made)).toMatchObject({ ok: true });
  });

  test('takes its own eyes and tools along, on the bolts of the machine, and no step of the other one counts as done', () => {
    const tool = (on: string, size: number) => ({ order: 1, on, kind: 'spanner', size: q(size, 'mm') });
    const torque = { value: q(40, 'N·m'), page: 'p. 3', readBy: 'Alix' };
    const job = tourerWith([
      'fitting.rear',
      {
        name: 'the other pair',
        top: { bore: q(14, 'mm'), bolt: q(12, 'mm') },
        tools: { a: tool('topBolt', 17), b: tool('eye', 22) },
        torques: { topBolt: torque, lockNut: torque },
        done: { found: {} },
      },
    ]);
    const eyes = { top: { bore: q(16, 'mm') }, tools: { a: tool('eye', 19) } };
    const { fitting } = kept(tourerWith(['fitting.rear', eyes]), 'shock');
    const made = putInto({ ...otherShock(), ...(fitting && { fitting }) }, job);
    expect(made.job.fitting).toEqual({
      rear: {
        top: { bore: q(16, 'mm'), bolt: q(12, 'mm') },
        tools: { a: tool('topBolt', 17), 'a-2': tool('eye', 19) },
        torques: { topBolt: torque },
      },
    });
    expect(made.dropped).toContain('fitting');
  });

  test('brings its spring along, and loses none that was there', () => {
    const job = tourerWith();
    const { springs } = putInto(otherShock(), job).job;
    for (const [id, spring] of Object.entries(job.springs)) expect(springs[id]).toEqual(spring);
    expect(springs['fitted-2']!.rate).toEqual({ kind: 'linear', rate: q(30, 'N/mm') });
    expect(springs['fitted-2']!.order).toBeGreaterThan(
      Math.max(...Object.values(job.springs).map(({ order }) => order)),
    );
  });

  test('without a spring leaves the one that is there in it', () => {
    const bare = { ...otherShock(), springs: {}, fitted: {} };
    const job = tourerWith();
    expect(putInto(bare, job).job.setups.asFound.rear).toHaveProperty('left.spring', 'fitted');
  });

  test('kept as one of two stays two where the machine has two, and one where it has one, and says it', () => {
    const { machine, fitted, ...shock } = otherShock();
    const single = {
      ...shock,
      fitted: { rear: { single: 'fitted' } },
      machine: { rear: { shock: { ...machine.rear.shock, count: 1 as const } } },
    };
    const { job, count } = putInto(single, tourerWith());
    expect(job.machine.rear.shock.count).toBe(2);
    expect(job.setups.asFound.rear).toHaveProperty('both');
    expect(count).toBe(2);
    expect(putInto({ ...shock, machine, fitted }, tourerWith()).count).toBeNull();
  });

  test('of which the travel as taped cannot be is refused with the place', () => {
    const rows = [0, 30, 60].map((wheel, i) => ({ wheel: q(wheel, 'mm'), shock: q(350 - 27 * i, 'mm') }));
    const job = tourerWith(
      ['machine.rear.shock.length', q(352, 'mm')],
      ['machine.rear.travel', { kind: 'table', rows }],
    );
    const result = put(otherShock(), job);
    expect(result.ok ? [] : result.problems.map(({ path }) => path)).toEqual(['machine.rear.travel.rows']);
  });

  test('of a fork leaves the tubes where the machine has them in their clamps', () => {
    const job = tourerWith(['machine.front.fork.clampHeight', { now: q(12, 'mm') }]);
    const fork = kept(tourerWith(['machine.front.fork.stroke', q(150, 'mm')]), 'fork');
    expect(putInto(fork, job).job.machine.front.fork).toMatchObject({
      stroke: q(150, 'mm'),
      clampHeight: { now: q(12, 'mm') },
    });
  });

  test('of a fork is refused where the front is none', () => {
    const job = tourerWith(
      [
        'machine.front',
        {
          travel: {
            kind: 'force',
            rows: [0, 50, 100].map((wheel) => ({ wheel: q(wheel, 'mm'), force: q(500 + 20 * wheel, 'N') })),
          },
        },
      ],
      ['setups.asFound.front', undefined],
    );
    const result = put(kept(tourerWith(), 'fork'), job);
    expect(result.ok ? [] : result.problems.map(({ path, code }) => `${path}: ${code}`)).toEqual([
      'machine.front.travel: noForkHere',
    ]);
  });
});

describe('A job begun with a machine that was kept', () => {
  test('is a whole job, whatever the machine, and has it to keep again', () => {
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        const template = kept(job, 'machine', 'a pattern');
        const begun = parseJob(jobFrom(template));
        if (!begun.ok) throw new Error(begun.problems[0]!.message);
        expect(kept(begun.job, 'machine', 'a pattern')).toEqual(template);
      }),
      { seed: 97, numRuns: 100 },
    );
  });

  test('can be planned, and its note says what nobody has read yet', () => {
    const job = jobFrom(kept(tourerWith(), 'machine', 'brown tourers'));
    const planned = planJob(job);
    if (!planned.ok) throw new Error(planned.problems[0]!.message);
    expect(job.machine.name).toBe('brown tourers');
    expect(job.note).toContain('preload at the rear 10 ± 8 mm');
    // What is told of a scale has ± 5 kg, whatever the first machine's scale had.
    expect(planned.inputs.figures.get('machine.weighing.rear')).toMatchObject({
      value: 202,
      halfWidth: 5,
      origin: 'told',
    });
    expect(resultJson(planned).limits).toBeDefined();
  });
});
