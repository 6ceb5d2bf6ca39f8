import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arbitraryHardPoints, type MovingRear, motionOf } from '../testing/arbitraryHardPoints.ts';
import { between } from '../testing/arbitraryStrut.ts';
import type { HardPoint, PartName } from './hardPoints.ts';
import { partsAt } from './partsAt.ts';
import { type Places, pointsFromTape } from './pointsFromTape.ts';
import { lengthsToTape, type TapedSI } from './tape.ts';

const deviation = 0.0006;
const level = { pitch: 0, radius: 0.3 };

function lengthBetween(from: PartName, to: PartName, length: number, sideways = 0): TapedSI {
  return { kind: 'between', from, to, length, sideways, deviation };
}

/** A pivot 0.4 m ahead of the axle and 0.3 m above it (500 mm), an eye above the axle. */
const near: Places = { pivot: { x: 0.45, height: 0.5 }, 'arm eye': { x: 0.05, height: 0.4 } };
const five: readonly TapedSI[] = [
  lengthBetween('axle', 'pivot', 0.5),
  { kind: 'above axle', of: 'pivot', length: 0.3, deviation },
  lengthBetween('axle', 'arm eye', 0.15),
  lengthBetween('pivot', 'arm eye', Math.hypot(0.4, 0.15)),
];

describe('points from a tape', () => {
  test('by hand: a pivot at 3-4-5, an eye right above the axle', () => {
    const answer = pointsFromTape(five, near, level);
    if (answer.kind !== 'points') throw new Error(answer.kind);
    expect(answer.points.pivot!.x).toBeCloseTo(0.4, 10);
    expect(answer.points.pivot!.height).toBeCloseTo(0.6, 10);
    expect(answer.points['arm eye']!.x).toBeCloseTo(0, 10);
    expect(answer.points['arm eye']!.height).toBeCloseTo(0.45, 10);
    expect(answer.spare).toBe(0);
    for (const misfit of answer.misfits) expect(Math.abs(misfit)).toBeLessThan(1e-12);
    // 0.3 of height per metre along 0.5: dx = (0.5 dl − 0.3 dh)/0.4.
    expect(answer.moves[0]!.pivot!.x).toBeCloseTo(1.25, 8);
    expect(answer.moves[1]!.pivot!.x).toBeCloseTo(-0.75, 8);
    expect(answer.deviations.pivot!.x).toBeCloseTo(deviation * Math.hypot(1.25, 0.75), 10);
    expect(answer.deviations.pivot!.height).toBeCloseTo(deviation, 12);
  });

  test('on the mirrored side where they are looked for there', () => {
    const answer = pointsFromTape(five, { ...near, 'arm eye': { x: 0.25, height: 0.2 } }, level);
    if (answer.kind !== 'points') throw new Error(answer.kind);
    // Mirrored on the line from axle to pivot (0.8, 0.6): (0, 0.15) → 2·0.09·(0.8, 0.6) − (0, 0.15).
    expect(answer.points['arm eye']!.x).toBeCloseTo(0.144, 9);
    expect(answer.points['arm eye']!.height).toBeCloseTo(0.3 - 0.042, 9);
  });

  test('are the machine’s own, from the lengths of the list, on a body that is not level', () => {
    fc.assert(
      fc.property(between(0.045, 0.12).chain(arbitraryHardPoints), between(-0.05, 0.05), (moving, pitch) => {
        const { places, kind, sideways } = surveyed(moving);
        const answer = pointsFromTape(tapedOff(places, kind, sideways, pitch), roughly(places), {
          pitch,
          radius: moving.rear.axleHeight,
        });
        if (answer.kind !== 'points') throw new Error(JSON.stringify(answer));
        for (const [part, place] of places) {
          if (part === 'axle') continue;
          expect(apart(answer.points[part]!, place), part).toBeLessThan(1e-8);
        }
      }),
      { seed: 851, numRuns: 200 },
    );
  });

  test('from more lengths than needed fit best: the misfits pull every point nowhere', () => {
    fc.assert(
      fc.property(fc.array(between(-0.001, 0.001), { minLength: 6, maxLength: 6 }), (errors) => {
        const exact: readonly TapedSI[] = [
          ...five,
          { kind: 'ahead of axle', of: 'pivot', length: 0.4, deviation },
          { kind: 'ahead of axle', of: 'arm eye', length: 0, deviation: 2 * deviation },
        ];
        const taped = exact.map((each, i) => ({ ...each, length: each.length + errors[i]! }));
        const answer = pointsFromTape(taped, near, level);
        if (answer.kind !== 'points') throw new Error(answer.kind);
        expect(answer.spare).toBe(2);
        // Σ misfit · d(given)/d(place) / deviation² = 0, for both coordinates of the pivot.
        const { pivot } = answer.points;
        const eye = answer.points['arm eye']!;
        const up = pivot!.height - 0.3;
        const pulls = [
          { x: pivot!.x / Math.hypot(pivot!.x, up), height: up / Math.hypot(pivot!.x, up) },
          { x: 0, height: 1 },
          { x: 0, height: 0 },
          {
            x: (pivot!.x - eye.x) / apart(pivot!, eye),
            height: (pivot!.height - eye.height) / apart(pivot!, eye),
          },
          { x: 1, height: 0 },
        ];
        for (const axis of ['x', 'height'] as const) {
          const sum = pulls.reduce((total, pull, i) => total + answer.misfits[i]! * pull[axis], 0);
          expect(Math.abs(sum)).toBeLessThan(1e-9);
        }
      }),
      { seed: 852 },
    );
  });

  test('tell how much of a slip in each length its misfit would show', () => {
    // Nothing spare: no length checks another. The same length twice: half of a slip in one shows in it.
    const bare = pointsFromTape(five, near, level);
    const twice = pointsFromTape([...five, five[2]!], near, level);
    if (bare.kind !== 'points' || twice.kind !== 'points') throw new Error('points are wanted');
    for (const share of bare.checked) expect(share).toBeCloseTo(0, 9);
    expect(twice.checked).toEqual([0, 0, 0.5, 0, 0.5].map((share) => expect.closeTo(share, 9)));
  });

  test('move with each length as solving again says', () => {
    const more = 1e-6;
    const base = pointsFromTape(five, near, level);
    five.forEach((each, i) => {
      const changed = five.map((one, k) => (k === i ? { ...each, length: each.length + more } : one));
      const there = pointsFromTape(changed, near, level);
      if (base.kind !== 'points' || there.kind !== 'points') throw new Error(there.kind);
      for (const part of ['pivot', 'arm eye'] as const) {
        for (const axis of ['x', 'height'] as const) {
          const slope = (there.points[part]![axis] - base.points[part]![axis]) / more;
          expect(slope).toBeCloseTo(base.moves[i]![part]![axis], 4);
        }
      }
    });
  });
});

describe('a tape that does not give the points', () => {
  test('has too few lengths, or lengths that leave a point free', () => {
    const free = { kind: 'not held', fewer: 1, part: 'arm eye' };
    expect(pointsFromTape(five.slice(0, 3), near, level)).toEqual(free);
    const again = [...five.slice(0, 3), lengthBetween('axle', 'arm eye', 0.15)];
    expect(pointsFromTape(again, near, level)).toEqual(free);
    // Two for the eye, but the pivot swings about the axle.
    expect(pointsFromTape([five[0]!, ...five.slice(2)], near, level)).toEqual({ ...free, part: 'pivot' });
  });

  test('has a length too short for the two others of its triangle: which, and by how much', () => {
    // Eye 0.15 m from the axle and 0.2 m from a pivot that is 0.5 m away: 150 mm are missing.
    const answer = pointsFromTape([...five.slice(0, 3), lengthBetween('pivot', 'arm eye', 0.2)], near, level);
    expect(answer).toEqual({
      kind: 'too short',
      taped: 3,
      beside: 2,
      across: 0,
      by: expect.closeTo(0.15, 12),
    });
  });

  test('has a point higher above the axle than it is away from it', () => {
    const above: TapedSI = { kind: 'above axle', of: 'pivot', length: 0.52, deviation };
    const answer = pointsFromTape([five[0]!, above, ...five.slice(2)], near, level);
    expect(answer).toEqual({
      kind: 'too short',
      taped: 0,
      beside: null,
      across: 1,
      by: expect.closeTo(0.02, 12),
    });
  });

  test('lets a triangle that a millimetre of tape flattens be flat', () => {
    // 1.5 mm are missing in one line of axle, eye and pivot; three readings of ± 1 mm (90 %) are ± 1.7 mm together.
    const flat = [...five.slice(0, 2), lengthBetween('axle', 'arm eye', 0.2)];
    const third: TapedSI = { kind: 'above axle', of: 'arm eye', length: 0.12, deviation };
    const answer = pointsFromTape([...flat, lengthBetween('pivot', 'arm eye', 0.2985), third], near, level);
    expect(answer.kind).toBe('points');
  });

  test('has one that the others do not bear out: by how much it is off them, and the sign', () => {
    const plumb = (of: 'pivot' | 'arm eye', length: number): TapedSI => ({
      kind: 'ahead of axle',
      of,
      length,
      deviation,
    });
    const spare = [...five, plumb('pivot', 0.4), plumb('arm eye', 0), lengthBetween('axle', 'pivot', 0.5)];
    const slip = spare.map((each, i) => (i === 3 ? { ...each, length: each.length - 0.04 } : each));
    const answer = pointsFromTape(slip, near, level);
    expect(answer).toEqual({ kind: 'do not meet', taped: 3, by: expect.closeTo(-0.04, 3) });
  });

  test('has a length of nothing, or to a part that nobody looks for: a broken contract', () => {
    expect(() => pointsFromTape([lengthBetween('axle', 'pivot', 0)], near, level)).toThrow(
      'length 0 is 0 ± 0.0006 m',
    );
    expect(() => pointsFromTape([lengthBetween('axle', 'far eye', 0.4)], near, level)).toThrow('far eye');
  });
});

function apart(one: HardPoint, other: HardPoint): number {
  return Math.hypot(one.x - other.x, one.height - other.height);
}

function surveyed(moving: MovingRear) {
  const { points } = moving.rear;
  const parts = partsAt(motionOf(moving), moving.survey.referenceTravel);
  const places = new Map(parts.map(({ part, x, height }) => [part, { x, height }]));
  return { places, kind: points.kind, sideways: points.damper.sideways };
}

/** The lengths of the list, as a tape reads them on a pitched machine; the damper's own from eye to eye, splay and all. */
function tapedOff(
  places: ReadonlyMap<PartName, HardPoint>,
  kind: 'direct' | 'linkage',
  sideways: number,
  pitch: number,
): readonly TapedSI[] {
  const at = (part: PartName): HardPoint => places.get(part)!;
  return lengthsToTape[kind].map((each): TapedSI => {
    if (each.kind === 'above axle') {
      const [x, height] = [at(each.of).x - at('axle').x, at(each.of).height - at('axle').height];
      return { ...each, length: height * Math.cos(pitch) - x * Math.sin(pitch), deviation };
    }
    const { from, to } = each;
    const isDamper = to === 'far eye' ? from === 'rocker eye' : from === 'arm eye';
    const splay = isDamper ? sideways : 0;
    return lengthBetween(from, to, Math.hypot(apart(at(from), at(to)), splay), splay);
  });
}

/** As one would point at them by eye: to 50 mm. */
function roughly(places: ReadonlyMap<PartName, HardPoint>): Places {
  const shift = [0.035, -0.03, 0.027, -0.036, 0.022];
  return Object.fromEntries(
    [...places].map(([part, { x, height }], i) => [
      part,
      { x: x + shift[i % 5]!, height: height + shift[(i + 2) % 5]! },
    ]),
  );
}
