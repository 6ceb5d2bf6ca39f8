import type { ListedLength } from '@sagwright/workbench/result/tapeList';
import type { Point } from '../box.ts';
import { type PartPlace, type PartsMarks, partsPlot } from './partsPlot.ts';

type Length = ListedLength['wanted'];
export type SketchKind = keyof typeof sketches;

/** A rear of one kind with one of its lengths shown, ready to paint: CSS px, origin top left. */
export interface TapeSketchMarks extends Pick<PartsMarks, 'height' | 'points'> {
  readonly bars: PartsMarks['stands'][number]['bars'];
  /** The length, with a stroke across each of its ends. */
  readonly length: string;
  /** The axle's level, where a height is counted from it; else nothing. */
  readonly level: string;
}

/** Invented, and only to show what is meant: forward of the rear axle, and above the ground [mm]. */
const sketches = {
  direct: [
    place('axle', 0, 318),
    place('pivot', 520, 365),
    place('arm eye', 95, 385),
    place('frame eye', 210, 640),
  ],
  linkage: [
    place('axle', 0, 318),
    place('pivot', 540, 385),
    place('rocker pivot', 500, 235),
    place('link pin', 375, 200),
    place('link end', 325, 400),
    place('rocker eye', 300, 150),
    place('far eye', 430, 560),
  ],
} as const satisfies Readonly<Record<string, readonly PartPlace[]>>;

/** Parts bolted to the frame. */
const still = new Set(['pivot', 'frame eye', 'rocker pivot', 'far eye']);

/** Half of the stroke across an end [px]. */
const END = 9;

export function tapeSketch(kind: SketchKind, length: Length, width: number): TapeSketchMarks {
  const parts: readonly PartPlace[] = sketches[kind];
  // The same with the wheel a hair higher tells what moves.
  const higher = parts.map((each) => (still.has(each.part) ? each : { ...each, height: each.height + 0.1 }));
  const { height, stands, points } = partsPlot(
    {
      stands: [
        { id: 'sketch', parts },
        { id: 'higher', parts: higher },
      ],
    },
    width,
  );
  const at = (part: PartPlace['part']): Point => points.find((each) => each.part === part)!;
  const [from, to] =
    length.kind === 'between'
      ? [at(length.from), at(length.to)]
      : [{ x: at(length.of).x, y: at('axle').y }, at(length.of)];
  return {
    height,
    bars: stands[0]!.bars,
    points,
    length: measured(from, to),
    level: length.kind === 'between' ? '' : `M${spot(at('axle'))}L${spot(from)}`,
  };
}

function measured(from: Point, to: Point): string {
  const [x, y] = [to.x - from.x, to.y - from.y];
  const long = Math.hypot(x, y) || 1;
  const across = ({ x: px, y: py }: Point): string => {
    const [dx, dy] = [(-END * y) / long, (END * x) / long];
    return `M${spot({ x: px - dx, y: py - dy })}L${spot({ x: px + dx, y: py + dy })}`;
  };
  return `M${spot(from)}L${spot(to)}${across(from)}${across(to)}`;
}

function place(part: PartPlace['part'], x: number, height: number): PartPlace {
  return { part, x, height };
}

function spot({ x, y }: Point): string {
  return `${Math.round(10 * x) / 10} ${Math.round(10 * y) / 10}`;
}
