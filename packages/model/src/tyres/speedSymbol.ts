/** Highest speed [km/h] that a tyre's symbol stands for. */
const speeds = {
  B: 50,
  C: 60,
  D: 65,
  E: 70,
  F: 80,
  G: 90,
  J: 100,
  K: 110,
  L: 120,
  M: 130,
  N: 140,
  P: 150,
  Q: 160,
  R: 170,
  S: 180,
  T: 190,
  U: 200,
  H: 210,
  V: 240,
  W: 270,
  Y: 300,
} as const;

export type SpeedLetter = keyof typeof speeds;

/**
 * The highest speed [m/s] of a tyre with this letter on its wall, at the load of its index and at its pressure.
 * Letters in brackets, and ZR by itself, are left out: sources differ on what they stand for.
 * Source: the table shared by ISO 4000-1, ETRTO and UN Regulation No. 75, as found alike in open data files; the standards
 * themselves not seen. Checked: checks/speed-symbols.test.ts.
 */
export function speedOf(letter: SpeedLetter): number {
  return speeds[letter] / 3.6;
}
