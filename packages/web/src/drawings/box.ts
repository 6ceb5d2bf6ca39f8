/** A place on the drawing: CSS px, x to the right, y down. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** An upright rectangle on the drawing, in CSS px. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Whether two boxes share any area once each has kept `gap` px between them. */
export function boxesMeet(a: Box, b: Box, gap = 0): boolean {
  return (
    a.x < b.x + b.width + gap &&
    b.x < a.x + a.width + gap &&
    a.y < b.y + b.height + gap &&
    b.y < a.y + a.height + gap
  );
}

/** Whether all of `inner` lies in `outer`. */
export function isInside(inner: Box, outer: Box): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.width <= outer.x + outer.width &&
    inner.y + inner.height <= outer.y + outer.height
  );
}

/** Whether a point lies in a box or on its edge. */
export function holds(box: Box, point: Point): boolean {
  return isInside({ ...point, width: 0, height: 0 }, box);
}

/** The smallest box with all these points in it. */
export function boxAround(points: readonly Point[]): Box {
  const xs = points.map((point) => point.x);
  const ys = points.map((point) => point.y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

export function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
