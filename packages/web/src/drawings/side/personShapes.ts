import { outline, type Sheet, taper, taperedBar } from './brush.ts';
import { type Corner, pathThrough, type Spot, towards } from './pen.ts';
import { type Figure, SOLE_BELOW } from './people.ts';
import type { Shape } from './shapes.ts';

/** A seated figure in riding gear: trunk and near leg in one outline, the near arm and the helmet over it. */
export function personShapes(person: Figure, sheet: Sheet): readonly Shape[] {
  const { hip, shoulder, neck, head, knee, ankle, elbow, hand } = person;
  const chest = towards(neck, hip, 170);
  const bar = (from: Spot, to: Spot, first: number, second: number) => taper(from, to, first, second, sheet);
  return [
    {
      kind: 'melted',
      look: 'load',
      guess: false,
      parts: [
        bar(neck, head, 56, 60),
        bar(shoulder, chest, 84, 116),
        bar(chest, hip, 116, 106),
        bar(hip, knee, 96, 64),
        bar(knee, ankle, 64, 46),
        pathThrough(boot(ankle), sheet.plot),
      ],
    },
    {
      kind: 'melted',
      look: 'load',
      guess: false,
      parts: [
        bar(shoulder, elbow, 60, 46),
        bar(elbow, hand, 48, 34),
        bar(hand, towards(hand, elbow, 40), 40, 34),
      ],
    },
    ...helmet(head, sheet),
  ];
}

/** What a passenger's foot stands on. */
export function footRest({ ankle: [x, height] }: Figure, sheet: Sheet): Shape {
  const under = height - SOLE_BELOW - 10;
  return taperedBar([x - 40, under], [x + 130, under], 11, 11, sheet, false);
}

function boot([x, height]: Spot): readonly Corner[] {
  const sole = height - SOLE_BELOW;
  return [
    [x - 48, height + 20, 20],
    [x - 58, sole, 16],
    [x + 188, sole, 16],
    [x + 190, sole + 50, 40],
    [x + 96, height - 2, 50],
    [x + 46, height + 20, 20],
  ];
}

/** A closed helmet, its chin forward, with the edge of its visor. */
function helmet([x, height]: Spot, sheet: Sheet): readonly Shape[] {
  return [
    outline(
      [
        [x - 118, height - 122, 40],
        [x - 150, height - 20, 60],
        [x - 140, height + 92, 60],
        [x - 60, height + 152, 60],
        [x + 60, height + 150, 60],
        [x + 132, height + 76, 50],
        [x + 142, height - 30, 30],
        [x + 158, height - 100, 40],
        [x + 96, height - 140, 40],
        [x - 30, height - 132, 40],
      ],
      sheet,
      false,
      'load',
    ),
    outline(
      [
        [x + 134, height + 58, 8],
        [x + 30, height + 62, 30],
        [x + 22, height - 34, 34],
        [x + 142, height - 42, 8],
      ],
      sheet,
      false,
      'load',
    ),
  ];
}
