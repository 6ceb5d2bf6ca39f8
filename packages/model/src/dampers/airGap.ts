/** Something that stands in a fork leg, one upon the other from the seat up. */
export interface InLegSI {
  /** What it displaces when wholly under oil [m³]. */
  readonly volume: number;
  /** Its height, standing free [m]. */
  readonly length: number;
}

/**
 * What a column of things displaces, under oil up to a height above its seat [m³].
 *   V = Σ V_i · clamp(h − h_i, 0, L_i)/L_i        h_i height of its lower end: what stands below it
 * Each of even section. Throws RangeError for a height that is no number, or a length not above 0.
 */
export function immersedVolume(column: readonly InLegSI[], height: number): number {
  if (Number.isNaN(height)) throw new RangeError('immersedVolume: height NaN m; a number is needed');
  let below = 0;
  let volume = 0;
  for (const each of column) {
    if (!(each.length > 0)) {
      throw new RangeError(`immersedVolume: a part ${each.length} m long; it must be above 0`);
    }
    volume += (each.volume * Math.max(0, Math.min(each.length, height - below))) / each.length;
    below += each.length;
  }
  return volume;
}

/**
 * Air gap [m] with nothing in the leg, from one that was read with something in it: the oil falls where it is taken out.
 *   g₀ = g + V_under/A        A  section of the bore at the level [m²];  V_under  of what was under oil [m³]
 * Derived: the oil stays what it is, A (H − g₀) = A (H − g) − V_under. Throws RangeError unless A is above 0.
 */
export function bareGap(gap: number, boreArea: number, immersed: number): number {
  requireArea('bareGap', boreArea);
  return gap + immersed / boreArea;
}

/**
 * The gap [m] after `more` oil [m³] was poured in: g − more/A. A leg filled by volume has the gap of the volume in the manual,
 * less what it got more.
 */
export function gapWithOil(gap: number, boreArea: number, more: number): number {
  requireArea('gapWithOil', boreArea);
  return gap - more / boreArea;
}

/**
 * Air left in a closed leg at full compression [m³]: what is above the bare level, less all that stands in the leg. Whether a
 * part is under oil or above it makes no odds: it takes room from the air either way.
 *   V = A g₀ − Σ V_i
 * Not above 0: the oil locks the leg before it is fully in.
 */
export function airLeft(boreArea: number, gapBare: number, solid: number): number {
  requireArea('airLeft', boreArea);
  return boreArea * gapBare - solid;
}

function requireArea(what: string, area: number): void {
  if (!(area > 0)) throw new RangeError(`${what}: a bore of ${area} m²; it must be above 0`);
}
