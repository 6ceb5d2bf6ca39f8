import { type Box, holds, type Point } from '../box.ts';
import { centredBaseline, TEXT_FIGURE, TEXT_MIN, type TextMark, textWidth } from '../lettering.ts';
import type { DrawingTable } from '../table.ts';
import { type AxleMarks, axleMarks } from './axleMarks.ts';
import { type Build, buildOf, type Guess } from './build.ts';
import { emptyShapes } from './emptyMachine.ts';
import { fit, type Solid } from './fit.ts';
import { carrierShapes, type Parcel, parcelShapes, parcelsOf } from './luggage.ts';
import {
  bodyShapes,
  chassisShapes,
  isGuess,
  type Landmarks,
  landmarksOf,
  type Sheet,
  shockShapes,
} from './machineShapes.ts';
import {
  type Figure,
  figureExtent,
  passengerFigure,
  personShapes,
  riderFigure,
  seatUnder,
} from './people.ts';
import type { Shape } from './shapes.ts';
import type { BodyPoint, Carried, MachineFigures, SideViewInput } from './sideViewInput.ts';
import { type Frame, frontAxle, onDrawing, rearAxle, standing } from './standing.ts';
import { type TagMark, tagMarks, tagSizeOf } from './tagMarks.ts';
import { dotArea, slotsOf } from './tags.ts';
import { guardShape, type WheelMark, wheelShapes } from './wheelShapes.ts';

/** The side view, ready to paint: CSS px, origin top left. */
export interface SideViewMarks {
  readonly width: number;
  readonly height: number;
  readonly pxPerMm: number;
  readonly groundY: number;
  readonly rearWheel: WheelMark;
  readonly frontWheel: WheelMark;
  /** Painted in this order. */
  readonly shapes: readonly Shape[];
  readonly massCentre: Point | null;
  readonly dots: readonly DotMark[];
  readonly tags: readonly TagMark[];
  /** Things without a tag, for want of room: the page lists them. */
  readonly untagged: readonly string[];
  /** A place the size of a tag, top right, that is kept free for the page's own key. */
  readonly keyBox: Box | null;
  readonly axles: AxleMarks | null;
  readonly dimension: DimensionMark | null;
  /** Parts that are dashed because their figure is not known. */
  readonly guesses: readonly Guess[];
  /** The sentence of an empty picture. */
  readonly sentence: readonly TextMark[];
}

export interface DotMark {
  readonly id: string;
  readonly at: Point;
  readonly selected: boolean;
  readonly overLimit: boolean;
}

/** How far the selected thing is from the rear axle. */
export interface DimensionMark {
  readonly from: Point;
  readonly to: Point;
  readonly text: TextMark;
}

export interface SideViewSize {
  readonly width: number;
  readonly height: number;
}

/** Under the ground: the dimension, the axle loads, their limits, what those count. */
const BELOW_GROUND = 100;
const AXLE_WORDS_FROM = 20;
const DIMENSION_AT = 16;
/** Below this width nothing has a tag: the page lists the things instead. */
const TAGS_FROM_WIDTH = 560;
/** A helmet's height, for scale. */
const HEIGHT_MM = 1560;

export const EMPTY_SENTENCE = 'Wheelbase and two wheel weights make this picture true';

/** The machine to scale from its own figures, in its stance, with what is on it. */
export function sideView(input: SideViewInput, size: SideViewSize): SideViewMarks {
  return input.machine === null ? emptyView(size) : machineView(input.machine, input, size);
}

/** The picture as a table: what is on the machine, then what stands on the ground. */
export function sideViewTable(input: SideViewInput): DrawingTable {
  if (input.machine === null) return { caption: EMPTY_SENTENCE, headings: ['Needed'], rows: [] };
  const { guesses } = buildOf(input.machine);
  const dashed = guesses.length === 0 ? '' : `; not known and drawn dashed: ${guesses.join(', ')}`;
  const { axles } = input;
  const ends =
    axles === null
      ? []
      : (
          [
            ['Rear wheel', axles.rear],
            ['Front wheel', axles.front],
            ['Both', axles.whole],
          ] as const
        ).map(([name, load]) => [name, `${load.mass} ${load.plusMinus}`.trim(), '–', load.limit]);
  return {
    caption: `On the machine${dashed}`,
    headings: ['What', 'Mass', 'From the rear axle', 'Limit'],
    rows: [
      ...input.carried.map((thing) => [
        thing.label,
        thing.mass,
        thing.offset,
        thing.overLimit ? 'over its limit' : '–',
      ]),
      ...ends,
    ],
  };
}

/** A thing as it is read out: "Bed roll: 4 kg; from the rear axle 330 behind; over its limit." */
export function sideViewSentence(thing: Carried): string {
  const said = [thing.mass, `from the rear axle ${thing.offset}`];
  if (thing.overLimit) said.push('over its limit');
  return `${thing.label}: ${said.join('; ')}.`;
}

interface Rider {
  readonly id: string;
  readonly figure: Figure;
  readonly isRider: boolean;
}

interface Scenery {
  readonly build: Build;
  readonly rear: BodyPoint;
  readonly front: BodyPoint;
  readonly landmarks: Landmarks;
  readonly people: readonly Rider[];
  readonly parcels: readonly Parcel[];
}

function machineView(machine: MachineFigures, input: SideViewInput, size: SideViewSize): SideViewMarks {
  const { carried, stance } = input;
  const { width, height } = size;
  const groundY = height - BELOW_GROUND;
  const scenery = sceneryOf(machine, input);
  const tagged = width < TAGS_FROM_WIDTH ? [] : carried;
  const tag = tagSizeOf(tagged);
  const keyBox = width < TAGS_FROM_WIDTH ? null : cornerBox(width, groundY, tag);
  const scene = {
    solids: solidsOf(scenery, input),
    dots: tagged.map((thing) => standing(thing, stance)),
    heightMm: HEIGHT_MM,
  };
  const { frame, slots } = fit(scene, width, groundY, tag, keyBox);
  const plot = (point: BodyPoint) => onDrawing(standing(point, stance), frame);
  const area = dotArea(width, groundY, tag);
  const seated = mostNeeded(tagged.filter((thing) => holds(area, plot(thing)))).slice(0, slots.length);
  const tags = tagMarks(
    seated.map((thing) => ({ thing, dot: plot(thing) })),
    slots,
  );
  const rearWheel = wheelAt(plot(scenery.rear), scenery.build.rearRadiusMm, frame);
  const frontWheel = wheelAt(plot(scenery.front), scenery.build.frontRadiusMm, frame);
  const selected = carried.find((thing) => thing.selected);
  return {
    width,
    height,
    pxPerMm: frame.pxPerMm,
    groundY,
    rearWheel,
    frontWheel,
    shapes: shapesOf(scenery, input, { plot, pxPerMm: frame.pxPerMm }, rearWheel, frontWheel),
    massCentre: input.massCentre === null ? null : plot(input.massCentre),
    dots: carried.map((thing) => ({
      id: thing.id,
      at: plot(thing),
      selected: thing.selected,
      overLimit: thing.overLimit,
    })),
    tags,
    untagged: carried.filter((thing) => !tags.some((mark) => mark.id === thing.id)).map((thing) => thing.id),
    keyBox,
    axles:
      input.axles === null
        ? null
        : axleMarks(input.axles, {
            rearX: rearWheel.axle.x,
            frontX: frontWheel.axle.x,
            groundY,
            topY: groundY + AXLE_WORDS_FROM,
            width,
          }),
    dimension:
      selected === undefined
        ? null
        : dimensionOf(selected.offset, rearWheel.axle.x, plot(selected).x, groundY + DIMENSION_AT, width),
    guesses: scenery.build.guesses,
    sentence: [],
  };
}

/** The selected thing first, then those over their limit: they keep their tags where not all have room. */
function mostNeeded(things: readonly Carried[]): readonly Carried[] {
  const need = (thing: Carried) => (thing.selected ? 0 : thing.overLimit ? 1 : 2);
  return things.toSorted((a, b) => need(a) - need(b));
}

function cornerBox(width: number, groundY: number, tag: { width: number; height: number }): Box {
  const rowY = Math.min(...slotsOf(width, groundY, tag).map(({ box }) => box.y));
  const row = slotsOf(width, groundY, tag).filter(({ box }) => box.y === rowY);
  return row.reduce((best, slot) => (slot.box.x > best.box.x ? slot : best)).box;
}

function sceneryOf(machine: MachineFigures, input: SideViewInput): Scenery {
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
      id: thing.id,
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
      build.rake,
    ),
    landmarks,
    people,
    parcels,
  };
}

/** What no tag may hide, over the ground. */
function solidsOf(scenery: Scenery, { stance }: SideViewInput): readonly Solid[] {
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
  const headX = build.wheelbaseMm - (seatMm - build.frontRadiusMm) * Math.tan(build.rake);
  return [
    { kind: 'round', centre: standing(scenery.rear, stance), radiusMm: build.rearRadiusMm + 10 },
    { kind: 'round', centre: standing(scenery.front, stance), radiusMm: build.frontRadiusMm + 40 },
    box(landmarks.tail[0] - 10, headX + 120, seatMm - 150, seatMm + 240),
    box(headX - 200, headX + 60, seatMm + 200, seatMm + 520),
    ...people.flatMap(({ figure }) => {
      const { back, front, top } = figureExtent(figure);
      return [
        box(back, front, figure.ankle[1] - 60, figure.hip[1] + 130),
        box(figure.hip[0] - 110, figure.head[0] + 150, figure.hip[1], top),
        box(figure.hip[0], figure.hand[0] + 50, figure.hand[1] - 60, figure.neck[1]),
      ];
    }),
    ...parcels
      .filter((parcel) => parcel.halfMm > 0)
      .map((parcel) =>
        box(parcel.xMm - parcel.halfMm, parcel.xMm + parcel.halfMm, parcel.bottomMm - 20, parcel.topMm),
      ),
  ];
}

function shapesOf(
  scenery: Scenery,
  input: SideViewInput,
  sheet: Sheet,
  rearWheel: WheelMark,
  frontWheel: WheelMark,
): readonly Shape[] {
  const { build, landmarks, people, parcels } = scenery;
  const inFront = new Set<Parcel['place']>(['tank bag', 'side cases']);
  const drawn = parcels.filter((parcel) => parcel.halfMm > 0);
  const shapesFor = (some: readonly Parcel[]) => some.flatMap((parcel) => parcelShapes(parcel, sheet));
  return [
    ...carrierShapes(input.carried, drawn, landmarks, sheet),
    ...wheelShapes(rearWheel, isGuess(build, 'rear tyre')),
    ...wheelShapes(frontWheel, isGuess(build, 'front tyre')),
    guardShape(frontWheel, sheet.pxPerMm, 0.5, -1.2),
    ...chassisShapes(build, scenery.rear, scenery.front, sheet),
    ...bodyShapes(build, landmarks, sheet),
    ...shapesFor(drawn.filter((parcel) => !inFront.has(parcel.place))),
    ...shapesFor(drawn.filter((parcel) => inFront.has(parcel.place))),
    ...people.flatMap(({ figure }) => personShapes(figure, sheet)),
    ...shockShapes(build, scenery.rear, { xMm: 0, heightMm: build.rearRadiusMm }, sheet),
  ];
}

function wheelAt(axle: Point, radiusMm: number, frame: Frame): WheelMark {
  return { axle, radius: radiusMm * frame.pxPerMm, loadedRadius: frame.groundY - axle.y };
}

/** The words stand in the middle of the line where they fit, else beyond the thing's end of it, else beyond the axle. */
function dimensionOf(words: string, axleX: number, thingX: number, y: number, width: number): DimensionMark {
  const room = textWidth(words, TEXT_MIN) + 12;
  const away = thingX < axleX ? -1 : 1;
  const beyond = thingX + away * 8;
  const text = (x: number, align: TextMark['align']): TextMark => ({
    text: words,
    x,
    y: centredBaseline(y, TEXT_MIN),
    size: TEXT_MIN,
    align,
    bold: false,
  });
  const outward = away < 0 ? 'end' : 'start';
  const inward = away < 0 ? 'start' : 'end';
  const fitsBeyond = away < 0 ? beyond > room : beyond + room < width;
  return {
    from: { x: axleX, y },
    to: { x: thingX, y },
    text:
      Math.abs(thingX - axleX) > room + 24
        ? text((axleX + thingX) / 2, 'middle')
        : fitsBeyond
          ? text(beyond, outward)
          : text(axleX - away * 12, inward),
  };
}

function emptyView(size: SideViewSize): SideViewMarks {
  const { width, height } = size;
  const groundY = height - BELOW_GROUND;
  const empty = emptyShapes(width, groundY);
  const lines =
    textWidth(EMPTY_SENTENCE, TEXT_FIGURE) < width - 32
      ? [EMPTY_SENTENCE]
      : ['Wheelbase and two wheel weights', 'make this picture true'];
  return {
    width,
    height,
    groundY,
    ...empty,
    massCentre: null,
    dots: [],
    tags: [],
    untagged: [],
    keyBox: null,
    axles: null,
    dimension: null,
    guesses: [],
    sentence: lines.map((text, index) => ({
      text,
      x: width / 2,
      y: groundY + 36 + index * 24,
      size: TEXT_FIGURE,
      align: 'middle',
      bold: true,
    })),
  };
}
