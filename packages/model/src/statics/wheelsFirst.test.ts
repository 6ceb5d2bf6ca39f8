import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arbitraryMachine } from '../testing/arbitraryMachine.ts';
import { between } from '../testing/arbitraryStrut.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { gradientAt } from './gradient.ts';
import { type Prepared, prepare } from './prepared.ts';
import { startState } from './settle.ts';
import { solveWheelsFirst } from './wheelsFirst.ts';

/** H·m for the curvature that `gradientAt` wrote, damped as `solveWheelsFirst` says. */
function applied({ gradient: g, machine }: Prepared, damping: number, m: Float64Array): number[] {
  const [u, t, r, f] = [m[0]!, m[1]!, m[2]!, m[3]!];
  const arm = 0.5 * machine.geometry.wheelbase;
  return [
    (g.heaveHeave + damping) * u + g.heavePitch * t + g.rear.travelHeave * r + g.front.travelHeave * f,
    g.heavePitch * u +
      (g.pitchPitch + damping * arm * arm) * t +
      g.rear.travelPitch * r +
      g.front.travelPitch * f,
    g.rear.travelHeave * u + g.rear.travelPitch * t + (g.rear.travelTravel + damping) * r,
    g.front.travelHeave * u + g.front.travelPitch * t + (g.front.travelTravel + damping) * f,
  ];
}

describe('the wheels eliminated first', () => {
  test('solve the whole system; a wheel that is not free stays', () => {
    const force = between(-2000, 2000);
    const system = fc.tuple(
      arbitraryMachine,
      fc.boolean(),
      fc.boolean(),
      between(0, 1e5),
      force,
      force,
      force,
      force,
    );
    let solved = 0;
    fc.assert(
      fc.property(system, ([machine, rearFree, frontFree, damping, ...right]) => {
        const prepared = prepare(machine);
        const state = new Float64Array(4);
        startState(prepared, state);
        gradientAt(prepared, state, 0);
        const move = Float64Array.from(right);
        if (!solveWheelsFirst(prepared, rearFree, frontFree, damping, move)) return;
        solved += 1;
        if (!rearFree) expect(move[2]).toBe(0);
        if (!frontFree) expect(move[3]).toBe(0);
        const back = applied(prepared, damping, move);
        // Rates reach 10 MN/m; of each rate times its move some thousand roundings may be lost in eliminating.
        const lost = 1e-12 * 1e7 * Math.max(...Array.from(move, Math.abs));
        const rows = [0, 1, ...(rearFree ? [2] : []), ...(frontFree ? [3] : [])];
        for (const i of rows) expect(Math.abs(back[i]! - right[i]!)).toBeLessThan(1e-8 + lost);
      }),
      { seed: 741, numRuns: 1000 },
    );
    expect(solved).toBeGreaterThan(900);
  });

  test('refuse a machine that would topple, unless damped enough', () => {
    const machine = levelMachine(plainStrut(40_000, 0.01));
    const prepared = prepare({ ...machine, sprung: { ...machine.sprung, height: 40 } });
    const state = new Float64Array(4);
    startState(prepared, state);
    gradientAt(prepared, state, 0);
    expect(solveWheelsFirst(prepared, true, true, 0, new Float64Array(4))).toBe(false);
    expect(solveWheelsFirst(prepared, true, true, 1e6, new Float64Array(4))).toBe(true);
  });
});
