import type { Point } from '../box.ts';
import type { Stand } from './shapes.ts';
import type { BodyPoint, Stance } from './sideViewInput.ts';

/** A point over the ground [mm]: x forward along it, height above it. */
export interface GroundPoint {
  readonly xMm: number;
  readonly heightMm: number;
}

/** Where the ground stands on the drawing, in CSS px: `left` is the px of x = 0 mm. */
export interface Frame {
  readonly pxPerMm: number;
  readonly left: number;
  readonly groundY: number;
}

/**
 * A body point over the ground, at a stance.
 *   x = X cos θ + Z sin θ,  height = u − X sin θ + Z cos θ      (docs/conventions.md)
 */
export function standing(point: BodyPoint, stance: Stance): GroundPoint {
  const sin = Math.sin(stance.pitch);
  const cos = Math.cos(stance.pitch);
  return {
    xMm: point.xMm * cos + point.heightMm * sin,
    heightMm: stance.heaveMm - point.xMm * sin + point.heightMm * cos,
  };
}

/** The same point on the drawing; the machine faces right. */
export function onDrawing(point: GroundPoint, frame: Frame): Point {
  return {
    x: frame.left + point.xMm * frame.pxPerMm,
    y: frame.groundY - point.heightMm * frame.pxPerMm,
  };
}

/**
 * The body as it is drawn once, level, x = 0 on the ground at (0, 0): `inBody` puts its points on that drawing, and the drawing
 * stands on the page at `bodyStand`. Together they are `onDrawing(standing(point))`.
 */
export function inBody({ xMm, heightMm }: BodyPoint, pxPerMm: number): Point {
  return { x: xMm * pxPerMm, y: -heightMm * pxPerMm };
}

export function bodyStand({ heaveMm, pitch }: Stance, frame: Frame): Stand {
  return { at: { x: frame.left, y: frame.groundY - heaveMm * frame.pxPerMm }, turned: pitch };
}

/**
 * The rear axle in the body, `riseMm` above its reference: on a circle about the pivot where that is known and the arm
 * reaches, else straight along the body's vertical.
 */
export function rearAxle(radiusMm: number, riseMm: number, pivot: BodyPoint | null): BodyPoint {
  const heightMm = radiusMm + riseMm;
  if (pivot === null) return { xMm: 0, heightMm };
  const arm = Math.hypot(pivot.xMm, pivot.heightMm - radiusMm);
  const above = heightMm - pivot.heightMm;
  return Math.abs(above) < arm
    ? { xMm: pivot.xMm - Math.sqrt(arm * arm - above * above), heightMm }
    : { xMm: 0, heightMm };
}

/** The front axle in the body, `riseMm` above its reference: back along the fork by tan(rake) of each mm of rise. */
export function frontAxle(wheelbaseMm: number, radiusMm: number, riseMm: number, rake: number): BodyPoint {
  return { xMm: wheelbaseMm - riseMm * Math.tan(rake), heightMm: radiusMm + riseMm };
}
