import { expect, test } from 'vitest';
import type { StrutSI } from '../dampers/strut.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { hangingTravel } from './hanging.ts';
import { GRAVITY } from './machine.ts';

function hanging(strut: StrutSI): number {
  return hangingTravel(levelMachine(strut).rear, 0, 0.2);
}

// A wheel of 20 kg pulls 196.133 N, 392.266 N along the strut at its ratio of 0.5.

test('a wheel hangs on its stop where nothing pulls the damper in', () => {
  expect(hanging(plainStrut(40_000, 0.01))).toBe(0);
  expect(hanging(plainStrut(40_000, -0.01))).toBe(0);
});

test('a wheel hangs on its top-out spring where that is stronger than spring and wheel', () => {
  // 40 (5 + s) − 60 (12 − s) = −392.266: s = (720 − 200 − 392.266)/100 = 1.27734 mm.
  const strut = { ...plainStrut(40_000, 0.005), topOut: { rate: 60_000, length: 0.012 } };
  expect(hanging(strut)).toBeCloseTo(2 * 0.00127734, 10);
});

test('a wheel hangs on its stop where spring and wheel are stronger than the top-out spring', () => {
  // 200 N of spring and 392 N of wheel against 60 · 9 = 540 N.
  const strut = { ...plainStrut(40_000, 0.005), topOut: { rate: 60_000, length: 0.009 } };
  expect(hanging(strut)).toBe(0);
});

test('gas holds the wheel out like a spring', () => {
  // A loose spring, 100 N of gas at first: 100 and 392.266 N against 60 · 12 = 720 N.
  const strut: StrutSI = {
    ...plainStrut(40_000, -0.05),
    gas: { area: 1e-4, pressure: 101_325 + 1e6, volume: 1, exponent: 1 },
    topOut: { rate: 60_000, length: 0.012 },
  };
  // So much gas that it hardly grows: 60 (12 − s) = 492.266.
  expect(hanging(strut)).toBeCloseTo(2 * (0.012 - (100 + 20 * GRAVITY * 2) / 60_000), 7);
});
