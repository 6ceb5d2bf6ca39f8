import { type Corner, type Plot, pathThrough } from './pen.ts';
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
  if (guess && corners.length === 2) return outline(capsule(from!, to!, widthMm / 2), sheet, true, look);
  return {
    kind: 'limbs',
    look,
    guess,
    limbs: [{ d: pathThrough(corners, sheet.plot, true), width: widthMm * sheet.pxPerMm }],
  };
}

function capsule(from: Corner, to: Corner, half: number): readonly Corner[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [x, height] = [((to[0] - from[0]) / length) * half, ((to[1] - from[1]) / length) * half];
  return [
    [from[0] - x - height, from[1] - height + x, half],
    [to[0] + x - height, to[1] + height + x, half],
    [to[0] + x + height, to[1] + height - x, half],
    [from[0] - x + height, from[1] - height - x, half],
  ];
}

export function disc(centre: BodyPoint, radiusMm: number, look: Look, sheet: Sheet, guess = false): Shape {
  return { kind: 'circle', look, guess, centre: sheet.plot(centre), radius: radiusMm * sheet.pxPerMm };
}
