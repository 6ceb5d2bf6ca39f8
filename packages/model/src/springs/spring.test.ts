import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compressionFor, leastRate, type SpringSI, springAt } from './spring.ts';

function at(spring: SpringSI, x: number) {
  const out = { force: 0, rate: 0, energy: 0 };
  springAt(spring, x, out);
  return out;
}

const rate = fc.double({ min: 2_000, max: 400_000, noNaN: true });
const stroke = fc.double({ min: 0, max: 0.08, noNaN: true });
const rising = fc
  .array(fc.tuple(fc.double({ min: 1e-3, max: 0.02, noNaN: true }), rate), { minLength: 1, maxLength: 8 })
  .map((pieces): SpringSI => {
    const compression = [0];
    const force = [0];
    for (const [width, slope] of pieces) {
      compression.push(compression.at(-1)! + width);
      force.push(force.at(-1)! + slope * width);
    }
    return { kind: 'table', compression, force };
  });
const anySpring: fc.Arbitrary<SpringSI> = fc.oneof(
  fc.record({ kind: fc.constant('linear' as const), rate }),
  fc.record({ kind: fc.constant('series' as const), soft: rate, stiff: rate, softStroke: stroke }),
  fc.record({ kind: fc.constant('parallel' as const), rate, second: rate, gap: stroke }),
  rising,
);
const compression = fc.double({ min: 0, max: 0.15, noNaN: true });

describe('any spring', () => {
  test('is loose when not compressed', () => {
    fc.assert(
      fc.property(anySpring, compression, (spring, x) => {
        expect(at(spring, -x - 1e-12)).toEqual({ force: 0, rate: 0, energy: 0 });
        expect(at(spring, 0).force).toBe(0);
        expect(at(spring, 0).energy).toBe(0);
      }),
      { seed: 31 },
    );
  });

  test('has its force as the slope of its energy', () => {
    fc.assert(
      fc.property(anySpring, fc.double({ min: 1e-3, max: 0.15, noNaN: true }), (spring, x) => {
        const step = 1e-6;
        const slope = (at(spring, x + step).energy - at(spring, x - step).energy) / (2 * step);
        // A kink within the step leaves at most 0.8 MN/m · step / 4 = 0.2 N; elsewhere only rounding, below that.
        expect(Math.abs(slope - at(spring, x).force)).toBeLessThan(0.25);
      }),
      { seed: 32 },
    );
  });

  test('has its rate as the slope of its force, looking deeper', () => {
    fc.assert(
      fc.property(anySpring, compression, (spring, x) => {
        const step = 1e-7;
        const here = at(spring, x);
        const deeper = at(spring, x + step);
        fc.pre(deeper.rate === here.rate);
        // Forces reach 0.12 MN: rounding 3e-11 N, over the step 3e-4 N/m; relative to 1 kN/m at the least.
        expect((deeper.force - here.force) / step / here.rate).toBeCloseTo(1, 5);
      }),
      { seed: 33 },
    );
  });

  test('is nowhere softer than its least rate, and somewhere as soft', () => {
    fc.assert(
      fc.property(anySpring, fc.array(compression, { minLength: 40, maxLength: 40 }), (spring, places) => {
        const least = leastRate(spring);
        // The slope of a piece and its least are the same division; a series sum may round otherwise.
        for (const x of places) expect(at(spring, x).rate).toBeGreaterThanOrEqual(least * (1 - 1e-12));
        const starts = spring.kind === 'table' ? spring.compression.slice(0, -1) : [0];
        const rates = starts.map((x) => at(spring, x).rate);
        const closed = spring.kind === 'series' && spring.softStroke === 0;
        if (!closed && !(spring.kind === 'parallel' && spring.gap === 0))
          expect(Math.min(...rates) / least).toBeCloseTo(1, 12);
      }),
      { seed: 40 },
    );
  });

  test('never bears less when compressed more', () => {
    fc.assert(
      fc.property(anySpring, compression, compression, (spring, one, other) => {
        const less = at(spring, Math.min(one, other)).force;
        const more = at(spring, Math.max(one, other)).force;
        expect(more).toBeGreaterThanOrEqual(less);
      }),
      { seed: 34 },
    );
  });

  test('is compressed for a force by what gives that force', () => {
    fc.assert(
      fc.property(anySpring, compression, (spring, x) => {
        // The force, up to 60 kN, rounds by 7e-12 N; over the softest 2 kN/m that is 4e-15 m, a few times over.
        expect(Math.abs(compressionFor(spring, at(spring, x).force) - x)).toBeLessThan(5e-14);
      }),
      { seed: 35 },
    );
  });
});

describe('two springs in series', () => {
  const series: SpringSI = { kind: 'series', soft: 85_000, stiff: 120_000, softStroke: 0.02 };

  test('give like one of k1 k2/(k1 + k2) until the soft one is solid', () => {
    // 85 · 120/205 = 49.756098 N/mm
    expect(at(series, 0.01).rate).toBeCloseTo((85_000 * 120_000) / 205_000, 6);
    expect(at(series, 0.01).force).toBeCloseTo(497.56098, 4);
  });

  test('give like the stiff one alone after that', () => {
    // Solid at 85 N/mm · 20 mm = 1700 N, when the stiff one is in by 1700/120 mm.
    const solidAt = 0.02 + 1700 / 120_000;
    expect(compressionFor(series, 1700)).toBeCloseTo(solidAt, 12);
    expect(at(series, solidAt + 1e-9).rate).toBe(120_000);
    expect(at(series, solidAt + 0.01).force).toBeCloseTo(1700 + 1200, 6);
  });

  test('with no stroke in the soft one are the stiff one, with endless stroke never close up', () => {
    fc.assert(
      fc.property(rate, rate, compression, (soft, stiff, x) => {
        expect(at({ kind: 'series', soft, stiff, softStroke: 0 }, x)).toEqual(
          at({ kind: 'linear', rate: stiff }, x),
        );
        const open: SpringSI = { kind: 'series', soft, stiff, softStroke: Number.POSITIVE_INFINITY };
        expect(at(open, x)).toEqual(at({ kind: 'linear', rate: (soft * stiff) / (soft + stiff) }, x));
      }),
      { seed: 36 },
    );
  });

  test('that never close up do not mind which is called soft', () => {
    fc.assert(
      fc.property(rate, rate, compression, (one, other, x) => {
        const softStroke = Number.POSITIVE_INFINITY;
        const named: SpringSI = { kind: 'series', soft: one, stiff: other, softStroke };
        const swapped: SpringSI = { kind: 'series', soft: other, stiff: one, softStroke };
        expect(at(named, x).force).toBeCloseTo(at(swapped, x).force, 9);
      }),
      { seed: 37 },
    );
  });
});

describe('two springs side by side', () => {
  test('with no gap add up, in either order; with a gap never reached are the first alone', () => {
    fc.assert(
      fc.property(rate, rate, compression, (one, other, x) => {
        const both = at({ kind: 'parallel', rate: one, second: other, gap: 0 }, x);
        expect(both.force).toBeCloseTo((one + other) * x, 9);
        expect(both.force).toBeCloseTo(
          at({ kind: 'parallel', rate: other, second: one, gap: 0 }, x).force,
          9,
        );
        const alone: SpringSI = { kind: 'parallel', rate: one, second: other, gap: Number.POSITIVE_INFINITY };
        expect(at(alone, x)).toEqual(at({ kind: 'linear', rate: one }, x));
      }),
      { seed: 38 },
    );
  });

  test('take hold of the second at the gap', () => {
    const spring: SpringSI = { kind: 'parallel', rate: 10_000, second: 5_000, gap: 0.02 };
    expect(at(spring, 0.019).rate).toBe(10_000);
    expect(at(spring, 0.02).rate).toBe(15_000);
    // 10 N/mm · 30 mm + 5 N/mm · 10 mm
    expect(at(spring, 0.03).force).toBeCloseTo(350, 9);
  });
});

describe('a spring by table', () => {
  const progressive: SpringSI = { kind: 'table', compression: [0, 0.02, 0.05], force: [0, 1_000, 4_000] };

  test('runs straight between its points and on beyond the last', () => {
    expect(at(progressive, 0.01).force).toBeCloseTo(500, 9);
    expect(at(progressive, 0.02).rate).toBeCloseTo(100_000, 6);
    expect(at(progressive, 0.06).force).toBeCloseTo(5_000, 9);
    // 1/2 · 20 mm · 1 kN + 30 mm · 2.5 kN
    expect(at(progressive, 0.05).energy).toBeCloseTo(10 + 75, 9);
  });

  test('with its points on a line is a linear spring', () => {
    fc.assert(
      fc.property(rate, compression, (k, x) => {
        const table: SpringSI = {
          kind: 'table',
          compression: [0, 0.03, 0.07],
          force: [0, 0.03 * k, 0.07 * k],
        };
        expect(at(table, x).force).toBeCloseTo(at({ kind: 'linear', rate: k }, x).force, 8);
        expect(at(table, x).energy).toBeCloseTo(at({ kind: 'linear', rate: k }, x).energy, 8);
      }),
      { seed: 39 },
    );
  });
});

test('a spring is not asked to pull, nor for a compression that is no number', () => {
  const spring: SpringSI = { kind: 'linear', rate: 1_000 };
  expect(() => compressionFor(spring, -1)).toThrow('-1 N');
  expect(() => compressionFor(spring, Number.NaN)).toThrow(RangeError);
  expect(() => at(spring, Number.NaN)).toThrow(RangeError);
});
