/**
 * xoshiro128** 1.1, D. Blackman, S. Vigna (prng.di.unimi.it): the first ten numbers from the state 1, 2, 3, 4, as in the
 * tests of the Rust crate rand_xoshiro (Xoshiro128StarStar), which took them from the authors' C code. Whole numbers: exact.
 */
import { xoshiro128 } from '@sagwright/model/numerics/random';
import { expect, test } from 'vitest';

test('xoshiro128** gives the published numbers', () => {
  const state = Uint32Array.of(1, 2, 3, 4);
  expect(Array.from({ length: 10 }, () => xoshiro128(state))).toEqual([
    11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
  ]);
});
