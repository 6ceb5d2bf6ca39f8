import { seededRandom } from '../numerics/random.ts';
import type { Parameters } from '../statics/parameters.ts';
import type { Prepared } from '../statics/prepared.ts';
import { type Direction, figuresOf, moveAlong, restore } from './inputs.ts';

/**
 * Draws all inputs at once, each from a normal law about its value with its own deviation, `count` times, and calls
 * `visit` with the machine so moved; afterwards the machine is as it was, to the last bit, also where `visit` throws.
 * The same seed draws the same machines. The machine may be one that cannot stand, or that `refresh` refuses with a
 * RangeError (a ratio that runs out): draws are not limited.
 * Source: JCGM 101:2008, propagation of distributions by a Monte Carlo method.
 */
export function drawInputs(
  parameters: Parameters,
  prepared: Prepared,
  directions: readonly Direction[],
  count: number,
  seed: number,
  visit: (draw: number) => void,
): void {
  const random = seededRandom(seed);
  const figures = figuresOf(parameters);
  for (let draw = 0; draw < count; draw += 1) {
    try {
      for (const direction of directions) {
        moveAlong(parameters, prepared, direction, random.normal() * direction.input.deviation);
      }
      visit(draw);
    } finally {
      for (const direction of directions) restore(parameters, prepared, direction, figures);
    }
  }
}
