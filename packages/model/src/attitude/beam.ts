/**
 * Slope of a headlamp's beam below the horizontal, as a share of the distance (0.01 is 1 %), after the body has pitched.
 *   drop = tan(atan(drop₀) + θ − θ₀)          θ nose-down positive [rad]
 * drop₀  as it was read with the machine standing at pitch θ₀
 * Source: plane geometry, drop = 100·tan(pitch) % (checks/headlamp-aim.test.ts).
 */
export function beamDrop(dropRead: number, pitchRead: number, pitch: number): number {
  return Math.tan(Math.atan(dropRead) + pitch - pitchRead);
}

/** What a rule asks of a dipped beam: its drop from and to, as shares, by the height of the lamp's centre [m]. */
export interface BeamRule {
  readonly rows: readonly BeamRuleRow[];
}

export interface BeamRuleRow {
  /** Up to and with this height; null: any. */
  readonly lampUpTo: number | null;
  readonly least: number;
  readonly most: number;
}

/** The row of a rule for a lamp so high, and on which side of it the beam lies. Rows in the order of their heights. */
export function beamAgainst(
  rule: BeamRule,
  lampHeight: number,
  drop: number,
): { readonly row: BeamRuleRow; readonly verdict: 'within' | 'too high' | 'too low' } | null {
  const row = rule.rows.find(({ lampUpTo }) => lampUpTo === null || lampHeight <= lampUpTo);
  if (row === undefined) return null;
  return { row, verdict: drop < row.least ? 'too high' : drop > row.most ? 'too low' : 'within' };
}
