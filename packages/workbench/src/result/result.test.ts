import { readFileSync } from 'node:fs';
import type { JobDocument } from '@sagwright/records/schema';
import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type JobPlan, planJob } from '../path.ts';
import { departures, documentedIn } from '../testing/documented.ts';
import { overloadedTourer, tourerThatNothingFits, tourerWith } from '../testing/tourerJob.ts';
import type { PlanDocument, PlannedDocument } from './document.ts';
import { resultJson } from './result.ts';

const page = readFileSync(new URL('../../../../docs/plan-json.md', import.meta.url), 'utf8');
const documented = documentedIn(page);

describe('The plan as JSON', () => {
  test('has the very fields and types that docs/plan-json.md tells, for any job, and all of them turn up', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        const planned = planJob(job);
        if (!planned.ok) return;
        const document = throughText(resultJson(planned));
        expect(departures(documented, document, '`plan`', 'plan', seen)).toEqual([]);
        expect(figuresNotDocumented(document)).toEqual([]);
      }),
      { seed: 5, numRuns: 150 },
    );
    for (const job of [tourerWith(), overloadedTourer(), tourerThatNothingFits(), ...oddTourers()]) {
      const document = throughText(resultJson(plan(job)));
      expect(departures(documented, document, '`plan`', 'plan', seen)).toEqual([]);
    }
    const told = [...documented.shapes].flatMap(([shape, fields]) =>
      [...fields.keys()].map((field) => `${shape}.${field}`),
    );
    // A second rest needs a falling ratio; a search that ends without a rest is not to be had on purpose.
    const rare = /^(?:other rest|standing: no rest|cell: no rest|steady: not found)\./;
    expect(told.filter((each) => !seen.has(each) && !rare.test(each))).toEqual([]);
  });

  test('loses nothing on its way through text', () => {
    const document = resultJson(plan(tourerWith()));
    expect(throughText(document)).toEqual(document);
  });

  test('holds no number that is not finite', () => {
    expect(JSON.stringify(resultJson(plan(tourerWith())))).not.toMatch(/NaN|Infinity/);
  });
});

describe('Turns', () => {
  const document = resultJson(plan(tourerWith()));
  const cells = (id: string): readonly PlannedDocument[] =>
    document.rear.springs
      .find((spring) => spring.id === id)!
      .cells.flatMap((cell) => (cell.kind === 'planned' ? [cell] : []));

  test('from one load to another and back are the same, the other way round', () => {
    for (const from of cells('c2')) {
      for (const { loadCase, turns } of from.set.setting!.fromLoads) {
        const back = cells('c2')
          .find((cell) => cell.loadCase === loadCase)!
          .set.setting!.fromLoads.find((each) => each.loadCase === from.loadCase)!;
        expect(back.turns).toBe(0 - turns!);
      }
    }
  });

  test('times the lead are the difference of the readings', () => {
    const [work, all] = ['work', 'all'].map((id) => cells('c1').find((cell) => cell.loadCase === id)!);
    const turns = all!.set.setting!.fromLoads.find((each) => each.loadCase === 'work')!.turns!;
    const reading = (cell: PlannedDocument): number => (cell.set.setting!.at as { reading: number }).reading;
    // The thread advances 1.5 mm a turn, and this reading grows with preload.
    expect(turns * 0.0015).toBeCloseTo(reading(all!) - reading(work!), 9);
  });

  test('from as found are told for left and right apart where they were found to differ', () => {
    const [work] = cells('fitted');
    const [left, right] = work!.set.setting!.turnsFromFound!;
    expect([left!.strut, right!.strut]).toEqual(['left', 'right']);
    // Found at 14.5 and 15.5 mm on a lead of 1.5 mm: two thirds of a turn apart, to the quarter either way.
    expect(Math.abs(left!.turns - right!.turns - 2 / 3)).toBeLessThanOrEqual(0.25);
  });
});

describe('The adjuster in the terms of the job file', () => {
  const shock = 'machine.rear.shock.adjuster';
  const found = 'setups.asFound.rear';
  const mm = (value: number): object => ({ value, unit: 'mm' });

  test('counts the steps of a cam from 1', () => {
    const job = tourerWith(
      [shock, { kind: 'cam', steps: [0, 4, 8, 12, 16, 20].map(mm), springLength: mm(236) }],
      [found, { both: { spring: 'fitted', at: { step: 2 } } }],
    );
    const settings = settingsOf(resultJson(plan(job)));
    expect(settings.length).toBeGreaterThan(0);
    for (const { at, position } of settings)
      expect(position).toBeCloseTo(0.004 * ((at as { step: number }).step - 1), 9);
  });

  test('counts the dead clicks at the start of a knob', () => {
    const job = tourerWith(
      [shock, { kind: 'clicks', perClick: mm(0.5), count: 43, dead: 3, springLength: mm(236) }],
      [found, { both: { spring: 'fitted', at: { click: 10 } } }],
    );
    const settings = settingsOf(resultJson(plan(job)));
    expect(settings.length).toBeGreaterThan(0);
    for (const { at, position } of settings) {
      const { click } = at as { click: number };
      expect(position).toBeCloseTo(click === 0 ? 0 : 0.0005 * (click - 3), 9);
    }
  });
});

test('What is assumed comes with its effect on the collar, the greatest first', () => {
  const { assumptions } = resultJson(plan(tourerWith()));
  const weights = assumptions.map(({ effect }) => Math.max(effect.rear ?? 0, effect.front ?? 0));
  expect([...weights].sort((a, b) => b - a)).toEqual(weights);
  const tyre = assumptions.find(({ path }) => path === 'machine.rear.tyre.rate')!;
  expect(tyre.assumed).toBe('value');
  const typed = assumptions.find(({ path }) => path === 'machine.rear.travel.ratio')!;
  expect(typed).toMatchObject({ assumed: 'plusMinus', why: null });
  expect(typed.effect.rear).toBeGreaterThan(0);
});

function plan(job: JobDocument): JobPlan {
  const planned = planJob(job);
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join('\n'));
  return planned;
}

/** Jobs whose answers are seldom: a wish beyond the travel, gas that holds the wheel up alone, a load that tips the machine. */
function oddTourers(): readonly JobDocument[] {
  const percent = (value: number): object => ({ value, unit: '%' });
  const wish = { low: percent(80), aim: percent(90), high: percent(100), from: 'stop', along: 'wheel' };
  return [
    tourerWith(['loadCases.work.wanted', { rear: wish }]),
    tourerWith(
      ['machine.rear.shock.gas.shaft.value', 22],
      ['machine.rear.shock.gas.pressure.value', 45],
      ['machine.rear.shock.gas.volume.value', 90],
    ),
    tourerWith(
      [
        'machine.rear.shock.adjuster',
        { kind: 'cam', steps: [0, 45].map((value) => ({ value, unit: 'mm' })) },
      ],
      ['setups.asFound.rear', { both: { spring: 'fitted', at: { step: 1 } } }],
    ),
    tourerWith(['machine.rear.shock.rubber', { assumed: 'long and soft' }]),
    // Air beside the coil is all that sets the rear, and no pressure in its range reaches.
    tourerWith(
      [
        'machine.rear.shock.air',
        {
          diameter: { value: 30, unit: 'mm' },
          volume: { value: 160, unit: 'ml' },
          ...Object.fromEntries(
            [
              ['pressure', 1],
              ['least', 0],
              ['most', 7],
            ].map(([name, value]) => [name, { value, unit: 'bar' }]),
          ),
        },
      ],
      ['machine.rear.shock.adjuster', { kind: 'none' }],
      ['setups.asFound.rear', { both: { spring: 'c3', at: { preload: { value: 6, unit: 'mm' } } } }],
    ),
    tourerWith(['machine.places.box.at.x.value', -1900], ['things.box.mass.value', 300]),
    // Nothing is known that ends the room in a box far behind, but that the machine tips.
    tourerWith(
      ['machine.limits', {}],
      ['machine.places.carrier.limit', undefined],
      ['machine.places.box.at.x.value', -1900],
      ['machine.rear.tyre.capacity', undefined],
      ['machine.rear.tyre.loadIndex', undefined],
    ),
    // More than anybody loads is left of what the plate allows, and nothing else is known.
    tourerWith(
      ['machine.limits', { gross: { value: 1200, unit: 'kg' } }],
      ['machine.places.carrier.limit', undefined],
      ['machine.rear.tyre.capacity', undefined],
      ['machine.front.tyre.capacity', undefined],
    ),
    tourerWith(
      ['machine.weighing.massCentreHeight.value', 800],
      ['steady', { braking: { deceleration: { value: 1.3, unit: 'g' }, frontShare: percent(100) } }],
    ),
  ];
}

function throughText(document: PlanDocument): PlanDocument {
  return JSON.parse(JSON.stringify(document));
}

function settingsOf(document: PlanDocument) {
  return document.rear.springs.flatMap((spring) =>
    spring.cells.flatMap((cell) => (cell.kind === 'planned' && cell.set.setting ? [cell.set.setting] : [])),
  );
}

function figuresNotDocumented(document: PlanDocument): readonly string[] {
  const reasons = [...document.rear.springs, ...document.front.springs].flatMap((spring) => spring.reasons);
  return reasons
    .map(({ code, figures }) => ({ code, names: Object.keys(figures).sort().join(' ') }))
    .filter(({ code, names }) => {
      const sets = documented.reasonFigures.get(code) ?? [];
      return !sets.some((set) => [...set].sort().join(' ') === names);
    })
    .map(({ code, names }) => `${code}: ${names}`);
}
