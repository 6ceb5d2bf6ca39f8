import { type Box, holds, type Point } from '../box.ts';
import { TEXT_FIGURE, type TextMark, textWidth } from '../lettering.ts';
import type { DrawingTable } from '../table.ts';
import { type AxleMarks, axleMarks, belowGround } from './axleMarks.ts';
import { type Guess, unknownOf } from './build.ts';
import { type DimensionMark, dimensionOf } from './dimension.ts';
import { emptyLayers } from './emptyMachine.ts';
import { fit } from './fit.ts';
import { sceneryLayers, sceneryOf, solidsOf } from './scenery.ts';
import type { Layer } from './shapes.ts';
import type { BodyPoint, Carried, MachineFigures, SideViewInput } from './sideViewInput.ts';
import { type Frame, onDrawing, standing } from './standing.ts';
import { type TagMark, tagMarks, tagSizeOf } from './tagMarks.ts';
import { dotArea, type Side, slotsOf, type TagSize } from './tags.ts';
import type { WheelMark } from './wheelShapes.ts';

/** The side view, ready to paint: CSS px, origin top left. */
export interface SideViewMarks {
  readonly width: number;
  readonly height: number;
  readonly pxPerMm: number;
  readonly groundY: number;
  readonly rearWheel: WheelMark;
  readonly frontWheel: WheelMark;
  /** Painted in this order. */
  readonly layers: readonly Layer[];
  readonly massCentre: Point | null;
  readonly dots: readonly DotMark[];
  readonly tags: readonly TagMark[];
  /** Things without a tag, for want of room: the page lists them. */
  readonly untagged: readonly string[];
  /** A place the size of a tag, top right, that is kept free for the page's own key. */
  readonly keyBox: Box | null;
  readonly axles: AxleMarks | null;
  readonly dimension: DimensionMark | null;
  /** Parts that are dashed because their figure is not known, or assumed. */
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

export interface SideViewSize {
  readonly width: number;
  readonly height: number;
}

const DIMENSION_AT = 24;
/** Below this width nothing has a tag: the page lists the things instead. */
const TAGS_FROM_WIDTH = 560;
/** A helmet's height, for scale. */
const HEIGHT_MM = 1560;

const DRAWN_TO =
  'To scale: wheels, wheelbase, fork, swingarm, seat point and mass centres; the rest is drawn to no figure.';

const SHOCK_DRAWN_TO = 'The shock has its true length; where its eyes are is drawn to no figure.';

export const EMPTY_SENTENCE = 'Wheelbase and two wheel weights make this picture true';

/** The machine to scale from its own figures, in its stance, with what is on it. */
export function sideView(input: SideViewInput, size: SideViewSize): SideViewMarks {
  return input.machine === null ? emptyView(size) : machineView(input.machine, input, size);
}

/** The picture as a table: what is on the machine, then what stands on the ground. */
export function sideViewTable(input: SideViewInput): DrawingTable {
  if (input.machine === null) return { caption: EMPTY_SENTENCE, headings: ['Needed'], rows: [] };
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
    caption: [
      'On the machine.',
      DRAWN_TO,
      ...(input.machine.rear.shockLengthMm === null ? [] : [SHOCK_DRAWN_TO]),
      ...dashedSentences(input.machine),
    ].join(' '),
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

/** What is dashed, and why, as it is read out. */
export function dashedSentences(machine: MachineFigures): readonly string[] {
  const { assumed } = machine;
  const unknown = unknownOf(machine);
  return [
    ...(assumed.length === 0 ? [] : [`Given by nobody, so assumed and drawn dashed: ${assumed.join(', ')}.`]),
    ...(unknown.length === 0 ? [] : [`Not known and drawn dashed: ${unknown.join(', ')}.`]),
  ];
}

/** A thing as it is read out: "Bed roll: 4 kg; from the rear axle 330 behind; over its limit." */
export function sideViewSentence(thing: Carried): string {
  const said = [thing.mass, `from the rear axle ${thing.offset}`];
  if (thing.overLimit) said.push('over its limit');
  return `${thing.label}: ${said.join('; ')}.`;
}

function machineView(machine: MachineFigures, input: SideViewInput, size: SideViewSize): SideViewMarks {
  const { carried, stance } = input;
  const { width, height } = size;
  const groundY = height - belowGround(input.axles, width);
  const scenery = sceneryOf(machine, input);
  const tagged = width < TAGS_FROM_WIDTH ? [] : carried;
  const tag = tagSizeOf(tagged, width);
  const keyBox = width < TAGS_FROM_WIDTH ? null : cornerBox(width, groundY, tag);
  const middleMm = (standing(scenery.rear, stance).xMm + standing(scenery.front, stance).xMm) / 2;
  const scene = {
    solids: solidsOf(scenery, input),
    points: carried.map((thing) => standing(thing, stance)),
    middleMm,
    dots: tagged.map((thing) => ({ ...standing(thing, stance), side: sideOf(thing, middleMm) })),
    heightMm: HEIGHT_MM,
  };
  const { frame, slots } = fit(scene, width, groundY, tag, keyBox);
  const plot = (point: BodyPoint) => onDrawing(standing(point, stance), frame);
  const area = dotArea(width, groundY, tag);
  const seated = mostNeeded(tagged.filter((thing) => holds(area, plot(thing)))).slice(0, slots.length);
  const tags = tagMarks(
    seated.map((thing) => ({ thing, dot: plot(thing) })),
    carried.filter((thing) => !seated.includes(thing)).map(plot),
    slots,
  );
  const rearWheel = wheelAt(plot(scenery.rear), scenery.build.tyresMm.rear, frame);
  const frontWheel = wheelAt(plot(scenery.front), scenery.build.tyresMm.front, frame);
  const selected = carried.find((thing) => thing.selected);
  return {
    width,
    height,
    pxPerMm: frame.pxPerMm,
    groundY,
    rearWheel,
    frontWheel,
    layers: sceneryLayers(scenery, input, frame, rearWheel, frontWheel),
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

/** From where a thing is best pointed at: people from above, all else from the nearer end. */
function sideOf(thing: Carried, middleMm: number): Side {
  return thing.kind === 'person' ? 'top' : thing.xMm < middleMm ? 'left' : 'right';
}

/** The selected thing first, then those over their limit: they keep their tags where not all have room. */
function mostNeeded(things: readonly Carried[]): readonly Carried[] {
  const need = (thing: Carried) => (thing.selected ? 0 : thing.overLimit ? 1 : 2);
  return things.toSorted((a, b) => need(a) - need(b));
}

/** The last place of the top row. */
function cornerBox(width: number, groundY: number, tag: TagSize): Box {
  const boxes = slotsOf(width, groundY, tag).map(({ box }) => box);
  return boxes.reduce((best, box) => (box.y < best.y || (box.y === best.y && box.x > best.x) ? box : best));
}

function wheelAt(axle: Point, radiusMm: number, frame: Frame): WheelMark {
  return { axle, radius: radiusMm * frame.pxPerMm, loadedRadius: frame.groundY - axle.y };
}

function emptyView(size: SideViewSize): SideViewMarks {
  const { width, height } = size;
  const groundY = height - belowGround(null, width);
  const empty = emptyLayers(width, groundY);
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
