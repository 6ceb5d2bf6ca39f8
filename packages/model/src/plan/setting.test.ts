import { describe, expect, test } from 'vitest';
import { carrying, choice, linear, rearQuestion } from '../testing/collarQuestion.ts';
import { passenger, rider, tourer } from '../testing/tourer.ts';
import type { AdjusterSI } from './adjuster.ts';
import type { Planned } from './answer.ts';
import { plan } from './plan.ts';
import type { EndQuestion, SpringChoiceSI } from './question.ts';

/** 1.5 mm a turn in quarters, reading down from 60 mm, found at 4 and 4.5 mm. */
const collar: AdjusterSI = {
  kind: 'continuous',
  most: 0.03,
  quantum: 0.000375,
  lead: 0.0015,
  readingAtZero: 0.06,
  sense: -1,
};

function planned(rear: Partial<EndQuestion> = {}, change: Partial<SpringChoiceSI> = {}): Planned {
  const machine = tourer();
  const struts = machine.rear.struts.map((strut) => ({
    ...strut,
    rubber: { start: 0.05, rate: 10_000, hardening: 0 },
    friction: 40,
  }));
  const question = rearQuestion(
    {
      choices: [choice('only', linear(28_000), { freeLength: 0.25, solidLength: 0.14, ...change })],
      adjuster: collar,
      found: [0.004, 0.0045],
      ...rear,
    },
    [carrying('two', [rider, passenger])],
    {},
    { ...machine, rear: { ...machine.rear, struts } },
  );
  const cell = plan(question).rear.springs[0]!.cells[0]!;
  if (cell.kind !== 'planned') throw new Error(cell.kind);
  return cell.cell;
}

describe('at what hands can set', () => {
  const { set, setting, positions } = planned();

  test('preload, spring length and turns follow from the position', () => {
    const position = setting!.position;
    expect(Math.abs(position - positions!.aim.value)).toBeLessThanOrEqual(0.5 * 0.000375);
    expect(set.preload).toBeCloseTo(0.012 + position, 12);
    expect(set.preloadAtExtension).toBeCloseTo(set.preload, 12);
    expect(set.springLength).toBeCloseTo(0.25 - set.preload, 12);
    expect(set.turnsFromZero).toBeCloseTo(position / 0.0015, 12);
    expect(set.turnsFromFound).toEqual([
      expect.closeTo((position - 0.004) / 0.0015, 9),
      expect.closeTo((position - 0.0045) / 0.0015, 9),
    ]);
    expect(setting!.reading).toBeCloseTo(0.06 - position, 12);
  });

  test('a spring that is loose there is as long as it is free', () => {
    const loose = planned({ adjuster: { ...collar, most: 0.001 } }, { preloadAtZero: -0.02 });
    expect(loose.set.preload).toBeCloseTo(-0.019, 12);
    expect(loose.set.springLength).toBe(0.25);
  });

  test('another spring is turned from zero, the fitted one from where it was found', () => {
    // In whole quarters from zero; from the collar as found for the one that is on it.
    expect((setting!.position / 0.000375) % 1).toBeCloseTo(0, 6);
    const fitted = planned({ found: [0.0041, 0.0041] }, { fitted: true }).setting!.position;
    expect((fitted - 0.0041) / 0.000375).toBeCloseTo(Math.round((fitted - 0.0041) / 0.000375), 9);
  });

  test('the sag is off its aim by no more than half a quarter turn', () => {
    // 0.1875 mm at the damper, 1/0.9 of it at the wheel, less what the gas and the other end take.
    expect(Math.abs(set.travel.value - 0.4 * (0.069 / 0.9))).toBeLessThan(0.0001875 / 0.9);
    expect(set.rest!.rear.travel).toBe(set.travel.value);
    expect(set.otherTravel.value).toBe(set.rest!.front.travel);
  });

  test('what is left of the travel is told to the rubber and to the metal', () => {
    expect(set.travelToMetal).toBeCloseTo(0.069 / 0.9 - set.travel.value, 12);
    expect(set.travelToRubber).toBeCloseTo(0.05 / 0.9 - set.travel.value, 12);
  });

  test('what is left of the spring’s stroke is told at full bump with that preload', () => {
    expect(set.strokeToCoilBind).toBeCloseTo(0.25 - 0.14 - 0.069 - set.preload, 12);
  });

  test('sag is a band where there is friction, both of this end and of the other', () => {
    expect(set.band!.least).toBeLessThan(set.travel.value);
    expect(set.band!.most).toBeGreaterThan(set.travel.value);
    expect(set.alone!.band!.least).toBeLessThan(set.alone!.travel.value);
    // No friction in the fork; it moves a little with the rear.
    expect(Math.abs(set.otherBand!.most - set.otherBand!.least)).toBeLessThan(0.001);
  });
});

test('lengths that nobody knows leave what hangs on them unknown', () => {
  const { set } = planned({ found: null }, { freeLength: null, solidLength: null });
  expect([set.springLength, set.strokeToCoilBind, set.turnsFromFound]).toEqual([null, null, null]);
});
