import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseJob } from '../read.ts';
import { parseTemplate, readTemplate } from '../readTemplate.ts';
import { type Template, type TemplateKind, templateKinds } from '../schema/template.ts';
import type { JobDocument } from '../schema.ts';
import { arbitraryJob } from '../testing/arbitraryJob.ts';
import { leastJobWith } from '../testing/leastJob.ts';
import { writeTemplate } from '../writeTemplate.ts';
import { jobAround } from './around.ts';
import { keepTemplate } from './keep.ts';

const preload = { rear: { value: 10, unit: 'mm' }, front: { value: 20, unit: 'mm' } } as const;

const q = (value: number, unit: string, origin?: string) => ({ value, unit, ...(origin && { origin }) });

function jobWith(...changes: Parameters<typeof leastJobWith>): JobDocument {
  const read = parseJob(leastJobWith(...changes));
  if (!read.ok) throw new Error(read.problems[0]!.message);
  return read.job;
}

function kept(job: JobDocument, kind: TemplateKind) {
  const result = keepTemplate(job, kind, 'a pattern');
  if (!result.ok) throw new Error(result.problems[0]!.message);
  return result;
}

/** Kinds of which this job has one to keep. */
const kindsIn = (job: JobDocument): readonly TemplateKind[] =>
  templateKinds.filter((kind) => keepTemplate(job, kind, 'a pattern').ok);

function refusal(value: unknown): string[] {
  const result = typeof value === 'string' ? readTemplate(value) : parseTemplate(value);
  return result.ok ? [] : result.problems.map(({ path, code }) => `${path}: ${code}`);
}

describe('A template', () => {
  test('taken out of any job is read back as it was written', () => {
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        for (const kind of kindsIn(job)) {
          const { template } = kept(job, kind);
          expect(readTemplate(writeTemplate(template))).toEqual({ ok: true, template });
        }
      }),
      { seed: 81, numRuns: 100 },
    );
  });

  test('taken out of the job that was made of it is the same', () => {
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        for (const kind of kindsIn(job)) {
          const { template } = kept(job, kind);
          const made = parseJob(jobAround(template, preload));
          if (!made.ok) throw new Error(made.problems[0]!.message);
          expect(kept(made.job, kind).template).toEqual(template);
        }
      }),
      { seed: 82, numRuns: 100 },
    );
  });

  test('holds nobody: no rider, no load, no note and no name of a job', () => {
    const job = jobWith(
      ['name', 'Secret name of an owner'],
      ['note', 'her knee hurts'],
      ['things', { rider: { name: 'Alix', order: 1, kind: 'person', mass: q(80, 'kg') } }],
    );
    const { template, leftOut } = kept(job, 'machine');
    expect(JSON.stringify(template)).not.toMatch(/Secret|knee|Alix/);
    expect(leftOut).toContainEqual({ path: 'things', because: 'who rides' });
    expect(leftOut).toContainEqual({ path: 'note', because: 'who rides' });
  });

  test('keeps the springs that are in it, without the shelf they lay on, and no other', () => {
    const spare = { name: 'spare', order: 2, end: 'rear', rate: { kind: 'linear', rate: q(70, 'N/mm') } };
    const job = jobWith(['springs.b', spare], ['springs.a.where', 'shelf D']);
    const { template, leftOut } = kept(job, 'shock');
    expect(Object.keys(template.springs)).toEqual(['a']);
    expect(template.springs.a).not.toHaveProperty('where');
    expect(template.fitted).toEqual({ rear: { single: 'a' } });
    expect(leftOut.map(({ path }) => path)).toEqual(['setups.asFound.rear', 'springs.b', 'springs.a.where']);
  });

  test('leaves out what somebody must read on the machine that is ridden, and says so', () => {
    const gap = { name: 'guard', order: 1, end: 'rear', kind: 'tyre and guard' };
    const job = jobWith(
      ['machine.clearances', { guard: { ...gap, readings: [{ travel: q(60, 'mm'), gap: q(20, 'mm') }] } }],
      ['machine.rear.tyre', { state: 'sound', pressure: q(2.5, 'bar'), placardPressure: q(2.8, 'bar') }],
      [
        'machine.rear.shock.lengthAdjuster',
        { change: q(2, 'mm'), most: q(8, 'mm'), thread: { diameter: q(12, 'mm'), engaged: q(16, 'mm') } },
      ],
    );
    const { template, leftOut } = kept(job, 'machine');
    const { rear, ...machine } = (template as Extract<Template, { kind: 'machine' }>).machine;
    expect(machine).not.toHaveProperty('clearances');
    expect(rear.tyre).toEqual({ placardPressure: q(2.8, 'bar') });
    expect(rear.shock.lengthAdjuster).toEqual({ change: q(2, 'mm'), most: q(8, 'mm') });
    expect(leftOut.filter(({ because }) => because === 'read it there').map(({ path }) => path)).toEqual([
      'machine.clearances',
      'machine.rear.shock.lengthAdjuster.thread',
      'machine.rear.tyre.state',
    ]);
  });

  test('keeps a plate and a weighing as told, since the next machine has its own', () => {
    const weighed = { value: 201, unit: 'kg', plusMinus: q(1, 'kg'), origin: 'own scale' };
    const job = jobWith(
      ['machine.weighing.rear', weighed],
      ['machine.limits', { gross: q(590, 'kg', 'plate'), rearAxle: q(380, 'kg', 'manual') }],
    );
    const { template, told } = kept(job, 'machine');
    const { weighing, limits } = (template as Extract<Template, { kind: 'machine' }>).machine;
    expect(weighing.rear).toEqual(q(201, 'kg', 'told'));
    expect(limits).toEqual({ gross: q(590, 'kg', 'told'), rearAxle: q(380, 'kg', 'manual') });
    expect([...told].sort()).toEqual([
      'machine.limits.gross',
      'machine.weighing.front',
      'machine.weighing.rear',
    ]);
  });

  test('of a shock keeps its eyes and the tools on it, and no bolt, sleeve, torque or step of one machine', () => {
    const mount = { bush: 'rubber', bore: q(12, 'mm'), bolt: q(11, 'mm') };
    const sleeve = { inner: q(11.1, 'mm'), outer: q(11.9, 'mm'), length: q(22, 'mm') };
    const tool = (on: string) => ({ order: 1, on, kind: 'spanner', size: q(17, 'mm') });
    const job = jobWith([
      'fitting.rear',
      {
        top: { ...mount, sleeve },
        tools: { a: tool('topBolt'), b: tool('lockNut') },
        torques: { topBolt: { value: q(40, 'N·m'), page: 'p. 3', readBy: 'Alix' } },
        done: { found: { by: 'Alix' } },
      },
    ]);
    const { template, leftOut } = kept(job, 'shock');
    expect(template).toHaveProperty('fitting', {
      rear: { top: { bush: 'rubber', bore: q(12, 'mm') }, tools: { b: tool('lockNut') } },
    });
    expect(leftOut).toContainEqual({ path: 'fitting', because: 'around it' });
    expect(kept(job, 'machine').template).not.toHaveProperty('fitting');
  });

  test('of a fork is not to be had where the front is none, or where nothing is told of it', () => {
    const travel = { kind: 'leverage', ratio: q(1.2, 'wheel/shock') };
    const front = { name: 'f', order: 2, end: 'front', rate: { kind: 'linear', rate: q(30, 'N/mm') } };
    const arm = jobWith(
      ['machine.front', { travel, fork: { stroke: q(60, 'mm') } }],
      ['springs.f', front],
      ['setups.asFound.front', { both: { spring: 'f', at: { preload: q(5, 'mm') } } }],
    );
    const code = (job: JobDocument) => {
      const result = keepTemplate(job, 'fork', 'a pattern');
      return result.ok ? null : result.problems[0]!.code;
    };
    expect(code(arm)).toBe('noForkHere');
    expect(code(jobWith())).toBe('nothingToKeep');
  });
});

describe('A template file', () => {
  const least = kept(jobWith(), 'shock').template;

  test('that is no JSON, or nothing of ours, is refused as a job is', () => {
    expect(refusal('{ format: 1 }')).toEqual([': notJson']);
    expect(refusal('')).toEqual([': notJson']);
    expect(refusal('[1]')).toEqual([': notATemplate']);
    expect(refusal(leastJobWith())).toEqual(['format: notATemplate']);
    expect(refusal({ ...least, version: 2 })).toEqual(['version: newerVersion']);
    expect(refusal({ ...least, version: '1' })).toEqual(['version: wrongVersion']);
    expect(refusal({ ...least, kind: 'engine' })).toEqual(['kind: wrongWord']);
    expect(refusal(JSON.stringify(least).replace('"a":', '"a": 1, "a":'))).toEqual(['springs.a: nameTwice']);
  });

  test('is judged by the rules of the job, at the same places', () => {
    const shock = { count: 1, stroke: q(400, 'mm'), length: q(300, 'mm'), adjuster: { kind: 'none' } };
    expect(refusal({ ...least, machine: { rear: { shock } } })).toEqual([
      'machine.rear.shock.stroke: notBelow',
    ]);
    expect(refusal({ ...least, machine: { rear: { shock: { ...shock, stroke: q(70, 'm') } } } })).toEqual([
      'machine.rear.shock.stroke.value: outOfBounds',
    ]);
    expect(refusal({ ...least, machine: { rear: { shock: { count: 1 } } } })).toEqual([
      'machine.rear.shock.adjuster: missing',
    ]);
  });

  test('tells of springs that are not there by the place where it names them', () => {
    const result = parseTemplate({ ...least, fitted: { rear: { single: 'b' } } });
    if (result.ok) throw new Error('read without a problem');
    expect(result.problems.map(({ path, code }) => `${path}: ${code}`)).toEqual([
      'fitted.rear.single: noSuch',
    ]);
    expect(result.problems[0]!.message).toMatch(/^Fitted, rear, single: found "b", but no such spring/);
    expect(refusal({ ...least, fitted: { rear: { both: 'a' } } })).toEqual(['fitted.rear: sidesOfOneShock']);
  });

  test('of any text is read or refused, and never fails otherwise', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.json()), (text) => {
        const result = readTemplate(text);
        expect(result.ok || result.problems.length > 0).toBe(true);
      }),
      { seed: 83, numRuns: 500 },
    );
  });

  test('with any JSON value in any field of it is read or refused', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('machine', 'springs', 'fitted', 'name', 'kind'),
        fc.jsonValue(),
        (field, value) => {
          const result = parseTemplate({ ...least, [field]: value });
          expect(result.ok || result.problems.every(({ message }) => !/undefined|NaN/.test(message))).toBe(
            true,
          );
        },
      ),
      { seed: 84, numRuns: 300 },
    );
  });
});
