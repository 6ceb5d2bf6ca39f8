import type { SpringSI } from '../springs/spring.ts';
import type { GasSI } from './gas.ts';
import type { RubberSI } from './rubber.ts';
import type { TopOutSI } from './topOut.ts';

/**
 * What carries load between wheel and body: a shock (damper with its spring) or a fork leg. `null` = there is none.
 *   F(s, p) = max(0, F_spring(s + p)) + F_gas(s) + F_air(s) + F_rubber(s) − F_topout(s)
 */
export interface StrutSI {
  readonly spring: SpringSI;
  /** How much shorter the fitted spring is than free, damper at its extension stop [m]. Negative: loose by that much. */
  readonly preload: number;
  /** Gas on the damper rod, or the air trapped in a fork leg. */
  readonly gas: GasSI | null;
  /**
   * A pressure spring beside the coil, or instead of it: its pressure is what one sets; or the air of a fork's other leg, where one strut
   * stands for both. Left out where there is none.
   */
  readonly air?: GasSI;
  readonly rubber: RubberSI | null;
  readonly topOut: TopOutSI | null;
  /** Coulomb friction along the strut [N], >= 0. */
  readonly friction: number;
}
