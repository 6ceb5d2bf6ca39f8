import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { between } from '../testing/arbitraryStrut.ts';
import { type ChainOrBeltSI, type DrivePlaces, squatOf, upperRun } from './finalDrive.ts';
import type { HardPoint } from './hardPoints.ts';

const anyDrive = fc
  .record({
    axleHeight: between(0.27, 0.36),
    pivot: fc.record({ x: between(0.4, 0.7), height: between(0.25, 0.55) }),
    sprocket: fc.record({ x: between(0.45, 0.85), height: between(0.25, 0.55) }),
    frontRadius: between(0.03, 0.06),
    rearRadius: between(0.08, 0.14),
    centreHeight: between(0.4, 0.9),
    wheelbase: between(1.2, 1.9),
  })
  .map(({ axleHeight, pivot, sprocket, frontRadius, rearRadius, centreHeight, wheelbase }) => {
    const axle = { x: 0, height: axleHeight };
    const drive: ChainOrBeltSI = { kind: 'chain', frontSprocket: sprocket, frontRadius, rearRadius };
    const places: DrivePlaces = { axle, pivot, frontSprocket: sprocket };
    return { drive, places, centreHeight, wheelbase };
  });

describe('the squat ratio by the squat line', () => {
  test('is that of moments about the pivot: load transfer over thrust and chain pull', () => {
    fc.assert(
      fc.property(anyDrive, ({ drive, places, centreHeight, wheelbase }) => {
        const { squatRatio } = squatOf(drive, places, centreHeight, wheelbase);
        const lifting = byMoments(drive, places, centreHeight / wheelbase);
        expect(squatRatio === null ? 0 : 1 / squatRatio).toBeCloseTo(lifting, 9);
        // And as a ratio, where neither way divides by next to nothing.
        if (Math.abs(lifting) > 0.1) expect(Math.abs((squatRatio ?? 0) * lifting - 1)).toBeLessThan(1e-9);
      }),
      { seed: 821, numRuns: 2000 },
    );
  });

  test('goes through the point where run and arm meet, even when that lies at infinity', () => {
    // Sprockets of one size, their centres in line with a level arm: run and arm are level, so is the squat line.
    const axle = { x: 0, height: 0.3 };
    const frontSprocket = { x: 0.6, height: 0.3 };
    const places = { axle, pivot: { x: 0.5, height: 0.3 }, frontSprocket };
    const drive: ChainOrBeltSI = { kind: 'belt', frontSprocket, frontRadius: 0.08, rearRadius: 0.08 };
    expect(squatOf(drive, places, 0.6, 1.5)).toMatchObject({ squatAngle: 0, squatRatio: null });
  });
});

/** 1/R: Σ moments that lift / moment that presses, for a thrust of 1: thrust at the ground, chain r_w/r_s along the upper run. */
function byMoments(
  drive: ChainOrBeltSI,
  { axle, pivot, frontSprocket }: DrivePlaces,
  transfer: number,
): number {
  const [rear, front] = [axle, frontSprocket!];
  // The tangent turned out of the line of centres by the angle whose sine is (r_r − r_f)/distance.
  const centres = Math.atan2(front.height - rear.height, front.x - rear.x);
  const distance = Math.hypot(front.x - rear.x, front.height - rear.height);
  const slope = centres - Math.asin((drive.rearRadius - drive.frontRadius) / distance);
  const touch: HardPoint = {
    x: rear.x - drive.rearRadius * Math.sin(slope),
    height: rear.height + drive.rearRadius * Math.cos(slope),
  };
  const pull = axle.height / drive.rearRadius;
  const ofChain =
    pull * ((touch.x - pivot.x) * Math.sin(slope) - (touch.height - pivot.height) * Math.cos(slope));
  const ofThrust = pivot.height;
  const pressing = transfer * (pivot.x - axle.x);
  return (ofThrust + ofChain) / pressing;
}

test('with a shaft the squat line goes through the pivot', () => {
  // Pivot 0.5 m ahead of the contact point and 0.4 m up; 0.6 m high on a wheelbase of 1.5 m: tan τ 0.4, tan σ 0.8.
  const places = { axle: { x: 0, height: 0.3 }, pivot: { x: 0.5, height: 0.4 }, frontSprocket: null };
  const squat = squatOf({ kind: 'shaft' }, places, 0.6, 1.5);
  expect(squat.squatRatio).toBeCloseTo(0.5, 12);
  expect(squat.squatAngle).toBeCloseTo(Math.atan(0.8), 12);
});

test('the upper run touches both sprockets on top', () => {
  fc.assert(
    fc.property(anyDrive, ({ drive, places }) => {
      const front = drive.frontSprocket;
      const run = upperRun(places.axle, drive.rearRadius, front, drive.frontRadius);
      expect(Math.hypot(run.normalX, run.normalHeight)).toBeCloseTo(1, 12);
      const reach = (at: HardPoint): number => run.normalX * at.x + run.normalHeight * at.height;
      expect(reach(front) + drive.frontRadius).toBeCloseTo(reach(places.axle) + drive.rearRadius, 12);
      expect(run.normalHeight).toBeGreaterThan(0);
    }),
    { seed: 822 },
  );
});

test('what cannot be is refused, with the figures', () => {
  const axle = { x: 0, height: 0.3 };
  expect(() => upperRun(axle, 0.2, { x: 0.1, height: 0.3 }, 0.05)).toThrow('0.1 m apart');
  const places = { axle, pivot: { x: -0.1, height: 0.3 }, frontSprocket: null };
  expect(() => squatOf({ kind: 'shaft' }, places, 0.6, 1.5)).toThrow('the pivot must be ahead');
  expect(() => squatOf({ kind: 'shaft' }, places, 0, 1.5)).toThrow('both must be above 0');
});
