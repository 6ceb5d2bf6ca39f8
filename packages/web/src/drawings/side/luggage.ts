import { limb, line, outline, type Sheet } from './brush.ts';
import { type Build, steeringAt } from './build.ts';
import type { Landmarks } from './landmarks.ts';
import type { Spot } from './pen.ts';
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
  /** Top of what it stands on, where that is known. */
  readonly floorMm: number | null;
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
/** A hard case lower than this has its mass centre in its floor, as empty ones do. */
const FLAT = 200;

/**
 * Outlines of all items. A mass centre is taken as the middle of its box, so what stands on something is as high as its
 * centre lies above it, twice; what stands on nothing has the usual size of its kind. A hard case that would be flat has its
 * usual height, and what has its mass centre in what it stands on is packed in there and has no outline.
 */
export function parcelsOf(carried: readonly Carried[]): readonly Parcel[] {
  const parcels = new Map<string, Parcel>();
  const visit = (thing: Carried, depth: number): Parcel => {
    const done = parcels.get(thing.id);
    if (done !== undefined) return done;
    const under = carried.find((other) => other.id === thing.standsOn);
    const parcel = parcelOn(
      thing,
      under === undefined || depth > carried.length ? null : floorOf(under, depth),
    );
    parcels.set(thing.id, parcel);
    return parcel;
  };
  const floorOf = (under: Carried, depth: number): number | null =>
    under.kind === 'item' ? visit(under, depth + 1).topMm : under.kind === 'place' ? under.heightMm : null;
  const items = carried.filter((thing) => thing.kind === 'item');
  for (const item of items) visit(item, 0);
  for (const item of items) caseAround(item, parcels, carried);
  return items
    .filter((item) => parcels.has(item.id))
    .filter((item) => !isPackedIn(item, parcels.get(item.standsOn ?? ''), carried))
    .map((item) => parcels.get(item.id)!);
}

/** A hard case with its mass centre close over what it stands on is the case of that too: one outline for both. */
function caseAround(item: Carried, parcels: Map<string, Parcel>, carried: readonly Carried[]): void {
  const [own, under] = [parcels.get(item.id), parcels.get(item.standsOn ?? '')];
  if (own === undefined || under === undefined || !isHard(item.place) || isHard(under.place)) return;
  if (item.heightMm - under.topMm >= FLAT / 2 || standOnEachOther(item, under, carried)) return;
  const [, usual] = USUAL[item.place];
  const { bottomMm, floorMm } = under;
  parcels.set(item.id, { ...own, bottomMm, topMm: item.heightMm + usual / 2, floorMm });
  parcels.delete(under.id);
}

function isPackedIn(item: Carried, under: Parcel | undefined, carried: readonly Carried[]): boolean {
  if (under === undefined || !isHard(under.place) || standOnEachOther(item, under, carried)) return false;
  return item.heightMm > under.bottomMm && item.heightMm < under.topMm;
}

/** Where each is said to stand on the other, neither is in the other and both are drawn. */
function standOnEachOther(item: Carried, under: Parcel, carried: readonly Carried[]): boolean {
  return carried.some((thing) => thing.id === under.id && thing.standsOn === item.id);
}

function isHard(place: Carried['place']): boolean {
  return place === 'rear box' || place === 'side cases';
}

function parcelOn(thing: Carried, floorMm: number | null): Parcel {
  const [width, usual] = USUAL[thing.place];
  const above = floorMm === null ? 0 : 2 * (thing.heightMm - floorMm);
  const around = { id: thing.id, place: thing.place, xMm: thing.xMm, halfMm: width / 2, floorMm };
  if (floorMm !== null && above > 0 && above < FLAT && isHard(thing.place)) {
    return { ...around, bottomMm: floorMm, topMm: floorMm + usual };
  }
  const height = above < LEAST_HEIGHT || above > MOST_HEIGHT ? usual : above;
  return { ...around, bottomMm: thing.heightMm - height / 2, topMm: thing.heightMm + height / 2 };
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
  const hard = isHard(parcel.place);
  const inset = parcel.place === 'rear box' ? 22 : 0;
  const shapes: Shape[] = [
    outline(
      [
        [x - half, bottom, hard ? 40 : round],
        [x - half + inset, top, round],
        [x + half - inset, top, round],
        [x + half, bottom, hard ? 40 : round],
      ],
      sheet,
      false,
      'load',
    ),
  ];
  if (hard) {
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

/** Thin stays from what hangs in the air to what holds it: the thing below it, the tail and the arm, or the cowl. */
export function stayShapes(
  parcels: readonly Parcel[],
  build: Build,
  { tail }: Landmarks,
  sheet: Sheet,
): readonly Shape[] {
  const bar = (from: Spot, to: Spot): Shape => limb([from, to], 14, sheet, false);
  const [headX] = steeringAt(build, build.seat.heightMm + 120);
  return parcels.flatMap(({ xMm, halfMm, bottomMm, topMm, floorMm, place }) => {
    const middle = (bottomMm + topMm) / 2;
    if (floorMm !== null && bottomMm > floorMm + 10) {
      return [-0.6, 0.6].map((part) =>
        bar([xMm + part * halfMm, bottomMm + 10], [xMm + part * halfMm, floorMm]),
      );
    }
    if (place !== 'other' || floorMm !== null) return [];
    if (xMm + halfMm < -build.rearRadiusMm) {
      return [
        bar([xMm, middle], [build.pivot.xMm, build.pivot.heightMm]),
        bar([xMm, middle], [tail[0] + 40, tail[1] - 100]),
      ];
    }
    return xMm - halfMm > headX + 160 ? [bar([xMm, middle], [headX + 100, build.seat.heightMm + 120])] : [];
  });
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
