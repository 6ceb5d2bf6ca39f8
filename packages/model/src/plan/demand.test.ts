import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { momentsOf } from '../masses/pointMass.ts';
import type { SpringSI } from '../springs/spring.ts';
import { FRONT_TRAVEL, REAR_TRAVEL } from '../statics/gradient.ts';
import { type EndSI, GRAVITY, type MachineSI } from '../statics/machine.ts';
import { type EndName, prepare } from '../statics/prepared.ts';
import { type Rest, restOf } from '../statics/rest.ts';
import { arbitraryMachine } from '../testing/arbitraryMachine.ts';
import { arbitrarySpring, between } from '../testing/arbitraryStrut.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { cases, passenger, rider, tourer } from '../testing/tourer.ts';
import { type Demand, demandAt, demandHere, preloadFor } from './demand.ts';

/** The machine with the same spring at the same preload on every strut of an end; gas, rubber and the rest may differ. */
function fitted(machine: MachineSI, name: EndName, spring: SpringSI, preload: number): MachineSI {
  const struts = machine[name].struts.map((strut) => ({ ...strut, spring, preload }));
  return { ...machine, [name]: { ...machine[name], struts } };
}

function onlyRest(machine: MachineSI): Rest | null {
  const answer = restOf(prepare(machine));
  return answer.kind === 'rest' && answer.rest.otherRests.length === 0 ? answer.rest : null;
}

describe.each(['rear', 'front'] as const)('preload and inverse undo each other at the %s', (name) => {
  const place = name === 'rear' ? REAR_TRAVEL : FRONT_TRAVEL;

  test('the preload for a wanted travel, set, gives that travel', () => {
    let seen = 0;
    fc.assert(
      fc.property(
        arbitraryMachine,
        arbitrarySpring(30_000),
        between(0.05, 0.9),
        (machine: MachineSI, spring: SpringSI, share: number) => {
          const prepared = prepare(machine);
          const travelMax = name === 'rear' ? prepared.rearTravelMax : prepared.frontTravelMax;
          const answer = demandAt(prepared, name, share * travelMax);
          if (answer.kind !== 'demand') return;
          const preload = preloadFor(spring, answer.demand);
          if (preload === null) return;
          const rest = onlyRest(fitted(machine, name, spring, preload));
          if (rest === null) return;
          seen += 1;
          // Force is met to 1e-11 of some 10 kN; against 1 N/mm of ride that is 1e-10 m.
          expect(rest[name].travel).toBeCloseTo(share * travelMax, 8);
          expect(rest.state[place]).toBe(rest[name].travel);
        },
      ),
      { seed: 901, numRuns: 400, endOnFailure: true },
    );
    expect(seen).toBeGreaterThan(250);
  });

  test('the preload for the travel at which a machine rests is the one that it has', () => {
    let seen = 0;
    fc.assert(
      fc.property(
        arbitraryMachine,
        arbitrarySpring(30_000),
        between(0, 0.03),
        (machine: MachineSI, spring: SpringSI, preload: number) => {
          const set = fitted(machine, name, spring, preload);
          const rest = onlyRest(set);
          if (rest === null || rest[name].stopForce > 0) return;
          const answer = demandAt(prepare(set), name, rest[name].travel);
          if (answer.kind !== 'demand' || answer.demand.springForce < 1) return;
          seen += 1;
          expect(preloadFor(spring, answer.demand)).toBeCloseTo(preload, 8);
        },
      ),
      { seed: 902, numRuns: 400, endOnFailure: true },
    );
    expect(seen).toBeGreaterThan(200);
  });
});

function demanded(machine: MachineSI, name: EndName, travel: number, other: number | null = null): Demand {
  const answer = demandAt(prepare(machine), name, travel, other);
  if (answer.kind !== 'demand') throw new Error(answer.kind);
  return answer.demand;
}

describe('what the springs of an end must bear', () => {
  test('is what they bear at rest', () => {
    const machine = levelMachine(plainStrut(40_000, 0.01));
    const demand = demanded(machine, 'rear', 2 * 0.03903325);
    expect(demand.springForce).toBeCloseTo(200 * GRAVITY, 6);
    expect(demand).toMatchObject({ stroke: expect.closeTo(0.03903325, 9), motionRatio: 0.5 });
    expect(demand.rise).toBeCloseTo(1, 9);
  });

  test('is shared by struts alike, after what gas, rubber and top-out spring of each do', () => {
    const machine = levelMachine(plainStrut(40_000, 0.01));
    const end: EndSI = {
      ...machine.rear,
      struts: [
        plainStrut(40_000, 0.01),
        { ...plainStrut(40_000, 0.01), topOut: { rate: 10_000, length: 0.05 } },
      ],
    };
    const state = Float64Array.from([-0.08, 0, 0.08 - 0.00588399, 0.08 - 0.00588399]);
    const demand = demandHere(prepare({ ...machine, rear: end }), 'rear', state);
    // 1961.33 N along the struts, and 10 · (50 − s) N more that the top-out spring pulls; by two.
    const pulled = 10_000 * (0.05 - demand.stroke);
    expect(demand.springForce).toBeCloseTo((200 * GRAVITY + pulled) / 2, 6);
  });

  test('is nothing where gas holds the wheel up alone; no preload is the answer', () => {
    const machine = levelMachine({
      ...plainStrut(40_000, 0.01),
      gas: { area: 1e-3, pressure: 3e6, volume: 1, exponent: 1 },
    });
    const demand = demanded(machine, 'rear', 0.05);
    expect(demand.springForce).toBeLessThan(0);
    expect(preloadFor({ kind: 'linear', rate: 40_000 }, demand)).toBeNull();
  });

  test('hangs on where the other end stands: with both at target it is another', () => {
    const machine = { ...tourer(), load: momentsOf([rider, passenger, cases]) };
    const alone = demanded(machine, 'rear', 0.03);
    const low = demanded(machine, 'rear', 0.03, alone.state[FRONT_TRAVEL]! + 0.02);
    const same = demanded(machine, 'rear', 0.03, alone.state[FRONT_TRAVEL]!);
    expect(same.springForce).toBeCloseTo(alone.springForce, 4);
    // The front 20 mm lower puts weight there: 600 kg, their centre some 0.4 m above the axles, 20/1625 rad: 18 N … 30 N.
    expect(alone.springForce - low.springForce).toBeGreaterThan(5);
  });

  test('outside the travel there is nothing to bear', () => {
    const prepared = prepare(levelMachine(plainStrut(40_000, 0.01)));
    expect(demandAt(prepared, 'rear', prepared.rearTravelMax)).toEqual({
      kind: 'outside travel',
      travel: prepared.rearTravelMax,
      travelMax: prepared.rearTravelMax,
    });
    expect(demandAt(prepared, 'rear', -0.001).kind).toBe('outside travel');
  });

  test('a machine that tips has no answer; what would have to hold its other wheel down is told', () => {
    const machine = levelMachine(plainStrut(40_000, 0.01));
    const load = momentsOf([{ mass: 100, x: -2, height: 0.6 }]);
    const answer = demandAt(prepare({ ...machine, load }), 'rear', 0.1);
    // Level: (200 − 180)/1.5 kg·m/m = 13.3 kg, 131 N; nose-up a little more or less.
    if (answer.kind !== 'no rest') throw new Error(answer.kind);
    expect(answer.residual).toBeGreaterThan(80);
    expect(answer.residual).toBeLessThan(180);
  });
});
