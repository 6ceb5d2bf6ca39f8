import { describe, expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { planJob } from '../path.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';
import { why } from '../why/why.ts';
import { rateDocument } from './rate.ts';
import { rateSentences, workedOutRate } from './words.ts';

const q = (value: number, unit: string, plusMinus?: number) => ({
  value,
  unit,
  ...(plusMinus === undefined ? {} : { plusMinus: { value: plusMinus, unit } }),
});

/** 9 mm wire on 60 mm, 9.5 coils of which 7.5 give: 79 500 · 9⁴/(8 · 60³ · 7.5) = 40.25 N/mm. */
const coil = {
  kind: 'coil',
  wire: q(9, 'mm', 0),
  mean: q(60, 'mm', 0),
  coils: 9.5,
  ends: 'closed ground',
  material: 'oil hardened',
};
const RATE = (79_500 * 9 ** 4) / (8 * 60 ** 3 * 7.5);

function planOf(rate: object, ...changes: readonly Change[]): JobPlan {
  const planned = planJob(tourerWith(['springs.c3.rate', rate], ...changes));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join(' '));
  return planned;
}

const springIn = (planned: JobPlan) => planned.plan.rear.springs.find(({ spring }) => spring === 'c3')!;
const told = (planned: JobPlan) => rateDocument(planned, springIn(planned));
const sentences = (planned: JobPlan): string =>
  rateSentences(planned, springIn(planned), unitsFor('metric', planned.job, '.')).join(' ');

describe('A rate that is worked out from a coil', () => {
  test('has the ± of its material, and of a quarter turn at each end', () => {
    const planned = planOf(coil);
    expect(springIn(planned).rate / 1000).toBeCloseTo(RATE, 9);
    // Tables of shear modulus: 3 %; √2 quarter turns of 7.5: 4.7 %.
    const share = Math.hypot(0.03, (0.25 * Math.SQRT2) / 7.5);
    expect(told(planned).plusMinus! / 1000 / RATE).toBeCloseTo(share, 6);
    expect(told(planned).by).toBe('coil');
  });

  test('takes a ± typed on its coils instead', () => {
    const share = Math.hypot(0.03, 0.1 / 7.5);
    expect(told(planOf({ ...coil, coilsPlusMinus: 0.1 })).plusMinus! / 1000 / RATE).toBeCloseTo(share, 6);
  });

  test('moves four times as much as its wire, three times as its diameter', () => {
    const share = Math.hypot((4 * 0.09) / 9, (3 * 0.6) / 60, 0.03, 0.1 / 7.5);
    const planned = planOf({
      ...coil,
      wire: q(9, 'mm', 0.09),
      mean: q(60, 'mm', 0.6),
      coilsPlusMinus: 0.1,
    });
    expect(told(planned).plusMinus! / 1000 / RATE).toBeCloseTo(share, 4);
    const opened = why(planned, { figure: 'spring-rate', end: 'rear', spring: 'c3', loadCase: null });
    if (opened.kind !== 'opened') throw new Error('it opens');
    expect(opened.value.plusMinus!).toBeCloseTo(told(planned).plusMinus!, 6);
    expect(opened.contributions[0]!.input).toBe('springs.c3.rate.wire');
    expect(opened.contributions.map(({ share: part }) => part).reduce((a, b) => a + b)).toBeCloseTo(1, 9);
  });

  test('carries a mark and its ± wherever it is told; a marked one does not', () => {
    const planned = planOf(coil);
    const units = unitsFor('metric', planned.job, '.');
    expect(workedOutRate(planned, springIn(planned), units)).toMatch(/^40\.\d* ± \d.* by its coil$/);
    const marked = planned.plan.rear.springs.find(({ spring }) => spring === 'c1')!;
    expect(workedOutRate(planned, marked, units)).toBeNull();
  });
});

describe('A rate marked on a coil that was measured too', () => {
  const marked = (value: number, counts?: string) =>
    planOf({ ...coil, marked: q(value, 'N/mm', 1), ...(counts && { counts }) });

  test('agrees where both differ by less than their ± together, and the smaller ± is trusted', () => {
    const { marked: both } = told(marked(39));
    expect(both!.difference.value / 1000).toBeCloseTo(RATE - 39, 9);
    expect(both!.difference.plusMinus!).toBeCloseTo(
      Math.hypot(both!.coil.plusMinus!, both!.marked.plusMinus!),
      9,
    );
    expect(both).toMatchObject({ verdict: 'agrees', trust: 'marked', counts: 'coil' });
    expect(sentences(marked(39))).toContain('they agree');
  });

  test('disagrees where they lie further apart: then neither is trusted, and it is to be tested', () => {
    expect(told(marked(34)).marked).toMatchObject({ verdict: 'differs', trust: 'neither' });
    expect(sentences(marked(34))).toContain('Trust neither: test it');
  });

  test('goes into the sum where it is said to count', () => {
    expect(springIn(marked(39, 'marked')).rate).toBeCloseTo(39_000, 6);
    expect(told(marked(39, 'marked'))).toMatchObject({ by: 'marked', marked: { counts: 'marked' } });
    expect(told(marked(39, 'marked')).plusMinus!).toBeCloseTo(1000, 6);
    expect(springIn(marked(39)).rate / 1000).toBeCloseTo(RATE, 9);
  });
});

describe('A spring wound with two pitches', () => {
  // One coil: 555.02 N/mm. 4 coils 5 mm apart, 5 coils 12 mm apart, of 11 mm wire on 64 mm: winding.test.ts of the model.
  const wound = {
    kind: 'wound',
    wire: q(11, 'mm', 0),
    mean: q(64, 'mm', 0),
    ends: 'closed ground',
    material: 'oil hardened',
    sections: {
      wide: { order: 2, coils: 5, length: q(115, 'mm', 0) },
      tight: { order: 1, coils: 4, pitch: q(16, 'mm', 0) },
    },
  };
  const lengths: readonly Change[] = [
    ['springs.c3.freeLength', undefined],
    ['springs.c3.solidLength', undefined],
  ];
  const single = (79_500 * 11 ** 4) / (8 * 64 ** 3);

  test('tells the stages in which it closes, with their ±', () => {
    const { by, stages } = told(planOf(wound, ...lengths));
    expect(by).toBe('winding');
    expect(stages).toHaveLength(2);
    expect(stages[0]!.rate.value / 1000).toBeCloseTo(single / 9, 6);
    expect(stages[0]!.to.value * 1000).toBeCloseTo(45, 9);
    expect(stages[1]!.rate.value / 1000).toBeCloseTo(single / 5, 6);
    expect(stages[1]!.to.value * 1000).toBeCloseTo(80, 9);
    expect(stages[1]!.force.value).toBeCloseTo(12 * single, 3);
    // A quarter turn at the outer end of each section, 3 % of the material: of nine coils, of five.
    expect(stages[0]!.rate.plusMinus! / stages[0]!.rate.value).toBeCloseTo(
      Math.hypot(0.03, (0.25 * Math.SQRT2) / 9),
      5,
    );
    expect(stages[1]!.rate.plusMinus! / stages[1]!.rate.value).toBeCloseTo(Math.hypot(0.03, 0.25 / 5), 5);
    expect(stages[1]!.force.plusMinus! / stages[1]!.force.value).toBeCloseTo(0.03, 6);
  });

  test('has free and solid length from its pitches, its ends and its wire', () => {
    const planned = planOf(wound, ...lengths);
    const choice = planned.inputs.question.rear.choices.find(({ id }) => id === 'c3')!;
    // Shigley, table 10-1, closed and ground: p Na + 2 d, and d Nt of eleven coils.
    expect(choice.freeLength! * 1000).toBeCloseTo(4 * 16 + 115 + 2 * 11, 9);
    expect(choice.solidLength! * 1000).toBeCloseTo(11 * 11, 9);
    // What is between them is what it can be pressed by.
    expect((choice.freeLength! - choice.solidLength!) * 1000).toBeCloseTo(80, 9);
  });

  test('carries the ± of its wire into the room before its coils touch', () => {
    const doubtful = {
      ...wound,
      wire: q(11, 'mm', 0.1),
      sections: { ...wound.sections, wide: { order: 2, coils: 5, length: q(115, 'mm', 1) } },
    };
    const planned = planOf(doubtful, ...lengths);
    const opened = why(planned, { figure: 'coil-bind', end: 'rear', spring: 'c3', loadCase: null });
    if (opened.kind !== 'opened') throw new Error('it opens');
    // Where the installed length was read, room = that − solid − stroke − position: the free length cancels, eleven wires stay.
    const part = (input: string) => opened.contributions.find((each) => each.input === input);
    expect(part('springs.c3.rate.sections.wide.length')).toBeUndefined();
    expect(part('springs.c3.rate.wire')!.halfWidth * 1000).toBeCloseTo(11 * 0.1, 6);
  });

  test('is told in words, stage by stage', () => {
    expect(sentences(planOf(wound, ...lengths))).toMatch(
      /worked out from its winding: 6\d.* until .*; then 1\d\d.* until all coils touch/,
    );
  });

  test('of thicker wire never lets the machine sink deeper', () => {
    const sag = (wire: number): number => {
      const planned = planOf({ ...wound, wire: q(wire, 'mm', 0) }, ...lengths, [
        'setups.asFound.rear',
        { both: { spring: 'c3', at: { reading: q(14, 'mm'), preload: q(10, 'mm') } } },
      ]);
      return planned.plan.loadCases.at(-1)!.asFound.travel!.rear.value;
    };
    const sags = [8, 9, 10, 11, 12].map(sag);
    for (let i = 1; i < sags.length; i += 1) expect(sags[i]!).toBeLessThanOrEqual(sags[i - 1]! + 1e-9);
  });
});
