import { disc, limb, outline, type Sheet, taperedBar } from './brush.ts';
import { type Build, isGuess, legAt, steeringAt } from './build.ts';
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
    taperedBar(spotOf(rear), spotOf(pivot), 26, 38, sheet, isGuess(build, 'swingarm pivot')),
    disc(rear, 20, 'body', sheet),
    disc(rear, 7, 'line', sheet),
    disc(pivot, 20, 'body', sheet, isGuess(build, 'swingarm pivot')),
    ...(build.isFork ? forkShapes(build, front, sheet) : otherFrontShapes(build, front, sheet)),
  ];
}

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
    limb([top, along(axle, 180)], 46, sheet, guessLeg),
    clamp(30),
    clamp(210),
    outline(caliper(along(axle, 175), rake), sheet, false),
    taperedBar(along(axle, 345), axle, 34, 30, sheet, guessLeg),
    limb([across(axle, rake, 352, -20), across(axle, rake, 352, 20)], 22, sheet, guessLeg),
    disc(front, 20, 'body', sheet),
    disc(front, 7, 'line', sheet),
  ];
}

/** A front that is no telescopic fork: its steering head, and two plain dashed bars to the axle, drawn to no figure. */
function otherFrontShapes(build: Build, front: BodyPoint, sheet: Sheet): readonly Shape[] {
  const { seat } = build;
  const head = (heightMm: number): Spot => steeringAt(build, heightMm);
  const axle = spotOf(front);
  const foot = head(2 * build.frontRadiusMm + 40);
  return [
    limb([head(seat.heightMm + 180), head(seat.heightMm + 20)], 62, sheet, isGuess(build, 'rake')),
    limb([head(seat.heightMm + 20), foot], 40, sheet, true),
    limb([foot, axle], 40, sheet, true),
    disc(front, 20, 'body', sheet),
    disc(front, 7, 'line', sheet),
  ];
}

/** A spot up the leg from the axle and square to it, forward positive. */
function across([x, height]: Spot, rake: number, up: number, aside: number): Spot {
  return [
    x - up * Math.sin(rake) + aside * Math.cos(rake),
    height + up * Math.cos(rake) + aside * Math.sin(rake),
  ];
}

/** A plain brake caliper behind the leg. */
function caliper(middle: Spot, rake: number): readonly Corner[] {
  return [
    [...across(middle, rake, -70, -20), 10],
    [...across(middle, rake, 70, -20), 10],
    [...across(middle, rake, 55, -92), 26],
    [...across(middle, rake, -55, -92), 26],
  ];
}

function spotOf(point: BodyPoint): Spot {
  return [point.xMm, point.heightMm];
}
