import fc from 'fast-check';
import { expect, test } from 'vitest';
import { between } from '../testing/arbitraryStrut.ts';
import { momentsOf, together } from './pointMass.ts';

const rider = { mass: 80, x: 0.5, height: 1 };
const box = { mass: 20, x: -0.3, height: 0.9 };

test('things at their places add up to a mass and its moments; nothing is all zeros', () => {
  expect(momentsOf([rider, box])).toEqual({ mass: 100, momentX: 34, momentHeight: 98 });
  expect(momentsOf([])).toEqual({ mass: 0, momentX: 0, momentHeight: 0 });
  // Fuel that was in the tank at the weighing and is not now.
  expect(momentsOf([{ mass: -5, x: 0.6, height: 0.8 }])).toEqual({ mass: -5, momentX: -3, momentHeight: -4 });
});

test('one mass stands for many at their common centre', () => {
  expect(together([rider, box])).toEqual({
    mass: 100,
    x: expect.closeTo(0.34, 12),
    height: expect.closeTo(0.98, 12),
  });
});

test('it does not matter which are put together first', () => {
  const thing = fc.record({ mass: between(1, 100), x: between(-1, 2), height: between(0, 2) });
  fc.assert(
    fc.property(thing, thing, thing, (a, b, c) => {
      const one = together([together([a, b]), c]);
      const other = together([a, together([b, c])]);
      expect(one.x).toBeCloseTo(other.x, 10);
      expect(one.height).toBeCloseTo(other.height, 10);
    }),
    { seed: 751 },
  );
});

test('masses that come to nothing have no centre', () => {
  expect(() => together([box, { ...box, mass: -20 }])).toThrow('add up to 0 kg');
  expect(() => together([])).toThrow(RangeError);
});
