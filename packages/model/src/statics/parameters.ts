import type { FirstMoments } from '../masses/pointMass.ts';
import { isHardPoints } from '../rear/kinematics.ts';
import type { MachineSI } from './machine.ts';

/**
 * The flat, named input vector q of a machine: every number in it, named by its path ('rear.struts.0.spring.rate').
 * It is a view: the numbers stay in a copy of the machine, so that one set of formulas serves solver, derivatives and draws.
 */
export interface Parameters<M extends MachineSI = MachineSI> {
  /** The copy that is read and written; hand it to `prepare`. */
  readonly machine: M;
  readonly names: readonly string[];
  readonly indexOf: ReadonlyMap<string, number>;
  readonly holders: readonly Record<string, number>[];
  readonly keys: readonly string[];
  readonly reaches: readonly Reach[];
}

/** What hangs on a figure, besides the balance of the body. */
export interface Reach {
  /** The balance of that wheel. */
  readonly rear: boolean;
  readonly front: boolean;
  /** The whole travel of an end: after the figure was set, the machine needs `refresh`. */
  readonly travel: boolean;
}

/**
 * Copies a machine and lists its numbers. A drawn ratio curve is left out: it is moved by its `scale`. So is the reference
 * travel of a rear with hard points: it follows from them (`refresh`).
 */
export function parametersOf<M extends MachineSI>(machine: M): Parameters<M> {
  const names: string[] = [];
  const holders: Record<string, number>[] = [];
  const keys: string[] = [];
  const hardPoints = isHardPoints(machine.rear.kinematics);
  const leftOut = hardPoints ? 'rear.referenceTravel' : null;
  const copy = copyAndList(machine, '', leftOut, names, holders, keys) as M;
  const indexOf = new Map(names.map((name, i) => [name, i]));
  return {
    machine: copy,
    names,
    indexOf,
    holders,
    keys,
    reaches: names.map((name) => reachOf(name, hardPoints)),
  };
}

function reachOf(name: string, hardPoints: boolean): Reach {
  const ofBody = name.startsWith('sprung.') || name.startsWith('load.');
  return {
    rear: !ofBody && !name.startsWith('front.'),
    front: !ofBody && !name.startsWith('rear.'),
    travel: ON_TRAVEL.test(name) || (hardPoints && AXLE_AND_PIVOT.test(name)),
  };
}

const ON_TRAVEL = /^geometry\.rake$|\.strokeMax$|\.kinematics\./;
/** Hard points too, though they stand elsewhere. */
const AXLE_AND_PIVOT = /^rear\.(axlePath\.|axleHeight$|tyre\.radius$)/;

/** The number at a place of the list. */
export function parameter(parameters: Parameters, index: number): number {
  return parameters.holders[index]![parameters.keys[index]!]!;
}

/** Sets the number at a place of the list; where `reaches` says so the machine must be refreshed after it. */
export function setParameter(parameters: Parameters, index: number, value: number): void {
  parameters.holders[index]![parameters.keys[index]!] = value;
}

function copyAndList(
  value: unknown,
  path: string,
  leftOut: string | null,
  names: string[],
  holders: Record<string, number>[],
  keys: string[],
): unknown {
  if (typeof value !== 'object' || value === null) return value;
  const copy: Record<string, unknown> | unknown[] = Array.isArray(value) ? [] : {};
  const held = copy as Record<string, unknown>;
  for (const [key, inner] of Object.entries(value)) {
    const name = path === '' ? key : `${path}.${key}`;
    if (key === 'curve') {
      held[key] = inner;
      continue;
    }
    held[key] = copyAndList(inner, name, leftOut, names, holders, keys);
    if (typeof inner === 'number' && name !== leftOut) {
      names.push(name);
      holders.push(held as Record<string, number>);
      keys.push(key);
    }
  }
  return copy;
}

/** Puts a load on the machine that these parameters hold. */
export function putOn(parameters: Parameters, load: FirstMoments): void {
  Object.assign(parameters.machine.load, load);
}
