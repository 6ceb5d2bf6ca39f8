import { at } from '../hatch.ts';
import { type Corner, type Plot, pathThrough, type Spot } from './pen.ts';
import type { Look, Shape } from './shapes.ts';
import type { BodyPoint } from './sideViewInput.ts';

/** What a shape in the body is drawn on: body points to px, and px per mm for widths. */
export interface Sheet {
  readonly plot: Plot;
  readonly pxPerMm: number;
}

export function outline(
  corners: readonly Corner[],
  sheet: Sheet,
  guess: boolean,
  look: Look = 'body',
): Shape {
  return { kind: 'path', look, guess, d: pathThrough(corners, sheet.plot) };
}

export function line(corners: readonly Corner[], sheet: Sheet, look: Look): Shape {
  return { kind: 'path', look, guess: false, d: pathThrough(corners, sheet.plot, true) };
}

/** A rounded bar through its corners; where its figure is a guess and it is straight, its dashed outline. */
export function limb(
  corners: readonly Corner[],
  widthMm: number,
  sheet: Sheet,
  guess: boolean,
  look: Look = 'body',
): Shape {
  const [from, to] = corners;
  if (guess && corners.length === 2) {
    return { kind: 'path', look, guess, d: taper(from!, to!, widthMm / 2, widthMm / 2, sheet) };
  }
  return {
    kind: 'limbs',
    look,
    guess,
    limbs: [{ d: pathThrough(corners, sheet.plot, true), width: widthMm * sheet.pxPerMm }],
  };
}

/** A straight bar with round ends of two radii: the circles about its ends and the lines that touch both. */
export function taperedBar(
  from: Spot | Corner,
  to: Spot | Corner,
  fromRadiusMm: number,
  toRadiusMm: number,
  sheet: Sheet,
  guess: boolean,
  look: Look = 'body',
): Shape {
  return { kind: 'path', look, guess, d: taper(from, to, fromRadiusMm, toRadiusMm, sheet) };
}

/** The outline of such a bar as a path. The two touching lines leave each centre at acos((r₁ − r₂) / apart) to the axis. */
export function taper(
  from: Spot | Corner,
  to: Spot | Corner,
  fromRadiusMm: number,
  toRadiusMm: number,
  sheet: Sheet,
): string {
  const a = sheet.plot({ xMm: from[0], heightMm: from[1] });
  const b = sheet.plot({ xMm: to[0], heightMm: to[1] });
  const [first, second] = [fromRadiusMm * sheet.pxPerMm, toRadiusMm * sheet.pxPerMm];
  const axis = Math.atan2(b.y - a.y, b.x - a.x);
  const apart = Math.hypot(b.x - a.x, b.y - a.y);
  const open = Math.acos(Math.max(-1, Math.min(1, (first - second) / apart)));
  const on = (centre: { x: number; y: number }, radius: number, angle: number): string =>
    `${at(centre.x + radius * Math.cos(angle))} ${at(centre.y + radius * Math.sin(angle))}`;
  const arc = (radius: number, isLarge: boolean, end: string): string =>
    `A${at(radius)} ${at(radius)} 0 ${isLarge ? 1 : 0} 1 ${end}`;
  return [
    `M${on(a, first, axis - open)}L${on(b, second, axis - open)}`,
    arc(second, open > Math.PI / 2, on(b, second, axis + open)),
    `L${on(a, first, axis + open)}`,
    arc(first, open < Math.PI / 2, on(a, first, axis - open)),
    'Z',
  ].join('');
}

export function disc(centre: BodyPoint, radiusMm: number, look: Look, sheet: Sheet, guess = false): Shape {
  return { kind: 'circle', look, guess, centre: sheet.plot(centre), radius: radiusMm * sheet.pxPerMm };
}
