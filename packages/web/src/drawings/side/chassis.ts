import { disc, limb, line, outline, type Sheet } from './brush.ts';
import { type Build, isGuess, legAt } from './build.ts';
import type { Corner, Spot } from './pen.ts';
import type { Shape } from './shapes.ts';
import type { BodyPoint } from './sideViewInput.ts';

/** Rear arm, front fork and what turns with it: from the axles where they now stand in the body. */
export function chassisShapes(
  build: Build,
  rear: BodyPoint,
  front: BodyPoint,
  sheet: Sheet,
): readonly Shape[] {
  const { pivot } = build;
  return [
    limb([spotOf(pivot), [pivot.xMm - 30, build.seat.heightMm - 120]], 52, sheet, false),
    limb([spotOf(rear), spotOf(pivot)], 54, sheet, isGuess(build, 'swingarm pivot')),
    disc(rear, 17, 'body', sheet),
    disc(pivot, 15, 'body', sheet, isGuess(build, 'swingarm pivot')),
    ...forkShapes(build, front, sheet),
  ];
}

/** One shock of a pair, leaning near the axle; a single one forward under the seat. Its eyes are drawn for the eye only. */
export function shockShapes(
  build: Build,
  rear: BodyPoint,
  reference: BodyPoint,
  sheet: Sheet,
): readonly Shape[] {
  const along = build.shocks === 2 ? 0.14 : 0.52;
  const lower = onArm(build, rear, along);
  const start = onArm(build, reference, along);
  const upper: Spot = build.shocks === 2 ? [start[0] + 95, start[1] + 330] : [start[0] + 120, start[1] + 290];
  const length = Math.hypot(upper[0] - lower[0], upper[1] - lower[1]);
  const ahead: Spot = [(upper[0] - lower[0]) / length, (upper[1] - lower[1]) / length];
  const at = (part: number, aside: number): Corner => [
    lower[0] + ahead[0] * part * length + ahead[1] * aside,
    lower[1] + ahead[1] * part * length - ahead[0] * aside,
  ];
  const coil: Corner[] = Array.from({ length: COILS * 2 + 1 }, (_, turn) =>
    at(0.2 + (0.62 * turn) / (COILS * 2), turn % 2 === 0 ? -34 : 34),
  );
  return [
    outline([at(0.05, -13), at(0.95, -13), at(0.95, 13), at(0.05, 13)], sheet, false),
    outline([at(0.16, -34), at(0.16, 34), at(0.82, 34), at(0.82, -34)], sheet, false),
    line(coil, sheet, 'line'),
    line([at(0.16, -42), at(0.16, 42)], sheet, 'solid'),
    line([at(0.83, -42), at(0.83, 42)], sheet, 'solid'),
    disc({ xMm: lower[0], heightMm: lower[1] }, 17, 'body', sheet),
    disc({ xMm: upper[0], heightMm: upper[1] }, 17, 'body', sheet),
  ];
}

const COILS = 6;

/** Tubes fixed to the body, sliders that move with the axle, and the steering head beside them by the fork offset. */
function forkShapes(build: Build, front: BodyPoint, sheet: Sheet): readonly Shape[] {
  const { rake, seat, forkOffsetMm } = build;
  const top = legAt(build, seat.heightMm + 215);
  const axle = spotOf(front);
  const along = (from: Spot, up: number): Spot => [
    from[0] - up * Math.sin(rake),
    from[1] + up * Math.cos(rake),
  ];
  const axis = (down: number): Spot => {
    const leg = along(top, -down);
    return [leg[0] - forkOffsetMm * Math.cos(rake), leg[1] - forkOffsetMm * Math.sin(rake)];
  };
  const guessLeg = isGuess(build, 'rake');
  const guessHead = guessLeg || isGuess(build, 'fork offset');
  const clamp = (down: number) => limb([along(top, -down), axis(down)], 40, sheet, guessHead);
  return [
    limb([axis(35), axis(205)], 62, sheet, guessHead),
    limb([top, along(axle, 180)], 44, sheet, guessLeg),
    clamp(30),
    clamp(210),
    limb([along(axle, 330), axle], 60, sheet, guessLeg),
    disc(front, 17, 'body', sheet),
  ];
}

function onArm(build: Build, axle: BodyPoint, part: number): Spot {
  const { pivot } = build;
  return [
    axle.xMm + (pivot.xMm - axle.xMm) * part,
    axle.heightMm + (pivot.heightMm - axle.heightMm) * part + 12,
  ];
}

function spotOf(point: BodyPoint): Spot {
  return [point.xMm, point.heightMm];
}
