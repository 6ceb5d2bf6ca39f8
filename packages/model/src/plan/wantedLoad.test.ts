import { describe, expect, test } from 'vitest';
import { momentsOf, type PointMass } from '../masses/pointMass.ts';
import { type Parameters, parametersOf } from '../statics/parameters.ts';
import { type Prepared, prepare } from '../statics/prepared.ts';
import { carrying, shares } from '../testing/collarQuestion.ts';
import { passenger, rider, tourer } from '../testing/tourer.ts';
import { directionsOf } from '../uncertainty/inputs.ts';
import { demandAt } from './demand.ts';
import type { LoadCaseSI } from './question.ts';
import { type WantedLoad, wantedOf } from './wantedLoad.ts';

function laden(things: readonly PointMass[]): { parameters: Parameters; prepared: Prepared } {
  const parameters = parametersOf({ ...tourer(), load: momentsOf(things) });
  return { parameters, prepared: prepare(parameters.machine) };
}

function wantedWith(things: readonly PointMass[], wanted: LoadCaseSI['wanted']): WantedLoad {
  const { parameters, prepared } = laden(things);
  return wantedOf(parameters, prepared, 'rear', carrying('two', things, { wanted }), []);
}

describe('what a load wants of an end', () => {
  const two = [rider, passenger];
  const band = shares(0.36, 0.4, 0.44);

  test('are the demands at its aim and at both ends of its band', () => {
    const want = wantedWith(two, { rear: band, front: null });
    if (want.kind !== 'wanted') throw new Error(want.kind);
    const { prepared } = laden(two);
    for (const [demand, share] of [
      [want.low, 0.36],
      [want.aim, 0.4],
      [want.high, 0.44],
    ] as const) {
      const answer = demandAt(prepared, 'rear', share * prepared.rearTravelMax);
      expect(answer).toEqual({ kind: 'demand', demand });
    }
    expect(want.bothAtTarget).toBeNull();
  });

  test('is told with the other end at its own aim too, where it has one', () => {
    const want = wantedWith(two, { rear: band, front: shares(0.3, 0.5, 0.6) });
    if (want.kind !== 'wanted') throw new Error(want.kind);
    const { prepared } = laden(two);
    const answer = demandAt(prepared, 'rear', 0.4 * prepared.rearTravelMax, 0.5 * prepared.frontTravelMax);
    expect(answer).toEqual({ kind: 'demand', demand: want.bothAtTarget });
  });

  test('is nothing, or more than the travel, or not to be had', () => {
    expect(wantedWith(two, { rear: null, front: null })).toEqual({ kind: 'not wanted' });
    const deep = wantedWith(two, { rear: shares(0.8, 0.9, 1.2), front: null });
    expect(deep).toMatchObject({ kind: 'outside travel', wanted: expect.closeTo(1.2 * (0.069 / 0.9), 12) });
    const far = wantedWith([{ mass: 300, x: -1.5, height: 1 }], { rear: band, front: null });
    expect(far.kind).toBe('no rest');
  });

  test('moves with each input: force and stroke of the aim, the stroke of a share with the whole travel', () => {
    const { parameters, prepared } = laden(two);
    const inputs = [{ name: 'stroke', deviation: 0.001, moves: [{ parameter: 'rear.strokeMax', by: 1 }] }];
    const loadCase = carrying('two', two);
    const want = wantedOf(parameters, prepared, 'rear', loadCase, directionsOf(parameters, inputs));
    if (want.kind !== 'wanted') throw new Error(want.kind);
    // A millimetre of stroke more is 0.4 of one at the aim.
    expect(want.slopes[0]!.stroke).toBeCloseTo(0.4, 6);
    expect(want.slopes[0]!.input.name).toBe('stroke');
  });
});
