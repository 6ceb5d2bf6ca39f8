import { describe, expect, test } from 'vitest';
import type { AxlePathSI } from '../rear/axlePath.ts';
import type { DirectSI } from '../rear/hardPoints.ts';
import type { KinematicsSI } from '../rear/kinematics.ts';
import { referenceTravelOf } from '../rear/wheelMotion.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import type { EndSI, MachineSI } from './machine.ts';
import { parametersOf, setParameter } from './parameters.ts';
import { prepare, refresh } from './prepared.ts';

const machine = levelMachine(plainStrut(40_000, 0.01));

function withRear(change: Partial<EndSI>): MachineSI {
  return { ...machine, rear: { ...machine.rear, ...change } };
}

function fork(): MachineSI {
  const front: EndSI = { ...machine.front, kinematics: { kind: 'fork' }, axlePath: { kind: 'fork' } };
  return { ...machine, front };
}

describe('the travel at metal', () => {
  test('is the stroke over the motion ratio, and follows when that is moved', () => {
    const prepared = prepare(machine);
    expect(prepared.rearTravelMax).toBeCloseTo(0.1 / 0.5, 12);
    prepared.machine = withRear({ strokeMax: 0.08 });
    refresh(prepared);
    expect(prepared.rearTravelMax).toBeCloseTo(0.16, 12);
    expect(prepared.frontTravelMax).toBeCloseTo(0.2, 12);
  });

  test('of a fork is its stroke along the upright', () => {
    expect(prepare(fork()).frontTravelMax).toBeCloseTo(0.1 * Math.cos(0.45), 12);
  });
});

describe('a machine is refused', () => {
  test('whose ratio runs out before the damper is in', () => {
    const kinematics: KinematicsSI = { kind: 'quadratic', slope: 0.5, bend: -1 };
    // s is at most 0.5²/4 = 62.5 mm of 100.
    expect(() => prepare(withRear({ kinematics }))).toThrow('stroke of 0.1 m');
  });

  test.each<[string, AxlePathSI]>([
    ['pivot lies behind the axle', { kind: 'circle', pivotX: -0.5, pivotHeight: 0.4 }],
    ['arm is shorter than its wheel travels', { kind: 'circle', pivotX: 0.15, pivotHeight: 0.3 }],
  ])('whose %s', (_, axlePath) => {
    expect(() => prepare(withRear({ axlePath }))).toThrow('the pivot must lie ahead and the arm be longer');
  });

  test('but not one whose arm just reaches', () => {
    // Up to 200 mm above a pivot at axle height, on an arm of 201 mm.
    const axlePath: AxlePathSI = { kind: 'circle', pivotX: 0.201, pivotHeight: 0.3 };
    expect(prepare(withRear({ axlePath })).rearTravelMax).toBeCloseTo(0.2, 12);
  });
});

/**
 * Arm level at 0.3 m, 0.4 m long, damper upright over its middle: 0.3 m between the eyes, half the wheel's movement. A damper
 * that is 310 mm long extended is 10 mm in as the points were surveyed.
 */
const points: DirectSI = {
  kind: 'direct',
  damper: { extendedLength: 0.31, sideways: 0 },
  armEye: { x: 0.2, height: 0.3 },
  frameEye: { x: 0.2, height: 0.6 },
};
const arm: AxlePathSI = { kind: 'circle', pivotX: 0.4, pivotHeight: 0.3 };
const byPoints = { kinematics: points, axlePath: arm, strokeMax: 0.08 };

describe('with hard points the travel of the reference attitude', () => {
  const referenceTravel = referenceTravelOf({ points, arm, axleHeight: 0.3 });

  test('follows from them: about 10 mm of damper over a ratio of a half', () => {
    expect(referenceTravel).toBeCloseTo(0.02, 3);
    expect(prepare(withRear({ ...byPoints, referenceTravel })).rearTravelMax).toBeCloseTo(0.16, 2);
  });

  test('follows when they are moved, and comes back to the last bit', () => {
    const parameters = parametersOf(withRear({ ...byPoints, referenceTravel }));
    const prepared = prepare(parameters.machine);
    const { rearTravelMax } = prepared;
    const length = parameters.indexOf.get('rear.kinematics.damper.extendedLength')!;
    setParameter(parameters, length, 0.311);
    refresh(prepared);
    // 1 mm more of damper lets the wheel hang 2 mm lower.
    expect(parameters.machine.rear.referenceTravel - referenceTravel).toBeCloseTo(0.002, 4);
    setParameter(parameters, length, 0.31);
    refresh(prepared);
    expect(parameters.machine.rear.referenceTravel).toBe(referenceTravel);
    expect(prepared.rearTravelMax).toBe(rearTravelMax);
  });

  test('is no input of its own, but pivot and axle reach it', () => {
    const { names, reaches, indexOf } = parametersOf(withRear({ ...byPoints, referenceTravel }));
    expect(names).not.toContain('rear.referenceTravel');
    expect(names).toContain('front.referenceTravel');
    for (const name of ['rear.axlePath.pivotX', 'rear.tyre.radius', 'rear.kinematics.armEye.x']) {
      expect(reaches[indexOf.get(name)!]!.travel, name).toBe(true);
    }
    expect(reaches[indexOf.get('front.tyre.radius')!]!.travel).toBe(false);
  });

  test('must be theirs, and hard points must be the rear’s', () => {
    expect(() => prepare(withRear({ ...byPoints, referenceTravel: 0.03 }))).toThrow('referenceTravelOf');
    const front: EndSI = { ...machine.front, ...byPoints, referenceTravel };
    expect(() => prepare({ ...machine, front })).toThrow('hard points at the front');
    expect(() => prepare(withRear({ kinematics: points }))).toThrow('must run on a circle');
  });
});
