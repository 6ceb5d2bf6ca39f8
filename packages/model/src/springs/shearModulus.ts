/** Shear modulus of one kind of spring wire, as one table gives it. */
export interface ShearModulus {
  readonly material: string;
  /** G [Pa]. */
  readonly value: number;
  /** ± as a share of the value, the half-width that holds 90 %. */
  readonly relative: number;
  readonly source: string;
}

const machinery = 'spring wire table in the form of Machinery’s Handbook (engineersedge.com), from Mpsi';
const codes = 'figure used in open spring design programs; the standard’s own table not seen';

/**
 * Shear moduli by kind of wire. Tables disagree: for oil tempered wire 77.2, 79.3, 79.5, 80 and 81 GPa are all in use,
 * 3 % of rate between the two rows below; for music wire 79.3 to 82.7 GPa, some by diameter, some not. So none is a
 * default: the row chosen is shown with the rate, and its ± reaches, in whole percent, the figure farthest off that
 * another table gives for the same kind of wire.
 */
export const shearModuli: readonly ShearModulus[] = [
  { material: 'music wire, to 0.81 mm', value: 82.74e9, relative: 0.05, source: `12.0 Mpsi: ${machinery}` },
  { material: 'music wire, 0.84–1.60 mm', value: 81.7e9, relative: 0.03, source: `11.85 Mpsi: ${machinery}` },
  {
    material: 'music wire, 1.63–3.18 mm',
    value: 81.01e9,
    relative: 0.03,
    source: `11.75 Mpsi: ${machinery}`,
  },
  { material: 'music wire, 3.20–6.35 mm', value: 79.98e9, relative: 0.02, source: `11.6 Mpsi: ${machinery}` },
  {
    material: 'hard drawn wire, 3.2–15.9 mm',
    value: 78.6e9,
    relative: 0.04,
    source: `11.4 Mpsi: ${machinery}`,
  },
  { material: 'patented cold drawn wire, EN 10270-1', value: 81.5e9, relative: 0.04, source: codes },
  {
    material: 'chrome-vanadium, chrome-silicon, oil tempered wire',
    value: 77.22e9,
    relative: 0.05,
    source: `11.2 Mpsi: ${machinery}; other tables 11.5 Mpsi (79.29 GPa)`,
  },
  {
    material: 'oil hardened and tempered wire, EN 10270-2',
    value: 79.5e9,
    relative: 0.03,
    source: `${codes}; other programs 80 and 81 GPa`,
  },
  { material: 'silicon-manganese wire', value: 74.12e9, relative: 0.06, source: `10.75 Mpsi: ${machinery}` },
  { material: 'hot rolled bar, EN 10089', value: 78.5e9, relative: 0.06, source: codes },
];
