import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MachineSI } from '../statics/machine.ts';
import { prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { between } from '../testing/arbitraryStrut.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { attitudeAt, forkOffsetOf, normalTrailOf } from './attitude.ts';

const machine = levelMachine(plainStrut(40_000, 0.01));

/** Attitude with the tyres just not pressed: the axles at 300 mm, the rear of the body lifted by `rise`. */
function lifted(rise: number, change: Partial<MachineSI['geometry']> = {}) {
  const { wheelbase } = machine.geometry;
  const pitch = Math.asin(rise / wheelbase);
  // Body point (X, Z): u − X sin θ + Z cos θ. The front stays: its axle, at travel 0, 300 mm up in the body, at 300 mm.
  const heave = 0.3 + wheelbase * Math.sin(pitch) - 0.3 * Math.cos(pitch);
  const prepared = prepare({ ...machine, geometry: { ...machine.geometry, ...change } });
  return attitudeAt(prepared, [heave, pitch, 0, 0]);
}

describe('the rear 10 mm higher over a wheelbase of 1500 mm', () => {
  test('pitches the body nose-down by their ratio, and takes that off the rake', () => {
    const { pitch, rake } = lifted(0.01);
    // asin(10/1500) = 0.38197°.
    expect((pitch * 180) / Math.PI).toBeCloseTo(0.38197, 5);
    expect(rake).toBeCloseTo(machine.geometry.rake - pitch, 12);
  });

  test('shortens the trail', () => {
    const [before, after] = [lifted(0), lifted(0.01)];
    // R 300 mm, 25.783° less 0.382°, d 50 mm: (300 sin − 50)/cos.
    const trailAt = (rake: number): number => (0.3 * Math.sin(rake) - 0.05) / Math.cos(rake);
    expect(before.groundTrail).toBeCloseTo(trailAt(0.45), 12);
    expect(after.groundTrail).toBeCloseTo(trailAt(0.45 - Math.asin(0.01 / 1.5)), 12);
    expect(after.normalTrail! / Math.cos(after.rake)).toBeCloseTo(after.groundTrail!, 12);
    expect(after.groundTrail).toBeLessThan(before.groundTrail!);
  });

  test('brings the contact points together by its cosine, and lifts the seat', () => {
    const { wheelbase, seatHeight, pitch } = lifted(0.01);
    expect(wheelbase).toBeCloseTo(1.5 * Math.cos(pitch), 12);
    // The seat, 500 mm ahead of the rear axle and 500 mm over it, goes up by two thirds of the 10 mm.
    expect(seatHeight).toBeCloseTo(0.8 + 0.01 * (1 - 0.5 / 1.5), 4);
  });
});

test('10 mm over 1400 mm turn the rake by 0.40925°', () => {
  // atan(10/1400), as the trade reckons from a height read at the axle.
  expect((Math.atan(10 / 1400) * 180) / Math.PI).toBeCloseTo(0.40925, 5);
  const { pitch } = lifted(1.5 * Math.sin(Math.atan(10 / 1400)));
  expect((pitch * 180) / Math.PI).toBeCloseTo(0.40925, 5);
});

test('what was never read stays unknown', () => {
  const { groundTrail, normalTrail, seatHeight } = lifted(0, { forkOffset: null, seat: null });
  expect([groundTrail, normalTrail, seatHeight]).toEqual([null, null, null]);
});

test('at rest the trail goes by the loaded radius of the front tyre', () => {
  const prepared = prepare(machine);
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') throw new Error(answer.kind);
  const { normalTrail, rake } = attitudeAt(prepared, answer.rest.state);
  // 120 kg press 200 N/mm by 5.884 mm; the machine stands level.
  expect(rake).toBeCloseTo(0.45, 10);
  expect(normalTrail).toBeCloseTo((0.3 - 0.00588399) * Math.sin(0.45) - 0.05, 10);
});

test('offset and trail undo each other', () => {
  fc.assert(
    fc.property(between(0.25, 0.4), between(0.1, 1), between(0, 0.15), (radius, rake, trail) => {
      const offset = forkOffsetOf(radius, rake, trail);
      expect(normalTrailOf(radius, rake, offset) / Math.cos(rake)).toBeCloseTo(trail, 12);
    }),
    { seed: 801 },
  );
});
