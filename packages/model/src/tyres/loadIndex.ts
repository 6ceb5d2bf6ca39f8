/** Mass [kg] at load index 20, 21, …, 100. */
const masses = [
  80, 82.5, 85, 87.5, 90, 92.5, 95, 97.5, 100, 103, 106, 109, 112, 115, 118, 121, 125, 128, 132, 136, 140,
  145, 150, 155, 160, 165, 170, 175, 180, 185, 190, 195, 200, 206, 212, 218, 224, 230, 236, 243, 250, 257,
  265, 272, 280, 290, 300, 307, 315, 325, 335, 345, 355, 365, 375, 387, 400, 412, 425, 437, 450, 462, 475,
  487, 500, 515, 530, 545, 560, 580, 600, 615, 630, 650, 670, 690, 710, 730, 750, 775, 800,
] as const;

const first = 20;

/**
 * The greatest mass [kg] a tyre of this load index may bear, at its placard or maker's pressure.
 * Throws RangeError for an index that is not a whole number from 20 to 100.
 * Source: the load index table shared by ISO 4000-1, ETRTO and UN Regulation No. 75, annex 4, as found alike in four
 * open data files; the standards themselves not seen. Checked: checks/load-index-table.test.ts.
 */
export function loadIndexMass(index: number): number {
  const mass = masses[index - first];
  if (mass === undefined) {
    throw new RangeError(
      `loadIndexMass: index ${index}; whole numbers from ${first} to ${first + masses.length - 1}`,
    );
  }
  return mass;
}
