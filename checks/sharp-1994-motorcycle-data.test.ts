/**
 * An open data file of a motorcycle, "The Sharp 1994 bike model", header "G.D Wood, Copyright 1990-2002 The MathWorks, Inc.".
 * Its nominal wheel and spring loads are of the running machine (with air drag), so only what lies between a wheel and
 * its spring is compared with them: 0.1 % at the rear, 0.5 % along the fork, which is what the file's own round figures
 * allow (1540 N of 1540.9; 940 of 935.9). The other numbers are worked out from its inputs: half of the last digit.
 */
import { forkOffsetOf, normalTrailOf } from '@sagwright/model/attitude/attitude';
import { momentsOf, together } from '@sagwright/model/masses/pointMass';
import { demandHere } from '@sagwright/model/plan/demand';
import { GRAVITY, type MachineSI } from '@sagwright/model/statics/machine';
import { prepare } from '@sagwright/model/statics/prepared';
import { restOf } from '@sagwright/model/statics/rest';
import { weigh } from '@sagwright/model/statics/weighing';
import { describe, expect, test } from 'vitest';

const rake = 0.52;
const wheelbase = 1.539;

/** The file's machine: its rear spring acts at the axle, its fork along the head; strokes are ours, out of the way. */
const unweighed: Omit<MachineSI, 'sprung'> = {
  geometry: { wheelbase, rake, forkOffset: null, seat: null },
  load: { mass: 0, momentX: 0, momentHeight: 0 },
  rear: {
    unsprung: 25.6,
    tyre: { radius: 0.321, rate: 170_000 },
    referenceTravel: 0.05,
    strokeMax: 0.2,
    kinematics: { kind: 'ratio', motionRatio: 1 },
    axlePath: { kind: 'circle', pivotX: 0.4, pivotHeight: 0.321 },
    struts: [strut(25_700)],
  },
  front: {
    unsprung: 17.5,
    tyre: { radius: 0.319, rate: 115_000 },
    referenceTravel: 0.05,
    strokeMax: 0.2,
    kinematics: { kind: 'fork' },
    axlePath: { kind: 'fork' },
    struts: [strut(9_000)],
  },
};

function strut(rate: number): MachineSI['rear']['struts'][number] {
  return { spring: { kind: 'linear', rate }, preload: 0, gas: null, rubber: null, topOut: null, friction: 0 };
}

/** With the body that makes the wheels bear 1250 and 1792 N on its own springs. */
const machine: MachineSI = { ...unweighed, sprung: bodyUnder(1250, 1792) };

function bodyUnder(front: number, rear: number): MachineSI['sprung'] {
  const readings = { front: front / GRAVITY, rear: rear / GRAVITY, wholeHeight: 0.611114 };
  const answer = weigh(unweighed, { ...readings, attitude: 'own sag' });
  if (answer.kind !== 'body') throw new Error(answer.kind);
  return answer.sprung;
}

describe('between wheel and spring, body level, at the file’s wheel loads', () => {
  /** Tyres pressed by N/k_t = 10.541 and 10.870 mm, the wheels that much further out than the body is down. */
  const [rearTyre, frontTyre] = [1792 / 170_000, 1250 / 115_000];
  const prepared = prepare(machine);
  const state = Float64Array.from([-0.02, 0, 0.05 + 0.02 - rearTyre, 0.05 + 0.02 - frontTyre]);

  test('the rear spring bears 1792 N less the wheel; the file says 1540 N', () => {
    const { springForce } = demandHere(prepared, 'rear', state);
    // 1540.95 N; with the g of 9.81 that such files use, 1540.86.
    expect(springForce).toBeCloseTo(1792 - 25.6 * GRAVITY, 8);
    expect(Math.abs(springForce / 1540 - 1)).toBeLessThan(0.001);
  });

  test('the fork bears (1250 N less the wheel) · cos 0.52 along itself; the file says 940 N', () => {
    const { springForce } = demandHere(prepared, 'front', state);
    // 935.85 N; with g 9.81, 935.79.
    expect(springForce).toBeCloseTo((1250 - 17.5 * GRAVITY) * Math.cos(rake), 8);
    expect(Math.abs(springForce / 940 - 1)).toBeLessThan(0.005);
  });
});

describe('at rest under the file’s wheel loads', () => {
  const answer = restOf(prepare(machine));
  if (answer.kind !== 'rest') throw new Error(answer.kind);
  const { rear, front } = answer.rest;

  test('the tyres are pressed by 10.541 and 10.870 mm', () => {
    // The front load is met to 1e-9 of itself.
    expect(rear.wheelLoad).toBeCloseTo(1792, 4);
    expect(front.wheelLoad).toBeCloseTo(1250, 4);
    expect(1000 * rear.tyreDeflection).toBeCloseTo(10.541, 3);
    expect(1000 * front.tyreDeflection).toBeCloseTo(10.87, 3);
  });

  test('the fork’s wheel rate is K/cos² = 11950.44 N/m, the rear’s its spring’s', () => {
    expect(front.wheelRate).toBeCloseTo(11_950.44, 2);
    expect(rear.wheelRate).toBeCloseTo(25_700, 6);
  });

  test('the ride rates, tyre and spring in series, are 22324.99 and 10825.49 N/m', () => {
    expect(rear.rideRate).toBeCloseTo(22_324.99, 2);
    expect(front.rideRate).toBeCloseTo(10_825.49, 2);
  });
});

describe('the masses', () => {
  const parts = [
    { mass: 209.6, x: 0.68, height: 0.532 },
    { mass: 44.5, x: 0.6, height: 1.19 },
    { mass: 13.1, x: 1.165, height: 0.869 },
    { mass: 17.5, x: 1.539, height: 0.318 },
    { mass: 25.6, x: 0, height: 0.321 },
  ];

  test('come to 310.3 kg, within 0.1 % of both nominal wheel loads together', () => {
    const { mass } = momentsOf(parts);
    expect(mass).toBeCloseTo(310.3, 10);
    expect(Math.abs((mass * GRAVITY) / (1250 + 1792) - 1)).toBeLessThan(0.001);
  });

  test('have their centre at x 0.681347 m, height 0.611114 m', () => {
    const whole = together(parts);
    expect(whole.x).toBeCloseTo(0.681347, 6);
    expect(whole.height).toBeCloseTo(0.611114, 6);
  });

  test('standing still put 44.27 % on the front wheel: the nominal 1250 N, 41.1 %, are of the running machine', () => {
    const { mass, momentX } = momentsOf(parts);
    expect((100 * momentX) / wheelbase / mass).toBeCloseTo(44.27, 2);
    expect((100 * 1250) / (1250 + 1792)).toBeCloseTo(41.1, 1);
  });
});

test('with the steering axis through the file’s joint the trail is 0.1065166 m, the normal trail 0.0924371 m', () => {
  // The axis through (1.168, 0.834), 0.52 rad from the upright: that it passes there is an assumption. Its distance from
  // the front axle (1.539, 0.318): 0.371 cos 0.52 − 0.516 sin 0.52.
  const offset = 0.371 * Math.cos(rake) - 0.516 * Math.sin(rake);
  expect(offset).toBeCloseTo(0.0655708, 7);
  const normal = normalTrailOf(0.318, rake, offset);
  expect(normal).toBeCloseTo(0.0924371, 7);
  expect(normal / Math.cos(rake)).toBeCloseTo(0.1065166, 7);
  expect(forkOffsetOf(0.318, rake, normal / Math.cos(rake))).toBeCloseTo(offset, 12);
});
