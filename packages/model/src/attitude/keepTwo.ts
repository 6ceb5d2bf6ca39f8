import type { MachineSI } from '../statics/machine.ts';
import { prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { attitudeAt } from './attitude.ts';
import { changed, type KeptPart } from './keep.ts';

/** Two parts of an attitude. */
export type TwoParts = readonly [KeptPart, KeptPart];

/** Longer shocks and raised tubes that together bring two parts of the attitude back [m]. */
export type KeepingTwo =
  | {
      readonly kind: 'changes';
      readonly shockLength: number;
      readonly clampHeight: number;
      /** How each part moves there with each change, row by part: shock length, clamp height [rad/m, m/m]. */
      readonly slopes: readonly [readonly [number, number], readonly [number, number]];
      readonly machine: MachineSI;
    }
  /** No two changes up to `tried` [m] either way were found. */
  | { readonly kind: 'none'; readonly tried: number };

const FURTHEST = 0.08;
const STEPS = 12;
const NEAR = 1e-8;
const DIFFERENCE = 1e-5;

/**
 * The shock length and the clamp height that together give two parts of the attitude their wanted values, the machine at rest with
 * what is on it: Newton on the true balance, from no change, slopes by central difference.
 *   J Δ = wanted − parts(c),   c ← c + Δ        J_ij = ∂part_i/∂change_j
 * What the adjusters reach is not asked here. Null where a part is not known, the machine has no rest as it is, or the front is no fork.
 */
export function keepTwo(
  machine: MachineSI,
  parts: TwoParts,
  wanted: readonly [number, number],
): KeepingTwo | null {
  if (machine.front.kinematics.kind !== 'fork') return null;
  const none = { kind: 'none', tried: FURTHEST } as const;
  if (partsWith(machine, parts, 0, 0) === null) return null;
  let [length, clamp] = [0, 0];
  for (let i = 0; i < STEPS; i += 1) {
    const here = partsWith(machine, parts, length, clamp);
    const slopes = here === null ? null : slopesAt(machine, parts, length, clamp);
    if (here === null || slopes === null) return none;
    const [[a, b], [c, d]] = slopes;
    const determinant = a * d - b * c;
    if (determinant === 0) return none;
    const [first, second] = [wanted[0] - here[0], wanted[1] - here[1]];
    const [longer, up] = [(d * first - b * second) / determinant, (a * second - c * first) / determinant];
    if (Math.hypot(longer, up) < NEAR) {
      const moved = changed(changed(machine, 'shock length', length)!, 'clamp height', clamp)!;
      return { kind: 'changes', shockLength: length, clampHeight: clamp, slopes, machine: moved };
    }
    length += longer;
    clamp += up;
    if (Math.abs(length) > FURTHEST || Math.abs(clamp) > FURTHEST) return none;
  }
  return none;
}

function slopesAt(
  machine: MachineSI,
  parts: TwoParts,
  length: number,
  clamp: number,
): readonly [readonly [number, number], readonly [number, number]] | null {
  const longer = partsWith(machine, parts, length + DIFFERENCE, clamp);
  const shorter = partsWith(machine, parts, length - DIFFERENCE, clamp);
  const up = partsWith(machine, parts, length, clamp + DIFFERENCE);
  const down = partsWith(machine, parts, length, clamp - DIFFERENCE);
  if (longer === null || shorter === null || up === null || down === null) return null;
  const row = (i: 0 | 1): readonly [number, number] => [
    (longer[i] - shorter[i]) / (2 * DIFFERENCE),
    (up[i] - down[i]) / (2 * DIFFERENCE),
  ];
  return [row(0), row(1)];
}

function partsWith(
  machine: MachineSI,
  [one, other]: TwoParts,
  length: number,
  clamp: number,
): readonly [number, number] | null {
  const longer = changed(machine, 'shock length', length);
  const moved = longer === null ? null : changed(longer, 'clamp height', clamp);
  if (moved === null) return null;
  const prepared = prepare(moved);
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') return null;
  const attitude = attitudeAt(prepared, answer.rest.state);
  const [first, second] = [attitude[one], attitude[other]];
  return first === null || second === null ? null : [first, second];
}
