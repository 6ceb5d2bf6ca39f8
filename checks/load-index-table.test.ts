/**
 * The load index table shared by ISO 4000-1, ETRTO and UN Regulation No. 75, annex 4. The standards were not seen; the
 * numbers were found alike in four open data files. Whole table entries: exact.
 */
import { loadIndexMass } from '@sagwright/model/tyres/loadIndex';
import { describe, expect, test } from 'vitest';

function masses(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, i) => loadIndexMass(from + i));
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0);
}

describe('load index', () => {
  test.each([
    [50, 190],
    [58, 236],
    [62, 265],
    [65, 290],
    [69, 325],
    [73, 365],
    [75, 387],
    [80, 450],
  ])('%i stands for %i kg', (index, mass) => {
    expect(loadIndexMass(index)).toBe(mass);
  });

  test('the table is whole: its sums are those of the published one', () => {
    expect(sum(masses(20, 100))).toBe(25_315);
    expect(sum(masses(40, 90))).toBe(16_180);
  });

  test('rises strictly, and by a tenth of a decade in eight: 45 · 10^(index/80) kg', () => {
    // Derived here: the table is a rounded preferred-number series; its largest rounding is 1.94 %.
    const table = masses(20, 100);
    table.slice(1).forEach((mass, i) => {
      expect(mass).toBeGreaterThan(table[i]!);
    });
    table.forEach((mass, i) => {
      expect(Math.abs(mass / (45 * 10 ** ((20 + i) / 80)) - 1)).toBeLessThan(0.0195);
    });
  });

  test('is not guessed outside the table', () => {
    for (const index of [19, 101, 58.5, -1, Number.NaN])
      expect(() => loadIndexMass(index)).toThrow(RangeError);
  });
});
