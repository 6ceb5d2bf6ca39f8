import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arbitraryHardPoints } from '../testing/arbitraryHardPoints.ts';
import { between } from '../testing/arbitraryStrut.ts';
import { LINED_UP, riseRange } from './deadCentres.ts';
import type { DirectSI, HardPoint, LinkageSI } from './hardPoints.ts';
import { blankLoop, loopOf, pinAt } from './link.ts';
import { partsAt } from './partsAt.ts';
import { type HardPointRear, LEAST_RATIO, strokesOf } from './riseAtStroke.ts';
import { surveyRear } from './survey.ts';
import { referenceTravelOf } from './wheelMotion.ts';

const arm = { kind: 'circle' as const, pivotX: 0.58, pivotHeight: 0.42 };

/** An invented rear whose rocker hangs below the arm and is pulled. */
const points: LinkageSI = {
  kind: 'linkage',
  damper: { extendedLength: 0.34, sideways: 0 },
  rocker: { on: 'frame', pivot: { x: 0.55, height: 0.3 }, pin: { x: 0.45, height: 0.25 } },
  linkEnd: { x: 0.4, height: 0.35 },
  rockerEye: { x: 0.4, height: 0.24 },
  farEye: { on: 'frame', x: 0.5, height: 0.56 },
};
const rear: HardPointRear = { points, arm, axleHeight: 0.32 };

/** Arm level, damper upright over its middle: 0.3 m between the eyes. */
const upright: DirectSI = {
  kind: 'direct',
  damper: { extendedLength: 0.3, sideways: 0 },
  armEye: { x: 0.25, height: 0.3 },
  frameEye: { x: 0.25, height: 0.6 },
};
const level: HardPointRear = {
  points: upright,
  arm: { kind: 'circle', pivotX: 0.5, pivotHeight: 0.3 },
  axleHeight: 0.3,
};

function withPoints(change: Partial<LinkageSI>): HardPointRear {
  return { ...rear, points: { ...points, ...change } };
}

describe('a rear that moves', () => {
  test('comes with its travels, from the extension stop on, and what its damper does to the link', () => {
    const survey = surveyRear(rear, 0.07);
    if (survey.kind !== 'moves') throw new Error(survey.kind);
    // Eyes (0.4, 0.24) and (0.5, 0.56): √(0.1² + 0.32²) = 335.26 mm, 4.74 mm into the stroke.
    expect(survey.eyeToEye).toBeCloseTo(Math.hypot(0.1, 0.32), 12);
    expect(survey.referenceTravel).toBeGreaterThan(0);
    expect(survey.link).toBe('pulls');
    const strokes = strokesOf(rear);
    const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
    strokes(-survey.referenceTravel, at);
    expect(at.stroke).toBeCloseTo(0, 13);
    strokes(survey.travelMax - survey.referenceTravel, at);
    expect(at.stroke).toBeCloseTo(0.07, 13);
  });

  test('counts travel from below 0 where it was surveyed hanging lower than its damper lets it', () => {
    const survey = surveyRear(
      { ...level, points: { ...upright, damper: { extendedLength: 0.29, sideways: 0 } } },
      0.05,
    );
    // 10 mm of damper at a ratio of a half: about 20 mm of wheel.
    expect(survey).toMatchObject({ kind: 'moves', link: null });
    if (survey.kind === 'moves') expect(survey.referenceTravel).toBeCloseTo(-0.02, 3);
  });

  test('follows its damper everywhere on the way: the ratio stays above the least', () => {
    fc.assert(
      fc.property(between(0.045, 0.12).chain(arbitraryHardPoints), between(0, 1), (moving, along) => {
        const { referenceTravel, travelMax } = moving.survey;
        const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
        expect(strokesOf(moving.rear)(along * travelMax - referenceTravel, at)).toBe(true);
        expect(at.motionRatio).toBeGreaterThan(LEAST_RATIO);
        expect(referenceTravelOf(moving.rear)).toBe(referenceTravel);
      }),
      { seed: 811, numRuns: 500 },
    );
  });
});

describe('a linkage', () => {
  test('ends where link and rocker arm are 1° from one line, or where the arm is 1° from upright', () => {
    const ends = { 'link straight': 0, 'link folded': 0, 'arm upright': 0, 'damper over centre': 0 };
    fc.assert(
      fc.property(between(0.045, 0.12).chain(arbitraryHardPoints), fc.boolean(), ({ rear: each }, up) => {
        const range = riseRange(each.points, each.arm, each.axleHeight);
        if (typeof range === 'string') throw new Error(range);
        const [rise, by] = up ? [range.highest, range.highestBy] : [range.lowest, range.lowestBy];
        ends[by] += 1;
        const end = {
          kinematics: each.points,
          axlePath: each.arm,
          tyre: { radius: each.axleHeight },
          referenceTravel: 0,
        };
        const parts = new Map(partsAt(end, rise).map((part) => [part.part, part]));
        const angle = (a: HardPoint, at: HardPoint, b: HardPoint): number => {
          const [ax, az, bx, bz] = [a.x - at.x, a.height - at.height, b.x - at.x, b.height - at.height];
          return Math.abs(Math.atan2(ax * bz - az * bx, ax * bx + az * bz));
        };
        if (by === 'arm upright') {
          const [axle, pivot] = [parts.get('axle')!, parts.get('pivot')!];
          const overPivot = { x: pivot.x, height: pivot.height + (up ? 1 : -1) };
          expect(angle(axle, pivot, overPivot)).toBeCloseTo(LINED_UP, 9);
          return;
        }
        const at = angle(parts.get('rocker pivot')!, parts.get('link pin')!, parts.get('link end')!);
        expect(at).toBeCloseTo(by === 'link straight' ? Math.PI - LINED_UP : LINED_UP, 6);
      }),
      { seed: 812, numRuns: 500 },
    );
    expect(Math.min(ends['arm upright'], ends['link folded'], ends['link straight'])).toBeGreaterThan(10);
  });

  test('that locks up inside the stroke is refused, with the link that is too short and by how much', () => {
    const short = withPoints({ rocker: { ...points.rocker, pin: { x: 0.47, height: 0.3 } } });
    const survey = surveyRear(short, 0.07);
    if (survey.kind !== 'locks up') throw new Error(survey.kind);
    expect(survey.by).toBe('link straight');
    expect(survey.stroke + survey.short).toBeCloseTo(0.07, 13);
    expect(survey.travel).toBeGreaterThan(0.03);
    const { tooShort } = survey;
    expect(tooShort?.part).toBe('link');
    const by = tooShort?.by ?? 0;
    // The rocker put together again with a link so much longer: with a micrometre more it moves, with one less not.
    expect(surveyRear(longer(short, 'link', by + 1e-6), 0.07).kind).toBe('moves');
    expect(surveyRear(longer(short, 'link', by - 1e-6), 0.07).kind).toBe('locks up');
  });

  test('that locks up is short of a link or of a rocker: so much longer, put together again, it moves', () => {
    const found = { link: 0, rocker: 0 };
    fc.assert(
      fc.property(between(0.045, 0.12).chain(arbitraryHardPoints), ({ rear: each, stroke }) => {
        const survey = surveyRear(each, 3 * stroke);
        if (survey.kind !== 'locks up' || survey.tooShort === null) return;
        const { part, by } = survey.tooShort;
        found[part] += 1;
        expect(surveyRear(longer(each, part, by + 1e-6), 3 * stroke).kind).toBe('moves');
        expect(surveyRear(longer(each, part, by - 1e-6), 3 * stroke).kind).not.toBe('moves');
      }),
      { seed: 814, numRuns: 3000 },
    );
    expect(found.link).toBeGreaterThan(20);
    expect(found.rocker).toBeGreaterThan(5);
  });
});

describe('a rear that does not move is refused', () => {
  test('with its damper too long to be ever extended, by how much', () => {
    // Arm level with its eye 0.25 m from the pivot, frame eye 0.3 m above it: upright the arm would lie 1° from below the pivot.
    const survey = surveyRear(
      { ...level, points: { ...upright, damper: { extendedLength: 0.7, sideways: 0 } } },
      0.05,
    );
    if (survey.kind !== 'never extended') throw new Error(survey.kind);
    // Longest: eyes and pivot in line, √(0.25² + 0.3²) + 0.25 = 640.5 mm; short of that the damper is already over centre.
    expect(survey.nearest).toBeLessThanOrEqual(Math.hypot(0.25, 0.3) + 0.25);
    expect(survey.nearest).toBeGreaterThan(0.6);
    expect(survey.short).toBeCloseTo(0.7 - survey.nearest, 12);
  });

  test('with a damper that is over centre before its stroke is made', () => {
    // Eyes in line with the pivot: 0.3905 − 0.25 = 140.5 mm is the shortest, so 159.5 mm is all the stroke there is.
    const survey = surveyRear(level, 0.2);
    if (survey.kind !== 'locks up') throw new Error(survey.kind);
    expect(survey.tooShort).toBeNull();
    expect(survey.stroke).toBeLessThan(0.3 - (Math.hypot(0.25, 0.3) - 0.25) + 1e-9);
    expect(survey.short).toBeCloseTo(0.2 - survey.stroke, 12);
  });

  test.each([
    [
      'the eye at the swingarm’s pivot',
      { ...level, points: { ...upright, armEye: { x: 0.5, height: 0.3 } } },
      ['arm eye', 'pivot'],
    ],
    [
      'both eyes at one place',
      { ...level, points: { ...upright, frameEye: upright.armEye } },
      ['arm eye', 'frame eye'],
    ],
    [
      'the axle at the pivot',
      { ...level, arm: { ...arm, pivotX: 0.0005, pivotHeight: 0.3 } },
      ['axle', 'pivot'],
    ],
    ['a link of no length', withPoints({ linkEnd: points.rocker.pin }), ['link pin', 'link end']],
    [
      'a rocker of no length',
      withPoints({ rocker: { ...points.rocker, pin: points.rocker.pivot } }),
      ['rocker pivot', 'link pin'],
    ],
    [
      'the eye at the rocker’s pivot',
      withPoints({ rockerEye: points.rocker.pivot }),
      ['rocker pivot', 'rocker eye'],
    ],
    [
      'a damper of no length',
      withPoints({ farEye: { on: 'frame', ...points.rockerEye } }),
      ['rocker eye', 'far eye'],
    ],
    [
      'a link to the swingarm’s pivot',
      withPoints({ linkEnd: { x: 0.58, height: 0.42 } }),
      ['link end', 'pivot'],
    ],
  ] as const)('with two parts at one place: %s', (_, each, parts) => {
    expect(surveyRear(each, 0.07)).toEqual({ kind: 'same place', parts });
  });

  test('with its pivot behind the axle', () => {
    const survey = surveyRear({ ...level, arm: { ...arm, pivotX: -0.1 } }, 0.07);
    expect(survey).toEqual({ kind: 'pivot behind', pivotX: -0.1 });
  });

  test('with a damper that gets longer as the wheel rises', () => {
    const below = { ...upright, frameEye: { x: 0.25, height: 0.05 } };
    // Upright below the middle of the arm: −0.5.
    const survey = surveyRear({ ...level, points: below }, 0.05);
    expect(survey.kind).toBe('wrong way');
    if (survey.kind === 'wrong way') expect(survey.motionRatio).toBeCloseTo(-0.5, 12);
  });

  test('standing at a dead centre, from which the points do not tell the way', () => {
    // Rocker pivot, pin and link end on one line: 0.1 and 0.1 m apart, stretched; then folded.
    const pivot = points.rocker.pivot;
    const line = (far: number): HardPoint => ({ x: pivot.x - 0.6 * far, height: pivot.height + 0.8 * far });
    const rocker = { ...points.rocker, pin: line(0.1) };
    expect(surveyRear(withPoints({ rocker, linkEnd: line(0.2) }), 0.07)).toEqual({
      kind: 'lined up',
      by: 'link straight',
    });
    expect(surveyRear(withPoints({ rocker, linkEnd: line(0.05) }), 0.07)).toEqual({
      kind: 'lined up',
      by: 'link folded',
    });
    const inLine = { ...upright, frameEye: { x: 0.1, height: 0.3 } };
    expect(surveyRear({ ...level, points: inLine }, 0.07)).toEqual({
      kind: 'lined up',
      by: 'damper over centre',
    });
    const standing = { ...level, arm: { ...arm, pivotX: 0.002, pivotHeight: 0.8 } };
    expect(surveyRear(standing, 0.07)).toEqual({ kind: 'lined up', by: 'arm upright' });
  });

  test('for a figure that is no number, or no stroke, by a throw: no reading gives that', () => {
    expect(() => surveyRear(withPoints({ rockerEye: { x: Number.NaN, height: 0.2 } }), 0.07)).toThrow(
      'x is NaN',
    );
    expect(() => surveyRear(rear, 0)).toThrow('a stroke of 0 m');
  });
});

test('whatever the points, the answer is one of these and holds no NaN', () => {
  const place = fc.record({ x: between(-0.3, 0.9), height: between(0, 0.9) });
  const on = fc.constantFrom('frame' as const, 'arm' as const);
  const damper = fc.record({ extendedLength: between(0.1, 0.8), sideways: between(0, 0.2) });
  const anyPoints = fc.oneof(
    fc.record({ kind: fc.constant('direct' as const), damper, armEye: place, frameEye: place }),
    fc.record({
      kind: fc.constant('linkage' as const),
      damper,
      rocker: fc.record({ on, pivot: place, pin: place }),
      linkEnd: place,
      rockerEye: place,
      farEye: fc.record({ on, x: between(-0.3, 0.9), height: between(0, 0.9) }),
    }),
  );
  const kinds = new Set<string>();
  fc.assert(
    fc.property(
      anyPoints,
      place,
      between(0.1, 0.5),
      between(0.01, 0.4),
      (each, pivot, axleHeight, stroke) => {
        const path = { kind: 'circle' as const, pivotX: pivot.x, pivotHeight: pivot.height };
        const survey = surveyRear({ points: each, arm: path, axleHeight }, stroke);
        kinds.add(survey.kind);
        if (survey.kind === 'moves') {
          // No dead centre was jumped over on the way to the stop and from there to the metal.
          const strokes = strokesOf({ points: each, arm: path, axleHeight });
          const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
          const least = Math.min(0, -survey.referenceTravel);
          const most = Math.max(0, survey.travelMax - survey.referenceTravel);
          for (let i = 0; i <= 40; i += 1) {
            expect(strokes(least + ((most - least) * i) / 40, at)).toBe(true);
            expect(at.motionRatio).toBeGreaterThan(LEAST_RATIO - 1e-9);
          }
          strokes(-survey.referenceTravel, at);
          expect(at.stroke).toBeCloseTo(0, 9);
          strokes(survey.travelMax - survey.referenceTravel, at);
          expect(at.stroke).toBeCloseTo(stroke, 9);
        }
        expect(
          JSON.stringify(survey, (_, value) =>
            Number.isNaN(value) || Math.abs(value) === Number.POSITIVE_INFINITY ? 'no number' : value,
          ),
        ).not.toContain('no number');
      },
    ),
    { seed: 813, numRuns: 20_000 },
  );
  expect([...kinds].sort()).toEqual([
    'lined up',
    'locks up',
    'moves',
    'never extended',
    'pivot behind',
    'same place',
    'wrong way',
  ]);
});

test('a link is pulled where a longer one would leave the damper longer, the arm held: virtual work', () => {
  const seen = { pulls: 0, pushes: 0 };
  fc.assert(
    fc.property(between(0.045, 0.12).chain(arbitraryHardPoints), ({ rear: each, survey }) => {
      if (survey.link === null || each.points.kind !== 'linkage') return;
      seen[survey.link] += 1;
      const other = longer(each, 'link', 1e-6).points;
      if (other.kind !== 'linkage') throw new Error(other.kind);
      const eyes = ({ rockerEye, farEye }: LinkageSI): number =>
        Math.hypot(rockerEye.x - farEye.x, rockerEye.height - farEye.height);
      // F dL = t dl: the damper pushes its eyes apart with F > 0, the link pulls its pins together with t.
      expect(eyes(other) > eyes(each.points)).toBe(survey.link === 'pulls');
    }),
    { seed: 815, numRuns: 500 },
  );
  expect(Math.min(seen.pulls, seen.pushes)).toBeGreaterThan(50);
});

/** The same parts, one of them so much longer, put together at the same place of the arm: rocker and damper eye turned to it. */
function longer(each: HardPointRear, part: 'link' | 'rocker', more: number): HardPointRear {
  if (each.points.kind !== 'linkage') throw new Error(each.points.kind);
  const { rocker, linkEnd, rockerEye } = each.points;
  const loop = blankLoop();
  loopOf(each.points, loop);
  const share = 1 + (part === 'rocker' ? more / Math.sqrt(loop.armSquare) : 0);
  if (part === 'link') loop.linkSquare = (Math.sqrt(loop.linkSquare) + more) ** 2;
  const [armX, armHeight] = [share * loop.armX, share * loop.armHeight];
  const armSquare = share * share * loop.armSquare;
  const pin = { x: 0, height: 0 };
  pinAt(
    { ...loop, armX, armHeight, armSquare },
    linkEnd.x - rocker.pivot.x,
    linkEnd.height - rocker.pivot.height,
    pin,
  );
  const cos = (armX * pin.x + armHeight * pin.height) / armSquare;
  const sin = (armX * pin.height - armHeight * pin.x) / armSquare;
  const [x, height] = [rockerEye.x - rocker.pivot.x, rockerEye.height - rocker.pivot.height];
  return {
    ...each,
    points: {
      ...each.points,
      rocker: { ...rocker, pin: { x: rocker.pivot.x + pin.x, height: rocker.pivot.height + pin.height } },
      rockerEye: {
        x: rocker.pivot.x + x * cos - height * sin,
        height: rocker.pivot.height + x * sin + height * cos,
      },
    },
  };
}
