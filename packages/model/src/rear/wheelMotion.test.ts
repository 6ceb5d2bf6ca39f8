import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arbitraryHardPoints, motionOf } from '../testing/arbitraryHardPoints.ts';
import { between } from '../testing/arbitraryStrut.ts';
import { type EyeToEye, eyeToEye } from './damperEye.ts';
import type { HardPoint, HardPointsSI, LinkageSI, PartName } from './hardPoints.ts';
import { type PartAt, partsAt } from './partsAt.ts';
import { damperAt, type WheelMotionSI, wheelAt, wheelTravelAt } from './wheelMotion.ts';

const anyRear = between(0.045, 0.12).chain(arbitraryHardPoints);
const share = between(0, 1);

function strokeAt(
  end: WheelMotionSI,
  z: number,
): { stroke: number; motionRatio: number; ratioSlope: number } {
  const out = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  damperAt(end, 0, z, out);
  return out;
}

function placeOf(parts: readonly PartAt[], name: PartName): HardPoint {
  const found = parts.find(({ part }) => part === name);
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
}

function distance(one: HardPoint, other: HardPoint): number {
  return Math.hypot(one.x - other.x, one.height - other.height);
}

describe('a rear with hard points', () => {
  test('keeps every part in one piece, along the whole travel', () => {
    fc.assert(
      fc.property(anyRear, share, (moving, along) => {
        const end = motionOf(moving);
        const { points } = moving.rear;
        const before = partsAt(end, moving.survey.referenceTravel);
        const now = partsAt(end, along * moving.survey.travelMax);
        for (const [one, other] of rigidPairs(points)) {
          expect(distance(placeOf(now, one), placeOf(now, other)), `${one} to ${other}`).toBeCloseTo(
            distance(placeOf(before, one), placeOf(before, other)),
            12,
          );
        }
      }),
      { seed: 801, numRuns: 500 },
    );
  });

  test('stands where Newton’s method on the lengths alone puts its pin, followed from the reference attitude', () => {
    let followed = 0;
    fc.assert(
      fc.property(anyRear, share, (moving, along) => {
        const { points } = moving.rear;
        if (points.kind === 'direct') return;
        followed += 1;
        const end = motionOf(moving);
        const to = along * moving.survey.travelMax;
        const { eyes, pin } = followByNewton(end, points, moving.survey.referenceTravel, to);
        const parts = partsAt(end, to);
        expect(distance(placeOf(parts, 'link pin'), pin)).toBeLessThan(1e-11);
        expect(points.damper.extendedLength - strokeAt(end, to).stroke).toBeCloseTo(eyes, 11);
      }),
      { seed: 802, numRuns: 500 },
    );
    expect(followed).toBeGreaterThan(200);
  });

  test('stays put together as it was built: the link never changes sides on the rocker inside the travel', () => {
    let followed = 0;
    fc.assert(
      fc.property(anyRear, (moving) => {
        if (moving.rear.points.kind === 'direct') return;
        followed += 1;
        const end = motionOf(moving);
        const side = (travel: number): number => {
          const parts = partsAt(end, travel);
          const [a, b, c] = (['rocker pivot', 'link pin', 'link end'] as const).map((part) =>
            placeOf(parts, part),
          );
          return (b!.x - a!.x) * (c!.height - a!.height) - (b!.height - a!.height) * (c!.x - a!.x);
        };
        const built = Math.sign(side(moving.survey.referenceTravel));
        for (let step = 0; step <= 20; step += 1) {
          expect(Math.sign(side((moving.survey.travelMax * step) / 20))).toBe(built);
        }
      }),
      { seed: 809, numRuns: 200 },
    );
    expect(followed).toBeGreaterThan(80);
  });

  test('has its ratio as the slope of its stroke and the ratio’s slope as that of the ratio, to 1e-8', () => {
    fc.assert(
      fc.property(anyRear, share, (moving, along) => {
        const end = motionOf(moving);
        const z = along * moving.survey.travelMax;
        const at = strokeAt(end, z);
        const stroke = richardson((each) => strokeAt(end, each).stroke, z);
        expect(Math.abs(stroke.slope - at.motionRatio)).toBeLessThan(1e-8 + stroke.doubt);
        const ratio = richardson((each) => strokeAt(end, each).motionRatio, z);
        expect(Math.abs(ratio.slope - at.ratioSlope)).toBeLessThan(
          1e-8 * Math.max(1, Math.abs(at.ratioSlope)) + ratio.doubt,
        );
        // The doubt is small, or the two lines above would say little.
        expect(stroke.doubt).toBeLessThan(1e-7);
      }),
      { seed: 803, numRuns: 500 },
    );
  });

  test('has its damper out at travel 0, and finds the travel that gives a stroke', () => {
    fc.assert(
      fc.property(anyRear, share, (moving, along) => {
        const end = motionOf(moving);
        expect(Math.abs(strokeAt(end, 0).stroke)).toBeLessThan(1e-14);
        const z = wheelTravelAt(end, 0, along * moving.stroke);
        expect(strokeAt(end, z).stroke).toBeCloseTo(along * moving.stroke, 13);
        expect(z).toBeGreaterThanOrEqual(-1e-13);
        expect(z).toBeLessThanOrEqual(moving.survey.travelMax + 1e-13);
      }),
      { seed: 804, numRuns: 500 },
    );
  });

  test('is the same in a mirror: same damper length, its slope turned over', () => {
    fc.assert(
      fc.property(anyRear, between(-0.1, 0.1), ({ rear }, angle) => {
        const turn = { cos: Math.cos(angle), sin: Math.sin(angle), slope: 1, bend: 0 };
        const [own, seen]: [EyeToEye, EyeToEye] = [
          { length: 0, slope: 0, bend: 0 },
          { length: 0, slope: 0, bend: 0 },
        ];
        const { pivotX, pivotHeight } = rear.arm;
        const closes = eyeToEye(rear.points, pivotX, pivotHeight, turn, own);
        const mirrored = inMirror(rear.points);
        expect(eyeToEye(mirrored, -pivotX, pivotHeight, { ...turn, sin: -turn.sin }, seen)).toBe(closes);
        if (!closes) return;
        expect(seen.length).toBeCloseTo(own.length, 13);
        expect(seen.slope).toBeCloseTo(-own.slope, 12);
        expect(seen.bend).toBeCloseTo(own.bend, 9);
      }),
      { seed: 805, numRuns: 500 },
    );
  });

  test('is the same wherever it is bolted: all points shifted together', () => {
    fc.assert(
      fc.property(anyRear, share, between(-0.2, 0.2), (moving, along, up) => {
        const z = along * moving.survey.travelMax;
        const { rear } = moving;
        const arm = { ...rear.arm, pivotHeight: rear.arm.pivotHeight + up };
        const shifted = {
          ...moving,
          rear: {
            points: moved(rear.points, (p) => ({ ...p, height: p.height + up })),
            arm,
            axleHeight: rear.axleHeight + up,
          },
        };
        const [here, there] = [strokeAt(motionOf(moving), z), strokeAt(motionOf(shifted), z)];
        expect(there.stroke).toBeCloseTo(here.stroke, 12);
        expect(there.motionRatio).toBeCloseTo(here.motionRatio, 10);
      }),
      { seed: 806 },
    );
  });
});

test('an even ratio is what is left of hard points when arm and damper become ever longer', () => {
  // The eye at 0.7 of the arm, damper upright above it: MR → 0.7. What is left falls with the length, tenfold for tenfold.
  const left = [1e2, 1e3, 1e4].map((long) => {
    const end: WheelMotionSI = {
      kinematics: {
        kind: 'direct',
        damper: { extendedLength: long, sideways: 0 },
        armEye: { x: 0.3 * long, height: 0.3 },
        frameEye: { x: 0.3 * long, height: 0.3 + long },
      },
      axlePath: { kind: 'circle', pivotX: long, pivotHeight: 0.3 },
      tyre: { radius: 0.3 },
      referenceTravel: 0,
    };
    const at = strokeAt(end, 0.1);
    expect(Math.abs(at.ratioSlope)).toBeLessThan(2 / long);
    return Math.abs(at.motionRatio - 0.7);
  });
  // At 0.1 m over a length of 100 m the angles are 1/1000: squares of them, 1e-6, are left.
  expect(left[0]).toBeLessThan(1e-5);
  expect(left[1]).toBeLessThan(1e-7);
  expect(left[2]).toBeLessThan(1e-8);
});

test('a damper that splays is shortened by what its side view shows, times the cosine of the splay', () => {
  // 300 mm in the side view, 400 mm sideways: 500 mm long, cosine 0.6. Straight above the eye of an arm that lies level.
  const end = (sideways: number): WheelMotionSI => ({
    kinematics: {
      kind: 'direct',
      damper: { extendedLength: Math.hypot(0.3, sideways), sideways },
      armEye: { x: 0.1, height: 0.3 },
      frameEye: { x: 0.1, height: 0.6 },
    },
    axlePath: { kind: 'circle', pivotX: 0.5, pivotHeight: 0.3 },
    tyre: { radius: 0.3 },
    referenceTravel: 0,
  });
  expect(strokeAt(end(0), 0).motionRatio).toBeCloseTo(0.8, 12);
  expect(strokeAt(end(0.4), 0).motionRatio).toBeCloseTo(0.8 * 0.6, 12);
});

test('where link and rocker cannot be joined there is no stroke, and it says so', () => {
  const linkage: LinkageSI = {
    kind: 'linkage',
    damper: { extendedLength: 0.3, sideways: 0 },
    rocker: { on: 'frame', pivot: { x: 0.55, height: 0.3 }, pin: { x: 0.45, height: 0.25 } },
    linkEnd: { x: 0.4, height: 0.35 },
    rockerEye: { x: 0.4, height: 0.24 },
    farEye: { on: 'frame', x: 0.5, height: 0.56 },
  };
  const end: WheelMotionSI = {
    kinematics: linkage,
    axlePath: { kind: 'circle', pivotX: 0.58, pivotHeight: 0.42 },
    tyre: { radius: 0.32 },
    referenceTravel: 0,
  };
  const out = { x: 0, height: 0, axleSlope: 0, axleBend: 0, stroke: 0, motionRatio: 0, ratioSlope: 0 };
  expect(() => wheelAt(end, 0, 0, 0.4, out)).toThrow(
    'link and rocker cannot be joined at a wheel travel of 0.4 m',
  );
  expect(() => wheelTravelAt(end, 0, 1)).toThrow('a damper stroke of 1 m');
  expect(() => wheelAt({ ...end, axlePath: { kind: 'straight' } }, 0, 0, 0, out)).toThrow(
    'must run on a circle',
  );
});

function rigidPairs(points: HardPointsSI): readonly (readonly [PartName, PartName])[] {
  if (points.kind === 'direct')
    return [
      ['axle', 'pivot'],
      ['pivot', 'arm eye'],
      ['axle', 'arm eye'],
      ['pivot', 'frame eye'],
    ];
  const arm = ['axle', 'pivot'] as const;
  const carried =
    points.rocker.on === 'frame'
      ? (['link end', 'rocker pivot'] as const)
      : (['rocker pivot', 'link end'] as const);
  return [
    ['axle', 'pivot'],
    ...arm.map((each) => [each, carried[0]] as const),
    ['pivot', carried[1]],
    ['pivot', 'far eye'],
    ['rocker pivot', 'link pin'],
    ['rocker pivot', 'rocker eye'],
    ['link pin', 'rocker eye'],
    ['link pin', 'link end'],
  ];
}

/**
 * The pin (X, Z) from |B − O| = r and |B − C| = l alone, by Newton in the plane, the arm turned in small steps so that it
 * stays on the branch that was built; the eye from the pin by the triangle it makes with the rocker's pivot.
 */
function followByNewton(
  end: WheelMotionSI,
  points: LinkageSI,
  fromTravel: number,
  toTravel: number,
): { pin: HardPoint; eyes: number } {
  const { rocker, linkEnd, rockerEye } = points;
  const arm = distance(rocker.pin, rocker.pivot);
  const link = distance(rocker.pin, linkEnd);
  let pin = rocker.pin;
  let parts: readonly PartAt[] = [];
  const steps = 40;
  for (let i = 0; i <= steps; i += 1) {
    parts = partsAt(end, fromTravel + ((toTravel - fromTravel) * i) / steps);
    const pivot = placeOf(parts, 'rocker pivot');
    const far = placeOf(parts, 'link end');
    for (let k = 0; k < 30; k += 1) {
      const [ax, az, bx, bz] = [
        pin.x - pivot.x,
        pin.height - pivot.height,
        pin.x - far.x,
        pin.height - far.height,
      ];
      const [f, g] = [ax * ax + az * az - arm * arm, bx * bx + bz * bz - link * link];
      const determinant = 4 * (ax * bz - az * bx);
      pin = {
        x: pin.x - (2 * bz * f - 2 * az * g) / determinant,
        height: pin.height - (2 * ax * g - 2 * bx * f) / determinant,
      };
    }
  }
  // Rocker as a complex number: (eye − pivot)/(pin − pivot) stays what it was.
  const pivot = placeOf(parts, 'rocker pivot');
  const was = { x: rocker.pin.x - rocker.pivot.x, height: rocker.pin.height - rocker.pivot.height };
  const eyeWas = { x: rockerEye.x - rocker.pivot.x, height: rockerEye.height - rocker.pivot.height };
  const re = (eyeWas.x * was.x + eyeWas.height * was.height) / (arm * arm);
  const im = (eyeWas.height * was.x - eyeWas.x * was.height) / (arm * arm);
  const now = { x: pin.x - pivot.x, height: pin.height - pivot.height };
  const eye = {
    x: pivot.x + re * now.x - im * now.height,
    height: pivot.height + re * now.height + im * now.x,
  };
  return { pin, eyes: Math.hypot(distance(eye, placeOf(parts, 'far eye')), points.damper.sideways) };
}

/** Slope by central differences of steps h, h/2, h/4 extrapolated twice; the doubt is what the last round changed, with roundings. */
function richardson(f: (z: number) => number, z: number): { slope: number; doubt: number } {
  const difference = (h: number): number => (f(z + h) - f(z - h)) / (2 * h);
  const [one, two, four] = [difference(2e-3), difference(1e-3), difference(5e-4)];
  const [first, second] = [two + (two - one) / 3, four + (four - two) / 3];
  return { slope: second + (second - first) / 15, doubt: Math.abs(second - first) / 15 };
}

function moved(points: HardPointsSI, move: <P extends HardPoint>(point: P) => P): HardPointsSI {
  if (points.kind === 'direct')
    return { ...points, armEye: move(points.armEye), frameEye: move(points.frameEye) };
  const { rocker } = points;
  return {
    ...points,
    rocker: { ...rocker, pivot: move(rocker.pivot), pin: move(rocker.pin) },
    linkEnd: move(points.linkEnd),
    rockerEye: move(points.rockerEye),
    farEye: move(points.farEye),
  };
}

function inMirror(points: HardPointsSI): HardPointsSI {
  return moved(points, (point) => ({ ...point, x: -point.x }));
}
