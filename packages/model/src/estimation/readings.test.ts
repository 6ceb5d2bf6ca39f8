import { describe, expect, test } from 'vitest';
import { tourer } from '../testing/tourer.ts';
import type { UncertainInput } from '../uncertainty/inputs.ts';
import { type Estimate, mostProbable } from './mostProbable.ts';
import { type Inquiry, inquiryOf, type ReadingSI, type ReadOf, type StoodSI } from './readings.ts';

const both = (figure: string): UncertainInput['moves'] =>
  [0, 1].map((i) => ({ parameter: `rear.struts.${i}.${figure}`, by: 1 }));

/** An invented tourer with friction in its shocks, and some of what is uncertain about it. */
function found(): StoodSI {
  const machine = tourer();
  const struts = machine.rear.struts.map((strut) => ({
    ...strut,
    friction: 60,
    topOut: { rate: 300_000, length: 0.004 },
  }));
  return {
    id: 'two aboard',
    machine: {
      ...machine,
      load: { mass: 150, momentX: 60, momentHeight: 150 },
      rear: { ...machine.rear, struts },
    },
    inputs: [
      { name: 'rate', deviation: 800, moves: both('spring.rate') },
      { name: 'friction', deviation: 20, moves: both('friction') },
      { name: 'top-out', deviation: 5000, moves: both('topOut.rate') },
      { name: 'ratio', deviation: 0.015, moves: [{ parameter: 'rear.kinematics.motionRatio', by: 1 }] },
      {
        name: 'rider',
        deviation: 2,
        moves: [
          { parameter: 'load.mass', by: 1 },
          { parameter: 'load.momentX', by: 0.5 },
        ],
      },
    ],
  };
}

/** The same with the collars turned down by 15 mm. */
function stepped(): StoodSI {
  const { machine, inputs } = found();
  const struts = machine.rear.struts.map((strut) => ({ ...strut, preload: strut.preload + 0.015 }));
  return { id: 'collars down', machine: { ...machine, rear: { ...machine.rear, struts } }, inputs };
}

const stood = [found(), stepped()];
const came = (mark: string, way: 'hanging' | 'pressed' | 'lifted'): ReadOf => ({
  kind: 'length',
  mark,
  came: way,
});

function reading(id: string, of: ReadOf, end: 'rear' | 'front' = 'rear', at = 'two aboard'): ReadingSI {
  const deviation = of.kind === 'scale' ? 0.6 : 6e-4;
  return { id, stood: at, end, of, evidence: { says: 'is', value: 0, deviation } };
}

const asked: readonly ReadingSI[] = [
  reading('hangs', came('tail', 'hanging')),
  reading('pressed', came('tail', 'pressed')),
  reading('lifted', came('tail', 'lifted')),
  reading('pressed, collars down', came('tail', 'pressed'), 'rear', 'collars down'),
  reading('lifted, collars down', came('tail', 'lifted'), 'rear', 'collars down'),
  reading('fork hangs', came('slider', 'hanging'), 'front'),
  reading('fork pressed', came('slider', 'pressed'), 'front'),
  reading('rear scale', { kind: 'scale' }),
  reading('front scale', { kind: 'scale' }, 'front'),
];
const tail = 0.412;
const slider = 0.203;

/** The readings that a machine at these unknowns would give, to the last digit. */
function readAt(known: readonly number[], readings = asked): readonly ReadingSI[] {
  const { predict, marks } = inquiryOf(stood, readings)!;
  const { figures } = predict({ known, free: marks.map((mark) => (mark === 'tail' ? tail : slider)) })!;
  return readings.map((each, i) => ({ ...each, evidence: { ...each.evidence, value: figures[i]! } }));
}

function estimated(readings: readonly ReadingSI[], sharp = 1): Estimate & { readonly inquiry: Inquiry } {
  const inquiry = inquiryOf(stood, readings)!;
  const evidence = readings.map(({ evidence: each }) => ({ ...each, deviation: each.deviation * sharp }));
  const answer = mostProbable(evidence, inquiry.predict, inquiry.start);
  if (answer.kind !== 'estimate') throw new Error(answer.kind);
  return { ...answer.estimate, inquiry };
}

const truth = [1.1, -0.7, 0.4, 1.3, -0.9];

describe('what a machine would show', () => {
  const { predict } = inquiryOf(stood, asked)!;
  const free = [tail, slider];

  test('has the slopes of its own differences', () => {
    const step = 1e-3;
    const { byKnown } = predict({ known: truth, free })!;
    for (let j = 0; j < truth.length; j += 1) {
      const beside = (by: number) =>
        predict({ known: truth.map((u, k) => (k === j ? u + by : u)), free })!.figures;
      const [above, below] = [beside(step), beside(-step)];
      for (let i = 0; i < asked.length; i += 1) {
        // Of the row's greatest slope: step² times a third derivative of about 1, and 1e-9 of rounding over the step.
        const most = Math.max(...byKnown[i]!.map(Math.abs));
        expect(Math.abs(byKnown[i]![j]! - (above[i]! - below[i]!) / (2 * step))).toBeLessThanOrEqual(
          3e-6 * most,
        );
      }
    }
  });

  test('is longer by what the wheel stands higher: hanging, lifted, pressed in that order', () => {
    const [hangs, pressed, lifted] = predict({ known: truth, free })!.figures;
    expect(hangs).toBeGreaterThan(lifted!);
    expect(lifted).toBeGreaterThan(pressed!);
    // A top-out spring of 4 mm keeps the wheel short of its stop, by no more than itself at the wheel (ratio 0.9).
    expect(hangs).toBeLessThan(tail);
    expect(hangs).toBeGreaterThan(tail - 0.004 / 0.85);
  });

  test('on its stop shows the stop, and no unknown moves that', () => {
    const heavy: StoodSI = { ...found(), id: 'far too much' };
    const loaded = {
      ...heavy,
      machine: { ...heavy.machine, load: { mass: 900, momentX: 180, momentHeight: 900 } },
    };
    const { predict: predictLoaded } = inquiryOf(
      [loaded],
      [reading('bottomed', came('tail', 'pressed'), 'rear', 'far too much')],
    )!;
    const { figures, byKnown } = predictLoaded({ known: truth, free: [tail] })!;
    // Stroke 69 mm at a ratio of 0.9 + 1.3·0.015.
    expect(figures[0]).toBeCloseTo(tail - 0.069 / (0.9 + 1.3 * 0.015), 9);
    const [rate, friction, topOut, , rider] = byKnown[0]!;
    expect([rate, friction, topOut, rider]).toEqual([0, 0, 0, 0]);
  });
});

describe('the most probable machine', () => {
  test('is the one that was thought, where it reads as that one would', () => {
    const { unknowns, misfit } = estimated(readAt(truth.map(() => 0)));
    for (const u of unknowns.known) expect(u).toBeCloseTo(0, 9);
    expect(misfit).toBeCloseTo(0, 12);
    expect(unknowns.free[0]).toBeCloseTo(tail, 9);
  });

  test('is the true one, but for what was thought before and readings leave open', () => {
    const { unknowns, ties } = estimated(readAt(truth), 1e-3);
    // With perfect readings of a straight model: found = truth − C·truth, C = 1 − KᵀK what is left of the doubt.
    truth.forEach((u, j) => {
      const left = truth.map((_, k) => ties.reduce((sum, row) => sum - row[j]! * row[k]!, j === k ? 1 : 0));
      const pulled = left.reduce((sum, each, k) => sum + each * truth[k]!, 0);
      expect(Math.abs(pulled)).toBeLessThan(0.1);
      expect(unknowns.known[j]).toBeCloseTo(u - pulled, 2);
    });
  });

  test('hangs neither on the order of readings nor on that of machines', () => {
    const readings = readAt(truth).map((each, i) => ({
      ...each,
      evidence: {
        ...each.evidence,
        value: each.evidence.value + (i % 3 === 0 ? 1 : -0.6) * each.evidence.deviation,
      },
    }));
    const one = estimated(readings);
    const other = estimated([...readings].reverse());
    one.unknowns.known.forEach((u, j) => {
      // Steps end at 1e-9 deviations.
      expect(other.unknowns.known[j]).toBeCloseTo(u, 7);
    });
    expect(other.misfit).toBeCloseTo(one.misfit, 8);
  });
});

test('a reading of a machine that is not given is refused', () => {
  expect(() => inquiryOf(stood, [reading('lost', { kind: 'scale' }, 'rear', 'nobody')])).toThrow('nobody');
});

test('a machine that does not stand as it is thought to be has no inquiry', () => {
  const tipping = {
    ...found(),
    machine: { ...found().machine, load: { mass: 900, momentX: -900, momentHeight: 900 } },
  };
  expect(inquiryOf([tipping], [reading('tips', { kind: 'scale' })])).toBeNull();
});
