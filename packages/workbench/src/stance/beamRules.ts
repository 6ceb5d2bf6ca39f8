import type { BeamRule } from '@sagwright/model/attitude/beam';

/** A rule for the dipped beam with where it holds and where it was read: information, never a pass. */
export interface NamedBeamRule extends BeamRule {
  readonly name: string;
  readonly where: string;
  readonly source: string;
}

export const beamRules: readonly NamedBeamRule[] = [
  {
    name: 'annual test of motorcycles',
    where:
      'United Kingdom; dipped beam with a cut-off, rider seated, machine upright, tyres at their pressure',
    source:
      "a quotation of the government's inspection manual for motorcycles, section 4.1.2 (the manual itself was not seen)",
    rows: [
      { lampUpTo: 0.85, least: 0.005, most: 0.0275 },
      { lampUpTo: null, least: 0.0125, most: 0.0275 },
    ],
  },
];
