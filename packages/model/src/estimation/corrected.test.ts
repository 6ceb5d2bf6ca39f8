import { describe, expect, test } from 'vitest';
import { plan } from '../plan/plan.ts';
import type { PlanQuestion, SpringChoiceSI } from '../plan/question.ts';
import { carrying, choice, linear, rearQuestion } from '../testing/collarQuestion.ts';
import { rider, tourer } from '../testing/tourer.ts';
import type { UncertainInput } from '../uncertainty/inputs.ts';
import { halfWidthOf } from '../uncertainty/spread.ts';
import { corrected } from './corrected.ts';
import { type Estimate, mostProbable } from './mostProbable.ts';
import { type Inquiry, inquiryOf, type ReadingSI } from './readings.ts';
import { varianceOf } from './variance.ts';

const both = (figure: string): UncertainInput['moves'] =>
  [0, 1].map((i) => ({ parameter: `rear.struts.${i}.${figure}`, by: 1 }));
const of = (name: string, deviation: number, moves: UncertainInput['moves']): UncertainInput => ({
  name,
  deviation,
  moves,
});

const rate = of('rate', 800, both('spring.rate'));
const free = of('free length', 1e-3, both('preload'));
const left = of('left collar', 3e-4, [{ parameter: 'rear.struts.0.preload', by: 1 }]);
const right = of('right collar', 3e-4, [{ parameter: 'rear.struts.1.preload', by: 1 }]);
const ratio = of('ratio', 0.015, [{ parameter: 'rear.kinematics.motionRatio', by: 1 }]);
const weight = of('rider', 2, [
  { parameter: 'load.mass', by: 1 },
  { parameter: 'load.momentX', by: rider.x },
  { parameter: 'load.momentHeight', by: rider.height },
]);

/** The invented tourer with its spring fitted at 10 mm of collar: 12 mm preloaded at the loosest, 22 as it stands. */
function question(): PlanQuestion {
  const fitted: SpringChoiceSI = choice('fitted', linear(26_000), { fitted: true, inputs: [rate, free] });
  return rearQuestion(
    { choices: [fitted, choice('other', linear(30_000))], found: [0.01, 0.01] },
    [carrying('alone', [rider], { inputs: [weight], inputsFullTank: [weight] })],
    { inputs: [rate, free, left, right, ratio] },
    tourer(),
  );
}

const tape = 6e-4;
const length = (came: 'hanging' | 'pressed' | 'lifted'): ReadingSI => ({
  id: came,
  stood: 'alone',
  end: 'rear',
  of: { kind: 'length', mark: 'tail', came },
  evidence: { says: 'is', value: 0, deviation: tape },
});
const asked = [length('hanging'), length('pressed'), length('lifted')];

function inquired(readings: readonly ReadingSI[]): Inquiry {
  const { machine, inputs, loadCases } = question();
  const { load, inputs: own } = loadCases[0]!;
  return inquiryOf([{ id: 'alone', machine: { ...machine, load }, inputs: [...inputs, ...own] }], readings)!;
}

/** Readings of a machine whose inputs are off by so many deviations. */
function read(off: Readonly<Record<string, number>>, sharp = 1): { inquiry: Inquiry; estimate: Estimate } {
  const before = inquired(asked);
  const known = before.inputs.map(({ name }) => off[name] ?? 0);
  const { figures } = before.predict({ known, free: [0.4] })!;
  const inquiry = inquired(
    asked.map((each, i) => ({
      ...each,
      evidence: { says: 'is', value: figures[i]!, deviation: tape * sharp },
    })),
  );
  const answer = mostProbable(
    inquiry.readings.map(({ evidence }) => evidence),
    inquiry.predict,
    inquiry.start,
  );
  if (answer.kind !== 'estimate') throw new Error(answer.kind);
  return { inquiry, estimate: answer.estimate };
}

function collar(asked: PlanQuestion, spring: string): { readonly value: number; readonly plusMinus: number } {
  const cell = plan(asked).rear.springs.find((each) => each.spring === spring)!.cells[0]!;
  if (cell.kind !== 'planned' || cell.cell.positions === null) throw new Error(cell.kind);
  const { value, plusMinus } = cell.cell.positions.aim;
  return { value, plusMinus: plusMinus! };
}

describe('a plan of what readings corrected', () => {
  test('stays where it was when they agree, and its ± narrows, for another spring too', () => {
    const { inquiry, estimate } = read({});
    const after = corrected(question(), inquiry, estimate);
    for (const spring of ['fitted', 'other']) {
      const [before, now] = [collar(question(), spring), collar(after, spring)];
      expect(now.value).toBeCloseTo(before.value, 9);
      expect(now.plusMinus).toBeLessThan(before.plusMinus);
    }
    // Where the sag was read, the fitted spring's collar hangs on little but the tape: 0.6 mm at the wheel twice and the mark.
    expect(collar(after, 'fitted').plusMinus).toBeLessThan(0.5 * collar(question(), 'fitted').plusMinus);
  });

  test.each(['fitted', 'other'])('has the ± that differences of whole plans give (%s spring)', (spring) => {
    const { inquiry, estimate } = read({ rate: 1, ratio: -0.8, rider: 0.5 });
    const at = (known: readonly number[]): number =>
      collar(
        corrected(question(), inquiry, { ...estimate, unknowns: { ...estimate.unknowns, known } }),
        spring,
      ).value;
    const { known } = estimate.unknowns;
    const step = 1e-3;
    const slopes = known.map((_, j) => {
      const beside = (by: number) => at(known.map((u, k) => (k === j ? u + by : u)));
      return (beside(step) - beside(-step)) / (2 * step);
    });
    const expected = halfWidthOf(Math.sqrt(varianceOf(estimate, slopes)));
    const { plusMinus } = collar(corrected(question(), inquiry, estimate), spring);
    // Differences leave step² times a third derivative of about 1.
    expect(plusMinus / expected).toBeCloseTo(1, 4);
  });
});

test('a collar that was misread stands where the readings put it', () => {
  const { inquiry, estimate } = read({ 'left collar': 10 }, 1e-2);
  const after = corrected(question(), inquiry, estimate);
  const [foundLeft, foundRight] = after.rear.found!;
  const { known } = estimate.unknowns;
  const by = (name: string): number => known[inquiry.inputs.findIndex((each) => each.name === name)]!;
  expect(foundLeft! - 0.01).toBeCloseTo(by('left collar') * left.deviation, 12);
  expect(foundRight! - 0.01).toBeCloseTo(by('right collar') * right.deviation, 12);
  // In the plane both sides do the same: what one is off, both share.
  expect(by('left collar')).toBeCloseTo(by('right collar'), 9);
  expect(by('left collar')).toBeGreaterThan(0);
});

test('what no reading sees stays as it was', () => {
  const { inquiry, estimate } = read({ rate: 2 });
  const other = of('seat', 0.01, [{ parameter: 'geometry.seat.height', by: 1 }]);
  const asked = { ...question(), inputs: [...question().inputs, other] };
  const after = corrected(asked, inquiry, estimate);
  expect(after.machine.geometry.seat).toEqual(asked.machine.geometry.seat);
  expect(after.inputs.at(-1)).toEqual(other);
});
