import type { JobDocument } from '@sagwright/records/schema';
import { type Dimension, dimensionOf, dimensions, type UnitOf, unitsOf } from '@sagwright/records/units';

/** Which units figures are shown in: as they were typed, or one family throughout. */
export type UnitsChoice = (typeof unitsChoices)[number];

export const unitsChoices = ['typed', 'metric', 'imperial'] as const;

/** How figures are shown: one unit for each dimension, and the decimal mark of the language. */
export interface Units {
  readonly choice: UnitsChoice;
  readonly unit: UnitByDimension;
  readonly decimal: '.' | ',';
}

type UnitByDimension = { readonly [D in Dimension]: UnitOf<D> };

const metric: UnitByDimension = {
  length: 'mm',
  mass: 'kg',
  rate: 'N/mm',
  hardening: 'N/mm^3',
  force: 'N',
  pressure: 'bar',
  angle: 'deg',
  volume: 'l',
  torque: 'N·m',
  temperature: 'C',
  leverage: 'wheel/shock',
  motion: 'shock/wheel',
  share: '%',
  acceleration: 'g',
  speed: 'km/h',
};

const imperial: UnitByDimension = {
  ...metric,
  length: 'in',
  mass: 'lb',
  rate: 'lbf/in',
  force: 'lbf',
  pressure: 'psi',
  volume: 'gal (US)',
  torque: 'lbf·ft',
  temperature: 'F',
  speed: 'mph',
};

/**
 * The units to show a job in. 'typed': each dimension in the unit that the job uses most for it, of equals the commoner one
 * in the workshop; metric where the job has none of that dimension.
 */
export function unitsFor(choice: UnitsChoice, job: JobDocument, decimal: Units['decimal']): Units {
  const unit = choice === 'metric' ? metric : choice === 'imperial' ? imperial : mostTyped(job);
  return { choice, unit, decimal };
}

/** The unit of the same dimension in which an assumed figure is told: its own, but for those who work in the other family. */
export function unitLike<D extends Dimension>(own: UnitOf<D>, dimension: D, units: Units): UnitOf<D> {
  const shown = units.unit[dimension];
  const isImperial = (unit: string): boolean => unit === imperial[dimension] && unit !== metric[dimension];
  return isImperial(shown) ? shown : own;
}

function mostTyped(job: JobDocument): UnitByDimension {
  const uses = new Map<string, number>();
  countUnits(job, uses);
  const most = <D extends Dimension>(dimension: D): UnitOf<D> =>
    unitsOf(dimension).reduce(
      (best, unit) => ((uses.get(unit) ?? 0) > (uses.get(best) ?? 0) ? unit : best),
      metric[dimension],
    );
  return Object.fromEntries(dimensions.map((dimension) => [dimension, most(dimension)])) as UnitByDimension;
}

/** Counts the unit of every quantity in the job; the unit of a ± is not counted. */
function countUnits(value: unknown, uses: Map<string, number>): void {
  if (typeof value !== 'object' || value === null) return;
  const { value: typed, unit } = value as { value?: unknown; unit?: unknown };
  if (typeof typed === 'number' && typeof unit === 'string' && dimensionOf(unit) !== undefined) {
    uses.set(unit, (uses.get(unit) ?? 0) + 1);
    return;
  }
  for (const inner of Object.values(value)) countUnits(inner, uses);
}
