import { describe, expect, test } from 'vitest';
import { momentsOf } from '../masses/pointMass.ts';
import type { MachineSI } from '../statics/machine.ts';
import { prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { passenger, rider, tourer } from '../testing/tourer.ts';
import { attitudeAt } from './attitude.ts';
import { changed, keepAttitude } from './keep.ts';

function attitude(machine: MachineSI) {
  const prepared = prepare(machine);
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') throw new Error(answer.kind);
  return attitudeAt(prepared, answer.rest.state);
}

const solo = { ...tourer(), load: momentsOf([rider]) };
const both = { ...tourer(), load: momentsOf([rider, passenger]) };

describe.each(['rake', 'groundTrail', 'seatHeight'] as const)('%s with a passenger as without', (part) => {
  test.each(['shock length', 'clamp height'] as const)('by %s', (by) => {
    const keeping = keepAttitude(both, part, attitude(solo)[part]!, by);
    if (keeping?.kind !== 'change') throw new Error(keeping?.kind ?? 'not known');
    // The slope is at most some metres a metre: what is left is the search's 1e-7 m.
    expect(attitude(changed(both, by, keeping.change)!)[part]).toBeCloseTo(attitude(solo)[part]!, 6);
    // The rear sank: longer shocks bring all back; tubes up restore rake and trail, tubes down the seat.
    const isSeatByClamps = part === 'seatHeight' && by === 'clamp height';
    expect(Math.sign(keeping.change)).toBe(isSeatByClamps ? -1 : 1);
  });
});

test('what did not change asks for no change', () => {
  expect(keepAttitude(solo, 'rake', attitude(solo).rake, 'shock length')).toMatchObject({
    kind: 'change',
    change: 0,
  });
});

test('a rake that nothing in reach gives is none', () => {
  expect(keepAttitude(solo, 'rake', 0.3, 'clamp height')).toEqual({ kind: 'none', tried: 0.08 });
});

test('what was never read, and clamps of a front that is no fork, are not to be had', () => {
  const machine = levelMachine(plainStrut(40_000, 0.01));
  expect(keepAttitude(machine, 'rake', 0.45, 'clamp height')).toBeNull();
  const without = { ...machine, geometry: { ...machine.geometry, seat: null } };
  expect(keepAttitude(without, 'seatHeight', 0.8, 'shock length')).toBeNull();
});
