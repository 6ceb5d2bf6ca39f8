/**
 * Squat ratio of a chain-driven rear as V. Cossalter, Motorcycle Dynamics, 2nd ed., defines it (from memory): tan τ / tan σ,
 * σ the slope from the contact point to where the chain's upper run meets the swingarm's line. No published figures were
 * found. The sample's were worked out apart from the model, by construction and by moments about the pivot, to the digits
 * printed here; tolerance: half of the last.
 */
import { squatOf, upperRun } from '@sagwright/model/rear/finalDrive';
import { expect, test } from 'vitest';

const degrees = 180 / Math.PI;
const axle = { x: 0, height: 0.31 };
const pivot = { x: 0.57, height: 0.4 };
const frontSprocket = { x: 0.65, height: 0.415 };
const drive = { kind: 'chain', frontSprocket, frontRadius: 0.042, rearRadius: 0.11 } as const;
const squat = squatOf(drive, { axle, pivot, frontSprocket }, 0.62, 1.4);

test('the upper run rises by 3.248321°', () => {
  const { normalX, normalHeight } = upperRun(axle, 0.11, frontSprocket, 0.042);
  expect(Math.abs(degrees * Math.atan2(-normalX, normalHeight) - 3.248321)).toBeLessThan(5e-7);
});

test('it meets the swingarm at (1.0893514, 0.4820029) m', () => {
  const { normalX, normalHeight } = upperRun(axle, 0.11, frontSprocket, 0.042);
  const along = 0.11 / (normalX * pivot.x + normalHeight * (pivot.height - axle.height));
  expect(along * pivot.x).toBeCloseTo(1.0893514, 7);
  expect(axle.height + along * (pivot.height - axle.height)).toBeCloseTo(0.4820029, 7);
});

test('load transfer line at 23.886500°, squat line at 23.867844°, ratio 1.000880', () => {
  expect(Math.abs(degrees * squat.transferAngle - 23.8865)).toBeLessThan(5e-7);
  expect(Math.abs(degrees * squat.squatAngle - 23.867844)).toBeLessThan(5e-7);
  expect(squat.squatRatio).toBeCloseTo(1.00088, 6);
});

test('moments about the pivot: load transfer over thrust and chain give 1.000880 too', () => {
  const slope = 3.248321 / degrees;
  const touch = { x: -0.11 * Math.sin(slope), height: 0.31 + 0.11 * Math.cos(slope) };
  const pull = 0.31 / 0.11;
  const chain = pull * ((touch.x - 0.57) * Math.sin(slope) - (touch.height - 0.4) * Math.cos(slope));
  expect(((0.62 / 1.4) * 0.57) / (0.4 + chain)).toBeCloseTo(1.00088, 6);
});
