import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coilRate } from './coil.ts';
import { springAt } from './spring.ts';
import { type WindingSI, windingTable, woundLength } from './winding.ts';

/** Whole coils of each section, so that it can be taken apart coil by coil. */
const arbitraryWinding: fc.Arbitrary<WindingSI> = fc
  .record({
    wire: fc.double({ min: 0.008, max: 0.014, noNaN: true }),
    index: fc.double({ min: 4, max: 9, noNaN: true }),
    shearModulus: fc.double({ min: 74e9, max: 83e9, noNaN: true }),
    steps: fc.array(
      fc.record({
        coils: fc.integer({ min: 1, max: 6 }),
        wider: fc.double({ min: 3e-4, max: 0.005, noNaN: true }),
      }),
      { minLength: 1, maxLength: 5 },
    ),
  })
  .map(({ wire, index, shearModulus, steps }) => {
    let pitch = wire;
    const sections = steps.map(({ coils, wider }) => {
      pitch += wider;
      return { coils, pitch };
    });
    return { wire, mean: index * wire, shearModulus, sections };
  });

/** Independent: every coil a spring of its own that stops at its gap; compression at a force by adding all of them up. */
function compressedCoilByCoil({ wire, mean, shearModulus, sections }: WindingSI, force: number): number {
  const flexibility = (8 * mean ** 3) / (shearModulus * wire ** 4);
  let sum = 0;
  for (const { coils, pitch } of sections) {
    for (let i = 0; i < coils; i += 1) sum += Math.min(force * flexibility, pitch - wire);
  }
  return sum;
}

function forceAt(winding: WindingSI, x: number): number {
  const out = { force: 0, rate: 0, energy: 0 };
  springAt({ kind: 'table', ...windingTable(winding) }, x, out);
  return out.force;
}

/** Two pitches: 4 coils 5 mm apart, 5 coils 12 mm apart, of 11 mm wire on 64 mm. */
const twoPitches: WindingSI = {
  wire: 0.011,
  mean: 0.064,
  shearModulus: 79.5e9,
  sections: [
    { coils: 4, pitch: 0.016 },
    { coils: 5, pitch: 0.023 },
  ],
};

describe('a spring wound with several pitches', () => {
  test('gives with all its coils, then with those still open', () => {
    // By hand: k1 = 79 500 · 11⁴/(8 · 64³) = 555.0191 N/mm; closes at 5 mm · k1, all nine coils 5 mm each; then five alone.
    const single = (79_500 * 11 ** 4) / (8 * 64 ** 3);
    const { compression, force } = windingTable(twoPitches);
    expect(compression.map((each) => each * 1000)).toEqual([0, expect.closeTo(45, 9), expect.closeTo(80, 9)]);
    expect(force).toEqual([0, expect.closeTo(5 * single, 6), expect.closeTo(12 * single, 6)]);
    expect((force[2]! - force[1]!) / (compression[2]! - compression[1]!) / 1000).toBeCloseTo(single / 5, 9);
  });

  test('is pressed by each force as far as all its coils together are, each by itself', () => {
    fc.assert(
      fc.property(arbitraryWinding, fc.double({ min: 0.001, max: 1, noNaN: true }), (winding, share) => {
        const table = windingTable(winding);
        const force = share * table.force.at(-1)!;
        const x = compressedCoilByCoil(winding, force);
        expect(forceAt(winding, x) / force).toBeCloseTo(1, 9);
      }),
      { seed: 61 },
    );
  });

  test('of one pitch is a plain coil until it is solid', () => {
    const coils = 6;
    const one = { ...twoPitches, sections: [{ coils, pitch: 0.02 }] };
    const { compression, force } = windingTable(one);
    expect(force[1]! / compression[1]!).toBeCloseTo(coilRate({ ...one, active: coils }), 3);
    // Shigley, table 10-1: free p Na + 3 d, solid d (Na + 3) with closed ends; the difference is all that it can give.
    expect(compression[1]!).toBeCloseTo(woundLength(one.sections) - one.wire * coils, 12);
  });

  test('is solid where all its gaps are closed, whatever the order of its sections', () => {
    fc.assert(
      fc.property(arbitraryWinding, (winding) => {
        const turned = { ...winding, sections: [...winding.sections].reverse() };
        expect(windingTable(turned).force).toEqual(windingTable(winding).force);
        const gaps = winding.sections.reduce(
          (sum, { coils, pitch }) => sum + coils * (pitch - winding.wire),
          0,
        );
        expect(windingTable(turned).compression.at(-1)!).toBeCloseTo(gaps, 12);
      }),
      { seed: 62 },
    );
  });

  test('never gets softer the deeper it is pressed', () => {
    fc.assert(
      fc.property(arbitraryWinding, (winding) => {
        const { compression, force } = windingTable(winding);
        const rates = compression.slice(1).map((x, i) => (force[i + 1]! - force[i]!) / (x - compression[i]!));
        for (let i = 1; i < rates.length; i += 1)
          expect(rates[i]!).toBeGreaterThan(rates[i - 1]! * (1 - 1e-9));
      }),
      { seed: 63 },
    );
  });

  test('is never softer of thicker or stiffer wire, with fewer coils, or wound tighter', () => {
    fc.assert(
      fc.property(
        arbitraryWinding,
        fc.double({ min: 0.001, max: 1, noNaN: true }),
        fc.constantFrom('wire', 'modulus', 'coils', 'mean' as const),
        (winding, share, what) => {
          const [first, ...others] = winding.sections;
          const room = first!.pitch - winding.wire;
          const changed: WindingSI = {
            wire: {
              ...winding,
              wire: winding.wire + 0.5 * room,
            },
            modulus: { ...winding, shearModulus: 1.03 * winding.shearModulus },
            coils: { ...winding, sections: [{ ...first!, coils: 0.75 * first!.coils }, ...others] },
            mean: { ...winding, mean: 0.97 * winding.mean },
          }[what];
          const solid = Math.min(
            windingTable(winding).compression.at(-1)!,
            windingTable(changed).compression.at(-1)!,
          );
          const x = share * solid;
          expect(forceAt(changed, x)).toBeGreaterThanOrEqual(forceAt(winding, x) * (1 - 1e-12));
        },
      ),
      { seed: 64 },
    );
  });

  test('of a pitch within its wire, or of two pitches that are one, is refused', () => {
    const with2 = (first: number, second: number): WindingSI => ({
      ...twoPitches,
      sections: [
        { coils: 4, pitch: first },
        { coils: 5, pitch: second },
      ],
    });
    expect(() => windingTable(with2(0.011, 0.02))).toThrow('above the wire, 0.011 m');
    expect(() => windingTable(with2(0.02, 0.02))).toThrow('above that of the section before, 0.02 m');
  });
});
