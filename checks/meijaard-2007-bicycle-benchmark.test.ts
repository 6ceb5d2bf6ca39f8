/**
 * J. P. Meijaard, J. M. Papadopoulos, A. Ruina, A. L. Schwab, Linearized dynamics equations for the balance and steer of a
 * bicycle: a benchmark and review, Proc. R. Soc. A 463, 1955–1982 (2007), table 1, as used in SymPy 1.11.1
 * (physics/mechanics/tests/test_kane3.py), which also gives the trail in the form offset = R cos(head) − trail sin(head).
 * Inputs published; results worked out from them with more digits than are printed here: half of the last digit.
 */
import { forkOffsetOf, normalTrailOf } from '@sagwright/model/attitude/attitude';
import { momentsOf, together } from '@sagwright/model/masses/pointMass';
import { describe, expect, test } from 'vitest';

/** Rear wheel, rear frame with rider, fork, front wheel; x forward from the rear contact point. */
const parts = [
  { mass: 2, x: 0, height: 0.3 },
  { mass: 85, x: 0.3, height: 0.9 },
  { mass: 4, x: 0.9, height: 0.7 },
  { mass: 3, x: 1.02, height: 0.35 },
];
const wheelbase = 1.02;
const rake = Math.PI / 10;
const frontRadius = 0.35;
const trail = 0.08;

describe('the steering', () => {
  const offset = forkOffsetOf(frontRadius, rake, trail);

  test('a trail of 0.08 m asks for an offset of 0.0320714267 m', () => {
    expect(offset).toBeCloseTo(0.0320714267, 10);
  });

  test('that offset gives a normal trail of 0.0760845213 m, and the trail of 0.08 m back', () => {
    expect(normalTrailOf(frontRadius, rake, offset)).toBeCloseTo(0.0760845213, 10);
    expect(normalTrailOf(frontRadius, rake, offset) / Math.cos(rake)).toBeCloseTo(trail, 12);
  });
});

describe('the masses', () => {
  const whole = together(parts);

  test('come to 94 kg at x 0.342127660 m, height 0.861170213 m', () => {
    expect(whole.mass).toBe(94);
    expect(whole.x).toBeCloseTo(0.34212766, 9);
    expect(whole.height).toBeCloseTo(0.861170213, 9);
  });

  test('have a height moment of 80.95 kg m, the paper’s |K0_11| (printed value from memory)', () => {
    expect(momentsOf(parts).momentHeight).toBeCloseTo(80.95, 12);
  });

  test('put 31.529412 kg on the front wheel, 33.54193 %', () => {
    const front = momentsOf(parts).momentX / wheelbase;
    expect(front).toBeCloseTo(31.529412, 6);
    expect(94 - front).toBeCloseTo(62.470588, 6);
    expect((100 * front) / 94).toBeCloseTo(33.54193, 5);
  });
});
