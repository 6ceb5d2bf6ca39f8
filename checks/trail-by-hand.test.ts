/**
 * Trail of a front of ordinary size: no publication with these figures; worked by hand, a = (R sin ε − d)/cos ε, as the tables of
 * Meijaard et al. (2007) have the same formula. What a degree of rake and 5 mm of offset do to it is what a rider is told.
 * Printed to 0.0001 mm: half of the last digit.
 */
import { forkOffsetOf, normalTrailOf } from '@sagwright/model/attitude/attitude';
import { expect, test } from 'vitest';

const radius = 0.3;

test.each([
  [25, 30, 106.791],
  [24, 30, 100.7295],
  [26, 30, 112.9417],
  [25, 35, 101.2741],
])('rake %d°, offset %d mm: trail %f mm, and the offset back', (degrees, offsetMm, trailMm) => {
  const rake = (degrees / 180) * Math.PI;
  const trail = normalTrailOf(radius, rake, offsetMm / 1000) / Math.cos(rake);
  expect(1000 * trail).toBeCloseTo(trailMm, 4);
  expect(1000 * forkOffsetOf(radius, rake, trail)).toBeCloseTo(offsetMm, 9);
});

test('at 25° and 30 mm the normal trail is 96.7855 mm', () => {
  expect(1000 * normalTrailOf(radius, (25 / 180) * Math.PI, 0.03)).toBeCloseTo(96.7855, 4);
});
