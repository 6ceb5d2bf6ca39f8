import type { Box } from '../box.ts';

/** Half of what stands in a lane about its middle and must lie inside that lane's own target: the block of the band, and air. */
const MARK_HALF = 14;
/** A number and its neighbour stand apart. */
const LANE_LEAST = 40;

/** Where a lane answers to a press. */
export interface LaneTarget {
  readonly left: number;
  readonly width: number;
}

/**
 * How many lanes stand side by side in `across` px of a drawing `width` px wide, where each answers over `target` px: 2 at least,
 * `most` at most. A lane may be narrower than its target, since all targets together may reach past the lanes on both sides; each
 * target then lies a little aside of its lane, the outermost the most: (n − 1)/2 · (target − lane). Its mark must stay inside.
 */
export function lanesInRoom(across: number, width: number, target: number, most: number): number {
  for (let lanes = most; lanes > 2; lanes -= 1) {
    const least = target - (2 * (target / 2 - MARK_HALF)) / (lanes - 1);
    if (across / lanes >= Math.max(LANE_LEAST, least) && lanes * target <= width) return lanes;
  }
  return 2;
}

/** The targets of lanes: side by side, each at least `target` px wide, centred over all lanes as far as the drawing reaches. */
export function laneTargets(columns: readonly Box[], width: number, target: number): readonly LaneTarget[] {
  const [first] = columns;
  if (first === undefined) return [];
  const each = Math.max(first.width, target);
  const all = each * columns.length;
  const middle = first.x + (first.width * columns.length) / 2;
  const left = Math.max(0, Math.min(middle - all / 2, width - all));
  return columns.map((_, index) => ({ left: left + index * each, width: each }));
}
