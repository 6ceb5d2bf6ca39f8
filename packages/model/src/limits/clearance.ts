/** Room between two parts [m], read at a wheel travel from fully out [m]. */
export interface GapReading {
  readonly travel: number;
  readonly gap: number;
}

/** Room at full bump, and how it moves with each figure that it comes of: ∂(gap)/∂(figure). */
export interface GapAtBump {
  readonly gap: number;
  readonly byTravelMax: number;
  readonly byReading: readonly { readonly reading: number; readonly gap: number; readonly travel: number }[];
}

/** As near to full bump as a reading counts as read there [m]. Common practice, no source. */
const AT_BUMP = 0.001;

/**
 * Room left at full bump, from what was read on the way there.
 *   One reading at full bump is the answer; from one just short of it the gap is taken to close as fast as the wheel moves.
 *   Else a straight line through the two readings next to full bump: g₂ + (g₂ − g₁)/(z₂ − z₁) · (z_max − z₂)
 * readings   travels rising; at least one
 * travelMax  wheel travel at full bump [m]
 * Null where the readings do not reach it: one of them elsewhere, or two that lie closer together than they are from full bump;
 * a line carried further would say what nobody saw.
 * Source: a straight line; that gaps close evenly near full bump is common practice, no source.
 */
export function gapAtBump(readings: readonly GapReading[], travelMax: number): GapAtBump | null {
  const near = readings.findIndex(({ travel }) => Math.abs(travel - travelMax) <= AT_BUMP);
  if (near >= 0) {
    const byReading = [{ reading: near, gap: 1, travel: 1 }];
    const { travel, gap } = readings[near]!;
    return { gap: gap - Math.max(0, travelMax - travel), byTravelMax: -1, byReading };
  }
  const above = readings.findIndex(({ travel }) => travel > travelMax);
  const second = above < 0 ? readings.length - 1 : above;
  const [one, two] = [readings[second - 1], readings[second]];
  if (one === undefined || two === undefined) return null;
  const span = two.travel - one.travel;
  if (travelMax - two.travel > span) return null;
  const slope = (two.gap - one.gap) / span;
  const further = (travelMax - two.travel) / span;
  return {
    gap: two.gap + slope * (travelMax - two.travel),
    byTravelMax: slope,
    byReading: [
      { reading: second - 1, gap: -further, travel: slope * further },
      { reading: second, gap: 1 + further, travel: -slope * (1 + further) },
    ],
  };
}
