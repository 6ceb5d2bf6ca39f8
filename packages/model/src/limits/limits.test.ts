import { describe, expect, test } from 'vitest';
import { type AxleLoads, type LimitResult, type LimitsSI, limitsOf, stated, verdictOf } from './limits.ts';

const loads: AxleLoads = {
  front: 180,
  frontPlusMinus: 3,
  rear: 320,
  rearPlusMinus: 4,
  total: 500,
  totalPlusMinus: 5,
};
const unknown: LimitsSI = { gross: null, frontAxle: null, rearAxle: null, frontTyre: null, rearTyre: null };

function grossAgainst(gross: number | null, plusMinus = 0): LimitResult {
  return limitsOf(loads, { ...unknown, gross: gross === null ? null : { value: gross, plusMinus } }, [])[0]!;
}

describe('a load against its limit', () => {
  test('is over by what it is over', () => {
    expect(grossAgainst(490)).toMatchObject({ verdict: 'over', over: 10, allowed: 490 });
  });

  test('below it by more than its ± is within, with what is left', () => {
    expect(grossAgainst(506)).toMatchObject({ verdict: 'within', over: -6 });
  });

  test('below it by less than its ± says so', () => {
    expect(grossAgainst(504)).toMatchObject({ verdict: 'within its ±', over: -4 });
  });

  test('just at it, with a ±, is within its ±; known exactly it is within', () => {
    expect(grossAgainst(500).verdict).toBe('within its ±');
    const exact = limitsOf({ ...loads, totalPlusMinus: 0 }, { ...unknown, gross: stated(500) }, []);
    expect(exact[0]!.verdict).toBe('within');
  });

  test('has the ± of its rating beside its own: they add in squares', () => {
    // 3-4-5: 5 kg on the load and 12 on the rating make 13.
    expect(grossAgainst(513, 12).verdict).toBe('within');
    expect(grossAgainst(512.9, 12).verdict).toBe('within its ±');
    expect(grossAgainst(499.9, 12).verdict).toBe('over');
  });

  test('whose figure nobody has read is not checked, never passed', () => {
    expect(grossAgainst(null)).toEqual({
      of: { kind: 'gross' },
      load: 500,
      plusMinus: 5,
      allowed: null,
      allowedPlusMinus: 0,
      verdict: 'not checked',
      over: null,
    });
  });
});

describe('a rating that holds at best', () => {
  const atBest = (value: number): LimitResult =>
    limitsOf(loads, { ...unknown, rearTyre: { ...stated(value), isAtBest: true } }, [])[3]!;

  test('fails what is over even that', () => {
    expect(atBest(310)).toMatchObject({ verdict: 'over', over: 10 });
  });

  test('passes nothing, and still tells what it is at best', () => {
    for (const value of [320, 322, 900])
      expect(atBest(value)).toMatchObject({ verdict: 'not checked', allowed: value, over: null });
  });
});

test('what is left with a ± that nobody knows is too close to call, and what is exceeded fails all the same', () => {
  expect(verdictOf(400, null)).toBe('within its ±');
  expect(verdictOf(-0.1, null)).toBe('over');
});

test('axle and tyre have the load of their own end', () => {
  const limits = {
    gross: stated(600),
    frontAxle: stated(200),
    rearAxle: stated(310),
    frontTyre: stated(170),
    rearTyre: stated(330),
  };
  const results = limitsOf(loads, limits, []);
  expect(results.map(({ of, load, plusMinus, over }) => [of.kind, load, plusMinus, over])).toEqual([
    ['gross', 500, 5, -100],
    ['rear axle', 320, 4, 10],
    ['front axle', 180, 3, -20],
    ['rear tyre', 320, 4, -10],
    ['front tyre', 180, 3, 10],
  ]);
});

test('a place is judged by what lies on it', () => {
  const places = [
    { id: 'rack', limit: stated(10), onIt: 12, plusMinus: 0.5 },
    { id: 'box', limit: stated(5), onIt: 4.8, plusMinus: 0.5 },
    { id: 'bag', limit: null, onIt: 3, plusMinus: 0.2 },
  ];
  const results = limitsOf(loads, unknown, places).slice(5);
  expect(results.map(({ of, verdict }) => [of, verdict])).toEqual([
    [{ kind: 'place', place: 'rack' }, 'over'],
    [{ kind: 'place', place: 'box' }, 'within its ±'],
    [{ kind: 'place', place: 'bag' }, 'not checked'],
  ]);
});
