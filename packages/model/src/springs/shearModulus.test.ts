import { describe, expect, test } from 'vitest';
import { shearModuli } from './shearModulus.ts';

function row(start: string) {
  const found = shearModuli.find(({ material }) => material.startsWith(start));
  if (found === undefined) throw new Error(`no row for ${start}`);
  return found;
}

describe('shear moduli', () => {
  test('from Mpsi are those Mpsi', () => {
    // 1 psi = 6894.757293 Pa; the table is rounded to 0.01 GPa.
    const inMpsi = shearModuli.filter(({ source }) => / Mpsi: /.test(source));
    expect(inMpsi).toHaveLength(7);
    for (const { value, source } of inMpsi) {
      expect(Math.abs(value - Number.parseFloat(source) * 6.894757293e9)).toBeLessThanOrEqual(0.005e9);
    }
  });

  test('reach with their ± what other tables say of the same wire', () => {
    // 79.29 GPa = 11.5 Mpsi, the one figure of several wire makers' sheets; 82.74 = 12 Mpsi, theirs up to 0.100 in.
    const cases: readonly (readonly [string, readonly number[]])[] = [
      ['music wire, to 0.81', [79.29e9]],
      ['music wire, 0.84', [79.29e9, 82.74e9]],
      ['music wire, 1.63', [79.29e9, 82.74e9, 81.5e9]],
      ['music wire, 3.20', [79.29e9, 81.01e9, 81.5e9]],
      ['chrome-vanadium', [79.29e9, 79.5e9, 80e9, 81e9]],
      ['oil hardened', [77.22e9, 79.29e9, 80e9, 81e9]],
      ['hard drawn', [79.29e9, 81.5e9]],
      ['patented', [78.6e9]],
      ['silicon-manganese', [78.5e9]],
      ['hot rolled', [74.12e9]],
    ];
    for (const [start, others] of cases) {
      const { value, relative } = row(start);
      for (const other of others) expect(Math.abs(other / value - 1)).toBeLessThanOrEqual(relative);
    }
  });
});
