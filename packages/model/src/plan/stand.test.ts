import { describe, expect, test } from 'vitest';
import { momentsOf } from '../masses/pointMass.ts';
import { GRAVITY } from '../statics/machine.ts';
import { parametersOf, putOn } from '../statics/parameters.ts';
import { prepare } from '../statics/prepared.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { directionsOf, type UncertainInput } from '../uncertainty/inputs.ts';
import { HALF_WIDTH_90 } from '../uncertainty/spread.ts';
import type { Stand } from './answer.ts';
import { loadsOnOneWheel, standOf } from './stand.ts';

function standWith(
  load: readonly { mass: number; x: number; height: number }[],
  inputs: readonly UncertainInput[],
): Stand {
  const parameters = parametersOf(levelMachine({ ...plainStrut(40_000, 0.01), friction: 30 }));
  putOn(parameters, momentsOf(load));
  return standOf(parameters, prepare(parameters.machine), directionsOf(parameters, inputs));
}

const mass: UncertainInput = { name: 'body', deviation: 2, moves: [{ parameter: 'sprung.mass', by: 1 }] };
const place: UncertainInput = { name: 'place', deviation: 0.01, moves: [{ parameter: 'sprung.x', by: 1 }] };

describe('how a machine stands', () => {
  test('has its wheel loads in kilograms, with their ± and that of the whole', () => {
    const { loads } = standWith([], [mass]);
    expect(loads!.front).toBeCloseTo(120, 8);
    expect(loads!.total).toBeCloseTo(240, 8);
    // The body lies midway on a machine that stands level: each wheel has half of its ±, the whole all of it.
    expect(loads!.rearPlusMinus).toBeCloseTo(HALF_WIDTH_90, 6);
    expect(loads!.totalPlusMinus).toBeCloseTo(2 * HALF_WIDTH_90, 6);
  });

  test('knows that what one wheel gains by a shifted body the other loses: the whole has no ± from it', () => {
    const { loads } = standWith([], [place]);
    // 200 kg · 10 mm / 1.5 m = 1.33 kg, and a little more as the nose goes down.
    expect(loads!.frontPlusMinus).toBeGreaterThan((2 / 1.5) * HALF_WIDTH_90);
    expect(loads!.rearPlusMinus).toBeCloseTo(loads!.frontPlusMinus, 8);
    expect(loads!.totalPlusMinus).toBeCloseTo(0, 8);
  });

  test('has travel with its ±, band and attitude', () => {
    const { travel, band, attitude } = standWith([], [mass]);
    expect(travel!.rear.value).toBeCloseTo(0.0780665, 9);
    // A kilogram more is half of one on each end of 10 N/mm.
    expect(travel!.rear.plusMinus).toBeCloseTo(HALF_WIDTH_90 * (GRAVITY / 10_000), 9);
    // 30 N over 40 N/mm, twice at the wheel.
    expect(band!.rear.most - travel!.rear.value).toBeCloseTo(2 * (30 / 40_000), 9);
    expect(attitude!.pitch).toBeCloseTo(0, 9);
  });

  test('is told when it does not stand: nothing else then', () => {
    expect(standWith([{ mass: 100, x: -2, height: 0.6 }], [mass])).toEqual({
      answer: { kind: 'tips', over: 'rear' },
      attitude: null,
      travel: null,
      band: null,
      loads: null,
    });
  });
});

test('a machine that tips has all of its mass, and its ±, on the wheel it goes over', () => {
  const parameters = parametersOf(levelMachine(plainStrut(40_000, 0.01)));
  putOn(parameters, { mass: 100, momentX: 350, momentHeight: 60 });
  const directions = directionsOf(parameters, [mass]);
  const loads = loadsOnOneWheel(parameters, prepare(parameters.machine), 'front', directions);
  expect(loads).toEqual({
    front: 340,
    frontPlusMinus: expect.closeTo(2 * HALF_WIDTH_90, 6),
    rear: 0,
    rearPlusMinus: 0,
    total: 340,
    totalPlusMinus: expect.closeTo(2 * HALF_WIDTH_90, 6),
  });
});
