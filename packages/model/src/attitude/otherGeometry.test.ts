import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { monotoneCubic } from '../numerics/monotoneCubic.ts';
import { damperAt, wheelAt, wheelTravelAt } from '../rear/wheelMotion.ts';
import type { MachineSI } from '../statics/machine.ts';
import { prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { arbitraryHardPoints } from '../testing/arbitraryHardPoints.ts';
import { between } from '../testing/arbitraryStrut.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { tourer } from '../testing/tourer.ts';
import { attitudeAt } from './attitude.ts';
import { withClampHeight, withShockLength, withTyreRadius } from './otherGeometry.ts';

function standing(machine: MachineSI) {
  const prepared = prepare(machine);
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') throw new Error(answer.kind);
  return { rest: answer.rest, attitude: attitudeAt(prepared, answer.rest.state) };
}

const axle = () => ({ x: 0, height: 0, axleSlope: 0, axleBend: 0, stroke: 0, motionRatio: 0, ratioSlope: 0 });

describe('a longer shock', () => {
  test('of 5 mm on one ratio of 0.5 lets the wheel hang 10 mm further out, at the same sag', () => {
    const machine = levelMachine(plainStrut(40_000, 0.01));
    const before = standing(machine);
    const after = standing(withShockLength(machine, 0.005)!);
    // A pitch of 10/1500 carries 240 kg, about 0.4 m over the ground, forward by 2.7 mm: 0.4 kg from wheel to wheel, 0.4 mm
    // on 10 N/mm at each end, and 0.5 mrad of pitch.
    expect(Math.abs(after.rest.rear.travel - before.rest.rear.travel)).toBeLessThan(0.0004);
    expect(Math.abs(after.attitude.pitch - Math.asin(0.01 / 1.5))).toBeLessThan(0.0005);
    const rise = after.attitude.seatHeight! - before.attitude.seatHeight!;
    expect(Math.abs(rise - 0.01 * (1 - 0.5 / 1.5))).toBeLessThan(0.0005);
  });

  test.each([
    ['quadratic', { kind: 'quadratic', slope: 0.95, bend: -1.2 }],
    ['cubic', { kind: 'cubic', slope: 0.8, bend: 1.2, twist: -6 }],
    [
      'table',
      {
        kind: 'table',
        curve: monotoneCubic([0, 0.03, 0.06, 0.09], [0, 0.024, 0.05, 0.078]),
        scale: 1.02,
      },
    ],
  ] as const)('on a %s the wheel stands where the old one did a length shorter', (_name, kinematics) => {
    const machine = tourer();
    const rear = { ...machine.rear, kinematics, strokeMax: 0.06 };
    for (const change of [0.01, -0.008]) {
      const moved = withShockLength({ ...machine, rear }, change)!.rear;
      for (const stroke of [0.012, 0.03, 0.05]) {
        // Eye to eye L + change − s: the same length as the old shock at s − change.
        const [now, was] = [axle(), axle()];
        wheelAt(moved, 0, 0, wheelTravelAt(moved, 0, stroke), now);
        wheelAt(rear, 0, 0, wheelTravelAt(rear, 0, stroke - change), was);
        expect(now.height).toBeCloseTo(was.height, 10);
        expect(now.motionRatio).toBeCloseTo(was.motionRatio, 9);
      }
      damperAt(moved, 0, 0, now0);
      expect(now0.stroke).toBeCloseTo(0, 12);
    }
  });

  test('by hard points the axle stands where loop closure puts it', () => {
    fc.assert(
      fc.property(
        between(0.05, 0.1).chain(arbitraryHardPoints),
        between(-0.008, 0.008),
        ({ rear, stroke, survey }, change) => {
          const machine = tourer();
          const end = {
            ...machine.rear,
            kinematics: rear.points,
            axlePath: rear.arm,
            strokeMax: stroke,
            referenceTravel: survey.referenceTravel,
            tyre: { ...machine.rear.tyre, radius: rear.axleHeight },
          };
          const moved = withShockLength({ ...machine, rear: end }, change);
          fc.pre(moved !== null);
          const [now, was] = [axle(), axle()];
          wheelAt(moved!.rear, 0, 0, wheelTravelAt(moved!.rear, 0, 0.5 * stroke), now);
          wheelAt(end, 0, 0, wheelTravelAt(end, 0, 0.5 * stroke - change), was);
          expect(now.height).toBeCloseTo(was.height, 9);
        },
      ),
      { seed: 511, numRuns: 40 },
    );
  });

  test('on a drawn ratio that falls to 0 at an end is null before it gets there, and follows small steps until then', () => {
    // Chords of 0.9, 0.4 and 0.005 end level, and read from the top down begin so: the end rule draws a slope of 0 there.
    const ending = monotoneCubic([0, 0.04, 0.08, 0.1], [0, 0.036, 0.052, 0.0521]);
    const beginning = monotoneCubic([0.02, 0.04, 0.08, 0.12], [0.0003, 0.0004, 0.02, 0.056]);
    expect(ending.slope.at(-1)).toBe(0);
    expect(beginning.slope[0]).toBe(0);
    const machine = tourer();
    let [moved, refused] = [0, 0];
    for (const [curve, strokeMax, way] of [
      [ending, 0.049, -1],
      [beginning, 0.05, 1],
    ] as const) {
      for (let step = 1; step <= 60; step += 1) {
        const rear = { ...machine.rear, kinematics: { kind: 'table' as const, curve, scale: 1 }, strokeMax };
        const after = withShockLength({ ...machine, rear }, way * step * 1e-4);
        if (after === null) {
          refused += 1;
          continue;
        }
        moved += 1;
        for (const scale of [1 - 1e-5, 1 + 1e-5]) {
          const kinematics = { ...after.rear.kinematics, scale } as typeof rear.kinematics;
          expect(wheelTravelAt({ ...after.rear, kinematics }, 0, strokeMax)).toBeGreaterThan(0);
        }
      }
    }
    expect(moved).toBeGreaterThan(5);
    expect(refused).toBeGreaterThan(5);
  });

  test('that no arm or ratio reaches is null', () => {
    const machine = tourer();
    const falling = { kind: 'quadratic' as const, slope: 0.95, bend: -4 };
    expect(withShockLength({ ...machine, rear: { ...machine.rear, kinematics: falling } }, -0.02)).toBeNull();
    expect(withShockLength(machine, 0.45)).toBeNull();
  });
});

const now0 = { stroke: 0, motionRatio: 0, ratioSlope: 0 };

describe('fork tubes raised in their clamps', () => {
  test('by 10 mm bring the head down by 10 cos ε over the front axle, at the same sag', () => {
    const machine = levelMachine(plainStrut(40_000, 0.01));
    const fork = {
      ...machine.front,
      kinematics: { kind: 'fork' as const },
      axlePath: { kind: 'fork' as const },
    };
    const before = standing({ ...machine, front: fork });
    const after = standing(withClampHeight({ ...machine, front: fork }, 0.01));
    const drop = 0.01 * Math.cos(0.45);
    // Bounds as above.
    expect(Math.abs(after.attitude.pitch - before.attitude.pitch - drop / 1.5)).toBeLessThan(0.0005);
    expect(Math.abs(after.rest.front.travel - before.rest.front.travel)).toBeLessThan(0.0004);
    expect(after.attitude.rake).toBeLessThan(before.attitude.rake);
  });

  test('of a front that is no fork there are none', () => {
    expect(() => withClampHeight(levelMachine(plainStrut(40_000, 0.01)), 0.01)).toThrow('ratio');
  });
});

describe('another tyre', () => {
  test('of 8 mm more radius at both ends lifts everything by 8 mm and changes nothing else', () => {
    const machine = tourer();
    const before = standing(machine);
    const both = withTyreRadius(withTyreRadius(machine, 'rear', 0.326), 'front', 0.32);
    const after = standing(both);
    expect(after.attitude.seatHeight! - before.attitude.seatHeight!).toBeCloseTo(0.008, 9);
    expect(after.attitude.pitch).toBeCloseTo(before.attitude.pitch, 10);
    expect(after.rest.rear.travel).toBeCloseTo(before.rest.rear.travel, 9);
    expect(after.attitude.groundTrail).toBeGreaterThan(before.attitude.groundTrail!);
  });

  test('of the same radius is no other tyre', () => {
    const machine = tourer();
    const same = withTyreRadius(machine, 'rear', machine.rear.tyre.radius);
    expect(standing(same).rest.state).toEqual(standing(machine).rest.state);
  });
});
