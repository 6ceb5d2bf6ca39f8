import { FRONT_TRAVEL, REAR_TRAVEL } from '@sagwright/model/statics/gradient';
import type { MachineSI } from '@sagwright/model/statics/machine';
import { type Prepared, prepare } from '@sagwright/model/statics/prepared';
import { type Settled, settle, startState } from '@sagwright/model/statics/settle';
import type { LoadedMachine } from './machines.ts';

/** How long something is measured: rounds of so many seconds each, of which the best counts. */
export interface Pace {
  readonly seconds: number;
  readonly rounds: number;
}

/** One load at rest. */
export interface Solved {
  readonly state: readonly number[];
  /** No stop holds a wheel: a plain root of the balance. */
  readonly free: boolean;
}

/** A machine made ready, and what its solves write into: made once, as a page does that drags a slider. */
interface Bench {
  readonly prepared: Prepared;
  /** The machine with each load on it. */
  readonly laden: readonly MachineSI[];
  readonly state: Float64Array;
  readonly settled: Settled;
  /** [u, θ, z_r, z_f, residual] of each load, one after the other. */
  readonly results: Float64Array;
}

const RESULT = 5;

/** The rest with each load: what is compared before speed is. */
export function solvedLoads(loaded: LoadedMachine): readonly Solved[] {
  const bench = benchOf(loaded);
  solveAll(bench);
  const { rearTravelMax, frontTravelMax } = bench.prepared;
  return loaded.loads.map((_, i) => {
    const state = Array.from(bench.results.subarray(RESULT * i, RESULT * i + 4));
    const rear = state[REAR_TRAVEL]!;
    const front = state[FRONT_TRAVEL]!;
    const free = rear > 0 && rear < rearTravelMax && front > 0 && front < frontTravelMax;
    return { state, free };
  });
}

/** Load cases solved in a second on one core, each from a cold start. */
export function solvesPerSecond(loaded: LoadedMachine, { seconds, rounds }: Pace): number {
  const bench = benchOf(loaded);
  let best = 0;
  for (let round = 0; round < rounds; round += 1) best = Math.max(best, perSecond(bench, seconds));
  return best;
}

function perSecond(bench: Bench, seconds: number): number {
  const began = performance.now();
  let solves = 0;
  let spent = 0;
  while (spent < 1000 * seconds) {
    for (let i = 0; i < 200; i += 1) solveAll(bench);
    solves += 200 * bench.laden.length;
    spent = performance.now() - began;
  }
  return (1000 * solves) / spent;
}

function benchOf({ machine, loads }: LoadedMachine): Bench {
  return {
    prepared: prepare(machine),
    laden: loads.map((load) => ({ ...machine, load })),
    state: new Float64Array(4),
    settled: { converged: false, residual: 0, iterations: 0 },
    results: new Float64Array(RESULT * loads.length),
  };
}

/** Puts each load on, starts cold, settles, and keeps the result. */
function solveAll({ prepared, laden, state, settled, results }: Bench): void {
  for (let i = 0; i < laden.length; i += 1) {
    prepared.machine = laden[i]!;
    startState(prepared, state);
    settle(prepared, state, 0, 'none', settled);
    if (!settled.converged) throw new Error(`no rest: ${settled.residual} N left over`);
    for (let j = 0; j < 4; j += 1) results[RESULT * i + j] = state[j]!;
    results[RESULT * i + 4] = settled.residual;
  }
}
