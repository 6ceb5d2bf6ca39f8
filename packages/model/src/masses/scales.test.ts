import { expect, test } from 'vitest';
import { sprungFromScales } from './scales.ts';

const weighed = {
  front: 140,
  rear: 110,
  wholeHeight: 0.46,
  wheelbase: 1.5,
  rearUnsprung: 22,
  frontUnsprung: 18,
  rearRadius: 0.31,
  frontRadius: 0.3,
};

test('the body is what the scales read less the wheels, at the place and height that is left', () => {
  const body = sprungFromScales(weighed);
  // About the rear contact: 122 of 210 kg at 1.5 m. Height: 250 · 0.46 − 18 · 0.3 − 22 · 0.31 = 102.78 kg·m.
  expect(body.mass).toBe(210);
  expect(body.x).toBeCloseTo((122 * 1.5) / 210, 12);
  expect(body.height).toBeCloseTo(102.78 / 210, 12);
});

test('a scale that reads no more than its wheel is refused with both figures', () => {
  expect(() => sprungFromScales({ ...weighed, rear: 22 })).toThrow('140 and 22 kg, unsprung 18 and 22 kg');
});
