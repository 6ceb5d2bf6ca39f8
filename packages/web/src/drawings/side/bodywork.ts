import { disc, limb, line, outline, type Sheet } from './brush.ts';
import { type Build, isGuess, steeringAt } from './build.ts';
import type { Spot } from './pen.ts';
import type { Shape } from './shapes.ts';

/** Where the machine's own parts put the people's hands, and where its outline ends. */
export interface Landmarks {
  readonly grip: Spot;
  readonly tail: Spot;
  readonly passengerSeatMm: number;
}

/** Landmarks of a machine; a passenger lifts the rear seat under them and lengthens the tail. */
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
