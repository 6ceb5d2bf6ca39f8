import { limb, line, outline, type Sheet } from './brush.ts';
import { type Build, isGuess, steeringAt } from './build.ts';
import type { Landmarks } from './landmarks.ts';
import type { Corner, Spot } from './pen.ts';
import type { Shape } from './shapes.ts';

/** Tail, seat, tank, cowl, screen and handlebar: plain sheets between the figures, no maker's outline. */
export function bodyShapes(build: Build, marks: Landmarks, hasFuel: boolean, sheet: Sheet): readonly Shape[] {
  const { seat } = build;
  const head = steeringAt(build, seat.heightMm + 120);
  const guess = isGuess(build, 'seat');
  return [
    ...tailShapes(build, marks, sheet, guess),
    ...seatShapes(build, marks, sheet, guess),
    ...tankShapes(build, head, hasFuel, sheet, guess),
    ...cowlShapes(head, seat.heightMm, sheet),
    ...handlebar(build, marks, sheet),
  ];
}

function tailShapes(build: Build, { tail }: Landmarks, sheet: Sheet, guess: boolean): readonly Shape[] {
  const [sx, sh] = [build.seat.xMm, build.seat.heightMm];
  return [
    outline(
      [
        [sx + 230, sh - 50, 20],
        [tail[0] - 10, tail[1] - 56, 20],
        [tail[0] - 78, tail[1] - 96, 30],
        [tail[0] - 40, tail[1] - 150, 40],
        [sx - 250, sh - 170, 90],
        [sx - 120, sh - 270, 60],
        [sx + 150, sh - 270, 60],
      ],
      sheet,
      guess,
    ),
    line(
      [
        [sx + 176, sh - 96, 0],
        [sx - 160, sh - 108, 60],
        [tail[0] - 20, tail[1] - 108],
      ],
      sheet,
      'detail',
    ),
  ];
}

function seatShapes(build: Build, marks: Landmarks, sheet: Sheet, guess: boolean): readonly Shape[] {
  const { tail, passengerSeatMm } = marks;
  const [sx, sh] = [build.seat.xMm, build.seat.heightMm];
  return [
    outline(
      [
        [sx + 246, sh + 58, 30],
        [sx + 130, sh - 6, 110],
        [sx - 110, sh - 6, 70],
        [sx - 190, passengerSeatMm + 4, 50],
        [tail[0] + 110, passengerSeatMm + 4, 80],
        [tail[0] - 14, tail[1] + 2, 50],
        [tail[0] - 6, tail[1] - 74, 30],
        [sx - 180, sh - 62, 90],
        [sx + 60, sh - 82, 80],
        [sx + 236, sh - 40, 30],
      ],
      sheet,
      guess,
    ),
    line(
      [
        [sx + 210, sh - 16],
        [sx + 60, sh - 56, 90],
        [sx - 180, sh - 34, 90],
        [tail[0] + 20, tail[1] - 44],
      ],
      sheet,
      'detail',
    ),
  ];
}

function tankShapes(
  build: Build,
  [hx]: Spot,
  hasFuel: boolean,
  sheet: Sheet,
  guess: boolean,
): readonly Shape[] {
  const [sx, sh] = [build.seat.xMm, build.seat.heightMm];
  const shell: readonly Corner[] = [
    [sx + 196, sh + 4, 60],
    [sx + 216, sh + 96, 60],
    [sx + 330, sh + 196, 110],
    [hx - 190, sh + 208, 110],
    [hx - 20, sh + 150, 60],
    [hx - 40, sh + 4, 60],
    [hx - 150, sh - 66, 90],
    [sx + 270, sh - 88, 70],
  ];
  const inside: readonly Corner[] = [
    [sx + 228, sh + 8, 50],
    [sx + 248, sh + 84, 50],
    [sx + 342, sh + 166, 90],
    [hx - 196, sh + 176, 90],
    [hx - 50, sh + 126, 50],
    [hx - 68, sh + 20, 50],
    [hx - 160, sh - 36, 80],
    [sx + 276, sh - 56, 60],
  ];
  const shapes = [outline(shell, sheet, guess)];
  if (hasFuel) shapes.push(outline(inside, sheet, false, 'load wash'));
  return shapes;
}

/** A screen and a cowl as plain sheets, set on the steering head. */
function cowlShapes([hx]: Spot, sh: number, sheet: Sheet): readonly Shape[] {
  return [
    outline(
      [
        [hx + 34, sh + 300],
        [hx + 96, sh + 330],
        [hx + 40, sh + 470, 120],
        [hx - 70, sh + 628, 14],
        [hx - 92, sh + 616, 14],
        [hx - 6, sh + 450, 120],
      ],
      sheet,
      false,
    ),
    outline(
      [
        [hx - 96, sh + 270, 30],
        [hx + 104, sh + 356, 60],
        [hx + 236, sh + 236, 90],
        [hx + 236, sh + 50, 90],
        [hx + 96, sh - 120, 90],
        [hx - 40, sh - 318, 30],
        [hx - 116, sh - 312, 30],
        [hx - 70, sh - 60, 120],
      ],
      sheet,
      false,
    ),
    line(
      [
        [hx - 56, sh + 196],
        [hx + 60, sh + 226, 60],
        [hx + 222, sh + 186],
      ],
      sheet,
      'detail',
    ),
  ];
}

function handlebar(build: Build, { grip }: Landmarks, sheet: Sheet): readonly Shape[] {
  const top = steeringAt(build, build.seat.heightMm + 235);
  return [
    limb([top, [top[0] - 30, grip[1] + 12, 30], [grip[0] + 70, grip[1] + 6, 30], grip], 22, sheet, false),
    limb(
      [
        [grip[0] + 62, grip[1] + 5],
        [grip[0] - 50, grip[1] - 3],
      ],
      40,
      sheet,
      false,
    ),
  ];
}
