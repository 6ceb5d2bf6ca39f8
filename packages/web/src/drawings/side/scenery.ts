import { bodyShapes } from './bodywork.ts';
import type { Sheet } from './brush.ts';
import { type Build, buildOf, isGuess, steeringAt } from './build.ts';
import { chassisShapes } from './chassis.ts';
import { engineShapes } from './engine.ts';
import type { Solid } from './fit.ts';
import { type Landmarks, landmarksOf } from './landmarks.ts';
import { carrierShapes, type Parcel, parcelShapes, parcelsOf, stayShapes } from './luggage.ts';
import { type Figure, figureExtent, passengerFigure, riderFigure, seatUnder } from './people.ts';
import { footRest, personShapes } from './personShapes.ts';
import type { Layer, Shape } from './shapes.ts';
import { eyesOf, shockShapes } from './shock.ts';
import type { BodyPoint, Carried, MachineFigures, SideViewInput } from './sideViewInput.ts';
import { bodyStand, type Frame, frontAxle, inBody, rearAxle, standing } from './standing.ts';
import { AXLE, guardShape, type WheelMark, wheelLayer } from './wheelShapes.ts';

interface Seated {
  readonly figure: Figure;
  readonly isRider: boolean;
}

/** Everything that stands on the drawing, in body coordinates. */
export interface Scenery {
  readonly build: Build;
  readonly rear: BodyPoint;
  readonly front: BodyPoint;
  readonly landmarks: Landmarks;
  readonly people: readonly Seated[];
  readonly parcels: readonly Parcel[];
}

export function sceneryOf(machine: MachineFigures, input: SideViewInput): Scenery {
  const { carried, stance } = input;
  const person = (place: Carried['place']) =>
    carried.find((thing) => thing.kind === 'person' && thing.place === place) ?? null;
  const rider = person('rider seat');
  const passenger = person('passenger seat');
  const known = buildOf(machine);
  const build =
    machine.seat === null && rider !== null
      ? { ...known, seat: { xMm: rider.xMm - 60, heightMm: seatUnder(rider) } }
      : known;
  const parcels = parcelsOf(carried);
  const landmarks = landmarksOf(
    build,
    passenger === null ? null : seatUnder(passenger),
    passenger === null ? null : passenger.xMm - 250,
  );
  const people = carried
    .filter((thing) => thing.kind === 'person')
    .map((thing) => ({
      isRider: thing === rider,
      figure: thing === rider ? riderFigure(thing, landmarks) : passengerFigure(thing),
    }))
    .toSorted((a, b) => Number(a.isRider) - Number(b.isRider));
  return {
    build,
    rear: rearAxle(build.rearRadiusMm, stance.rearTravelMm - machine.rear.referenceTravelMm, machine.pivot),
    front: frontAxle(
      build.wheelbaseMm,
      build.frontRadiusMm,
      stance.frontTravelMm - machine.front.referenceTravelMm,
      build.isFork ? build.rake : 0,
    ),
    landmarks,
    people,
    parcels,
  };
}

/** What no tag may hide, over the ground. */
export function solidsOf(scenery: Scenery, { stance }: SideViewInput): readonly Solid[] {
  const { build, landmarks, people, parcels } = scenery;
  const box = (back: number, front: number, bottom: number, top: number): Solid => ({
    kind: 'box',
    corners: [
      { xMm: back, heightMm: bottom },
      { xMm: front, heightMm: bottom },
      { xMm: back, heightMm: top },
      { xMm: front, heightMm: top },
    ].map((corner) => standing(corner, stance)),
  });
  const seatMm = build.seat.heightMm;
  const [headX] = steeringAt(build, seatMm + 120);
  const { tail, grip } = landmarks;
  return [
    { kind: 'round', centre: standing(scenery.rear, stance), radiusMm: build.tyresMm.rear + 10 },
    { kind: 'round', centre: standing(scenery.front, stance), radiusMm: build.tyresMm.front + 40 },
    box(-build.rearRadiusMm - 65, 0, build.rearRadiusMm, 2 * build.rearRadiusMm),
    box(tail[0] - 80, headX, seatMm - 150, seatMm + 215),
    box(headX - 110, headX + 240, seatMm - 150, seatMm + 360),
    box(headX - 100, headX + 60, seatMm + 340, seatMm + 632),
    box(grip[0] - 60, headX, seatMm, grip[1] + 30),
    ...people.flatMap(({ figure }) => {
      const { back, front, top } = figureExtent(figure);
      return [
        box(back, front, figure.ankle[1] - 60, figure.hip[1] + 130),
        box(figure.hip[0] - 110, figure.head[0] + 150, figure.hip[1], top),
        box(figure.hip[0], figure.hand[0] + 50, figure.hand[1] - 60, figure.neck[1]),
      ];
    }),
    ...parcels.map((parcel) =>
      box(parcel.xMm - parcel.halfMm, parcel.xMm + parcel.halfMm, parcel.bottomMm - 20, parcel.topMm),
    ),
  ];
}

/** All that is painted, in its order: the body as one that sinks and nods, each wheel on the ground. */
export function sceneryLayers(
  scenery: Scenery,
  input: SideViewInput,
  frame: Frame,
  rearWheel: WheelMark,
  frontWheel: WheelMark,
): readonly Layer[] {
  const { build, landmarks, people, parcels } = scenery;
  const { pxPerMm } = frame;
  const sheet: Sheet = { plot: (point) => inBody(point, pxPerMm), pxPerMm };
  const stand = bodyStand(input.stance, frame);
  const inBodyAre = (...shapes: readonly Shape[]): Layer => ({ stand, shapes });
  const inFront = new Set<Parcel['place']>(['tank bag', 'side cases']);
  const shapesFor = (some: readonly Parcel[]) => some.flatMap((parcel) => parcelShapes(parcel, sheet));
  const hasFuel = input.carried.some((thing) => thing.kind === 'fuel');
  return [
    inBodyAre(
      ...carrierShapes(input.carried, parcels, landmarks, sheet),
      ...stayShapes(parcels, build, landmarks, sheet),
    ),
    wheelLayer(rearWheel, isGuess(build, 'rear tyre')),
    inBodyAre(rearGuard(build, sheet)),
    wheelLayer(frontWheel, isGuess(build, 'front tyre'), frontGuard(frontWheel, pxPerMm)),
    inBodyAre(
      ...engineShapes(build, landmarks, sheet),
      ...chassisShapes(build, scenery.rear, scenery.front, sheet),
      ...bodyShapes(build, landmarks, hasFuel, sheet),
      ...shapesFor(parcels.filter((parcel) => !inFront.has(parcel.place))),
      ...shapesFor(parcels.filter((parcel) => inFront.has(parcel.place))),
      ...people.flatMap(({ figure, isRider }) => [
        ...(isRider ? [] : [footRest(figure, sheet)]),
        ...personShapes(figure, sheet),
      ]),
      ...shockShapes(eyesOf(build, scenery.rear, input.stance.shockStrokeMm), sheet),
    ),
  ];
}

function rearGuard({ rearRadiusMm }: Build, { plot, pxPerMm }: Sheet): Shape {
  const middle = plot({ xMm: 0, heightMm: rearRadiusMm + 30 });
  return guardShape(middle, pxPerMm * (rearRadiusMm + 4), pxPerMm * (rearRadiusMm + 62), -1.5, 0.5);
}

function frontGuard({ radius }: WheelMark, pxPerMm: number): Shape {
  return guardShape(AXLE, radius - 14 * pxPerMm, radius + 34 * pxPerMm, -1.35, 0.62);
}
