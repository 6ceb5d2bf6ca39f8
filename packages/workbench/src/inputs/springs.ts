import { solidLength } from '@sagwright/model/springs/coil';
import type { SpringSI } from '@sagwright/model/springs/spring';
import type { Spring } from '@sagwright/records/schema/springs';
import { coilsIn, rateOfCoil, wireOf, wireVolumeOf } from './coil.ts';
import type { Desk } from './desk.ts';
import { forceTable } from './forceTable.ts';
import { woundFreeLength, woundSpring } from './wound.ts';

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
    case 'wound':
      return woundSpring(desk, path, rate);
  }
}

/** Solid length [m]: typed, or from the coil; null where neither is known. */
export function solidLengthOf(desk: Desk, id: string, { solidLength: typed, rate }: Spring): number | null {
  if (typed !== undefined) return desk.take.known(`springs.${id}.solidLength`, typed, 'springLength');
  if (rate.kind !== 'coil' && rate.kind !== 'wound') return null;
  return solidLength(coilsIn(rate), rate.ends, wireOf(desk, `springs.${id}.rate`, rate));
}

/** Free length [m]: typed, or from the pitches of a winding; null where neither is known. */
export function freeLengthOf(desk: Desk, id: string): number | null {
  const spring = desk.job.springs[id];
  if (spring === undefined) return null;
  if (spring.freeLength !== undefined) {
    return desk.take.known(`springs.${id}.freeLength`, spring.freeLength, 'springLength');
  }
  return spring.rate.kind === 'wound' ? woundFreeLength(desk, `springs.${id}.rate`, spring.rate) : null;
}

/** What a spring displaces by its own wire [m³]; null where it was not measured as a coil. */
export function wireVolume(desk: Desk, id: string, { rate }: Spring): number | null {
  if (rate.kind !== 'coil' && rate.kind !== 'wound') return null;
  return wireVolumeOf(desk, `springs.${id}.rate`, rate);
}
