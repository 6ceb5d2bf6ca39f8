import type { Build, Guess } from './build.ts';
import { type Corner, type Plot, pathThrough, type Spot } from './pen.ts';
import type { Look, Shape } from './shapes.ts';
import type { BodyPoint } from './sideViewInput.ts';

/** Everything of the machine that needs a plot: body points to px, and px per mm for widths. */
export interface Sheet {
  readonly plot: Plot;
  readonly pxPerMm: number;
}

/** Where the machine's own parts put the people's hands, and where its outline ends. */
export interface Landmarks {
  readonly grip: Spot;
  readonly tail: Spot;
  readonly passengerSeatMm: number;
}

export function landmarksOf(
  build: Build,
  passengerSeatMm: number | null,
  tailAtMm: number | null,
): Landmarks {
  const { seat } = build;
  const bar = steeringAt(build, seat.heightMm + 200);
  const passengerMm = passengerSeatMm ?? seat.heightMm + 70;
  return {
    grip: [Math.min(bar[0] - 130, seat.xMm + 590), seat.heightMm + 315],
    tail: [Math.min(-120, tailAtMm ?? 0), passengerMm - 10],
    passengerSeatMm: passengerMm,
  };
}

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

/** Engine, tail, seat, tank, cowl and screen: plain sheets between the figures, no maker's outline. */
export function bodyShapes(build: Build, marks: Landmarks, sheet: Sheet): readonly Shape[] {
  const { seat } = build;
  const [sx, sh] = [seat.xMm, seat.heightMm];
  const head = steeringAt(build, sh + 120);
  const guess = isGuess(build, 'seat');
  return [
    ...engineShapes(build, sheet),
    outline(
      [
        [sx + 250, sh - 40],
        [marks.tail[0] - 10, marks.tail[1] - 50, 20],
        [marks.tail[0] + 20, marks.tail[1] - 110, 30],
        [sx - 190, sh - 170, 60],
        [sx + 150, sh - 200, 60],
        [sx + 290, sh - 110, 40],
      ],
      sheet,
      guess,
    ),
    outline(
      [
        [sx + 225, sh + 62, 30],
        [sx + 110, sh - 2, 90],
        [sx - 130, sh - 2, 60],
        [sx - 200, marks.passengerSeatMm + 4, 50],
        [marks.tail[0] + 60, marks.passengerSeatMm + 8, 40],
        [marks.tail[0], marks.tail[1] - 45, 30],
        [sx - 170, sh - 70, 90],
        [sx + 200, sh - 58, 60],
      ],
      sheet,
      guess,
    ),
    outline(
      [
        [sx + 205, sh - 10, 40],
        [sx + 300, sh + 205, 120],
        [head[0] - 170, sh + 215, 130],
        [head[0] - 50, sh + 90, 50],
        [head[0] - 80, sh - 60, 60],
        [sx + 250, sh - 95, 60],
      ],
      sheet,
      guess,
    ),
    ...cowlShapes(head, sh, sheet),
    handlebar(build, marks, sheet),
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

export function isGuess(build: Build, guess: Guess): boolean {
  return build.guesses.includes(guess);
}

/** A point of the fork leg's line at a height of the body, in the reference attitude. */
function legAt(build: Build, heightMm: number): Spot {
  return [build.wheelbaseMm - (heightMm - build.frontRadiusMm) * Math.tan(build.rake), heightMm];
}

/** A point of the steering axis at a height: the leg's line, set back by the fork offset square to it. */
function steeringAt(build: Build, heightMm: number): Spot {
  const [x] = legAt(build, heightMm);
  return [x - build.forkOffsetMm / Math.cos(build.rake), heightMm];
}

function forkShapes(build: Build, front: BodyPoint, sheet: Sheet): readonly Shape[] {
  const { rake, seat } = build;
  const top = legAt(build, seat.heightMm + 215);
  const axle = spotOf(front);
  const along = (from: Spot, up: number): Spot => [
    from[0] - up * Math.sin(rake),
    from[1] + up * Math.cos(rake),
  ];
  const clamp = (down: number): Shape => {
    const leg = along(top, -down);
    const axis: Spot = [
      leg[0] - build.forkOffsetMm * Math.cos(rake),
      leg[1] - build.forkOffsetMm * Math.sin(rake),
    ];
    return limb([leg, axis], 40, sheet, isGuess(build, 'fork offset'));
  };
  const axis = (down: number): Spot => {
    const leg = along(top, -down);
    return [leg[0] - build.forkOffsetMm * Math.cos(rake), leg[1] - build.forkOffsetMm * Math.sin(rake)];
  };
  const guessLeg = isGuess(build, 'rake');
  return [
    limb([axis(35), axis(205)], 62, sheet, isGuess(build, 'fork offset') || guessLeg),
    limb([top, along(axle, 180)], 44, sheet, guessLeg),
    clamp(30),
    clamp(210),
    limb([along(axle, 330), axle], 60, sheet, guessLeg),
    disc(front, 17, 'body', sheet),
  ];
}

function engineShapes(build: Build, sheet: Sheet): readonly Shape[] {
  const { pivot, seat } = build;
  const back = pivot.xMm + 45;
  const ahead = Math.max(back + 260, build.wheelbaseMm - build.frontRadiusMm - 190);
  const top = seat.heightMm - 170;
  const floor = 165;
  const head = steeringAt(build, seat.heightMm + 60);
  return [
    limb([head, [ahead - 55, 235]], 40, sheet, false),
    outline(
      [
        [back + 20, top, 40],
        [ahead - 60, top, 50],
        [ahead, top - 130, 50],
        [ahead - 20, floor, 60],
        [back - 20, floor, 60],
        [back - 10, top - 150, 40],
      ],
      sheet,
      false,
    ),
    line(
      [
        [back + 30, (top + floor) / 2 + 10],
        [ahead - 40, (top + floor) / 2 + 10],
      ],
      sheet,
      'detail',
    ),
    disc({ xMm: (back + ahead) / 2 - 30, heightMm: floor + 105 }, 70, 'detail', sheet),
    limb(
      [
        [ahead - 60, floor + 22],
        [back - 40, floor + 34],
      ],
      34,
      sheet,
      false,
    ),
    limb(
      [
        [back - 60, floor + 40],
        [back - 330, floor + 74],
      ],
      82,
      sheet,
      false,
    ),
  ];
}

/** A screen and a cowl as plain sheets, set on the steering head. */
function cowlShapes([hx]: Spot, seatMm: number, sheet: Sheet): readonly Shape[] {
  return [
    outline(
      [
        [hx + 40, seatMm + 250, 8],
        [hx + 76, seatMm + 250, 8],
        [hx - 78, seatMm + 540, 16],
        [hx - 118, seatMm + 540, 16],
      ],
      sheet,
      false,
    ),
    outline(
      [
        [hx - 105, seatMm + 205, 24],
        [hx + 70, seatMm + 285, 40],
        [hx + 215, seatMm + 125, 50],
        [hx + 120, seatMm - 95, 40],
        [hx - 15, seatMm - 165, 40],
        [hx - 75, seatMm - 20, 40],
      ],
      sheet,
      false,
    ),
    line(
      [
        [hx - 40, seatMm + 130],
        [hx + 165, seatMm + 95],
      ],
      sheet,
      'detail',
    ),
  ];
}

function handlebar(build: Build, marks: Landmarks, sheet: Sheet): Shape {
  const top = steeringAt(build, build.seat.heightMm + 235);
  return limb([top, [top[0] - 35, top[1] + 70], marks.grip], 24, sheet, false);
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
