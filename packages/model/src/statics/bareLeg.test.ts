import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StrutSI } from '../dampers/strut.ts';
import { strokeBare } from './bareLeg.ts';
import { strutAt } from './endAt.ts';

/** A long soft top-out spring: 4 N/mm over 40 mm, under a main spring of 9.5 N/mm with 15 mm of preload at the stop. */
const leg: StrutSI = {
  spring: { kind: 'linear', rate: 9500 },
  preload: 0.015,
  gas: null,
  rubber: null,
  topOut: { rate: 4000, length: 0.04 },
  friction: 0,
};

describe('a leg by itself', () => {
  test('grows from its top-out spring’s length until both springs bear the same: k (p + s) = k_t (L − s)', () => {
    // s = (4 · 40 − 9.5 · 15)/(9.5 + 4) mm: 17.5/13.5.
    expect(strokeBare(leg, 0.12)).toBeCloseTo(0.0175 / 13.5, 12);
  });

  test('stands at its hard stop where the main spring is stronger there, and with no top-out spring', () => {
    expect(strokeBare({ ...leg, preload: 0.017 }, 0.12)).toBe(0);
    expect(strokeBare({ ...leg, topOut: null }, 0.12)).toBe(0);
    expect(strokeBare({ ...leg, spring: { kind: 'linear', rate: 9500 }, preload: -0.2 }, 0.12)).toBe(0.04);
  });

  test('is in balance wherever it stands between its stop and its top-out spring’s length', () => {
    const at = { force: 0, rate: 0 };
    fc.assert(
      fc.property(
        fc.double({ min: -0.03, max: 0.03, noNaN: true }),
        fc.double({ min: 1000, max: 60_000, noNaN: true }),
        fc.double({ min: 0.003, max: 0.06, noNaN: true }),
        (preload, rate, length) => {
          const strut = { ...leg, preload, topOut: { rate, length } };
          const stroke = strokeBare(strut, 0.12);
          strutAt(strut, stroke, at);
          if (stroke === 0) expect(at.force).toBeGreaterThanOrEqual(0);
          // 1e-12 m of the root times 70 N/mm.
          else expect(Math.abs(at.force)).toBeLessThan(1e-6);
        },
      ),
      { seed: 32 },
    );
  });
});
