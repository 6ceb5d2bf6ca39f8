import { expect, test } from 'vitest';
import { meanRatio, type TravelRow, turnedOver } from './ratioTold.ts';

const row = (wheel: number, shock: number, origin: 'own tape' | 'memory' = 'own tape'): TravelRow => ({
  wheel: { value: wheel, unit: 'mm', origin },
  shock: { value: shock, unit: 'mm', origin },
});

test('a ratio told the other way round keeps its share of doubt and its origin', () => {
  const leverage = {
    value: 1.25,
    unit: 'wheel/shock',
    plusMinus: { value: 4, unit: '%' },
    origin: 'manual',
  } as const;
  expect(turnedOver(leverage, 'shock/wheel')).toEqual({
    value: 0.8,
    unit: 'shock/wheel',
    plusMinus: { value: 4, unit: '%' },
    origin: 'manual',
  });
  // ± 0.05 of 1.25 is 4 % of it.
  const plain = {
    value: 1.25,
    unit: 'wheel/shock',
    plusMinus: { value: 0.05, unit: 'wheel/shock' },
  } as const;
  expect(turnedOver(plain, 'shock/wheel').plusMinus).toEqual({ value: 4, unit: '%' });
});

test('rows give the ratio of the whole travel, with a ± that holds either half', () => {
  // 50 mm of wheel for 20 mm of shock, then 50 for 30: 100 for 50 in all is 2; the halves 2.5 and 1.667 are 25 and 17 % off.
  expect(meanRatio([row(0, 300), row(50, 280), row(100, 250)], 'wheel/shock')).toEqual({
    value: 2,
    unit: 'wheel/shock',
    plusMinus: { value: 25, unit: '%' },
    origin: 'own tape',
  });
});

test('rows of one ratio are no surer than a tape is, and rows of several origins give none', () => {
  const told = meanRatio([row(0, 300), row(50, 275, 'memory'), row(100, 250)], 'shock/wheel');
  expect(told).toEqual({ value: 0.5, unit: 'shock/wheel', plusMinus: { value: 1, unit: '%' } });
});

test('rows that give no ratio say so', () => {
  expect(meanRatio([], 'wheel/shock')).toBeNull();
  expect(meanRatio([row(0, 300)], 'wheel/shock')).toBeNull();
  expect(meanRatio([row(0, 300), row(50, 300), row(100, 250)], 'wheel/shock')).toBeNull();
});
