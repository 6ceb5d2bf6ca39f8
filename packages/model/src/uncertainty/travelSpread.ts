import { FRONT_TRAVEL, gradientAt, REAR_TRAVEL, type State } from '../statics/gradient.ts';
import type { Parameters } from '../statics/parameters.ts';
import type { EndName, Prepared } from '../statics/prepared.ts';
import { isFree } from '../statics/settle.ts';
import { figureDerivatives } from './derivatives.ts';
import type { Direction } from './inputs.ts';
import { halfWidthAt } from './spread.ts';

/** 90 % half-widths of both wheel travels [m]; null where it cannot be said: a wheel that its stop may well not hold. */
export interface TravelSpread {
  readonly rear: number | null;
  readonly front: number | null;
}

/**
 * ± of both wheel travels at a rest. A wheel on a stop has the ± of the stop itself (none when topped out), as long as
 * the stop's force is more than its own ±; with less, the wheel may as well stand free, and derivatives at the stop
 * say nothing about that side.
 * derivatives  as `stateDerivatives` gave them for this state, with nothing solved since: `prepared.gradient` is read
 */
export function travelHalfWidths(
  parameters: Parameters,
  prepared: Prepared,
  state: State,
  directions: readonly Direction[],
  derivatives: Float64Array,
): TravelSpread {
  const { rear, front } = prepared.gradient;
  const spread = {
    rear: halfWidthAt(directions, derivatives, REAR_TRAVEL, 4),
    front: halfWidthAt(directions, derivatives, FRONT_TRAVEL, 4),
  };
  const rearFree = isFree(state[REAR_TRAVEL]!, prepared.rearTravelMax, rear);
  const frontFree = isFree(state[FRONT_TRAVEL]!, prepared.frontTravelMax, front);
  if (rearFree && frontFree) return spread;
  const pushes = figureDerivatives(parameters, prepared, state, directions, derivatives, pushesOnWheels, 2);
  const isHeld = (end: EndName): boolean =>
    Math.abs(prepared.gradient[end].travel) >= halfWidthAt(directions, pushes, end === 'rear' ? 0 : 1, 2);
  return {
    rear: rearFree || isHeld('rear') ? spread.rear : null,
    front: frontFree || isHeld('front') ? spread.front : null,
  };
}

/** Forces that the stops of both wheels bear [N], rear and front; 0 for a wheel that is free. */
function pushesOnWheels(prepared: Prepared, state: State, out: Float64Array): void {
  gradientAt(prepared, state, 0);
  out[0] = prepared.gradient.rear.travel;
  out[1] = prepared.gradient.front.travel;
}
