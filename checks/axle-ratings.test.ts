/**
 * What ratings mean, USA. GAWR: "the value specified by the vehicle manufacturer as the load-carrying capacity of a single
 * axle system, as measured at the tire-ground interfaces"; GVWR: "the value specified by the manufacturer as the loaded
 * weight of a single vehicle" (49 CFR 571.3, quoted in NHTSA interpretation letters aiam1472, aiam2429); the ratings of the
 * axles must at least add up to it (aiam1472). 49 CFR 567.4: GVWR not less than unloaded weight, rated cargo and 150 lb
 * for each seat (aiam0613, quoting 36 FR 14583, 1971). Definitions published, examples worked out from them; the law itself
 * was not read, and local rules come first. Tyre masses by load index: table of ISO 4000-1 (checks/load-index-table).
 */
import { type AxleLoads, type LimitsSI, limitsOf, stated } from '@sagwright/model/limits/limits';
import { momentsOf } from '@sagwright/model/masses/pointMass';
import { standOf } from '@sagwright/model/plan/stand';
import { GRAVITY, type MachineSI } from '@sagwright/model/statics/machine';
import { parametersOf } from '@sagwright/model/statics/parameters';
import { prepare } from '@sagwright/model/statics/prepared';
import { loadIndexMass } from '@sagwright/model/tyres/loadIndex';
import { describe, expect, test } from 'vitest';

const seatedPerson = 150 * 0.45359237;
const unknown: LimitsSI = { gross: null, frontAxle: null, rearAxle: null, frontTyre: null, rearTyre: null };

function exactly(front: number, rear: number): AxleLoads {
  return {
    front,
    frontPlusMinus: 0,
    rear,
    rearPlusMinus: 0,
    total: front + rear,
    totalPlusMinus: 0,
  };
}

function verdicts(loads: AxleLoads, limits: LimitsSI): Record<string, string> {
  return Object.fromEntries(limitsOf(loads, limits, []).map(({ of, verdict }) => [of.kind, verdict]));
}

describe('a gross rating, of a machine of 200 kg unloaded, two seats and 20 kg of cargo', () => {
  const least = 200 + 20 + 2 * seatedPerson;

  test('is at least 356.077711 kg', () => {
    expect(least).toBeCloseTo(356.077711, 6);
  });

  test('of just that passes two people of 150 lb with the cargo, and not a kilogram more', () => {
    const limits = { ...unknown, gross: stated(least) };
    expect(verdicts(exactly(150, least - 150), limits).gross).toBe('within');
    expect(verdicts(exactly(150, least - 149), limits).gross).toBe('over');
  });
});

describe('front load index 58 (236 kg) and rear 73 (365 kg), together 601 kg', () => {
  const limits = {
    ...unknown,
    gross: stated(601),
    frontTyre: stated(loadIndexMass(58)),
    rearTyre: stated(loadIndexMass(73)),
  };

  test('do not carry 590 kg of which the rear bears 380: each axle goes by its own tyre, never by the sum', () => {
    expect(limits.frontTyre.value + limits.rearTyre.value).toBe(601);
    expect(verdicts(exactly(210, 380), limits)).toEqual({
      gross: 'within',
      'rear axle': 'not checked',
      'front axle': 'not checked',
      'rear tyre': 'over',
      'front tyre': 'within',
    });
  });
});

test('axles are judged each by itself: one over its rating is over, however much the other has left', () => {
  // Ratings that add up to 50 kg more than the gross.
  const limits = { ...unknown, gross: stated(500), frontAxle: stated(200), rearAxle: stated(350) };
  expect(verdicts(exactly(205, 250), limits)).toMatchObject({
    gross: 'within',
    'front axle': 'over',
    'rear axle': 'within',
  });
});

test('an axle’s load is what its tyre bears on the ground, wheel and tyre included', () => {
  const strut: MachineSI['rear']['struts'][number] = {
    spring: { kind: 'linear', rate: 40_000 },
    preload: 0.01,
    gas: null,
    rubber: null,
    topOut: null,
    friction: 0,
  };
  const end: MachineSI['rear'] = {
    unsprung: 20,
    tyre: { radius: 0.3, rate: 200_000 },
    referenceTravel: 0,
    strokeMax: 0.1,
    kinematics: { kind: 'ratio', motionRatio: 0.5 },
    axlePath: { kind: 'straight' },
    struts: [strut],
  };
  const machine: MachineSI = {
    geometry: { wheelbase: 1.5, rake: 0.45, forkOffset: null, seat: null },
    sprung: { mass: 200, x: 0.75, height: 0.5 },
    load: momentsOf([]),
    rear: end,
    front: end,
  };
  const parameters = parametersOf(machine);
  const { loads, answer } = standOf(parameters, prepare(parameters.machine), []);
  if (answer.kind !== 'rest' || loads === null) throw new Error(answer.kind);
  // Half of the body and a wheel of 20 kg; on a machine that stands level this needs no balance.
  expect(loads.rear).toBeCloseTo(120, 8);
  expect(answer.rest.rear.wheelLoad / GRAVITY).toBeCloseTo(120, 8);
  expect(loads.total).toBeCloseTo(240, 8);
});
