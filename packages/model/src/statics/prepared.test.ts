import { describe, expect, test } from 'vitest';
import type { AxlePathSI } from '../rear/axlePath.ts';
import type { KinematicsSI } from '../rear/kinematics.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import type { EndSI, MachineSI } from './machine.ts';
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
