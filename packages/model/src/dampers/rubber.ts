import type { ForceAt } from '../springs/forceAt.ts';
import { tableAt } from '../springs/table.ts';

/** A bump rubber: touched at `start`, harder the deeper it goes. */
export type RubberSI = HardeningRubberSI | RubberByTableSI;

/** By two figures. */
export interface HardeningRubberSI {
  /** Damper stroke at first touch [m]. */
  readonly start: number;
  /** k1, at first touch [N/m]. */
  readonly rate: number;
  /** k3 [N/m³]. */
  readonly hardening: number;
}

/** As pressed on a tester: force [N] against how far it is pressed [m], both rising strictly from 0; straight between. */
export interface RubberByTableSI {
  readonly start: number;
  readonly compression: readonly number[];
  readonly force: readonly number[];
}

/**
 * Force of the bump rubber, extending the strut positive.
 *   d = max(0, s − start),   F = k1 d + k3 d³;  by table: straight between its points, the last slope carried on
 * s  damper stroke from full extension [m]
 * Writes into `out` force [N], rate k1 + 3 k3 d² [N/m] and energy k1 d²/2 + k3 d⁴/4 [J]; at first touch, and at a point of a
 * table, the rate of the deeper side.
 * Throws RangeError for NaN.
 * Valid: slow loading; a rubber's own damping and set are left out.
 * Source: cubic hardening, common practice, no source.
 */
export function rubberAt(rubber: RubberSI, stroke: number, out: ForceAt): void {
  if (!(stroke >= rubber.start)) {
    if (Number.isNaN(stroke)) throw new RangeError('rubberAt: stroke NaN m; a number is needed');
    out.force = 0;
    out.rate = 0;
    out.energy = 0;
    return;
  }
  const d = stroke - rubber.start;
  if ('force' in rubber) {
    tableAt(rubber.compression, rubber.force, d, out);
    return;
  }
  const hard = rubber.hardening * d * d;
  out.force = (rubber.rate + hard) * d;
  out.rate = rubber.rate + 3 * hard;
  out.energy = (0.5 * rubber.rate + 0.25 * hard) * d * d;
}

/** A rubber that bears `times` what this one does, at every stroke: several side by side. */
export function rubberTimes(rubber: RubberSI, times: number): RubberSI {
  if ('force' in rubber) return { ...rubber, force: rubber.force.map((each) => times * each) };
  return { ...rubber, rate: times * rubber.rate, hardening: times * rubber.hardening };
}
