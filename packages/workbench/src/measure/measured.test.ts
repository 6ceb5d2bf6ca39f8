import { readFileSync } from 'node:fs';
import { inquiryOf } from '@sagwright/model/estimation/readings';
import { seededRandom } from '@sagwright/model/numerics/random';
import type { JobDocument } from '@sagwright/records/schema';
import type { Readings, SagReading } from '@sagwright/records/schema/readings';
import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { takeFrom } from '../inputs/take.ts';
import { type JobPlan, planJob } from '../path.ts';
import { departures, documentedIn } from '../testing/documented.ts';
import { tourerWith } from '../testing/tourerJob.ts';
import { readingsOf } from './asRead.ts';
import type { FaultCode, FoundDocument, MeasuredDocument, SagRead } from './document.ts';
import { isSound, measuredJob } from './measured.ts';
import { stoodFor } from './stood.ts';
import { suspectWords } from './words.ts';

function planned(job: JobDocument): JobPlan {
  const plan = planJob(job);
  if (!plan.ok) throw new Error(plan.problems.map(({ message }) => message).join(', '));
  return plan;
}

const mm = (value: number) => ({ value, unit: 'mm' as const });
const kg = (value: number) => ({ value, unit: 'kg' as const });
const toBeRead = mm(100);

/** Both ends with two loads, hanging once, and the collars turned 15 mm down with the first: figures still to come. */
function asked(): Readings {
  const sags = (['work', 'both'] as const).flatMap((loadCase, i) =>
    (['rear', 'front'] as const).map((end): [string, SagReading] => [
      `${end}-${loadCase}`,
      {
        kind: 'sag',
        order: i,
        loadCase,
        end,
        marks: 'axle to tail',
        ...(i === 0 && { hanging: toBeRead }),
        afterPush: toBeRead,
        afterLift: toBeRead,
      },
    ]),
  );
  const scales = (['work', 'both'] as const).map((loadCase): [string, Readings[string]] => [
    `scales-${loadCase}`,
    { kind: 'scales', order: 5, loadCase, front: kg(100), rear: kg(100) },
  ]);
  const step: SagReading = {
    kind: 'sag',
    order: 9,
    loadCase: 'work',
    end: 'rear',
    marks: 'axle to tail',
    afterPush: toBeRead,
    afterLift: toBeRead,
    adjusters: { left: { reading: mm(29.5) }, right: { reading: mm(30) } },
  };
  return Object.fromEntries([...sags, ...scales, ['step', step]]);
}

/** The readings that a machine of this job gives, with noise of so many of their deviations. */
function readingsFrom(truth: JobDocument, noise = 0, seed = 1): Readings {
  const readings = asked();
  const job = { ...truth, readings };
  const { inputs } = planned(job);
  const desk = { job, take: takeFrom(), tape: null, places: null, problems: [], notes: [] };
  const taken = readingsOf(desk);
  const ways = Object.entries(readings).map(([id, each]) => stoodFor(desk, inputs.question, id, each));
  const stood = [...new Map(ways.map((each) => [each.id, each])).values()];
  const inquiry = inquiryOf(stood, taken)!;
  const { figures } = inquiry.predict({
    known: inquiry.start.known,
    free: inquiry.marks.map(() => 0.42),
  })!;
  const random = seededRandom(seed);
  const filled = structuredClone(readings) as Record<string, Record<string, unknown>>;
  taken.forEach(({ id, of, evidence }, i) => {
    const [reading, field] = id.split('.') as [string, string];
    const value = figures[i]! + noise * evidence.deviation * random.normal();
    filled[reading]![field] = of.kind === 'scale' ? kg(value) : mm(1000 * value);
  });
  return filled as unknown as Readings;
}

function held(readings: Readings, job = tourerWith()): MeasuredDocument {
  return measuredJob(planned({ ...job, readings })).document;
}

/** Readings with one figure set otherwise, by `<reading>.<field>`. */
function withFigure(readings: Readings, id: string, change: (value: number) => number): Readings {
  const [reading, field] = id.split('.') as [string, string];
  const copy = structuredClone(readings) as unknown as Record<string, Record<string, { value: number }>>;
  const figure = copy[reading]![field]!;
  figure.value = change(figure.value);
  return copy as unknown as Readings;
}

function sagOf({ sags }: MeasuredDocument, id: string): SagRead {
  return sags.find((sag) => sag.id === id)!;
}

const sound = readingsFrom(tourerWith());

describe('readings of the very machine', () => {
  const document = held(sound);

  test('show the sag that was expected, and nothing that is off', () => {
    expect(document.sags).toHaveLength(5);
    for (const sag of document.sags) {
      expect(sag.faults).toEqual([]);
      expect(sag.sag!.value).toBeCloseTo(sag.expected!.value, 9);
      expect(sag.expected!.plusMinus).toBeGreaterThan(sag.sag!.plusMinus);
    }
    expect(document.found!.suspect).toBeNull();
    expect(document.found!.misfit).toBeCloseTo(0, 9);
    expect(isSound(document)).toBe(true);
  });

  test('leave every collar where it was, with a narrower ±', () => {
    const { collars } = document.found!;
    expect(collars.map(({ loadCase }) => loadCase)).toContain('both');
    for (const { before, after } of collars) {
      expect(after.value).toBeCloseTo(before.value, 6);
      expect(after.plusMinus).toBeLessThan(before.plusMinus);
    }
  });

  test('are as long after a lift as after a push, but for what friction holds', () => {
    const { band } = sagOf(document, 'rear-work');
    // Two shocks of 35 N: 2·2·35 N·MR over a wheel rate of about 2·k·MR², so 2·35/(k·MR), k 21.9 N/mm, MR 1/1.12; both ends settle together.
    expect(band!.value).toBeGreaterThan(0.7 * (70 / (21_891 / 1.12)));
    expect(band!.value).toBeLessThan(1.1 * (70 / (21_891 / 1.12)));
  });
});

test('a spring that is another than its mark says is named, and its collar goes where the true one would', () => {
  const rate = (share: number) =>
    tourerWith(['springs.fitted.rate.rate', { value: 125 * share, unit: 'lbf/in', origin: 'marked' }]);
  const document = held(readingsFrom(rate(1.25)));
  const { suspect, inputs, collars } = document.found!;
  const named = [suspect!, ...suspect!.alike].map(({ id }) => id);
  expect(named).toContain('springs.fitted.rate.rate');
  // The mark is a quarter of itself less than what is true.
  expect(suspect!.id).toBe('springs.fitted.rate.rate');
  expect(suspect!.off.value).toBeLessThan(0);
  const found = inputs.find(({ path }) => path === 'springs.fitted.rate.rate')!;
  expect(found.after.value).toBeGreaterThan(found.before.value + found.after.plusMinus);
  const truth = held(sound, rate(1.25)).found!.collars;
  for (const { loadCase, end, before, after } of collars) {
    const wanted = truth.find((each) => each.loadCase === loadCase && each.end === end)!.before.value;
    if (end === 'rear')
      expect(Math.abs(after.value - wanted)).toBeLessThan(0.5 * Math.abs(before.value - wanted));
  }
});

test.each(['scales-work.rear', 'scales-both.front', 'scales-both.rear'])(
  "a helper's hand on a scale is named, with what it carried: %s",
  (id) => {
    const { suspect } = held(withFigure(sound, id, (value) => value - 12)).found!;
    expect(suspect!.id).toBe(id);
    expect(Math.abs(suspect!.off.value + 12)).toBeLessThan(suspect!.off.plusMinus);
  },
);

describe('what numbers alone show to be wrong is told', () => {
  const faultsOf = (readings: Readings, id: string) => sagOf(held(readings), id).faults;

  test('inches typed as millimetres', () => {
    const readings = withFigure(sound, 'rear-work.afterLift', (value) => value / 25.4);
    expect(faultsOf(readings, 'rear-work')).toEqual(['unit of another']);
  });

  test('longer after a push than after a lift', () => {
    const readings = withFigure(sound, 'rear-both.afterPush', (value) => value + 8);
    expect(faultsOf(readings, 'rear-both')).toContain('lift below push');
  });

  test('hanging shorter than standing', () => {
    const readings = withFigure(sound, 'rear-work.hanging', (value) => value - 60);
    expect(faultsOf(readings, 'rear-work')).toContain('hangs shorter');
  });

  test('a band that is a bind', () => {
    const readings = withFigure(sound, 'front-work.afterPush', (value) => value - 25);
    expect(faultsOf(readings, 'front-work')).toContain('band too wide');
  });

  test('more sag than there is travel', () => {
    // 69 mm of stroke at 1.12: 77 mm of wheel travel.
    const readings = withFigure(sound, 'rear-work.hanging', (value) => value + 80);
    expect(faultsOf(readings, 'rear-work')).toContain('beyond travel');
  });

  test('one settled reading only, and marks that were never read hanging', () => {
    const { hanging: _, afterLift: __, ...rest } = sound['rear-work'] as SagReading;
    const readings = { once: { ...rest, marks: 'another rail' } };
    expect(faultsOf(readings, 'once')).toEqual(['settled once', 'never hanging']);
  });

  test('two sides that are apart', () => {
    const left = { ...(sound['rear-work'] as SagReading), side: 'left' as const };
    const right = withFigure({ right: { ...left, side: 'right' } }, 'right.hanging', (value) => value + 5);
    const readings = { left, ...right };
    expect(faultsOf(readings, 'left')).toEqual(['sides apart']);
    expect(faultsOf(readings, 'right')).toEqual(['sides apart']);
  });
});

test('collars read again where they were found change nothing but the doubt of that reading', () => {
  const asFound = { left: { reading: mm(14.5) }, right: { reading: mm(15.5) } };
  const again = { ...sound, step: { ...(sound['rear-work'] as SagReading), adjusters: asFound } };
  const document = held(again);
  expect(sagOf(document, 'step').expected!.value).toBeCloseTo(
    sagOf(document, 'rear-work').expected!.value,
    9,
  );
});

test('a job without readings says so', () => {
  expect(measuredJob(planned(tourerWith())).document).toMatchObject({
    sags: [],
    figures: [],
    found: null,
    trouble: 'nothing read',
  });
});

describe('readings and sum do not agree', () => {
  const document = held(sound);
  const found = document.found!;
  const said = (part: Partial<FoundDocument>, sags = document.sags) =>
    suspectWords(tourerWith(), { ...found, ...part }, sags, unitsFor('metric', tourerWith(), '.'));
  const apart = document.sags.map((sag) => ({ ...sag, verdict: 'apart' as const }));

  test('where more is left than chance leaves, though nothing stands out', () => {
    expect(isSound({ ...document, found: { ...found, beyondChance: true } })).toBe(false);
    expect(said({ beyondChance: true, misfit: 60, freedom: 14 }).join(' ')).toMatch(
      /do not agree.*Set nothing/,
    );
  });

  test('where a sag is apart, even if figures of the job off within chance explain it', () => {
    expect(isSound({ ...document, sags: apart })).toBe(false);
    expect(said({}, apart)).toHaveLength(2);
    expect(said({})).toHaveLength(1);
  });

  test('where a reading is at odds with itself, but not where it only settled once', () => {
    const withFault = (fault: FaultCode) => ({
      ...document,
      sags: document.sags.map((sag) => ({ ...sag, faults: [fault] })),
    });
    expect(isSound(withFault('lift below push'))).toBe(false);
    expect(isSound(withFault('settled once'))).toBe(true);
  });
});

test('the document is told as docs/measured-json.md has it', () => {
  const page = readFileSync(new URL('../../../../docs/measured-json.md', import.meta.url), 'utf8');
  const documented = documentedIn(page);
  const seen = new Set<string>();
  const off = withFigure(sound, 'scales-both.rear', (value) => value - 12);
  const fault = withFigure(off, 'rear-both.afterPush', (value) => value + 8);
  // With one load and no scales nothing tells a figure of the rear from another.
  const alone = withFigure({ 'rear-work': sound['rear-work']! }, 'rear-work.hanging', (value) => value + 30);
  for (const readings of [sound, off, fault, alone])
    expect(departures(documented, held(readings), '`document`', 'measured', seen)).toEqual([]);
  const all = [...documented.shapes].flatMap(([shape, fields]) =>
    [...fields.keys()].map((field) => `${shape}.${field}`),
  );
  expect(all.filter((field) => !seen.has(field))).toEqual([]);
});

test('of any job with any readings, every figure is finite, or it is said that none is found', () => {
  fc.assert(
    fc.property(arbitraryJob, (job) => {
      const plan = planJob(job);
      if (!plan.ok) return;
      const { document } = measuredJob(plan);
      expect(JSON.parse(JSON.stringify(document))).toEqual(document);
      expect(document.found === null).toBe(document.trouble !== null);
    }),
    { numRuns: 30 },
  );
});
