import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arbitraryHardPoints, motionOf } from '../testing/arbitraryHardPoints.ts';
import { between } from '../testing/arbitraryStrut.ts';
import { alongTravel, tightestDrive } from './alongTravel.ts';
import type { ChainOrBeltSI } from './finalDrive.ts';
import type { WheelMotionSI } from './wheelMotion.ts';

const anyRear = between(0.045, 0.12).chain(arbitraryHardPoints);

/** Arm of 0.5 m, level at the stop; any ratio: only the pivot matters here. */
const levelArm: WheelMotionSI = {
  kinematics: { kind: 'ratio', motionRatio: 0.6 },
  axlePath: { kind: 'circle', pivotX: 0.5, pivotHeight: 0.3 },
  tyre: { radius: 0.3 },
  referenceTravel: 0,
};
const chain: ChainOrBeltSI = {
  kind: 'chain',
  frontSprocket: { x: 0.58, height: 0.36 },
  frontRadius: 0.042,
  rearRadius: 0.11,
};

describe('a rear along its travel', () => {
  test('shows what its hard points give at every row', () => {
    fc.assert(
      fc.property(anyRear, (moving) => {
        const rows = alongTravel(motionOf(moving), moving.survey.travelMax, 5, chain, {
          centreHeight: 0.6,
          wheelbase: 1.5,
        });
        expect(rows.map((row) => row.travel)).toEqual(
          [0, 1, 2, 3, 4].map((i) => (moving.survey.travelMax * i) / 4),
        );
        expect(rows[4]!.stroke).toBeCloseTo(moving.stroke, 12);
        for (const { travel, axleHeight, axleX, armAngle, squat } of rows) {
          expect(axleHeight).toBeCloseTo(moving.rear.axleHeight + travel - moving.survey.referenceTravel, 12);
          const { pivotX, pivotHeight } = moving.rear.arm;
          expect(Math.tan(armAngle)).toBeCloseTo((pivotHeight - axleHeight) / (pivotX - axleX), 9);
          // The ground came up with the wheel: the centre is lower above it, the wheelbase as the axle moved.
          const ground = axleHeight - moving.rear.axleHeight;
          expect(Math.tan(squat!.transferAngle)).toBeCloseTo((0.6 - ground) / (1.5 - axleX), 12);
        }
      }),
      { seed: 831 },
    );
  });

  test('knows no chain with a shaft, and no squat where nobody said where the weight is', () => {
    const [row] = alongTravel(levelArm, 0.1, 2, { kind: 'shaft' }, null);
    expect(row).toMatchObject({ armAngle: 0, centreDistance: null, squat: null, motionRatio: 0.6 });
    expect(() => alongTravel(levelArm, 0.1, 1, null, null)).toThrow('at least 2');
  });
});

describe('a chain', () => {
  test('is tightest with sprocket, pivot and axle in one line', () => {
    // Pivot 0.08 m behind and 0.06 m below the sprocket: 0.1 m. In line the axle is 0.5·0.6 = 0.3 m below the pivot; from
    // an arm that hangs 0.4 m at the stop that is at 0.1 m of travel.
    const end = { ...levelArm, referenceTravel: 0.4 };
    const tightest = tightestDrive(end, 0.2, chain.frontSprocket);
    expect(tightest.travel).toBeCloseTo(0.1, 12);
    expect(tightest.centreDistance).toBeCloseTo(0.6, 12);
  });

  test('is never further apart anywhere along the travel', () => {
    const sprocket = fc.record({ x: between(0.35, 0.85), height: between(0.25, 0.55) });
    let inside = 0;
    fc.assert(
      fc.property(anyRear, sprocket, (moving, frontSprocket) => {
        const end = motionOf(moving);
        const { travelMax } = moving.survey;
        const tightest = tightestDrive(end, travelMax, frontSprocket);
        if (tightest.travel > 0 && tightest.travel < travelMax) inside += 1;
        const rows = alongTravel(end, travelMax, 101, { ...chain, frontSprocket }, null);
        const most = Math.max(...rows.map((row) => row.centreDistance!));
        expect(tightest.centreDistance).toBeGreaterThanOrEqual(most - 1e-13);
        // Rows 3 mm apart miss the top of an arc of 0.1 m and more by less than 3²/8/100 mm.
        expect(tightest.centreDistance - most).toBeLessThan(2e-5);
      }),
      { seed: 832, numRuns: 300 },
    );
    expect(inside).toBeGreaterThan(15);
  });
});
