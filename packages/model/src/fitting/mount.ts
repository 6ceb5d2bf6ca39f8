/** One end of a shock on the machine, lengths [m]; `null` where nobody has measured it. */
export interface MountSI {
  /** Across the hole in the eye, or in the inner tube of its bush, and across the machine's bolt. */
  readonly bore: number | null;
  readonly bolt: number | null;
  /** Along the bolt: what must stay free to move, and the room between the machine's two faces. */
  readonly eyeWidth: number | null;
  readonly clampWidth: number | null;
  readonly sleeve: SleeveSI | null;
}

/** What lies between bolt and eye. Its length is that of what the bolt clamps: the reducer's, or its bush's inner tube's. */
export interface SleeveSI {
  readonly inner: number | null;
  readonly outer: number | null;
  readonly length: number | null;
}

/** A sleeve that would make a bolt fill an eye: clearances come off these. `null` for a length that nothing ends. */
export interface SleeveNeeded {
  readonly inner: number;
  readonly outer: number;
  readonly wall: number;
  /** Longer than the eye, so that it and not the eye is clamped; not longer than the room between the faces. */
  readonly longerThan: number | null;
  readonly atMost: number | null;
}

/**
 * The sleeve that an eye needs on a bolt:  inner = bolt, outer = bore, wall = (bore − bolt)/2.
 * Null where bore or bolt is not known, and where the bolt fills the eye as it is (`boltPlay` of at most `mostPlay`).
 */
export function sleeveNeeded(mount: MountSI): SleeveNeeded | null {
  const { bore, bolt, eyeWidth, clampWidth } = mount;
  if (bore === null || bolt === null || bore - bolt <= (mostPlay(bolt) ?? 0)) return null;
  return { inner: bolt, outer: bore, wall: (bore - bolt) / 2, longerThan: eyeWidth, atMost: clampWidth };
}

/** Clearance across the bolt, in its sleeve where there is one; below 0 it does not go through. Null: not known. */
export function boltPlay({ bore, bolt, sleeve }: MountSI): number | null {
  const hole = sleeve === null ? bore : sleeve.inner;
  return hole === null || bolt === null ? null : hole - bolt;
}

/** Clearance of the sleeve in the eye; below 0 it does not go in. Null: no sleeve, or not known. */
export function sleevePlay({ bore, sleeve }: MountSI): number | null {
  const outer = sleeve?.outer ?? null;
  return outer === null || bore === null ? null : bore - outer;
}

/**
 * Side float: how far the eye can move along the bolt once that is tight.
 *   length of what is clamped − width of the eye
 * What is clamped is the sleeve, else the machine's own faces at their distance. At 0 or below the faces clamp the eye itself,
 * metal to metal. Null: not known.
 */
export function sideFloat({ eyeWidth, clampWidth, sleeve }: MountSI): number | null {
  const clamped = sleeve === null ? clampWidth : sleeve.length;
  return clamped === null || eyeWidth === null ? null : clamped - eyeWidth;
}

/** Room left between the faces beside what goes in between, to be filled or drawn together; below 0 it does not go in. */
export function faceRoom({ eyeWidth, clampWidth, sleeve }: MountSI): number | null {
  const between = [sleeve?.length ?? null, eyeWidth].filter((each) => each !== null);
  return clampWidth === null || between.length === 0 ? null : clampWidth - Math.max(...between);
}

/**
 * The most that a bolt and its hole may play before they knock: the widest clearance of the loose running fit H11/c11 at that
 * diameter [m], IT11 of the hole + (IT11 of the shaft − its deviation c). Null outside 3 to 30 mm.
 * Source: ISO 286-2, deviations c and grade IT11, from memory. That a looser one knocks: common practice, no source.
 */
export function mostPlay(diameter: number): number | null {
  if (!(diameter > LEAST_DIAMETER)) return null;
  const row = looseRunning.find(({ upTo }) => diameter <= upTo);
  return row === undefined ? null : row.grade + row.deviation + row.grade;
}

const LEAST_DIAMETER = 0.003;

const looseRunning = [
  { upTo: 0.006, grade: 75e-6, deviation: 70e-6 },
  { upTo: 0.01, grade: 90e-6, deviation: 80e-6 },
  { upTo: 0.018, grade: 110e-6, deviation: 95e-6 },
  { upTo: 0.03, grade: 130e-6, deviation: 110e-6 },
] as const;

/**
 * How far the two mounts may lie beside each other, across the machine, before the shaft binds and the shock feels harsh [m].
 * Common practice, no source: 6 mm, a quarter of an inch.
 */
export const mostOffset = 0.006;
