import type { ForceAt } from '../springs/forceAt.ts';
import { compressionFor, springAt } from '../springs/spring.ts';
import type { Parameters } from '../statics/parameters.ts';
import type { EndName, Prepared } from '../statics/prepared.ts';
import { type Direction, figuresOf, moveFrom, restore, type UncertainInput } from '../uncertainty/inputs.ts';
import { type Spread, type SpreadPart, spreadOf } from '../uncertainty/spread.ts';
import type { Demand } from './demand.ts';

/** How the demand on a spring moves with one input: force of each spring [N per unit], damper stroke [m per unit]. */
export interface DemandSlope {
  readonly input: UncertainInput;
  readonly force: number;
  readonly stroke: number;
}

/**
 * ± of the adjuster position a = x(F) − s − p₀ that answers a demand:
 *   da/dq = (dF/dq)/k − ds/dq + ∂x/∂q (the spring's own figures) − dp₀/dq
 * springInputs  the candidate's own inputs, ready for `parameters` (the machine with that spring fitted)
 */
export function positionSpread(
  parameters: Parameters,
  prepared: Prepared,
  name: EndName,
  demand: Demand,
  slopes: readonly DemandSlope[],
  springInputs: readonly Direction[],
): Spread {
  const at: ForceAt = { force: 0, rate: 0, energy: 0 };
  const { spring } = prepared.machine[name].struts[0]!;
  springAt(spring, compressionFor(spring, demand.springForce), at);
  const parts: { input: SpreadPart['input']; slope: number }[] = slopes.map(({ input, force, stroke }) => ({
    input,
    slope: force / at.rate - stroke,
  }));
  const figures = figuresOf(parameters);
  for (const direction of springInputs) {
    const own = ownSlope(parameters, prepared, name, demand.springForce, direction, figures);
    const shared = parts.find((part) => part.input.name === direction.input.name);
    if (shared === undefined) parts.push({ input: direction.input, slope: own });
    else shared.slope += own;
  }
  return spreadOf(parts);
}

/** ∂x/∂q − dp₀/dq of one input of the spring itself. */
function ownSlope(
  parameters: Parameters,
  prepared: Prepared,
  name: EndName,
  force: number,
  direction: Direction,
  figures: Float64Array,
): number {
  if (!(direction.step > 0)) return 0;
  const placeAt = (change: number): number => {
    moveFrom(parameters, prepared, direction, figures, change);
    const strut = prepared.machine[name].struts[0]!;
    return compressionFor(strut.spring, force) - strut.preload;
  };
  const slope = (placeAt(direction.step) - placeAt(-direction.step)) / (2 * direction.step);
  restore(parameters, prepared, direction, figures);
  return slope;
}
