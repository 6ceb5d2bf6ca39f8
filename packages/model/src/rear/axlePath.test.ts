import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { between } from '../testing/arbitraryStrut.ts';
import { type AxleAt, type AxlePathSI, axleAt } from './axlePath.ts';

function at(path: AxlePathSI, rise: number, axleX = 0, rake = 0.45): AxleAt {
  const out: AxleAt = { x: 0, height: 0, axleSlope: 0, axleBend: 0 };
  axleAt(path, axleX, 0.31, rise, rake, out);
  return out;
}

const pivot: fc.Arbitrary<AxlePathSI> = fc.record({
  kind: fc.constant('circle' as const),
  pivotX: between(0.4, 0.7),
  pivotHeight: between(0.25, 0.5),
});
const anyPath: fc.Arbitrary<AxlePathSI> = fc.oneof(
  fc.constant<AxlePathSI>({ kind: 'straight' }),
  fc.constant<AxlePathSI>({ kind: 'fork' }),
  pivot,
);

describe('an axle', () => {
  test('stands where the body coordinates say at the reference travel, and rises by as much as the wheel travels', () => {
    fc.assert(
      fc.property(anyPath, between(-0.1, 0.15), (path, rise) => {
        expect(at(path, 0).x).toBeCloseTo(0, 12);
        expect(at(path, rise).height).toBe(0.31 + rise);
      }),
      { seed: 701 },
    );
  });

  test('moves along its slope, and its slope along its bend', () => {
    fc.assert(
      fc.property(anyPath, between(-0.1, 0.15), (path, rise) => {
        const step = 1e-5;
        const [below, here, above] = [at(path, rise - step), at(path, rise), at(path, rise + step)];
        // Arms of 0.35 m and more: third derivatives below 300 /m², times step²/6: 5e-9.
        expect((above.x - below.x) / (2 * step)).toBeCloseTo(here.axleSlope, 7);
        expect((above.axleSlope - below.axleSlope) / (2 * step)).toBeCloseTo(here.axleBend, 5);
      }),
      { seed: 702 },
    );
  });

  test('on a swingarm keeps its distance from the pivot', () => {
    fc.assert(
      fc.property(pivot, between(-0.1, 0.15), (path, rise) => {
        if (path.kind !== 'circle') return;
        const arm = Math.hypot(path.pivotX, path.pivotHeight - 0.31);
        const here = at(path, rise);
        expect(Math.hypot(path.pivotX - here.x, path.pivotHeight - here.height)).toBeCloseTo(arm, 12);
      }),
      { seed: 703 },
    );
  });

  test('on a fork goes back by the tangent of the rake', () => {
    // 100 mm up at 0.45 rad.
    expect(at({ kind: 'fork' }, 0.1, 1.5).x).toBeCloseTo(1.5 - 0.1 * Math.tan(0.45), 12);
  });

  test('cannot be lifted higher above its pivot than its arm is long', () => {
    expect(() => at({ kind: 'circle', pivotX: 0.3, pivotHeight: 0.31 }, 0.31)).toThrow(
      '0.31 m above the pivot',
    );
  });
});
