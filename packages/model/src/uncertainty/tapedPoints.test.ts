import { expect, test } from 'vitest';
import { momentsOf } from '../masses/pointMass.ts';
import { seededRandom } from '../numerics/random.ts';
import type { HardPoint, LinkageSI, PartName } from '../rear/hardPoints.ts';
import { type Places, pointsFromTape, type TapedPoints } from '../rear/pointsFromTape.ts';
import { lengthsToTape, type TapedSI } from '../rear/tape.ts';
import { referenceTravelOf } from '../rear/wheelMotion.ts';
import { REAR_TRAVEL } from '../statics/gradient.ts';
import type { MachineSI } from '../statics/machine.ts';
import { parametersOf } from '../statics/parameters.ts';
import { prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { plainStrut } from '../testing/levelMachine.ts';
import { passenger, rider, tourer } from '../testing/tourer.ts';
import { stateDerivatives } from './derivatives.ts';
import { directionsOf, type UncertainInput } from './inputs.ts';

const radius = 0.318;
const deviation = 0.0006;

/** An invented rear, its rocker hung below the arm. */
const places = {
  pivot: { x: 0.5, height: 0.36 },
  'rocker pivot': { x: 0.48, height: 0.25 },
  'link pin': { x: 0.36, height: 0.2 },
  'link end': { x: 0.32, height: 0.3 },
  'rocker eye': { x: 0.31, height: 0.18 },
  'far eye': { x: 0.43, height: 0.49 },
} as const satisfies Places;

const taped: readonly TapedSI[] = lengthsToTape.linkage.map((each): TapedSI => {
  const at = (part: PartName): HardPoint =>
    part === 'axle' ? { x: 0, height: radius } : places[part as keyof typeof places];
  if (each.kind === 'above axle') return { ...each, length: at(each.of).height - radius, deviation };
  const [from, to] = [at(each.from), at(each.to)];
  return { ...each, length: Math.hypot(from.x - to.x, from.height - to.height), sideways: 0, deviation };
});

function pointsOf(lengths: readonly TapedSI[]): TapedPoints {
  const answer = pointsFromTape(lengths, places, { pitch: 0, radius });
  if (answer.kind !== 'points') throw new Error(answer.kind);
  return answer;
}

/** Two aboard, one shock of 90 N/mm on these points. */
function machineOn(points: Places): MachineSI {
  const at = (part: keyof typeof places): HardPoint => points[part]!;
  const linkage: LinkageSI = {
    kind: 'linkage',
    damper: { extendedLength: 0.34, sideways: 0 },
    rocker: { on: 'frame', pivot: at('rocker pivot'), pin: at('link pin') },
    linkEnd: at('link end'),
    rockerEye: at('rocker eye'),
    farEye: { on: 'frame', ...at('far eye') },
  };
  const arm = { kind: 'circle' as const, pivotX: at('pivot').x, pivotHeight: at('pivot').height };
  const machine = tourer();
  const rear = {
    ...machine.rear,
    kinematics: linkage,
    axlePath: arm,
    referenceTravel: referenceTravelOf({ points: linkage, arm, axleHeight: radius }),
    struts: [plainStrut(90_000, 0.03)],
  };
  return { ...machine, rear, load: momentsOf([rider, passenger]) };
}

function rearTravel(points: Places): number {
  const answer = restOf(prepare(machineOn(points)));
  if (answer.kind !== 'rest' || answer.rest.rear.standing !== 'free') throw new Error(answer.kind);
  return answer.rest.rear.travel;
}

test('the doubt of a tape comes through points and balance as drawn tapes spread', () => {
  const points = pointsOf(taped);
  const parameters = parametersOf(machineOn(points.points));
  const prepared = prepare(parameters.machine);
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') throw new Error(answer.kind);
  const directions = directionsOf(parameters, inputsOf(points));
  const slopes = stateDerivatives(parameters, prepared, Float64Array.from(answer.rest.state), directions);
  const derived = Math.hypot(...taped.map((_, i) => slopes[4 * i + REAR_TRAVEL]! * deviation));

  const random = seededRandom(861);
  const draws = 1500;
  let [sum, squares] = [0, 0];
  for (let i = 0; i < draws; i += 1) {
    const drawn = taped.map((each) => ({ ...each, length: each.length + deviation * random.normal() }));
    const travel = rearTravel(pointsOf(drawn).points) - answer.rest.rear.travel;
    sum += travel;
    squares += travel * travel;
  }
  const spread = Math.sqrt(squares / draws - (sum / draws) ** 2);
  // A deviation from 1500 draws is good to 1/√3000 = 1.8 %; three times that, and 1 % for what is not straight.
  expect(Math.abs(spread / derived - 1)).toBeLessThan(0.065);
  // Millimetres, as one would expect of tenths on a ratio of about 0.4: or nothing was moved.
  expect(derived).toBeGreaterThan(deviation);
});

/** Each length an input of its own, that moves every point as the points follow from it. */
function inputsOf({ moves }: TapedPoints): readonly UncertainInput[] {
  return moves.map((each, i) => ({
    name: `tape.${i}`,
    deviation,
    moves: Object.entries(each).flatMap(([part, { x, height }]) => {
      const place = figuresOfPart[part as keyof typeof places];
      return place === 'rear.axlePath.pivot'
        ? [
            { parameter: `${place}X`, by: x },
            { parameter: `${place}Height`, by: height },
          ]
        : [
            { parameter: `${place}.x`, by: x },
            { parameter: `${place}.height`, by: height },
          ];
    }),
  }));
}

const figuresOfPart = {
  pivot: 'rear.axlePath.pivot',
  'rocker pivot': 'rear.kinematics.rocker.pivot',
  'link pin': 'rear.kinematics.rocker.pin',
  'link end': 'rear.kinematics.linkEnd',
  'rocker eye': 'rear.kinematics.rockerEye',
  'far eye': 'rear.kinematics.farEye',
} as const satisfies Readonly<Record<keyof typeof places, string>>;
