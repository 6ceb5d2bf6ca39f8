/**
 * Headlamp aim and pitch. Limits of the UK annual test for motorcycles, dipped beam with a cut-off: 0.5 % to 2.75 % below the
 * horizontal with the lamp's centre up to 850 mm, 1.25 % to 2.75 % above (a quotation of the government's manual; the manual,
 * section 4.1.2, was not seen with its numbers). Examples computed from them by plane geometry: drop = 100 tan(pitch) %.
 */
import { beamAgainst, beamDrop } from '@sagwright/model/attitude/beam';
import { beamRules } from '@sagwright/workbench/stance/beamRules';
import { describe, expect, test } from 'vitest';

const rule = beamRules[0]!;
const pitchOf = (rise: number): number => Math.atan(rise / 1.4);

describe('wheelbase 1400 mm, the beam at 1.5 %, the lamp 800 mm high', () => {
  test('the rear 10 mm up brings the beam 0.714286 % down, to 2.2143 %: within', () => {
    // The change adds to an angle of 0.86°: its tangent exceeds the sum of both by 1.5 % · 0.71 % of itself, 2e-4 %.
    const drop = beamDrop(0.015, 0, pitchOf(0.01));
    expect(100 * drop).toBeCloseTo(2.2143, 2);
    expect(Math.abs(100 * (drop - 0.015) - 0.714286)).toBeLessThan(3e-4);
    expect(beamAgainst(rule, 0.8, drop)!.verdict).toBe('within');
  });

  test('20 mm up makes 2.9286 %: below what the rule allows', () => {
    const drop = beamDrop(0.015, 0, pitchOf(0.02));
    // As above, 7e-4 %.
    expect(100 * drop).toBeCloseTo(2.9286, 2);
    expect(beamAgainst(rule, 0.8, drop)!.verdict).toBe('too low');
  });

  test('a lamp 900 mm high must drop 1.25 % at least', () => {
    expect(beamAgainst(rule, 0.8, 0.01)!.verdict).toBe('within');
    expect(beamAgainst(rule, 0.9, 0.01)!.verdict).toBe('too high');
    expect(beamAgainst(rule, 0.85, 0.005)!.row.least).toBe(0.005);
  });
});

test('the limits as angles: 0.286477°, 0.716160°, 1.575237°', () => {
  const degrees = (share: number): number => (Math.atan(share) * 180) / Math.PI;
  expect(degrees(0.005)).toBeCloseTo(0.286477, 6);
  expect(degrees(0.0125)).toBeCloseTo(0.71616, 6);
  expect(degrees(0.0275)).toBeCloseTo(1.575237, 6);
  // And the beam follows the pitch by just that.
  expect(beamDrop(0, 0, Math.atan(0.0125))).toBeCloseTo(0.0125, 12);
});
