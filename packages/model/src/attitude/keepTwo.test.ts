import { describe, expect, test } from 'vitest';
import { momentsOf } from '../masses/pointMass.ts';
import type { MachineSI } from '../statics/machine.ts';
import { prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { passenger, rider, tourer } from '../testing/tourer.ts';
import { attitudeAt } from './attitude.ts';
import { changed } from './keep.ts';
import { keepTwo } from './keepTwo.ts';

function attitude(machine: MachineSI) {
  const prepared = prepare(machine);
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') throw new Error(answer.kind);
  return attitudeAt(prepared, answer.rest.state);
}

const solo = { ...tourer(), load: momentsOf([rider]) };
const both = { ...tourer(), load: momentsOf([rider, passenger]) };

describe.each(['rake', 'groundTrail'] as const)('%s and seat height with a passenger as without', (part) => {
  test('come back by shock length and clamp height together', () => {
    const wanted = attitude(solo);
    const keeping = keepTwo(both, [part, 'seatHeight'], [wanted[part]!, wanted.seatHeight!]);
    if (keeping?.kind !== 'changes') throw new Error(keeping?.kind ?? 'not known');
    const { shockLength, clampHeight } = keeping;
    const moved = attitude(
      changed(changed(both, 'shock length', shockLength)!, 'clamp height', clampHeight)!,
    );
    expect(moved[part]).toBeCloseTo(wanted[part]!, 7);
    expect(moved.seatHeight).toBeCloseTo(wanted.seatHeight!, 7);
  });
});

test('what was changed by hand is found again, both changes', () => {
  const by = { length: -0.006, clamp: 0.009 };
  const moved = changed(changed(both, 'shock length', by.length)!, 'clamp height', by.clamp)!;
  const wanted = attitude(moved);
  const keeping = keepTwo(both, ['rake', 'seatHeight'], [wanted.rake, wanted.seatHeight!]);
  expect(keeping).toMatchObject({
    shockLength: expect.closeTo(by.length, 7),
    clampHeight: expect.closeTo(by.clamp, 7),
  });
});

test('what nothing in reach gives is none; what was never read is not to be had', () => {
  expect(keepTwo(both, ['rake', 'seatHeight'], [0.2, 1.2])).toEqual({ kind: 'none', tried: 0.08 });
  const without = { ...both, geometry: { ...both.geometry, seat: null } };
  expect(keepTwo(without, ['rake', 'seatHeight'], [0.5, 0.7])).toBeNull();
});
