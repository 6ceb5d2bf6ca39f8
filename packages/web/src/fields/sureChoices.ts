import type { Origin } from '@sagwright/records/schema/quantity';
import { type Dimension, differenceFromSI, differenceToSI, type Unit } from '@sagwright/records/units';
import { defaultWidth, type ReadingKind } from '@sagwright/workbench/inputs/widths';
import { roundFigure } from './steps.ts';

export interface SureChoice {
  readonly value: number;
  readonly unit: Unit | '%';
}

/** What is offered where the kind of reading is not known. Common practice, no source. */
const usualWidths: { readonly [D in Dimension]: SureChoice } = {
  length: { value: 1, unit: 'mm' },
  mass: { value: 1, unit: 'kg' },
  rate: { value: 5, unit: '%' },
  hardening: { value: 20, unit: '%' },
  force: { value: 5, unit: '%' },
  pressure: { value: 0.1, unit: 'bar' },
  angle: { value: 0.5, unit: 'deg' },
  volume: { value: 5, unit: '%' },
  torque: { value: 5, unit: '%' },
  temperature: { value: 2, unit: 'C' },
  leverage: { value: 3, unit: '%' },
  motion: { value: 3, unit: '%' },
  share: { value: 5, unit: '%' },
  acceleration: { value: 5, unit: '%' },
  speed: { value: 2, unit: '%' },
};

/** Three round ± to choose from, in the unit typed or in %: half the usual one, the usual one, twice that. */
export function sureChoices(
  dimension: Dimension,
  unit: Unit,
  reading: ReadingKind | undefined,
  origin: Origin | undefined,
): readonly SureChoice[] {
  const known = reading === undefined ? null : defaultWidth(reading, origin);
  // What is taken as it stands has no ± of its own to halve and to double: what is typed beside it is a reading's.
  const usual = known === null || known.value === 0 ? usualWidths[dimension] : known;
  if (usual.unit === '%') return around(usual.value, '%');
  return around(differenceFromSI(differenceToSI(usual.value, usual.unit), unit), unit);
}

function around(usual: number, unit: Unit | '%'): readonly SureChoice[] {
  const values = [usual / 2, usual, usual * 2].map((value) => roundFigure(value));
  return [...new Set(values)].map((value) => ({ value, unit }));
}
