import fc from 'fast-check';
import { expect, test } from 'vitest';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import type { LimitsSI } from './limits.ts';
import { stated } from './limits.ts';
import { ROOM_MOST, roomAt, withMore } from './room.ts';

const machine = levelMachine(plainStrut(40_000, 0.02));
const nothing = { mass: 0, momentX: 0, momentHeight: 0 };
const middle = { x: 0.75, height: 0.5 };
const unknown: LimitsSI = { gross: null, rearAxle: null, frontAxle: null, rearTyre: null, frontTyre: null };

test('on the middle of a level machine each axle takes half: 150 kg of 120 + m/2 leave 60 kg', () => {
  const room = roomAt(machine, nothing, middle, { ...unknown, rearAxle: stated(150) }, []);
  expect(room.mass).toBeCloseTo(60, 5);
  expect(room.by).toEqual({ kind: 'rear axle' });
});

test('the gross rating leaves what it says over 240 kg', () => {
  const room = roomAt(machine, nothing, middle, { ...unknown, gross: stated(300) }, []);
  expect(room).toMatchObject({ mass: 60, by: { kind: 'gross' } });
});

test('where nothing is known nothing ends it, and every limit is named as not checked', () => {
  const room = roomAt(machine, nothing, middle, unknown, [
    { id: 'rack', limit: null, onIt: 0, plusMinus: 0 },
  ]);
  expect(room.mass).toBeNull();
  expect(room.notChecked.map(({ kind }) => kind).sort()).toEqual(
    ['front axle', 'front tyre', 'gross', 'place', 'rear axle', 'rear tyre'].sort(),
  );
});

test('known limits that leave more than anybody loads leave more than that, whatever else is not known', () => {
  const room = roomAt(machine, nothing, middle, { ...unknown, gross: stated(240 + ROOM_MOST + 1) }, []);
  expect(room).toMatchObject({ mass: null, by: null, moreThan: ROOM_MOST });
  expect(roomAt(machine, nothing, middle, unknown, []).moreThan).toBeNull();
  const atBest = { ...unknown, rearTyre: { ...stated(900), isAtBest: true } };
  expect(roomAt(machine, nothing, middle, atBest, []).moreThan).toBeNull();
});

test('a tyre that bears so much only at best ends the room there, and is named as not checked', () => {
  const room = roomAt(
    machine,
    nothing,
    middle,
    { ...unknown, rearTyre: { ...stated(150), isAtBest: true } },
    [],
  );
  expect(room.mass).toBeCloseTo(60, 5);
  expect(room).toMatchObject({ by: { kind: 'rear tyre' }, moreThan: null });
  expect(room.notChecked).toContainEqual({ kind: 'rear tyre' });
});

test('behind the wheels a machine tips before its plates are used up, and that ends the room', () => {
  const room = roomAt(machine, nothing, { x: -1.2, height: 0.9 }, unknown, []);
  expect(room.by).toEqual({ kind: 'tips' });
  expect(room.mass).toBeLessThan(ROOM_MOST);
});

test('what the room says, put on, uses the limit up, and more aboard never leaves more room', () => {
  const limits = { ...unknown, gross: stated(420), rearAxle: stated(230), frontAxle: stated(200) };
  const kilograms = fc.double({ min: 0, max: 60, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: -0.3, max: 1.2, noNaN: true }), kilograms, kilograms, (x, less, more) => {
      const at = { x, height: 0.9 };
      const left = (aboard: number): number =>
        roomAt(machine, withMore(nothing, aboard, x, 0.9), at, limits, []).mass!;
      const room = left(less);
      expect(left(less + room)).toBeCloseTo(0, 4);
      expect(left(less + more)).toBeLessThanOrEqual(room + 1e-4);
      expect(left(less + more)).toBeCloseTo(Math.max(0, room - more), 3);
    }),
    { seed: 31, numRuns: 60 },
  );
});
