/** A mass at a place: mass [kg], x forward from the rear axle [m], height above the ground [m], in the reference attitude. */
export interface PointMass {
  readonly mass: number;
  readonly x: number;
  readonly height: number;
}

/** A mass with its first moments [kg], [kg·m]: the form in which loads add up, and in which "nothing" is all zeros. */
export interface FirstMoments {
  readonly mass: number;
  readonly momentX: number;
  readonly momentHeight: number;
}

/** Things at their places, added up: Σ m, Σ m x, Σ m h. Masses may be negative (something taken off). */
export function momentsOf(parts: readonly PointMass[]): FirstMoments {
  let mass = 0;
  let momentX = 0;
  let momentHeight = 0;
  for (const part of parts) {
    mass += part.mass;
    momentX += part.mass * part.x;
    momentHeight += part.mass * part.height;
  }
  return { mass, momentX, momentHeight };
}

/**
 * One mass that stands for many, at their common centre: m = Σ mᵢ, x = Σ mᵢxᵢ / m, h = Σ mᵢhᵢ / m.
 * The sum must be positive, else RangeError. Exact for parts rigid with the body.
 * Checked: checks/meijaard-2007-bicycle-benchmark.test.ts.
 */
export function together(parts: readonly PointMass[]): PointMass {
  const { mass, momentX, momentHeight } = momentsOf(parts);
  if (!(mass > 0))
    throw new RangeError(`together: the masses add up to ${mass} kg; they must come to more than 0`);
  return { mass, x: momentX / mass, height: momentHeight / mass };
}
