import { spawnSync } from 'node:child_process';
import type { FirstMoments } from '@sagwright/model/masses/pointMass';
import type { MachineSI } from '@sagwright/model/statics/machine';
import { prepare } from '@sagwright/model/statics/prepared';
import { startState } from '@sagwright/model/statics/settle';
import type { Pace } from './solves.ts';

/** What SciPy made of some loads, in their order. */
export interface ScipyAnswer {
  readonly python: string;
  readonly scipy: string;
  /** Of `optimize.root`: the loosest power of ten with which every load reaches the residual. */
  readonly tolerance: number;
  readonly answers: readonly {
    readonly perSecond: number;
    /** [u, θ, z_r, z_f] */
    readonly state: readonly number[];
    /** Calls of the residual in one solve. */
    readonly calls: number;
  }[];
}

/** A machine with one load on it. */
export interface ScipyCase {
  readonly machine: MachineSI;
  readonly load: FirstMoments;
}

/** Residual that SciPy must reach, as a share of the weight; `settle` goes to 1e-11 of it. */
const RESIDUAL_SHARE = 1e-9;

/** The first Python here that has SciPy, or null. */
export function pythonWithScipy(): string | null {
  const commands = ['python3', '/usr/bin/python3'];
  return commands.find((command) => spawnSync(command, ['-c', 'import scipy.optimize']).status === 0) ?? null;
}

/** Solves each case with SciPy's `root`, from the same cold start, one after the other. */
export function scipySolves(python: string, cases: readonly ScipyCase[], pace: Pace): ScipyAnswer {
  const started = cases.map((each) => ({ ...each, start: coldStart(each) }));
  const run = spawnSync(python, ['bench/scipy_root.py'], {
    input: JSON.stringify({ cases: started, share: RESIDUAL_SHARE, ...pace }),
    encoding: 'utf8',
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  if (run.status !== 0) throw new Error('bench/scipy_root.py failed; its words are above');
  return JSON.parse(run.stdout) as ScipyAnswer;
}

function coldStart({ machine, load }: ScipyCase): readonly number[] {
  const state = new Float64Array(4);
  startState(prepare({ ...machine, load }), state);
  return Array.from(state);
}
