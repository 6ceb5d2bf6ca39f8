import { activeCoils, coilRate, coilVolume, meanDiameter, totalCoils } from '@sagwright/model/springs/coil';
import { type ShearModulus, shearModuli } from '@sagwright/model/springs/shearModulus';
import type { SpringRate } from '@sagwright/records/schema/springs';
import { type Desk, impossible } from './desk.ts';

export type Coil = Extract<SpringRate, { kind: 'coil' }>;
export type Wound = Extract<SpringRate, { kind: 'wound' }>;

/** Off by so much at each end, where nobody said: where the coils that give begin is seen to a quarter turn (common practice, no source). */
const QUARTER_TURN = 0.25;

/** The rate that counts of a bare coil [N/m]: by its dimensions, or as it is marked. */
export function rateOfCoil(desk: Desk, path: string, coil: Coil): number {
  const byDimensions = rateByDimensions(desk, path, coil);
  if (coil.marked === undefined) return byDimensions;
  const marked = desk.take.known(`${path}.marked`, coil.marked, 'springRate');
  return coil.counts === 'marked' ? marked : byDimensions;
}

/** Rate from wire, diameter, coils and material [N/m]. */
export function rateByDimensions(desk: Desk, path: string, coil: Coil): number {
  const wire = wireOf(desk, path, coil);
  const mean = meanOf(desk, path, coil, wire);
  const counted = activeCoils(coil.coils, coil.ends);
  if (!(mean > wire) || !(counted > 0)) {
    impossible(
      desk,
      path,
      'Spring wound from wire: the mean diameter must be more than the wire, and coils must be left to give.',
    );
    return 1e4;
  }
  const active = countedCoils(desk, `${path}.coils`, counted, coil.coilsPlusMinus, 2);
  return coilRate({ wire, mean, active, shearModulus: modulusOf(desk, path, coil, wire) });
}

/**
 * Coils that give, as counted, with what may be off: as typed, else a quarter turn at each of `ends` ends where they begin.
 */
export function countedCoils(
  { take }: Desk,
  path: string,
  counted: number,
  plusMinus: number | undefined,
  ends: number,
): number {
  if (plusMinus !== undefined) {
    const width = { value: (100 * plusMinus) / counted, unit: '%' } as const;
    return counted * take.known(path, { value: 100, unit: '%', plusMinus: width }, 'stated');
  }
  if (ends === 0) return counted;
  const why = `counted ${counted}; where they begin is seen to a quarter turn at each end`;
  return counted * take.workedOut(path, 1, (QUARTER_TURN * Math.sqrt(ends)) / counted, 'share', '%', why);
}

export function wireOf({ take }: Desk, path: string, { wire }: Coil | Wound): number {
  return take.known(`${path}.wire`, wire, 'wire');
}

/** Mean diameter [m], as typed or from the outside. */
export function meanOf({ take }: Desk, path: string, { mean, outside }: Coil | Wound, wire: number): number {
  return mean === undefined
    ? meanDiameter(take.known(`${path}.outside`, outside!, 'coilDiameter'), wire)
    : take.known(`${path}.mean`, mean, 'coilDiameter');
}

/** Shear modulus [Pa] of the row that the material has, with its spread between tables as a share. */
export function modulusOf({ take }: Desk, path: string, { material }: Coil | Wound, wire: number): number {
  const row = rowOf(material, wire);
  const why = `shear modulus ${(row.value / 1e9).toFixed(1)} GPa: ${row.material}, ${row.source}`;
  return row.value * take.workedOut(`${path}.material`, 1, row.relative, 'share', '%', why);
}

/** All coils, as counted on the spring. */
export function coilsIn(rate: Coil | Wound): number {
  if (rate.kind === 'coil') return rate.coils;
  const active = Object.values(rate.sections).reduce((sum, { coils }) => sum + coils, 0);
  return totalCoils(active, rate.ends);
}

/** What its wire displaces [m³]. */
export function wireVolumeOf(desk: Desk, path: string, rate: Coil | Wound): number {
  const wire = wireOf(desk, path, rate);
  return coilVolume(wire, meanOf(desk, path, rate, wire), coilsIn(rate));
}

/** Music wire goes by its diameter; the rest have one row each. */
function rowOf(material: Coil['material'], wire: number): ShearModulus {
  const [to081, to160, to318, to635] = shearModuli;
  if (material === 'music wire') {
    return wire <= 0.82e-3 ? to081! : wire <= 1.61e-3 ? to160! : wire <= 3.19e-3 ? to318! : to635!;
  }
  const starts: Record<Exclude<Coil['material'], 'music wire'>, string> = {
    'hard drawn': 'hard drawn wire',
    'patented drawn': 'patented cold drawn',
    'chrome vanadium': 'chrome-vanadium',
    'chrome silicon': 'chrome-vanadium',
    'silicon manganese': 'silicon-manganese',
    'oil hardened': 'oil hardened',
    'hot rolled': 'hot rolled',
  };
  return shearModuli.find((row) => row.material.startsWith(starts[material]))!;
}
