import type { Point } from '../box.ts';
import { at } from '../hatch.ts';
import type { BodyPoint } from './sideViewInput.ts';

/** A body point as it is written in an outline: x forward, height, mm. */
export type Spot = readonly [xMm: number, heightMm: number];

/** Puts a body point on the drawing. */
export type Plot = (point: BodyPoint) => Point;

/** Corners of a closed outline or an open line; a third figure rounds that corner, in mm. */
export type Corner = readonly [xMm: number, heightMm: number, roundMm?: number];

/** An SVG path through corners, each rounded as it says; closed unless `open`. */
export function pathThrough(corners: readonly Corner[], plot: Plot, open = false): string {
  const pieces: string[] = [];
  corners.forEach((corner, index) => {
    const before = corners[(index + corners.length - 1) % corners.length]!;
    const after = corners[(index + 1) % corners.length]!;
    const isEnd = open && (index === 0 || index === corners.length - 1);
    const round = isEnd ? 0 : (corner[2] ?? 0);
    const join = pieces.length === 0 ? 'M' : 'L';
    if (round === 0) {
      pieces.push(`${join}${spot(corner, plot)}`);
      return;
    }
    const from = towards(corner, before, round);
    const to = towards(corner, after, round);
    pieces.push(`${join}${spot(from, plot)}Q${spot(corner, plot)} ${spot(to, plot)}`);
  });
  return `${pieces.join('')}${open ? '' : 'Z'}`;
}

/** The point `reach` mm from one spot towards another, at most half way. */
export function towards(from: Corner, to: Corner, reach: number): Spot {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const part = length === 0 ? 0 : Math.min(0.5, reach / length);
  return [from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part];
}

function spot(corner: Corner, plot: Plot): string {
  const { x, y } = plot({ xMm: corner[0], heightMm: corner[1] });
  return `${at(x)} ${at(y)}`;
}
