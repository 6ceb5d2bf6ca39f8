import type { ForceAt } from './forceAt.ts';
import { tableAt } from './table.ts';

/** The springs of a strut: force against compression of the spring itself. All SI, compression positive. */
export type SpringSI =
  /** No coil at all: air bears the load alone. */
  | { readonly kind: 'none' }
  /** One rate [N/m]. */
  | { readonly kind: 'linear'; readonly rate: number }
  /** Two in series; the soft one closes up (goes solid) after its own `softStroke` [m], then only the stiff one gives. */
  | { readonly kind: 'series'; readonly soft: number; readonly stiff: number; readonly softStroke: number }
  /** Two side by side; the second one takes hold after `gap` [m] of compression of the first. */
  | { readonly kind: 'parallel'; readonly rate: number; readonly second: number; readonly gap: number }
  /** Force [N] against compression [m], both rising strictly from 0; straight lines between the points. */
  | { readonly kind: 'table'; readonly compression: readonly number[]; readonly force: readonly number[] };

/**
 * Force of a spring compressed by x. A compression <= 0 leaves the spring loose: force, rate and energy 0.
 *   linear    F = k x
 *   series    F = x k1 k2/(k1 + k2) until F = k1 · softStroke, then slope k2
 *   parallel  F = k1 x + k2 max(0, x − gap)
 *   table     straight between the points, the last slope carried on beyond the last
 * x    compression from free length [m];  returns into `out` force [N], rate [N/m], energy [J]
 * At a kink, and at x = 0, the slope on the deeper side is given. Throws RangeError for NaN.
 * Valid: rates above 0, softStroke and gap 0 or more, a table as SpringSI says.
 * Source: textbook identities; parallel checked in checks/bhandari-design-of-machine-elements.test.ts, series derived in
 * spring.test.ts.
 */
export function springAt(spring: SpringSI, x: number, out: ForceAt): void {
  if (!(x >= 0)) {
    if (Number.isNaN(x)) throw new RangeError('springAt: compression NaN m; a number is needed');
    out.force = 0;
    out.rate = 0;
    out.energy = 0;
    return;
  }
  switch (spring.kind) {
    case 'none':
      out.force = 0;
      out.rate = 0;
      out.energy = 0;
      return;
    case 'linear':
      out.force = spring.rate * x;
      out.rate = spring.rate;
      out.energy = 0.5 * spring.rate * x * x;
      return;
    case 'series':
      seriesAt(spring.soft, spring.stiff, spring.softStroke, x, out);
      return;
    case 'parallel': {
      const beyond = Math.max(0, x - spring.gap);
      out.force = spring.rate * x + spring.second * beyond;
      out.rate = spring.rate + (x >= spring.gap ? spring.second : 0);
      out.energy = 0.5 * spring.rate * x * x + 0.5 * spring.second * beyond * beyond;
      return;
    }
    case 'table':
      tableAt(spring.compression, spring.force, x, out);
  }
}

function seriesAt(soft: number, stiff: number, softStroke: number, x: number, out: ForceAt): void {
  const both = (soft * stiff) / (soft + stiff);
  const closingForce = soft * softStroke;
  const closesAt = closingForce / both;
  if (x < closesAt) {
    out.force = both * x;
    out.rate = both;
    out.energy = 0.5 * both * x * x;
    return;
  }
  const beyond = x - closesAt;
  out.force = closingForce + stiff * beyond;
  out.rate = stiff;
  out.energy = 0.5 * closingForce * closesAt + (closingForce + 0.5 * stiff * beyond) * beyond;
}

/** Least slope of the spring's force at any compression [N/m]. */
export function leastRate(spring: SpringSI): number {
  switch (spring.kind) {
    case 'none':
      return 0;
    case 'linear':
    case 'parallel':
      return spring.rate;
    case 'series':
      return (spring.soft * spring.stiff) / (spring.soft + spring.stiff);
    case 'table': {
      const { compression, force } = spring;
      const slopes = force
        .slice(1)
        .map((each, i) => (each - force[i]!) / (compression[i + 1]! - compression[i]!));
      return Math.min(...slopes);
    }
  }
}

/**
 * Compression [m] at which the spring bears `force` [N]: the inverse of `springAt`. A force of 0 is the free length: 0.
 * Throws RangeError for a negative force: a coil spring cannot pull.
 */
export function compressionFor(spring: SpringSI, force: number): number {
  if (!(force >= 0)) throw new RangeError(`compressionFor: force ${force} N; a spring bears 0 N or more`);
  switch (spring.kind) {
    case 'none':
      throw new RangeError(`compressionFor: force ${force} N, but there is no spring; ask it of a spring`);
    case 'linear':
      return force / spring.rate;
    case 'series': {
      const both = (spring.soft * spring.stiff) / (spring.soft + spring.stiff);
      const closingForce = spring.soft * spring.softStroke;
      return force < closingForce
        ? force / both
        : closingForce / both + (force - closingForce) / spring.stiff;
    }
    case 'parallel': {
      const atGap = spring.rate * spring.gap;
      return force < atGap
        ? force / spring.rate
        : spring.gap + (force - atGap) / (spring.rate + spring.second);
    }
    case 'table': {
      const last = spring.force.length - 1;
      let i = 0;
      while (i < last - 1 && force >= spring.force[i + 1]!) i += 1;
      const slope =
        (spring.compression[i + 1]! - spring.compression[i]!) / (spring.force[i + 1]! - spring.force[i]!);
      return spring.compression[i]! + (force - spring.force[i]!) * slope;
    }
  }
}
