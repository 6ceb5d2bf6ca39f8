import { activeCoils, coilRate, coilVolume, meanDiameter, solidLength } from '@sagwright/model/springs/coil';
import { type ShearModulus, shearModuli } from '@sagwright/model/springs/shearModulus';
import type { SpringSI } from '@sagwright/model/springs/spring';
import { siOf } from '@sagwright/records/schema/quantity';
import type { Spring, SpringRate } from '@sagwright/records/schema/springs';
import { type Desk, impossible } from './desk.ts';
import { forceTable } from './forceTable.ts';

/** The force law of a spring in the job. */
export function springOf(desk: Desk, id: string, spring: Spring): SpringSI {
  const { take } = desk;
  const path = `springs.${id}.rate`;
  const { rate } = spring;
  switch (rate.kind) {
    case 'none':
      return { kind: 'none' };
    case 'linear':
      return { kind: 'linear', rate: take.known(`${path}.rate`, rate.rate, 'springRate') };
    case 'series':
      return {
        kind: 'series',
        soft: take.known(`${path}.soft`, rate.soft, 'springRate'),
        stiff: take.known(`${path}.stiff`, rate.stiff, 'springRate'),
        softStroke: take.known(`${path}.softCloses`, rate.softCloses, 'tape'),
      };
    case 'table': {
      const why = 'forces of a tested table, all together';
      return { kind: 'table', ...forceTable(desk, `${path}.rows`, rate.rows, { halfWidth: 0.02, why }) };
    }
    case 'coil':
      return { kind: 'linear', rate: rateOfCoil(desk, path, rate) };
  }
}

/** Solid length [m]: typed, or from the coil; null where neither is known. */
export function solidLengthOf(desk: Desk, id: string, spring: Spring): number | null {
  if (spring.solidLength !== undefined) {
    return desk.take.known(`springs.${id}.solidLength`, spring.solidLength, 'springLength');
  }
  if (spring.rate.kind !== 'coil') return null;
  return solidLength(spring.rate.coils, spring.rate.ends, siOf(spring.rate.wire));
}

/** What a spring displaces by its own wire [m³]; null where it was not measured as a coil. */
export function wireVolume(desk: Desk, id: string, { rate }: Spring): number | null {
  if (rate.kind !== 'coil') return null;
  const path = `springs.${id}.rate`;
  const wire = desk.take.known(`${path}.wire`, rate.wire, 'wire');
  return coilVolume(wire, meanOf(desk, path, rate, wire), rate.coils);
}

type Coil = Extract<SpringRate, { kind: 'coil' }>;

function rateOfCoil(desk: Desk, path: string, coil: Coil): number {
  const { take } = desk;
  const wire = take.known(`${path}.wire`, coil.wire, 'wire');
  const mean = meanOf(desk, path, coil, wire);
  const active = activeCoils(coil.coils, coil.ends);
  const modulus = modulusOf(coil.material, wire);
  const why = `shear modulus ${(modulus.value / 1e9).toFixed(1)} GPa: ${modulus.material}, ${modulus.source}`;
  const share = take.workedOut(`${path}.material`, 1, modulus.relative, 'share', '%', why);
  if (!(mean > wire) || !(active > 0)) {
    impossible(
      desk,
      path,
      'Spring wound from wire: the mean diameter must be more than the wire, and coils must be left to give.',
    );
    return 1e4;
  }
  return share * coilRate({ wire, mean, active, shearModulus: modulus.value });
}

function meanOf({ take }: Desk, path: string, { mean, outside }: Coil, wire: number): number {
  return mean === undefined
    ? meanDiameter(take.known(`${path}.outside`, outside!, 'coilDiameter'), wire)
    : take.known(`${path}.mean`, mean, 'coilDiameter');
}

/** Music wire goes by its diameter; the rest have one row each. */
function modulusOf(material: Coil['material'], wire: number): ShearModulus {
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
