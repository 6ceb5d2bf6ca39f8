import { bounds } from '@sagwright/records/schema/bounds';
import type { Wanted } from '@sagwright/records/schema/targets';
import { fromSI, toSI } from '@sagwright/records/units';

/**
 * How hands change a wanted sag: an aim within a band. No change leaves the aim outside its band or the three in different
 * units, so that a job stays one that can be planned.
 */
export type BandUnit = Wanted['aim']['unit'];

/** How far a wanted sag may go, in its unit. */
export function bandLimits(unit: BandUnit): { readonly least: number; readonly most: number } {
  if (unit === '%') return { least: bounds.wantedShare.least * 100, most: bounds.wantedShare.most * 100 };
  return {
    least: plain(fromSI(bounds.wantedLength.least, unit)),
    most: plain(fromSI(bounds.wantedLength.most, unit)),
  };
}

/** What one of the three may be: the band's ends stay on their side of the aim, the aim takes the band along. */
export function limitsOf(
  wanted: Wanted,
  name: 'low' | 'aim' | 'high',
): { readonly least: number; readonly most: number } {
  const { least, most } = bandLimits(wanted.aim.unit);
  return {
    least: name === 'high' ? wanted.aim.value : least,
    most: name === 'low' ? wanted.aim.value : most,
  };
}

/** Moves an end of the band, or the aim with its band as far as that may go. */
export function withSag(wanted: Wanted, name: 'low' | 'aim' | 'high', value: number): Wanted {
  if (name !== 'aim') return { ...wanted, [name]: { ...wanted[name], value } };
  const { least, most } = bandLimits(wanted.aim.unit);
  const by = value - wanted.aim.value;
  return {
    ...wanted,
    low: { ...wanted.low, value: Math.min(value, Math.max(least, plain(wanted.low.value + by))) },
    aim: { ...wanted.aim, value },
    high: { ...wanted.high, value: Math.max(value, Math.min(most, plain(wanted.high.value + by))) },
  };
}

/** The same sag in another unit, to the half of it; a share is one of the travel along which the sag is counted [m]. */
export function inUnit(
  wanted: Wanted,
  unit: BandUnit,
  travel: { readonly wheel: number; readonly stroke: number },
): Wanted {
  const whole = travel[wanted.along];
  const told = (sag: Wanted['aim']): Wanted['aim'] => {
    const length = sag.unit === '%' ? (sag.value / 100) * whole : toSI(sag.value, sag.unit);
    const value = unit === '%' ? (length / whole) * 100 : fromSI(length, unit);
    const { least, most } = bandLimits(unit);
    return { value: Math.max(least, Math.min(most, rounded(value, sagStep(unit) / 2))), unit };
  };
  return { ...wanted, low: told(wanted.low), aim: told(wanted.aim), high: told(wanted.high) };
}

/** One step of a wanted sag in its unit. */
export function sagStep(unit: BandUnit): number {
  return { '%': 1, mm: 1, cm: 0.1, m: 0.001, in: 0.05 }[unit];
}

function rounded(value: number, to: number): number {
  return plain(Math.round(value / to) * to);
}

/** Without binary noise: 0.1 + 0.2 is 0.3. */
function plain(value: number): number {
  return Number(value.toPrecision(12));
}
