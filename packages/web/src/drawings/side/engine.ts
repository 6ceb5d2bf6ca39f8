import { disc, limb, line, outline, type Sheet, taperedBar } from './brush.ts';
import { type Build, isGuess, steeringAt } from './build.ts';
import type { Landmarks } from './landmarks.ts';
import type { Shape } from './shapes.ts';

/** How many fins the upper block shows. */
const FINS = 5;

/**
 * Frame cradle, a plain block of an engine, its exhaust and the rider's foot board: drawn to no figure. It fills what
 * is between the wheels: where the wheelbase is a guess, so is its length.
 */
export function engineShapes(build: Build, marks: Landmarks, sheet: Sheet): readonly Shape[] {
  const { pivot, seat } = build;
  const back = pivot.xMm + 35;
  const front = Math.max(back + 300, build.wheelbaseMm - build.frontRadiusMm - 195);
  const top = seat.heightMm - 105;
  const floor = 168;
  const parting = floor + (top - floor) * 0.5;
  const head = steeringAt(build, seat.heightMm + 40);
  const [boardX, boardMm] = marks.board;
  const guess = isGuess(build, 'wheelbase');
  return [
    limb(
      [head, [front + 62, parting - 40, 120], [front - 20, floor - 2, 90], [back - 20, floor + 6]],
      38,
      sheet,
      false,
    ),
    outline(
      [
        [back + 60, parting - 30],
        [back + 60, top, 34],
        [front - 90, top, 34],
        [front - 90, parting - 30],
      ],
      sheet,
      guess,
    ),
    ...Array.from({ length: FINS }, (_, fin) => {
      const height = parting + 24 + ((top - parting - 66) * fin) / (FINS - 1);
      return line(
        [
          [back + 82, height],
          [front - 112, height],
        ],
        sheet,
        'detail',
      );
    }),
    outline(
      [
        [back, parting, 44],
        [front - 34, parting, 60],
        [front, (parting + floor) / 2, 70],
        [front - 52, floor, 60],
        [back + 30, floor, 60],
        [back - 22, (parting + floor) / 2, 60],
      ],
      sheet,
      guess,
    ),
    disc({ xMm: front - 170, heightMm: (parting + floor) / 2 + 4 }, 92, 'line', sheet),
    disc({ xMm: front - 170, heightMm: (parting + floor) / 2 + 4 }, 66, 'detail', sheet),
    disc({ xMm: back + 96, heightMm: (parting + floor) / 2 + 10 }, 56, 'detail', sheet),
    limb(
      [
        [front - 78, parting + 62],
        [front + 40, parting + 40, 90],
        [front + 26, floor + 46, 100],
        [pivot.xMm - 30, floor + 44],
      ],
      46,
      sheet,
      false,
    ),
    taperedBar([pivot.xMm - 20, floor + 46], [-60, floor + 68], 34, 54, sheet, false),
    line(
      [
        [pivot.xMm - 90, floor + 92],
        [-40, floor + 104],
      ],
      sheet,
      'detail',
    ),
    taperedBar([boardX - 130, boardMm - 14], [boardX + 130, boardMm - 8], 13, 13, sheet, false),
  ];
}
