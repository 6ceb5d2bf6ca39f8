import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { root } from '../numerics/root.ts';
import { isHardPoints } from '../rear/kinematics.ts';
import { damperAt } from '../rear/wheelMotion.ts';
import { arbitraryMachine } from '../testing/arbitraryMachine.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { REAR_TRAVEL } from './gradient.ts';
import { type EndSI, GRAVITY, type MachineSI } from './machine.ts';
import { prepare } from './prepared.ts';
import { restFrom, restOf } from './rest.ts';
import { type Settled, settle, startState } from './settle.ts';
import { otherRests, standsElsewhere } from './severalRests.ts';

/**
 * The level machine with a rear ratio that falls from 0.8 to 0.1 over 150 mm, MR = 0.8 − 14/3 z, s = 0.8 z − 7/3 z²
 * (67.5 mm in all), and a spring of 32 N/mm with 30 mm of preload. What the spring bears at the wheel, Q = k (p + s) MR:
 *   z      0      50      100     150 mm
 *   Q      768    1164    924     312 N
 * The body puts 981 N there, and at most 30 N more or less as it pitches: its centre is no further than 0.2 m above the
 * axles, so 0.1 rad of pitch moves 1961 N · 0.2 m · 0.1 / 1.5 m = 26 N.
 * Between 0 and 50 mm Q grows past that: a rest. Then it falls below again, and nothing holds the wheel before the metal.
 */
function fallingRatio(): MachineSI {
  const machine = levelMachine(plainStrut(40_000, 0.02));
  const rear: EndSI = {
    ...machine.rear,
    strokeMax: 0.0675,
    kinematics: { kind: 'quadratic', slope: 0.8, bend: -7 / 3 },
    struts: [plainStrut(32_000, 0.03)],
  };
  return { ...machine, rear };
}

function restingAt(machine: MachineSI) {
  const answer = restOf(prepare(machine));
  if (answer.kind !== 'rest') throw new Error(answer.kind);
  return answer.rest;
}

describe('a falling ratio with much preload', () => {
  const rest = restingAt(fallingRatio());
  const [other] = rest.otherRests;
  const travels = [rest.rear.travel, other?.rearTravel ?? Number.NaN].sort((a, b) => a - b);

  test('bears what the table above says', () => {
    const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
    const { rear } = fallingRatio();
    const force = [0, 0.05, 0.1, 0.15].map((z) => {
      damperAt(rear, 0, z, at);
      return 32_000 * (0.03 + at.stroke) * at.motionRatio;
    });
    expect(force.map(Math.round)).toEqual([768, 1164, 924, 312]);
  });

  test('has two rests: one on its spring before 50 mm, one on the metal', () => {
    expect(rest.otherRests).toHaveLength(1);
    expect(travels[0]).toBeGreaterThan(0);
    expect(travels[0]).toBeLessThan(0.05);
    expect(travels[1]).toBeCloseTo(0.15, 12);
  });

  test('stays in each when put there', () => {
    for (const travel of travels) {
      const prepared = prepare(fallingRatio());
      expect(releasedAt(prepared, travel)).toBeCloseTo(travel, 9);
    }
  });

  test('comes to the one when let down slowly from full extension, to the other when let up from the metal', () => {
    const prepared = prepare(fallingRatio());
    expect(letting(prepared, 'down')).toBeCloseTo(travels[0]!, 9);
    expect(letting(prepared, 'up')).toBeCloseTo(travels[1]!, 9);
    expect(other?.reachedBy).toBe(other?.rearTravel === travels[0] ? 'letting down' : 'letting up');
  });

  test('the rest that is told first has the least energy', () => {
    const prepared = prepare(fallingRatio());
    const energies = travels.map((travel) => {
      const state = heldAt(prepared, travel);
      const answer = restFrom(prepared, state, 0, 'rear');
      return answer.kind === 'rest' ? answer.rest.energy : Number.NaN;
    });
    const least = travels[energies.indexOf(Math.min(...energies))]!;
    expect(rest.rear.travel).toBeCloseTo(least, 9);
  });

  test('does not rest on the knife edge between them', () => {
    const prepared = prepare(fallingRatio());
    const edge = root((travel) => pushAt(prepared, travel), 0.055, 0.149, 1e-13);
    const end = releasedAt(prepared, edge);
    expect(Math.min(...travels.map((travel) => Math.abs(end - travel)))).toBeLessThan(1e-9);
  });
});

describe('a rest that only just holds', () => {
  const withPreload = (preload: number): MachineSI => {
    const machine = fallingRatio();
    // Metal at 148 mm: 0.8 · 148 − 7/3 · 0.148 · 148 mm of stroke.
    const strokeMax = 0.8 * 0.148 - (7 / 3) * 0.148 ** 2;
    return { ...machine, rear: { ...machine.rear, strokeMax, struts: [plainStrut(32_000, preload)] } };
  };
  /** Travels in steps of 0.05 mm at which the held wheel is pushed out, and the most of that push. */
  const pushes = (machine: MachineSI): readonly (readonly [travel: number, push: number])[] => {
    const prepared = prepare(machine);
    return Array.from({ length: 1000 }, (_, i) => 0.03 + 5e-5 * i).map((travel) => [
      travel,
      pushAt(prepared, travel),
    ]);
  };
  const most = (preload: number): number => Math.max(...pushes(withPreload(preload)).map(([, push]) => push));

  test('is found though the wheel is pushed out over less than a sixty-fourth of the travel', () => {
    const least = root((preload) => most(preload) - 0.005, 0.01, 0.03, 1e-9);
    const machine = withPreload(least);
    const out = pushes(machine).filter(([, push]) => push > 0);
    const [first, last] = [out[0]![0], out.at(-1)![0]];
    expect(last - first).toBeLessThan(0.148 / 64);
    const places = Array.from({ length: 65 }, (_, i) => (0.148 * i) / 64);
    expect(places.filter((place) => place > first - 5e-5 && place < last + 5e-5)).toEqual([]);
    // Looked for from the metal, where the other rest is.
    const prepared = prepare(machine);
    const state = heldAt(prepared, 0.148);
    const [other] = otherRests(prepared, state);
    const travels = [state[REAR_TRAVEL]!, other?.rearTravel ?? Number.NaN].sort((x, y) => x - y);
    expect(Math.abs(travels[0]! - first)).toBeLessThan(1e-4);
    expect(travels[1]).toBeCloseTo(0.148, 9);
  });
});

/** The machine settled with the rear wheel held; the state it then has. */
function heldAt(prepared: ReturnType<typeof prepare>, travel: number): Float64Array {
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  const state = new Float64Array(4);
  startState(prepared, state);
  state[REAR_TRAVEL] = travel;
  settle(prepared, state, 0, 'rear', settled);
  expect(settled.converged).toBe(true);
  return state;
}

/** Force with which a held rear wheel is pushed out [N]. */
function pushAt(prepared: ReturnType<typeof prepare>, travel: number): number {
  heldAt(prepared, travel);
  return prepared.gradient.rear.travel;
}

/** Travel that the rear wheel goes to when it is let go. */
function releasedAt(prepared: ReturnType<typeof prepare>, travel: number): number {
  const state = heldAt(prepared, travel);
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  settle(prepared, state, 0, 'none', settled);
  expect(settled.converged).toBe(true);
  return state[REAR_TRAVEL]!;
}

/** The rear wheel led in steps of 0.1 mm until it would go no further by itself, then let go. */
function letting(prepared: ReturnType<typeof prepare>, way: 'down' | 'up'): number {
  const travelMax = prepared.rearTravelMax;
  const steps = Array.from({ length: 1501 }, (_, i) => (travelMax * i) / 1500);
  const path = way === 'down' ? steps : steps.reverse();
  const stops = (travel: number): boolean => {
    const push = pushAt(prepared, travel);
    return way === 'down' ? push >= 0 : push <= 0;
  };
  return releasedAt(prepared, path.find(stops) ?? path.at(-1)!);
}

describe('a second look', () => {
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };

  test('finds where the machine stands on both wheels', () => {
    const prepared = prepare(levelMachine(plainStrut(40_000, 0.01)));
    const state = new Float64Array(4);
    expect(standsElsewhere(prepared, state, 0, settled)).toBe(true);
    // 78.0665 mm: worked out in rest.test.ts.
    expect(state[REAR_TRAVEL]).toBeCloseTo(0.0780665, 9);
    expect(settled.converged).toBe(true);
  });

  test('finds nothing for a load far behind, and leaves the state alone', () => {
    const machine = levelMachine(plainStrut(40_000, 0.01));
    const prepared = prepare({ ...machine, load: { mass: 100, momentX: -200, momentHeight: 60 } });
    const state = Float64Array.from([-0.1, -0.2, 0.03, 0.04]);
    expect(standsElsewhere(prepared, state, 0, settled)).toBe(false);
    expect(Array.from(state)).toEqual([-0.1, -0.2, 0.03, 0.04]);
  });
});

test('a machine with even or rising ratios has one rest', () => {
  let seen = 0;
  fc.assert(
    fc.property(arbitraryMachine, (machine) => {
      if (![machine.rear, machine.front].every((end) => neverFalls(end))) return;
      const answer = restOf(prepare(machine));
      if (answer.kind !== 'rest') return;
      seen += 1;
      expect(answer.rest.otherRests).toEqual([]);
    }),
    { seed: 301, numRuns: 1000 },
  );
  expect(seen).toBeGreaterThan(300);
});

function neverFalls(end: EndSI): boolean {
  if (isHardPoints(end.kinematics)) return false;
  if (end.kinematics.kind === 'table') {
    const { slope } = end.kinematics.curve;
    return slope.every((each, i) => i === 0 || each >= slope[i - 1]!);
  }
  return end.kinematics.kind !== 'quadratic' || end.kinematics.bend >= 0;
}

test('a spring that hardly grows along the travel holds the machine up or not at all', () => {
  // The front rests at 2 (1961.33/40 − 20) = 58.0665 mm. A rear spring of 200 N/m that bears 1961.33 N there too leaves the
  // machine level, on a knife's edge: at the wheel it grows by 200 · 0.5² = 50 N/m, but for each metre that the rear goes
  // down the body, its centre some 0.2 m above the axles, pitches 1/1.5 rad and puts 1961 · 0.2 / 1.5² = 174 N more there.
  const machine = levelMachine(plainStrut(40_000, 0.02));
  const soft = plainStrut(200, (100 * GRAVITY) / 0.5 / 200 - 0.5 * 0.0580665);
  const rest = restingAt({ ...machine, rear: { ...machine.rear, struts: [soft] } });
  const found = [rest.rear.travel, ...rest.otherRests.map((each) => each.rearTravel)].sort((a, b) => a - b);
  // Out, it stands on the stop; in, until the axle has come up near the height of the centre and pitch takes nothing more.
  expect(found).toHaveLength(2);
  expect(found[0]).toBe(0);
  expect(found[1]).toBeGreaterThan(0.1);
});
