import { HALF_WIDTH_90 } from '@sagwright/model/uncertainty/spread';
import { expect, test } from 'vitest';
import { type AttitudePart, type AttitudeSlopes, attitudeDoubt, attitudeParts } from './attitudeDoubt.ts';

/** One part that moves by so many deviations with each input; the others do not move. */
function slopes(part: AttitudePart, by: Readonly<Record<string, number>>): AttitudeSlopes {
  return new Map(
    Object.entries(by).map(([input, slope]) => [
      input,
      attitudeParts.map((each) => (each === part ? slope : 0)),
    ]),
  );
}

test('the ± of a part is the root of the sum of squares, as a 90 % half-width', () => {
  const now = slopes('groundTrail', { rake: 3, offset: 4 });
  expect(attitudeDoubt('groundTrail', now)).toBeCloseTo(5 * HALF_WIDTH_90, 12);
  expect(attitudeDoubt('pitch', now)).toBe(0);
});

test('what moves both alike is no doubt of a change, what moves one of them is', () => {
  const before = slopes('seatHeight', { tyre: 3, oldSpring: 1 });
  const now = slopes('seatHeight', { tyre: 3, newSpring: 2 });
  expect(attitudeDoubt('seatHeight', now, now)).toBe(0);
  expect(attitudeDoubt('seatHeight', now, before)).toBeCloseTo(Math.hypot(1, 2) * HALF_WIDTH_90, 12);
});
