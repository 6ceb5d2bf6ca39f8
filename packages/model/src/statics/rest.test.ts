import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StrutSI } from '../dampers/strut.ts';
import { damperAt } from '../rear/wheelMotion.ts';
import { arbitraryMachine } from '../testing/arbitraryMachine.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { strutAt } from './endAt.ts';
import { type EndSI, GRAVITY, type MachineSI } from './machine.ts';
import { type EndName, prepare } from './prepared.ts';
import { type EndRest, frictionBand, type Rest, restFrom, restOf } from './rest.ts';

const ENDS = ['rear', 'front'] as const;

function restingAt(machine: MachineSI): Rest {
  const answer = restOf(prepare(machine));
  if (answer.kind !== 'rest') throw new Error(`no rest but ${JSON.stringify(answer)}`);
  return answer.rest;
}

describe('at every rest', () => {
  test('the wheels bear the weight, and moments about the rear contact point cancel', () => {
    everyRest(201, (machine, rest) => {
      const rear = axleInWorld(machine, rest, 'rear');
      const front = axleInWorld(machine, rest, 'front');
      const { sprung, load } = machine;
      const weight = GRAVITY * (sprung.mass + load.mass + machine.rear.unsprung + machine.front.unsprung);
      // Forces are found to 1e-11 of the weight; sums of what the tyres bear round a little more.
      expect(rest.rear.wheelLoad + rest.front.wheelLoad).toBeCloseTo(weight, 6);
      const bodyX = forwardInWorld(rest, sprung.x, sprung.height);
      const loadMoment =
        load.momentX * Math.cos(rest.pitch) +
        load.momentHeight * Math.sin(rest.pitch) -
        load.mass * rear.forward;
      const weightMoment =
        sprung.mass * (bodyX - rear.forward) +
        loadMoment +
        machine.front.unsprung * (front.forward - rear.forward);
      expect(rest.front.wheelLoad * (front.forward - rear.forward)).toBeCloseTo(GRAVITY * weightMoment, 6);
    });
  });

  test('each tyre is pressed by its wheel load', () => {
    everyRest(202, (machine, rest) => {
      for (const end of ENDS) {
        const { height } = axleInWorld(machine, rest, end);
        const { tyre } = machine[end];
        // A micrometre of axle height, a few roundings of it, is 3e-10 N at 300 N/mm.
        expect(rest[end].wheelLoad).toBeCloseTo(tyre.rate * (tyre.radius - height), 6);
        expect(rest[end].tyreDeflection).toBeCloseTo(tyre.radius - height, 12);
      }
    });
  });

  test('struts and stop bear what is above each wheel, along its own path', () => {
    everyRest(203, (machine, rest) => {
      for (const end of ENDS) {
        const { travel, travelMax, wheelLoad, stopForce } = rest[end];
        const rise = riseOfAxle(machine, rest, end);
        const stop = travel <= 0 ? -stopForce : travel >= travelMax ? stopForce : 0;
        const borne = (wheelLoad - machine[end].unsprung * GRAVITY) * rise;
        // The path's direction is a difference over 1e-6 m: good to 1e-9 of a wheel load of some 10 kN.
        expect(borne).toBeCloseTo(strutsAtWheel(machine[end], machine.geometry.rake, travel) + stop, 4);
      }
    });
  });

  test('a stop pushes only where the wheel stands on it, and never pulls', () => {
    everyRest(204, (_, rest) => {
      for (const { travel, travelMax, stopForce, standing } of ends(rest)) {
        expect(travel).toBeGreaterThanOrEqual(0);
        expect(travel).toBeLessThanOrEqual(travelMax);
        expect(stopForce).toBeGreaterThanOrEqual(0);
        expect(standing === 'topped out').toBe(travel === 0);
        expect(standing === 'bottomed').toBe(travel === travelMax);
        if (travel > 0 && travel < travelMax) expect(stopForce).toBe(0);
      }
    });
  });

  test('the wheel hangs no deeper than where it would rest with its spring alone to push it out', () => {
    everyRest(205, (machine, rest) => {
      for (const end of ENDS) {
        const { hangingTravel, travelMax } = rest[end];
        const pull = (travel: number): number =>
          strutsAtWheel(machine[end], machine.geometry.rake, travel) + machine[end].unsprung * GRAVITY;
        expect(hangingTravel).toBeGreaterThanOrEqual(0);
        if (hangingTravel === 0) expect(pull(0)).toBeGreaterThanOrEqual(0);
        // Found to 1e-12 m; against at most some MN/m that is 1e-5 N.
        else if (hangingTravel < travelMax) expect(pull(hangingTravel)).toBeCloseTo(0, 4);
      }
    });
  });
});

/** Rests of drawn machines; those that tip are passed over, and must be few. */
function everyRest(seed: number, check: (machine: MachineSI, rest: Rest) => void): void {
  let passedOver = 0;
  fc.assert(
    fc.property(arbitraryMachine, (machine) => {
      const answer = restOf(prepare(machine));
      if (answer.kind === 'rest') check(machine, answer.rest);
      else passedOver += 1;
    }),
    { seed, numRuns: 400 },
  );
  expect(passedOver).toBeLessThan(20);
}

function ends(rest: Rest): readonly EndRest[] {
  return [rest.rear, rest.front];
}

/** Forward place in the world of a body point: X cos θ + Z sin θ. */
function forwardInWorld(rest: Rest, x: number, height: number): number {
  return x * Math.cos(rest.pitch) + height * Math.sin(rest.pitch);
}

function axleInWorld(machine: MachineSI, rest: Rest, end: EndName): { forward: number; height: number } {
  const axle = axleInBody(machine, end, rest[end].travel);
  return {
    forward: forwardInWorld(rest, axle.x, axle.height),
    height: rest.state[0]! - axle.x * Math.sin(rest.pitch) + axle.height * Math.cos(rest.pitch),
  };
}

/** Where an axle is in the body, by geometry alone. */
function axleInBody(machine: MachineSI, end: EndName, travel: number): { x: number; height: number } {
  const { axlePath, tyre, referenceTravel } = machine[end];
  const startX = end === 'rear' ? 0 : machine.geometry.wheelbase;
  const height = tyre.radius + travel - referenceTravel;
  if (axlePath.kind === 'straight') return { x: startX, height };
  if (axlePath.kind === 'fork') {
    return { x: startX - (travel - referenceTravel) * Math.tan(machine.geometry.rake), height };
  }
  const arm = Math.hypot(axlePath.pivotX - startX, axlePath.pivotHeight - tyre.radius);
  const angle = Math.asin((height - axlePath.pivotHeight) / arm);
  return { x: axlePath.pivotX - arm * Math.cos(angle), height };
}

/** World rise of the axle for each metre of travel, the body held: by difference. */
function riseOfAxle(machine: MachineSI, rest: Rest, end: EndName): number {
  const step = 1e-6;
  const above = axleInBody(machine, end, rest[end].travel + step);
  const below = axleInBody(machine, end, rest[end].travel - step);
  const slope = (above.x - below.x) / (2 * step);
  return Math.cos(rest.pitch) - slope * Math.sin(rest.pitch);
}

/** Σ F·MR of an end. */
function strutsAtWheel(end: EndSI, rake: number, travel: number): number {
  const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  damperAt(end, rake, travel, at);
  const forces = end.struts.map((strut) => {
    const out = { force: 0, rate: 0, energy: 0 };
    strutAt(strut, at.stroke, out);
    return out.force;
  });
  return at.motionRatio * forces.reduce((sum, force) => sum + force, 0);
}

describe('on the level machine, by hand', () => {
  // Each strut is to bear 1961.33 N along itself; wheel travel is twice its stroke.
  test('the springs bear the body: free', () => {
    const { rear, front, pitch } = restingAt(levelMachine(plainStrut(40_000, 0.01)));
    // 1961.33 / 40 = 49.03325 mm, of which 10 are preload.
    expect(rear.travel).toBeCloseTo(2 * 0.03903325, 10);
    expect(front.travel).toBeCloseTo(rear.travel, 12);
    expect(pitch).toBeCloseTo(0, 12);
    expect(rear.standing).toBe('free');
    expect(rear.stopForce).toBe(0);
    // Half of 200 kg, and the wheel's own 20.
    expect(rear.wheelLoad).toBeCloseTo(120 * GRAVITY, 8);
    // 40 · 0.5² = 10 N/mm; with 200 N/mm of tyre 2000/210; 100 kg swing on each.
    expect(rear.wheelRate).toBeCloseTo(10_000, 8);
    expect(rear.rideRate).toBeCloseTo(2_000_000_000 / 210_000, 8);
    expect(rear.frequencyWithoutTyre).toBeCloseTo(Math.sqrt(100) / (2 * Math.PI), 10);
    expect(rear.rideFrequency).toBeCloseTo(Math.sqrt(2000 / 21) / (2 * Math.PI), 10);
  });

  test('more preload than weight: topped out, the stop bears the rest', () => {
    const { rear } = restingAt(levelMachine(plainStrut(40_000, 0.06)));
    // The spring pushes 2400 N along itself; at the wheel (2400 − 1961.33)/2 too much.
    expect(rear.travel).toBe(0);
    expect(rear.standing).toBe('topped out');
    expect(rear.stopForce).toBeCloseTo(219.335, 8);
    expect(rear.rideFrequency).toBeNull();
    expect(rear.frequencyWithoutTyre).toBeNull();
  });

  test('held by spring and top-out spring at once', () => {
    const strut: StrutSI = { ...plainStrut(40_000, 0.05), topOut: { rate: 10_000, length: 0.008 } };
    const { rear } = restingAt(levelMachine(strut));
    // 40 (50 + s) − 10 (8 − s) = 1961.33: s = 41.33/50 mm.
    expect(rear.travel).toBeCloseTo(2 * 0.0008266, 10);
    expect(rear.standing).toBe('on top-out spring');
    // Both give way: (40 + 10) · 0.5².
    expect(rear.wheelRate).toBeCloseTo(12_500, 8);
  });

  test('on the rubber', () => {
    const strut: StrutSI = {
      ...plainStrut(20_000, 0.01),
      rubber: { start: 0.06, rate: 20_000, hardening: 0 },
    };
    const { rear } = restingAt(levelMachine(strut));
    // 20 (10 + s) + 20 (s − 60) = 1961.33: s = 2961.33/40 mm.
    expect(rear.travel).toBeCloseTo(2 * 0.07403325, 10);
    expect(rear.standing).toBe('on rubber');
  });

  test('too soft: bottomed, metal bears the rest', () => {
    const { rear } = restingAt(levelMachine(plainStrut(15_000, 0)));
    // 15 · 100 = 1500 N of 1961.33; half of what is missing at the wheel.
    expect(rear.travel).toBe(0.2);
    expect(rear.standing).toBe('bottomed');
    expect(rear.stopForce).toBeCloseTo(230.665, 8);
    expect(rear.rideFrequency).toBeNull();
  });

  test('a load far behind the axle: the front wheel leaves the ground and the machine tips over the rear one', () => {
    const machine = levelMachine(plainStrut(40_000, 0.01));
    // About the rear contact, level: 200 · 0.75 + 20 · 1.5 = 180 kg·m hold it down, 100 · 2 lift.
    const load = { mass: 100, momentX: -200, momentHeight: 60 };
    expect(restOf(prepare({ ...machine, load }))).toEqual({ kind: 'tips', over: 'rear' });
  });

  test('a load far ahead of the front axle: it tips over the front wheel', () => {
    const machine = levelMachine(plainStrut(40_000, 0.01));
    // About the front contact: 200 · 0.75 + 20 · 1.5 = 180 kg·m against 100 · 2.
    const load = { mass: 100, momentX: 350, momentHeight: 60 };
    expect(restOf(prepare({ ...machine, load }))).toEqual({ kind: 'tips', over: 'front' });
  });

  test('wheels that are held stay where they are put, and the body settles on its tyres', () => {
    const prepared = prepare(levelMachine(plainStrut(40_000, 0.01)));
    const state = Float64Array.from([0, 0, 0.05, 0.05]);
    const answer = restFrom(prepared, state, 0, 'both');
    // Each tyre bears 120 kg: 1176.798 N / 200 N/mm = 5.88399 mm; the wheels have come up 50 mm in the body.
    expect(answer.kind).toBe('rest');
    expect(Array.from(state)).toEqual([expect.closeTo(-0.05588399, 10), expect.closeTo(0, 12), 0.05, 0.05]);
  });

  test('friction makes sag an interval', () => {
    const prepared = prepare(levelMachine({ ...plainStrut(40_000, 0.01), friction: 100 }));
    const answer = restOf(prepared);
    if (answer.kind !== 'rest') throw new Error(answer.kind);
    const band = frictionBand(prepared, answer.rest);
    // 100 N over 40 N/mm is 2.5 mm of stroke, 5 mm at the wheel, to either side of 78.0665.
    expect(band?.rear.least).toBeCloseTo(0.0730665, 10);
    expect(band?.rear.most).toBeCloseTo(0.0830665, 10);
    expect(band?.front).toEqual({
      least: expect.closeTo(0.0730665, 10),
      most: expect.closeTo(0.0830665, 10),
    });
  });
});

test('lifted, the struts stand longer than without friction, pressed shorter: friction holds what it is worth', () => {
  everyRest(206, (machine, rest) => {
    const band = frictionBand(prepare(machine), rest);
    if (band === null) throw new Error('no band');
    // Least of V + Σ F_c s, of V, of V − Σ F_c s: the sum Σ F_c s can only grow. Up to 600 N, found to some 1e-11 m.
    const worth = (travelOf: (end: EndName) => number): number =>
      ENDS.reduce((sum, end) => sum + frictionWorth(machine, end, travelOf(end)), 0);
    const free = worth((end) => rest[end].travel);
    expect(worth((end) => band[end].least)).toBeLessThanOrEqual(free + 1e-7);
    expect(worth((end) => band[end].most)).toBeGreaterThanOrEqual(free - 1e-7);
  });
});

/** Σ F_c s of an end [J]. */
function frictionWorth(machine: MachineSI, end: EndName, travel: number): number {
  const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  damperAt(machine[end], machine.geometry.rake, travel, at);
  return machine[end].struts.reduce((sum, strut) => sum + strut.friction * at.stroke, 0);
}
