import type { FirstMoments, PointMass } from '@sagwright/model/masses/pointMass';
import type { Figure } from '@sagwright/model/plan/answer';
import { GRAVITY, type MachineSI } from '@sagwright/model/statics/machine';
import { prepare } from '@sagwright/model/statics/prepared';
import { type Rest, restOf } from '@sagwright/model/statics/rest';

/** A thing where it lies, with the ± of its mass [kg] and of how far ahead of the rear axle it is [m]. */
export interface Lying extends PointMass {
  readonly massDoubt: number;
  readonly xDoubt: number;
}

/** What a thing puts on each wheel [kg]; less than 0 where it takes load off. */
export interface Effect {
  readonly rear: Figure;
  readonly front: Figure;
}

/**
 * What a thing does on the scales: the wheel loads with it less those without it, at rest both times, so that what the
 * machine's own pitch shifts is in it. Null where the machine without it has no rest.
 *   ± ≈ √((E/m · Δm)² + (m/L · Δx)²)    (first order: E the effect, m the mass, L the wheelbase)
 * rest  of the machine as found with `load`, the thing in it
 */
export function effectOf(machine: MachineSI, load: FirstMoments, rest: Rest, thing: Lying): Effect | null {
  const { mass, x, height } = thing;
  const without = restOf(
    prepare({
      ...machine,
      load: {
        mass: load.mass - mass,
        momentX: load.momentX - mass * x,
        momentHeight: load.momentHeight - mass * height,
      },
    }),
  );
  if (without.kind !== 'rest') return null;
  const figure = (end: 'rear' | 'front'): Figure => {
    const value = (rest[end].wheelLoad - without.rest[end].wheelLoad) / GRAVITY;
    const byMass = mass > 0 ? (value / mass) * thing.massDoubt : 0;
    return { value, plusMinus: Math.hypot(byMass, (mass / machine.geometry.wheelbase) * thing.xDoubt) };
  };
  return { rear: figure('rear'), front: figure('front') };
}
