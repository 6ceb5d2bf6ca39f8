import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { monotoneCubic } from '../numerics/monotoneCubic.ts';
import { between } from '../testing/arbitraryStrut.ts';
import {
  type RatioSI,
  type StrokeAt,
  strokeAt,
  strokeLimit,
  travelAtStroke,
  travelOnCubic,
} from './kinematics.ts';

function at(kinematics: RatioSI, z: number, rake = 0.45): StrokeAt {
  const out: StrokeAt = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  strokeAt(kinematics, rake, z, out);
  return out;
}

const rows = fc.array(fc.tuple(between(0.005, 0.04), between(0.3, 1.2)), { minLength: 2, maxLength: 10 });
const drawn: fc.Arbitrary<RatioSI> = fc.tuple(rows, between(0.9, 1.1)).map(([steps, scale]) => {
  const z = [0];
  const s = [0];
  for (const [width, ratio] of steps) {
    z.push(z.at(-1)! + width);
    s.push(s.at(-1)! + width * ratio);
  }
  return { kind: 'table', curve: monotoneCubic(z, s), scale };
});
const anyKinematics: fc.Arbitrary<RatioSI> = fc.oneof(
  fc.record({ kind: fc.constant('ratio' as const), motionRatio: between(0.2, 1.5) }),
  fc.constant<RatioSI>({ kind: 'fork' }),
  fc.record({
    kind: fc.constant('cubic' as const),
    slope: between(0.4, 1),
    bend: between(-1, 2),
    twist: between(-8, 8),
  }),
  fc.record({ kind: fc.constant('quadratic' as const), slope: between(0.4, 1), bend: between(-1, 2) }),
  drawn,
);

describe('any rear', () => {
  test('has its damper out when its wheel is out', () => {
    fc.assert(
      fc.property(anyKinematics, (kinematics) => {
        expect(at(kinematics, 0).stroke).toBe(0);
      }),
      { seed: 711 },
    );
  });

  test('has its ratio as the slope of its stroke, and the ratio’s slope as that of the ratio', () => {
    fc.assert(
      fc.property(anyKinematics, between(0.001, 0.15), (kinematics, z) => {
        const step = 1e-6;
        const [below, above] = [at(kinematics, z - step), at(kinematics, z + step)];
        const slope = (above.stroke - below.stroke) / (2 * step);
        // Both lie between what the two sides say, also where a drawn point is in between; roundings of 1e-16 m over it.
        const ratios = [below.motionRatio, above.motionRatio];
        const noise = 1e-9 + 1e-3 * Math.abs(ratios[0]! - ratios[1]!);
        expect(slope).toBeGreaterThanOrEqual(Math.min(...ratios) - noise);
        expect(slope).toBeLessThanOrEqual(Math.max(...ratios) + noise);
        const bend = (above.motionRatio - below.motionRatio) / (2 * step);
        const bends = [below.ratioSlope, above.ratioSlope];
        const room = 1e-6 * Math.max(1, ...bends.map(Math.abs));
        expect(bend).toBeGreaterThanOrEqual(Math.min(...bends) - room);
        expect(bend).toBeLessThanOrEqual(Math.max(...bends) + room);
      }),
      { seed: 712, numRuns: 1000 },
    );
  });

  test('finds the travel that gives a stroke', () => {
    fc.assert(
      fc.property(anyKinematics, between(0, 0.06), between(0, 1.1), (kinematics, stroke, rake) => {
        const wanted = kinematics.kind === 'table' ? Math.min(stroke, 1.05 * lastStroke(kinematics)) : stroke;
        // No travel gives a stroke before which the ratio runs out: a quadratic's, or a curve's that ends flat.
        fc.pre(strokeLimit(kinematics) > wanted);
        const z = travelAtStroke(kinematics, rake, wanted);
        expect(z).toBeGreaterThanOrEqual(-1e-15);
        expect(at(kinematics, z, rake).stroke).toBeCloseTo(wanted, 12);
      }),
      { seed: 713, numRuns: 1000 },
    );
  });
});

function lastStroke({ curve, scale }: Extract<RatioSI, { kind: 'table' }>): number {
  return scale * curve.y.at(-1)!;
}

test('a fork’s stroke is longer than its wheel’s travel, by the cosine of the rake', () => {
  // 27°: 1/cos is 1.1223, about 12 % more millimetres.
  const rake = (27 * Math.PI) / 180;
  expect(at({ kind: 'fork' }, 0.1, rake).stroke).toBeCloseTo(0.11223, 5);
  expect(at({ kind: 'fork' }, 0.1, rake).motionRatio).toBeCloseTo(1.1223, 4);
});

test('a ratio that runs out before the stroke is made has no answer', () => {
  // s = 0.6 z − 2 z² is at most 0.36/8 = 45 mm.
  const kinematics: RatioSI = { kind: 'quadratic', slope: 0.6, bend: -2 };
  expect(travelAtStroke(kinematics, 0, 0.0449)).toBeLessThan(0.15);
  expect(() => travelAtStroke(kinematics, 0, 0.0451)).toThrow(
    'no wheel travel gives a damper stroke of 0.0451 m',
  );
  expect(strokeLimit(kinematics)).toBeCloseTo(0.045, 12);
  const flat: RatioSI = {
    kind: 'table',
    curve: monotoneCubic([0, 0.05, 0.06], [0, 0.04, 0.04]),
    scale: 1,
  };
  expect(() => travelAtStroke(flat, 0, 0.05)).toThrow('0.05 m');
  expect(strokeLimit(flat)).toBe(0.04);
});

test('a cubic turns back where its ratio first is 0, and answers a stroke on either side of the stop', () => {
  // s = 0.5 z + z² − 10 z³; ratio 0.5 + 2 z − 30 z² = 0 at z = (1 ± √16)/30: 166.7 mm and −100 mm.
  const cubic: RatioSI = { kind: 'cubic', slope: 0.5, bend: 1, twist: -10 };
  const turns = 5 / 30;
  expect(strokeLimit(cubic)).toBeCloseTo(0.5 * turns + turns ** 2 - 10 * turns ** 3, 12);
  expect(() => travelAtStroke(cubic, 0, 0.07)).toThrow('0.07 m');
  // At −50 mm: −25 + 2.5 + 1.25 mm.
  expect(travelAtStroke(cubic, 0, -0.02125)).toBeCloseTo(-0.05, 12);
  // At −100 mm: −50 + 10 + 10 mm, and no further.
  expect(travelOnCubic(cubic, -0.0301)).toBeNull();
  const rising = { kind: 'cubic', slope: 0.5, bend: 1, twist: 10 } as const;
  expect(strokeLimit(rising)).toBe(Number.POSITIVE_INFINITY);
});

test('a drawn curve goes on straight past its last point for as much travel again, and no further', () => {
  // 40 mm of stroke at 80 mm, a ratio of 0.5 throughout: on to 160 mm of travel, 80 mm of stroke.
  const drawn: RatioSI = {
    kind: 'table',
    curve: monotoneCubic([0, 0.04, 0.08], [0, 0.02, 0.04]),
    scale: 1,
  };
  expect(strokeLimit(drawn)).toBeCloseTo(0.08, 12);
  expect(travelAtStroke(drawn, 0, 0.0799)).toBeCloseTo(0.1598, 12);
  expect(() => travelAtStroke(drawn, 0, 0.0801)).toThrow('0.0801 m');
});

test('a table that begins past the extension stop still finds the stop', () => {
  // Rows from 60 to 80 mm of travel only; straight on below, so 10 mm of stroke are at 20 mm.
  const curve = monotoneCubic([0.06, 0.07, 0.08], [0.03, 0.035, 0.04]);
  expect(travelAtStroke({ kind: 'table', curve, scale: 1 }, 0, 0.01)).toBeCloseTo(0.02, 12);
});
