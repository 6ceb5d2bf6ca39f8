import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gapAtBump } from './clearance.ts';

test('a reading at full bump is the answer', () => {
  expect(gapAtBump([{ travel: 0.0765, gap: 0.004 }], 0.076)).toMatchObject({ gap: 0.004 });
});

test('from a reading 0.9 mm short of full bump the wheel takes 0.9 mm more', () => {
  expect(gapAtBump([{ travel: 0.0751, gap: 0.0005 }], 0.076)!.gap).toBeCloseTo(-0.0004, 12);
});

test('one reading elsewhere says nothing of full bump', () => {
  expect(gapAtBump([{ travel: 0.03, gap: 0.05 }], 0.076)).toBeNull();
});

test('two readings are carried on along their line, but no further than they lie apart', () => {
  // 30 mm of travel took 24 mm: 0.8 each; 26 mm further take 20.8 and leave 5.2.
  const readings = [
    { travel: 0.02, gap: 0.05 },
    { travel: 0.05, gap: 0.026 },
  ];
  expect(gapAtBump(readings, 0.076)!.gap).toBeCloseTo(0.0052, 12);
  expect(gapAtBump(readings, 0.081)).toBeNull();
});

test('the slopes are those of the answer', () => {
  const metres = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
  fc.assert(
    fc.property(
      fc.record({ z1: metres(0, 0.02), z2: metres(0.05, 0.07), g1: metres(0, 0.1), g2: metres(0, 0.1) }),
      metres(0.0015, 0.029),
      ({ z1, z2, g1, g2 }, further) => {
        const travelMax = z2 + further;
        const at = (moved: readonly [number, number, number, number, number]): number =>
          gapAtBump(
            [
              { travel: z1 + moved[0], gap: g1 + moved[1] },
              { travel: z2 + moved[2], gap: g2 + moved[3] },
            ],
            travelMax + moved[4],
          )!.gap;
        const found = gapAtBump(
          [
            { travel: z1, gap: g1 },
            { travel: z2, gap: g2 },
          ],
          travelMax,
        )!;
        const slopes = [
          found.byReading[0]!.travel,
          found.byReading[0]!.gap,
          found.byReading[1]!.travel,
          found.byReading[1]!.gap,
          found.byTravelMax,
        ];
        const step = 1e-6;
        for (const [i, slope] of slopes.entries()) {
          const by = (size: number) => [0, 1, 2, 3, 4].map((j) => (i === j ? size : 0)) as never;
          // A rational function: the error of a central difference is of the order of step², far below 1e-6.
          expect((at(by(step)) - at(by(-step))) / (2 * step)).toBeCloseTo(slope, 6);
        }
      },
    ),
    { seed: 8, numRuns: 50 },
  );
});
