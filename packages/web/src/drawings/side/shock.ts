import { disc, limb, outline, type Sheet } from './brush.ts';
import type { Build } from './build.ts';
import type { Corner, Spot } from './pen.ts';
import type { Shape } from './shapes.ts';
import type { BodyPoint } from './sideViewInput.ts';

/** Turns of the drawn spring, and where it stands along the shock, lower eye to upper. */
const TURNS = 7;
const SPRING_FROM = 0.17;
const SPRING_TO = 0.8;
const SPRING_HALF_MM = 36;

/** The eyes of the drawn shock in the body: the lower one goes with the arm. */
export interface Eyes {
  readonly lower: Spot;
  readonly upper: Spot;
}

/**
 * One shock of a pair, leaning near the axle; a single one forward under the seat. Where its eyes are is drawn for the eye
 * only; how far apart they are is to scale where the shock's length is known: fully out less its stroke. The upper eye is
 * then shifted along the shock.
 */
export function eyesOf(build: Build, rear: BodyPoint, strokeMm: number): Eyes {
  const along = build.shocks === 2 ? 0.14 : 0.52;
  const start = onArm(build, { xMm: 0, heightMm: build.rearRadiusMm }, along);
  const upper: Spot = build.shocks === 2 ? [start[0] + 95, start[1] + 330] : [start[0] + 120, start[1] + 290];
  const lower = onArm(build, rear, along);
  const { shockLengthMm } = build;
  if (shockLengthMm === null) return { lower, upper };
  const part = (shockLengthMm - strokeMm) / Math.hypot(upper[0] - lower[0], upper[1] - lower[1]);
  return {
    lower,
    upper: [lower[0] + part * (upper[0] - lower[0]), lower[1] + part * (upper[1] - lower[1])],
  };
}

export function shockShapes({ lower, upper }: Eyes, sheet: Sheet): readonly Shape[] {
  const length = Math.hypot(upper[0] - lower[0], upper[1] - lower[1]);
  const ahead: Spot = [(upper[0] - lower[0]) / length, (upper[1] - lower[1]) / length];
  const at = (part: number, aside: number): Corner => [
    lower[0] + ahead[0] * part * length + ahead[1] * aside,
    lower[1] + ahead[1] * part * length - ahead[0] * aside,
  ];
  const box = (from: number, to: number, half: number): Shape =>
    outline([at(from, -half), at(to, -half), at(to, half), at(from, half)], sheet, false);
  const pitch = (SPRING_TO - SPRING_FROM) / TURNS;
  return [
    box(0.06, 0.5, 10),
    box(0.42, 0.95, 25),
    ...Array.from({ length: TURNS }, (_, turn) => {
      const from = SPRING_FROM + pitch * (turn + 0.2);
      return limb([at(from, -SPRING_HALF_MM), at(from + 0.6 * pitch, SPRING_HALF_MM)], 17, sheet, false);
    }),
    limb([at(SPRING_FROM - 0.01, -42), at(SPRING_FROM - 0.01, 42)], 16, sheet, false),
    limb([at(SPRING_TO + 0.01, -42), at(SPRING_TO + 0.01, 42)], 22, sheet, false),
    disc({ xMm: lower[0], heightMm: lower[1] }, 21, 'body', sheet),
    disc({ xMm: lower[0], heightMm: lower[1] }, 7, 'line', sheet),
    disc({ xMm: upper[0], heightMm: upper[1] }, 21, 'body', sheet),
    disc({ xMm: upper[0], heightMm: upper[1] }, 7, 'line', sheet),
  ];
}

function onArm({ pivot }: Build, axle: BodyPoint, part: number): Spot {
  return [
    axle.xMm + (pivot.xMm - axle.xMm) * part,
    axle.heightMm + (pivot.heightMm - axle.heightMm) * part + 12,
  ];
}
