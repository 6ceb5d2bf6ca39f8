import type { ForceAt } from './forceAt.ts';

/**
 * Force at x of a table that rises from 0: straight between its points, the last slope carried on beyond the last.
 * compression, force  rising strictly [m], [N];  x  0 or more [m]
 * Writes into `out` force [N], rate [N/m] (at a point that of the deeper side) and energy from 0 [J]. Linear interpolation.
 */
export function tableAt(
  compression: readonly number[],
  force: readonly number[],
  x: number,
  out: ForceAt,
): void {
  const last = compression.length - 1;
  let energy = 0;
  let i = 0;
  while (i < last - 1 && x >= compression[i + 1]!) {
    energy += 0.5 * (force[i]! + force[i + 1]!) * (compression[i + 1]! - compression[i]!);
    i += 1;
  }
  const rate = (force[i + 1]! - force[i]!) / (compression[i + 1]! - compression[i]!);
  const beyond = x - compression[i]!;
  out.force = force[i]! + rate * beyond;
  out.rate = rate;
  out.energy = energy + (force[i]! + 0.5 * rate * beyond) * beyond;
}
