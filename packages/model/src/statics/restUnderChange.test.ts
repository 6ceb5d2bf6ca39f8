import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rubberTimes } from '../dampers/rubber.ts';
import type { StrutSI } from '../dampers/strut.ts';
import { momentsOf, type PointMass } from '../masses/pointMass.ts';
import type { SpringSI } from '../springs/spring.ts';
import { arbitraryMachine, arbitraryThing } from '../testing/arbitraryMachine.ts';
import { between } from '../testing/arbitraryStrut.ts';
import { type EndSI, GRAVITY, type MachineSI } from './machine.ts';
import { prepare } from './prepared.ts';
import { type Rest, restOf } from './rest.ts';

/** The rest of a machine that has only one; null for one that has several or tips. */
function onlyRest(machine: MachineSI): Rest | null {
  const answer = restOf(prepare(machine));
  return answer.kind === 'rest' && answer.rest.otherRests.length === 0 ? answer.rest : null;
}

/** World height of a body point: u − X sin θ + Z cos θ. */
function heightOf(rest: Rest, { x, height }: PointMass): number {
  return rest.state[0]! - x * Math.sin(rest.pitch) + height * Math.cos(rest.pitch);
}

function withMore(machine: MachineSI, thing: PointMass): MachineSI {
  const { mass, momentX, momentHeight } = momentsOf([thing]);
  const { load } = machine;
  return {
    ...machine,
    load: {
      mass: load.mass + mass,
      momentX: load.momentX + momentX,
      momentHeight: load.momentHeight + momentHeight,
    },
  };
}

/** Runs a law on drawn machines; `law` returns false where it has nothing to say, which must be rare. */
function lawOf<T>(seed: number, drawn: fc.Arbitrary<T>, law: (values: T) => boolean): void {
  let said = 0;
  const numRuns = 400;
  fc.assert(
    fc.property(drawn, (values) => {
      if (law(values)) said += 1;
    }),
    { seed, numRuns },
  );
  expect(said).toBeGreaterThan(0.8 * numRuns);
}

describe('something added', () => {
  test('never rises: the point where it lies goes down or stays', () => {
    // V(x) + m g h(x) is least at the rest, so h can only fall as m grows, whatever the springs do. Heights to 1e-11 m.
    lawOf(401, fc.tuple(arbitraryMachine, arbitraryThing), ([machine, thing]) => {
      const before = onlyRest(machine);
      const after = onlyRest(withMore(machine, thing));
      if (before === null || after === null) return false;
      expect(heightOf(after, thing)).toBeLessThanOrEqual(heightOf(before, thing) + 1e-9);
      return true;
    });
  });

  test('splits by the lever rule between the wheels, in the attitude that it makes', () => {
    lawOf(402, fc.tuple(arbitraryMachine, arbitraryThing), ([machine, thing]) => {
      const prepared = prepare(withMore(machine, thing));
      const answer = restOf(prepared);
      if (answer.kind !== 'rest') return false;
      const { rear, front } = prepared.gradient;
      const { rest } = answer;
      const forward = (x: number, height: number): number =>
        x * Math.cos(rest.pitch) + height * Math.sin(rest.pitch);
      const wheelbase = front.forward - rear.forward;
      /** What the machine without the thing would put on the front wheel if it stood like this. */
      const { sprung, load } = machine;
      const moment =
        sprung.mass * (forward(sprung.x, sprung.height) - rear.forward) +
        (forward(load.momentX, load.momentHeight) - load.mass * rear.forward) +
        machine.front.unsprung * wheelbase;
      const share = (forward(thing.x, thing.height) - rear.forward) / wheelbase;
      const without = (GRAVITY * moment) / wheelbase;
      const all = GRAVITY * (sprung.mass + load.mass + machine.rear.unsprung + machine.front.unsprung);
      expect(rest.front.wheelLoad - without).toBeCloseTo(GRAVITY * thing.mass * share, 6);
      expect(rest.rear.wheelLoad - (all - without)).toBeCloseTo(GRAVITY * thing.mass * (1 - share), 6);
      return true;
    });
  });
});

describe('preload', () => {
  test.each(['rear', 'front'] as const)('more of it never deepens the travel at its own end: %s', (end) => {
    lawOf(403, fc.tuple(arbitraryMachine, between(0, 0.03)), ([machine, more]) => {
      const before = onlyRest(machine);
      const after = onlyRest({ ...machine, [end]: withPreload(machine[end], more) });
      if (before === null || after === null) return false;
      expect(after[end].travel).toBeLessThanOrEqual(before[end].travel + 1e-9);
      return true;
    });
  });

  test('does nothing to a wheel on the metal but lift some of the weight off it', () => {
    lawOf(404, fc.tuple(arbitraryMachine.map(bottomed), between(0, 1e-4)), ([machine, more]) => {
      const before = onlyRest(machine);
      const after = onlyRest({ ...machine, rear: withPreload(machine.rear, more) });
      if (before?.rear.standing !== 'bottomed' || after === null) return false;
      expect(after.rear.stopForce).toBeLessThanOrEqual(before.rear.stopForce + 1e-6);
      return true;
    });
  });
});

function withPreload(end: EndSI, more: number): EndSI {
  return { ...end, struts: end.struts.map((strut) => ({ ...strut, preload: strut.preload + more })) };
}

/** Its rear springs too soft by far. */
function bottomed(machine: MachineSI): MachineSI {
  const struts = machine.rear.struts.map(
    (strut): StrutSI => ({
      ...strut,
      spring: { kind: 'linear', rate: 1_000 },
      gas: null,
      rubber: null,
    }),
  );
  return { ...machine, rear: { ...machine.rear, struts } };
}

test('left and right swapped changes nothing', () => {
  lawOf(405, arbitraryMachine, (machine) => {
    const swapped = (end: EndSI): EndSI => ({ ...end, struts: [...end.struts].reverse() });
    const here = restOf(prepare(machine));
    const there = restOf(prepare({ ...machine, rear: swapped(machine.rear), front: swapped(machine.front) }));
    if (here.kind !== 'rest' || there.kind !== 'rest') return here.kind === there.kind;
    // Two forces add up to the same in either order, to the last bit; of the energy of some kJ the last bits may differ.
    expect({ ...there.rest, energy: 0 }).toEqual({ ...here.rest, energy: 0 });
    expect(there.rest.energy).toBeCloseTo(here.rest.energy, 9);
    return true;
  });
});

test('every mass, rate and force twice as great: the same travels, twice the loads', () => {
  lawOf(406, arbitraryMachine, (machine) => {
    const one = restOf(prepare(machine));
    const two = restOf(prepare(scaled(machine, 2)));
    if (one.kind !== 'rest' || two.kind !== 'rest') return one.kind === two.kind;
    // Doubling is exact in binary, and so is every step of the solve.
    expect(two.rest.state).toEqual(one.rest.state);
    for (const end of ['rear', 'front'] as const) {
      expect(two.rest[end].wheelLoad).toBe(2 * one.rest[end].wheelLoad);
      expect(two.rest[end].wheelRate).toBe(2 * one.rest[end].wheelRate);
      expect(two.rest[end].rideFrequency).toBe(one.rest[end].rideFrequency);
    }
    return true;
  });
});

/** Gas is scaled by its area and volume: pressures, and with them the air outside, stay. */
function scaled(machine: MachineSI, by: number): MachineSI {
  const { sprung, load } = machine;
  return {
    ...machine,
    sprung: { ...sprung, mass: by * sprung.mass },
    load: {
      mass: by * load.mass,
      momentX: by * load.momentX,
      momentHeight: by * load.momentHeight,
    },
    rear: scaledEnd(machine.rear, by),
    front: scaledEnd(machine.front, by),
  };
}

function scaledEnd(end: EndSI, by: number): EndSI {
  return {
    ...end,
    unsprung: by * end.unsprung,
    tyre: { ...end.tyre, rate: by * end.tyre.rate },
    struts: end.struts.map((strut) => ({
      ...strut,
      spring: scaledSpring(strut.spring, by),
      gas: strut.gas && { ...strut.gas, area: by * strut.gas.area, volume: by * strut.gas.volume },
      rubber: strut.rubber && rubberTimes(strut.rubber, by),
      topOut: strut.topOut && { ...strut.topOut, rate: by * strut.topOut.rate },
      friction: by * strut.friction,
    })),
  };
}

function scaledSpring(spring: SpringSI, by: number): SpringSI {
  switch (spring.kind) {
    case 'none':
      return spring;
    case 'linear':
      return { ...spring, rate: by * spring.rate };
    case 'series':
      return { ...spring, soft: by * spring.soft, stiff: by * spring.stiff };
    case 'parallel':
      return { ...spring, rate: by * spring.rate, second: by * spring.second };
    case 'table':
      return { ...spring, force: spring.force.map((force) => by * force) };
  }
}
