import { describe, expect, test } from 'vitest';
import { parametersOf } from '../statics/parameters.ts';
import { prepare } from '../statics/prepared.ts';
import { carrying, choice, fineCollar, linear, rearQuestion, shares } from '../testing/collarQuestion.ts';
import { passenger, rider, tourer } from '../testing/tourer.ts';
import { directionsOf, type Move, moveAlong, type UncertainInput } from '../uncertainty/inputs.ts';
import { HALF_WIDTH_90 } from '../uncertainty/spread.ts';
import type { Planned } from './answer.ts';
import { plan } from './plan.ts';
import type { LoadCaseSI, PlanQuestion } from './question.ts';

const both = (end: 'rear' | 'front', figure: string): readonly Move[] =>
  [0, 1].map((i) => ({ parameter: `${end}.struts.${i}.${figure}`, by: 1 }));
const input = (name: string, deviation: number, moves: readonly Move[]): UncertainInput => ({
  name,
  deviation,
  moves,
});

/** Of the machine; of the load; of the candidate spring. One of them, the scale, acts on body and load alike. */
const ofMachine: readonly UncertainInput[] = [
  input('body x', 0.004, [{ parameter: 'sprung.x', by: 1 }]),
  input('scale', 0.7, [{ parameter: 'sprung.mass', by: 1 }]),
  input('gas', 4e4, both('rear', 'gas.pressure')),
  input('fork rate', 300, both('front', 'spring.rate')),
  input('motion ratio', 0.008, [{ parameter: 'rear.kinematics.motionRatio', by: 1 }]),
  input('stroke', 0.0006, [{ parameter: 'rear.strokeMax', by: 1 }]),
  input('rear tyre', 9_000, [{ parameter: 'rear.tyre.rate', by: 1 }]),
  input('rate as found', 900, both('rear', 'spring.rate')),
];
const ofLoad: readonly UncertainInput[] = [
  input('passenger place', 0.05, [{ parameter: 'load.momentX', by: passenger.mass }]),
  input('scale', 0.7, [{ parameter: 'load.mass', by: 0.5 }]),
];
const ofSpring: readonly UncertainInput[] = [
  input('marked rate', 700, both('rear', 'spring.rate')),
  input('free length', 0.0008, both('rear', 'preload')),
];

function questionWith(
  change: Partial<PlanQuestion>,
  load: Partial<LoadCaseSI> = {},
  rate = 28_000,
  atZero = 0.012,
): PlanQuestion {
  const only = choice('only', linear(rate), { preloadAtZero: atZero, inputs: ofSpring });
  const loads = [carrying('two', [rider, passenger], { inputs: ofLoad, ...load })];
  return rearQuestion({ choices: [only], adjuster: fineCollar(0.03) }, loads, {
    inputs: ofMachine,
    ...change,
  });
}

function planned(question: PlanQuestion): Planned {
  const cell = plan(question).rear.springs[0]!.cells[0]!;
  if (cell.kind !== 'planned') throw new Error(cell.kind);
  return cell.cell;
}

/** Where the collar is wanted when one input is so much greater, planned anew. */
function aimWith(name: string, change: number): number {
  const parameters = parametersOf({ ...tourer(), load: carrying('two', [rider, passenger]).load });
  const prepared = prepare(parameters.machine);
  const moved = [...ofMachine, ...ofLoad].filter((each) => each.name === name && name !== 'rate as found');
  for (const direction of directionsOf(parameters, moved)) moveAlong(parameters, prepared, direction, change);
  const { load, ...machine } = parameters.machine;
  const rate = 28_000 + (name === 'marked rate' ? change : 0);
  const atZero = 0.012 + (name === 'free length' ? change : 0);
  const nothing = { mass: 0, momentX: 0, momentHeight: 0 };
  const question = questionWith({ machine: { ...machine, load: nothing } }, { load }, rate, atZero);
  return planned(question).positions!.aim.value;
}

describe('the ± of where the collar is wanted', () => {
  const { positions, preload, contributions } = planned(questionWith({}));
  const slopeOf = (name: string): number =>
    contributions.find(({ input: each }) => each === name)?.slope ?? 0;

  test.each(
    [...ofMachine, ...ofLoad.slice(0, 1), ...ofSpring].map(
      ({ name, deviation }) => [name, deviation] as const,
    ),
  )('follows %s as planning anew does', (name, deviation) => {
    const step = 0.2 * deviation;
    const anew = (aimWith(name, step) - aimWith(name, -step)) / (2 * step);
    // The demand is met to some 1e-12 m; central differences leave the square of a fifth of a deviation, at most
    // a ten-thousandth of what the input does.
    expect(Math.abs(slopeOf(name) - anew)).toBeLessThan(2e-4 * Math.abs(anew) + 1e-10 / step);
  });

  test('takes what a scale does to body and load as one', () => {
    // Slopes add; taken apart they would add as squares.
    const alone = planned(
      questionWith({ inputs: ofMachine.filter(({ name }) => name === 'scale') }, { inputs: [] }),
    );
    const load = planned(
      questionWith({ inputs: [] }, { inputs: ofLoad.filter(({ name }) => name === 'scale') }),
    );
    const parts = [alone, load].map(
      ({ contributions: own }) => own.find((each) => each.input === 'scale')!.slope,
    );
    expect(slopeOf('scale')).toBeCloseTo(parts[0]! + parts[1]!, 9);
  });

  test('has nothing from the spring that it takes the place of', () => {
    expect(contributions.map((each) => each.input)).not.toContain('rate as found');
  });

  test('is the root of the summed squares, and that of the preload too', () => {
    const deviations = contributions.map(({ halfWidth }) => halfWidth / HALF_WIDTH_90);
    expect(positions!.aim.plusMinus).toBeCloseTo(HALF_WIDTH_90 * Math.hypot(...deviations), 12);
    expect(preload!.plusMinus).toBe(positions!.aim.plusMinus);
    expect(contributions.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    const halfWidths = contributions.map(({ halfWidth }) => halfWidth);
    expect(halfWidths).toEqual([...halfWidths].sort((a, b) => b - a));
  });

  test('knows that a target in % moves with the whole travel, one in mm does not', () => {
    const length = (value: number): { kind: 'length'; length: number } => ({ kind: 'length', length: value });
    const share = planned(questionWith({}, { wanted: { rear: shares(0.36, 0.4, 0.44), front: null } }));
    const fixed = planned(
      questionWith(
        {},
        {
          wanted: {
            rear: {
              low: length(0.028),
              aim: length(0.4 * (0.069 / 0.9)),
              high: length(0.034),
              from: 'stop',
              along: 'wheel',
            },
            front: null,
          },
        },
      ),
    );
    const stroke = (cell: Planned): number =>
      cell.contributions.find(({ input: each }) => each === 'stroke')?.slope ?? 0;
    expect(stroke(fixed)).toBe(0);
    expect(Math.abs(stroke(share))).toBeGreaterThan(0.3);
  });
});
