import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { momentsOf } from '../masses/pointMass.ts';
import { prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { between } from '../testing/arbitraryStrut.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { passenger, rider, tourer } from '../testing/tourer.ts';
import { heightAt, leanToTouch, touchAngle } from './leanAngle.ts';
import { heavier, leanInBend } from './leanInBend.ts';

const degrees = (angle: number): number => (angle * 180) / Math.PI;

describe('on tyres as thin as blades', () => {
  test('a part 300 mm up and 300 mm out touches at 45°', () => {
    expect(degrees(touchAngle(0.3, 0.3, 0)!)).toBeCloseTo(45, 12);
  });

  test('a stand whose foot is 60 mm up and 280 mm out holds the machine at atan(60/280) = 12.09°', () => {
    expect(degrees(touchAngle(0.06, 0.28, 0)!)).toBeCloseTo(12.0948, 4);
  });
});

test('on round tyres the point lies on the ground at that angle, and later than on thin ones', () => {
  fc.assert(
    fc.property(between(0.05, 0.5), between(0.15, 0.5), between(0, 0.1), (height, sideways, crown) => {
      const angle = touchAngle(height, sideways, crown);
      fc.pre(angle !== null);
      // Turned about the crown's centre, which keeps its height.
      const turned = crown + (height - crown) * Math.cos(angle!) - sideways * Math.sin(angle!);
      expect(turned).toBeCloseTo(0, 12);
      expect(angle! + 1e-12).toBeGreaterThanOrEqual(touchAngle(height, sideways, 0)!);
    }),
    { seed: 404 },
  );
});

test('a point inside the round of the tyre never touches', () => {
  expect(touchAngle(0.1, 0.02, 0.09)).toBeNull();
});

describe('on a machine', () => {
  const point = { x: 0.75, height: 0.25, sideways: 0.35 };
  const crowns = { rear: 0, front: 0 };
  const level = levelMachine(plainStrut(40_000, 0.01));

  test('standing level the height is the tyres’ and springs’ sinking below the drawing', () => {
    const prepared = prepare(level);
    const answer = restOf(prepared);
    if (answer.kind !== 'rest') throw new Error(answer.kind);
    const { travel, tyreDeflection } = answer.rest.rear;
    const height = 0.25 - travel - tyreDeflection;
    expect(heightAt(answer.rest.state, point)).toBeCloseTo(height, 10);
    expect(leanToTouch(prepared, answer.rest.state, point, crowns)).toBeCloseTo(Math.atan2(height, 0.35), 10);
  });

  test('in a bend it is pressed further down: touches sooner, where both angles agree', () => {
    const lean = leanInBend(level, point, crowns)!;
    const prepared = prepare(level);
    const answer = restOf(prepared);
    if (answer.kind !== 'rest') throw new Error(answer.kind);
    expect(lean.angle).toBeLessThan(leanToTouch(prepared, answer.rest.state, point, crowns)!);
    const pressed = prepare(heavier(level, 1 / Math.cos(lean.angle)));
    const there = restOf(pressed);
    if (there.kind !== 'rest') throw new Error(there.kind);
    expect(leanToTouch(pressed, there.rest.state, point, crowns)).toBeCloseTo(lean.angle, 9);
    expect(lean.feedback).toBeLessThan(0);
  });

  test('two aboard it touches sooner than alone', () => {
    const alone = tourer();
    const two = { ...alone, load: momentsOf([rider, passenger]) };
    const lean = (machine: typeof alone) => leanInBend(machine, point, { rear: 0.065, front: 0.05 })!.angle;
    expect(lean(two)).toBeLessThan(lean(alone));
  });
});
