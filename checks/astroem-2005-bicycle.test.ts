/**
 * K. J. Åström, R. E. Klein, A. Lennartsson, Bicycle dynamics and control, IEEE Control Systems Magazine 25(4), 26–47 (2005):
 * masses and places as used in an open program (jaa395-source/ControlsScripts, matricies.m). Published: the rear frame alone,
 * and with its rider; the rider between them is worked out from both. Printed to 1e-6 m: half of the last digit.
 */
import { forkOffsetOf, normalTrailOf } from '@sagwright/model/attitude/attitude';
import { together } from '@sagwright/model/masses/pointMass';
import { expect, test } from 'vitest';

const frame = { mass: 12, x: 0.439, height: 0.579 };
const frameWithRider = { mass: 87, x: 0.491586, height: 1.028138 };
const frontFrame = { mass: 2, x: 0.866, height: 0.676 };
const wheel = { mass: 1.5, height: 0.35 };

test('a rider of 75 kg at (0.5, 1.1) m makes the frame of 12 kg the published 87 kg at (0.491586, 1.028138) m', () => {
  const both = together([frame, { mass: 75, x: 0.5, height: 1.1 }]);
  expect(both.mass).toBe(87);
  expect(both.x).toBeCloseTo(frameWithRider.x, 6);
  expect(both.height).toBeCloseTo(frameWithRider.height, 6);
});

test('the rider taken off again leaves the frame', () => {
  const left = together([frameWithRider, { mass: -75, x: 0.5, height: 1.1 }]);
  expect(left.mass).toBe(12);
  // Of the 87 kg half of the last digit, 5e-7 m, over the 12 kg that are left.
  expect(Math.abs(left.x - frame.x)).toBeLessThan((87 / 12) * 5e-7);
  expect(Math.abs(left.height - frame.height)).toBeLessThan((87 / 12) * 5e-7);
});

test('the whole of 92 kg stands at (0.500000, 0.998370) m, half of it on each wheel of the 1 m wheelbase', () => {
  const whole = together([frameWithRider, frontFrame, { ...wheel, x: 0 }, { ...wheel, x: 1 }]);
  expect(whole.mass).toBe(92);
  expect(whole.x).toBeCloseTo(0.5, 5);
  expect(whole.height).toBeCloseTo(0.99837, 5);
});

test('head angle 70°, trail 0.08 m, radius 0.35 m: offset 0.0445316405 m, normal trail 0.0751754097 m', () => {
  const rake = (20 * Math.PI) / 180;
  const offset = forkOffsetOf(0.35, rake, 0.08);
  expect(offset).toBeCloseTo(0.0445316405, 10);
  expect(normalTrailOf(0.35, rake, offset)).toBeCloseTo(0.0751754097, 10);
});
