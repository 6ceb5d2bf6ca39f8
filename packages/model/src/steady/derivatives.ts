import type { Parameters } from '../statics/parameters.ts';
import { type Prepared, prepare } from '../statics/prepared.ts';
import { type Direction, figuresOf, moveFrom, restore } from '../uncertainty/inputs.ts';
import type { SteadyAction } from './forces.ts';
import { leftOverAt, type SteadyStand, solveFree, steadyCurvature } from './steady.ts';

/**
 * How a steady stand moves with each uncertain input: dx/dq = −J⁻¹ ∂r/∂q, r = ∂V/∂x − Q, by the implicit function theorem as
 * at rest (`stateDerivatives`); J and ∂r/∂q by central differences of r, never of a solved output. A travel on its stop stays.
 * Returns 4 numbers for each direction, or null where nothing holds a coordinate.
 */
export function steadyDerivatives(
  parameters: Parameters,
  prepared: Prepared,
  { state, free }: SteadyStand,
  action: SteadyAction,
  directions: readonly Direction[],
): Float64Array | null {
  const at = Float64Array.from(state);
  const curvature = steadyCurvature(prepared, state, action);
  const moved = prepare(prepared.machine);
  const figures = figuresOf(parameters);
  const above = new Float64Array(4);
  const below = new Float64Array(4);
  const out = new Float64Array(4 * directions.length);
  for (let j = 0; j < directions.length; j += 1) {
    const direction = directions[j]!;
    const { step } = direction;
    if (!(step > 0)) continue;
    moveFrom(parameters, moved, direction, figures, step);
    leftOverAt(moved, at, action, above);
    moveFrom(parameters, moved, direction, figures, -step);
    leftOverAt(moved, at, action, below);
    restore(parameters, moved, direction, figures);
    const right = Array.from(above, (each, i) => (below[i]! - each) / (2 * step));
    const change = solveFree(curvature, right, free);
    if (change === null) return null;
    out.set(change, 4 * j);
  }
  return out;
}

/** How a steady stand moves with the action itself: `above` and `below` are the action with its figure a step more and less. */
export function steadyShift(
  prepared: Prepared,
  { state, free }: SteadyStand,
  action: SteadyAction,
  above: SteadyAction,
  below: SteadyAction,
  step: number,
): readonly number[] | null {
  const at = Float64Array.from(state);
  const curvature = steadyCurvature(prepared, state, action);
  const left = { above: new Float64Array(4), below: new Float64Array(4) };
  leftOverAt(prepared, at, above, left.above);
  leftOverAt(prepared, at, below, left.below);
  const right = Array.from(left.above, (each, i) => (left.below[i]! - each) / (2 * step));
  return solveFree(curvature, right, free);
}
