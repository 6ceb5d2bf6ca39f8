import type { Point } from '../box.ts';

/**
 * How a shape is painted. `body`: sheet with a black outline; `line`: black line; `detail`: thin line; `load`: what was
 * put on, tinted with a green outline; `load detail`: a green line on it; `load wash`: its tint alone; `solid`: black.
 */
export type Look = 'body' | 'line' | 'detail' | 'load' | 'load detail' | 'load wash' | 'solid';

/** One thing to paint, in CSS px. A `guess` has a dashed outline, since its figures are not known. */
export type Shape =
  | { readonly kind: 'path'; readonly look: Look; readonly guess: boolean; readonly d: string }
  | {
      readonly kind: 'circle';
      readonly look: Look;
      readonly guess: boolean;
      readonly centre: Point;
      readonly radius: number;
    }
  /** Thick rounded lines that melt into one outlined figure. */
  | { readonly kind: 'limbs'; readonly look: Look; readonly guess: boolean; readonly limbs: readonly Limb[] }
  /** Closed outlines that melt into one outlined figure. */
  | {
      readonly kind: 'melted';
      readonly look: Look;
      readonly guess: false;
      readonly parts: readonly string[];
    };

/** Where shapes stand that are drawn about a point of their own: turned clockwise [rad], then moved to a point of the drawing. */
export interface Stand {
  readonly at: Point;
  readonly turned: number;
}

/** Shapes that move as one: what changes as the machine sinks is where they stand, not what they are. */
export interface Layer {
  readonly stand: Stand;
  readonly shapes: readonly Shape[];
}

export interface Limb {
  readonly d: string;
  readonly width: number;
}
