import { clamp } from '../box.ts';

import { limb, line, outline, type Sheet } from './brush.ts';
import type { Landmarks } from './landmarks.ts';
import type { Shape } from './shapes.ts';
import type { Carried } from './sideViewInput.ts';

/** A thing's outline in the body: an upright box about its mass centre, in mm. */
export interface Parcel {
  readonly id: string;
  readonly place: Carried['place'];
  readonly xMm: number;
  readonly bottomMm: number;
  readonly topMm: number;
  readonly halfMm: number;
}

/** Usual sizes, for the eye only (common practice, no source): width and height in mm. */
const USUAL: Readonly<Record<Carried['place'], readonly [number, number]>> = {
  'rider seat': [300, 220],
  'passenger seat': [320, 240],
  'rear box': [430, 300],
  'side cases': [500, 300],
  rack: [360, 190],
  'tank bag': [250, 150],
  tank: [240, 120],
  other: [300, 130],
};
const LEAST_HEIGHT = 70;
const MOST_HEIGHT = 460;

/**
 * Outlines of all items. A mass centre is taken as the middle of its box, so what stands on something is as high as its
 * centre lies above it, twice; what stands on nothing has the usual size of its kind.
 */
export function parcelsOf(carried: readonly Carried[]): readonly Parcel[] {
  const items = carried.filter((thing) => thing.kind === 'item');
  const parcels = new Map<string, Parcel>();
  const visit = (thing: Carried, depth: number): Parcel => {
    const done = parcels.get(thing.id);
    if (done !== undefined) return done;
    const under = carried.find((other) => other.id === thing.standsOn);
    const floor =
      under === undefined || depth > carried.length
        ? null
        : under.kind === 'item'
          ? visit(under, depth + 1).topMm
          : under.kind === 'place'
            ? under.heightMm
            : null;
    const parcel = parcelOn(thing, floor);
    parcels.set(thing.id, parcel);
    return parcel;
  };
  for (const item of items) visit(item, 0);
  return [...parcels.values()];
}

function parcelOn(thing: Carried, floorMm: number | null): Parcel {
  const [width, usual] = USUAL[thing.place];
  const height =
    floorMm === null || thing.heightMm - floorMm < LEAST_HEIGHT / 2
      ? usual
      : clamp(2 * (thing.heightMm - floorMm), LEAST_HEIGHT, MOST_HEIGHT);
  return {
    id: thing.id,
    place: thing.place,
    xMm: thing.xMm,
    bottomMm: thing.heightMm - height / 2,
    topMm: thing.heightMm + height / 2,
    halfMm: width / 2,
  };
}

export function parcelShapes(parcel: Parcel, sheet: Sheet): readonly Shape[] {
  const { xMm: x, bottomMm: bottom, topMm: top, halfMm: half } = parcel;
  const round = Math.min(60, (top - bottom) / 2);
  if (parcel.place === 'tank bag') {
    return [
      outline(
        [
          [x - half, bottom, 20],
          [x - half * 0.55, top, 40],
          [x + half * 0.6, top, 30],
          [x + half, bottom, 20],
        ],
        sheet,
        false,
        'load',
      ),
    ];
  }
  const isHard = parcel.place === 'rear box' || parcel.place === 'side cases';
  const inset = parcel.place === 'rear box' ? 22 : 0;
  const shapes: Shape[] = [
    outline(
      [
        [x - half, bottom, isHard ? 40 : round],
        [x - half + inset, top, round],
        [x + half - inset, top, round],
        [x + half, bottom, isHard ? 40 : round],
      ],
      sheet,
      false,
      'load',
    ),
  ];
  if (isHard) {
    const seam = bottom + (top - bottom) * 0.55;
    shapes.push(
      line(
        [
          [x - half + inset / 2, seam],
          [x + half - inset / 2, seam],
        ],
        sheet,
        'load detail',
      ),
    );
  }
  return shapes;
}

/** A carrier under what stands at the back, with two stays to the machine; at the height of its own place where it has one. */
export function carrierShapes(
  carried: readonly Carried[],
  parcels: readonly Parcel[],
  marks: Landmarks,
  sheet: Sheet,
): readonly Shape[] {
  const behind = parcels.filter((parcel) => parcel.place === 'rear box' || parcel.place === 'rack');
  const places = carried.filter((thing) => thing.kind === 'place' && thing.place === 'rack');
  const tops = [...places.map((place) => place.heightMm), ...behind.map((parcel) => parcel.bottomMm)];
  const xs = [...places, ...behind].map((part) => part.xMm);
  if (tops.length === 0) return [];
  const top = Math.min(...tops) - 10;
  const back = Math.min(...xs) - 190;
  const front = Math.max(...xs) + 190;
  const stay = Math.max(front + 60, marks.tail[0] + 170);
  return [
    limb(
      [
        [front - 120, top],
        [stay, marks.tail[1] - 70],
      ],
      14,
      sheet,
      false,
    ),
    limb(
      [
        [back + 120, top],
        [marks.tail[0] + 60, marks.tail[1] - 80],
      ],
      14,
      sheet,
      false,
    ),
    limb(
      [
        [back, top],
        [front, top],
      ],
      20,
      sheet,
      false,
    ),
  ];
}
