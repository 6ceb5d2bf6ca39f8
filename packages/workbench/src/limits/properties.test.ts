import { readdirSync, readFileSync } from 'node:fs';
import { parseJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inputsOf } from '../inputs/inputs.ts';
import { type JobPlan, planInputs, planJob } from '../path.ts';
import { tourerWith } from '../testing/tourerJob.ts';
import type { LimitRowDocument } from './document.ts';
import { limitRows } from './list.ts';
import { roomsOfLoad } from './room.ts';

const folder = new URL('../../../../examples/', import.meta.url);
const examples = readdirSync(folder).filter((name) => name.endsWith('.json'));

test.each(examples)(
  '%s: any one figure that only a limit goes by left out passes nothing that was not passed',
  (name) => {
    const job = JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as unknown;
    const before = verdicts(job)!;
    for (const path of limitFigures(job)) {
      const after = verdicts(without(job, path)) ?? new Map<string, LimitRowDocument['verdict']>();
      const passed = [...after].filter(([id, verdict]) => verdict === 'within' && before.has(id));
      for (const [id] of passed) expect(before.get(id), `${path.join('.')}: ${id}`).toBe('within');
    }
  },
);

test('the examples together hold every kind of figure that a limit goes by', () => {
  const all = examples.flatMap((name) =>
    limitFigures(JSON.parse(readFileSync(new URL(name, folder), 'utf8'))),
  );
  const kinds = new Set(all.map((path) => path.at(-1)));
  for (const kind of [
    'gross',
    'topSpeed',
    'limit',
    'loadIndex',
    'placardPressure',
    'mostPressure',
    'speedSymbol',
    'at',
  ])
    expect(kinds).toContain(kind);
});

test('more on a place never leaves more of any limit that its load was nearest to', () => {
  const at = (kilograms: number): ReadonlyMap<string, LimitRowDocument> =>
    rowsOf(plan(tourerWith(['things.packed.mass', { value: kilograms, unit: 'kg' }])));
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 60, noNaN: true }),
      fc.double({ min: 0.5, max: 40, noNaN: true }),
      (kilograms, more) => {
        const [less, heavier] = [at(kilograms), at(kilograms + more)];
        for (const id of ['gross', 'rear-axle', 'rear-tyre', 'place-cases', 'place-carrier']) {
          const [before, after] = [less.get(id)!, heavier.get(id)!];
          if (before.margin !== null && after.margin !== null)
            expect(after.margin.value, id).toBeLessThanOrEqual(before.margin.value + 1e-9);
          if (before.verdict === 'over') expect(after.verdict, id).toBe('over');
        }
      },
    ),
    { seed: 51, numRuns: 12 },
  );
});

test('the order in which things were put on a place changes nothing', () => {
  fc.assert(
    fc.property(arbitraryJob, (job) => {
      const turned = {
        ...job,
        loadCases: Object.fromEntries(
          Object.entries(job.loadCases).map(([id, load]) => [
            id,
            'aboard' in load
              ? { ...load, aboard: Object.fromEntries(Object.entries(load.aboard).reverse()) }
              : load,
          ]),
        ),
      };
      const [planned, again] = [planJob(job), planJob(turned)];
      if (!planned.ok || !again.ok) return;
      const [before, after] = [rowsOf(planned), rowsOf(again)];
      for (const [id, { margin, loadCase }] of before) {
        const other = after.get(id)!;
        if (margin === null) expect(other.margin).toBeNull();
        else if (other.loadCase === loadCase) expect(other.margin!.value).toBeCloseTo(margin.value, 6);
      }
    }),
    { seed: 52, numRuns: 12 },
  );
});

test('a thing in the box loads the carrier that it stands on too, kilogram for kilogram', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 30, noNaN: true }), (kilograms) => {
      const planned = plan(tourerWith(['things.box.mass', { value: kilograms, unit: 'kg' }]));
      const carrier = rowsOf(planned).get('place-carrier')!;
      expect(carrier.found?.value).toBeCloseTo(kilograms, 9);
      expect(carrier.margin?.value).toBeCloseTo(18 - kilograms, 9);
    }),
    { seed: 53, numRuns: 8 },
  );
});

test('what fills a room exactly uses up the limit that it names, and breaks none that is known', () => {
  const job = tourerWith();
  const rooms = Object.keys(job.loadCases).flatMap((load) => roomsOfLoad(plan(job), load));
  const filled = rooms.filter(({ by, mass }) => by !== null && by.kind !== 'tips' && mass!.value > 0.5);
  expect(new Set(filled.map(({ by }) => by!.kind)).size).toBeGreaterThan(1);
  for (const { loadCase, place, mass, by } of filled) {
    const planned = plan(
      tourerWith(
        [
          'things.filler',
          { name: 'filler', order: 9, kind: 'item', mass: { value: mass!.value, unit: 'kg' } },
        ],
        [`loadCases.${loadCase}.aboard.z`, { thing: 'filler', place }],
      ),
    );
    const { limits } = planned.plan.loadCases.find((each) => each.loadCase === loadCase)!;
    const used = limits.find(({ of }) => JSON.stringify(of) === JSON.stringify(by))!;
    // The room is found to 1e-7 kg, and a wheel bears no more than what is put on with the lever of its place.
    expect(used.load - used.allowed!, `${loadCase} ${place}`).toBeCloseTo(0, 5);
    for (const { of, load, allowed } of limits)
      if (allowed !== null) expect(load - allowed, `${loadCase} ${place} ${of.kind}`).toBeLessThan(1e-5);
  }
});

function plan(job: JobDocument): JobPlan {
  const planned = planJob(job);
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join('\n'));
  return planned;
}

function rowsOf(planned: JobPlan): ReadonlyMap<string, LimitRowDocument> {
  return new Map(limitRows(planned).map(({ told }) => [told.id, told]));
}

/** How each limit stands with the springs that are fitted, which is all that limits need; null where the job cannot be read. */
function verdicts(data: unknown): ReadonlyMap<string, LimitRowDocument['verdict']> | null {
  const read = parseJob(data);
  if (!read.ok) return null;
  const taken = inputsOf(read.job);
  if (!taken.ok) return null;
  const { question } = taken.inputs;
  const fitted = (end: typeof question.rear): typeof question.rear => ({
    ...end,
    choices: end.choices.filter(({ fitted }) => fitted),
  });
  const asFound = { ...question, rear: fitted(question.rear), front: fitted(question.front), choice: {} };
  const planned = planInputs(read.job, { ...taken.inputs, question: asFound });
  return new Map([...rowsOf(planned)].map(([id, { verdict }]) => [id, verdict]));
}

/** Every figure, word and row of a job that only a limit goes by and that may be left out. */
function limitFigures(job: unknown): readonly (readonly string[])[] {
  const limit =
    /^machine\.(?:limits\.\w+|places\.[\w-]+\.limit|(?:rear|front)\.tyre\.(?:capacity|loadIndex|speedSymbol|pressure|placardPressure|mostPressure|byPressure|state)|clearances\.[\w-]+|clearances\.[\w-]+\.readings\.\d+|knobs\.[\w-]+\.(?:at|base)|rear\.shock\.lengthAdjuster\.(?:least|most|thread|mark)|points\.[\w-]+\.sideways)$|^springs\.[\w-]+\.solidLength$/;
  return pathsIn(job).filter((path) => limit.test(path.join('.')));
}

function pathsIn(value: unknown, at: readonly string[] = []): readonly (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, inner]) => [[...at, name], ...pathsIn(inner, [...at, name])]);
}

function without(job: unknown, path: readonly string[]): unknown {
  const copy = structuredClone(job) as Record<string, unknown>;
  const holder = path.slice(0, -1).reduce<unknown>((at, name) => (at as Record<string, unknown>)[name], copy);
  const last = path.at(-1)!;
  if (Array.isArray(holder)) holder.splice(Number(last), 1);
  else delete (holder as Record<string, unknown>)[last];
  return copy;
}
