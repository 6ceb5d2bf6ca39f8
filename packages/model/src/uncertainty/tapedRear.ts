import type { HardPointsSI, PartName } from '../rear/hardPoints.ts';
import type { TapedPoints } from '../rear/pointsFromTape.ts';
import type { Move, UncertainInput } from './inputs.ts';

/** A taped length as an input: where it stands in the job, and its standard deviation [m]. */
export interface TapedInput {
  readonly name: string;
  readonly deviation: number;
}

/**
 * The doubt of a rear whose hard points were taped: each length an input of its own, that moves every point as the points
 * follow from it. So what two points owe to one length stays together.
 * taped  in the order in which `pointsFromTape` took them. The damper's own lengths are inputs beside these.
 */
export function tapedInputs(taped: readonly TapedInput[], { moves }: TapedPoints): readonly UncertainInput[] {
  if (taped.length !== moves.length) {
    throw new RangeError(`tapedInputs: ${taped.length} names for ${moves.length} lengths; one for each`);
  }
  return taped.map(({ name, deviation }, i) => ({
    name,
    deviation,
    moves: Object.entries(moves[i]!).flatMap(([part, { x, height }]): Move[] => {
      const figures = figuresOfPart[part as Exclude<PartName, 'axle'>];
      return [
        { parameter: figures.x, by: x },
        { parameter: figures.height, by: height },
      ];
    }),
  }));
}

/** The two figures of a machine that say where a part stands, by their names in `Parameters`. */
export const figuresOfPart: Readonly<
  Record<Exclude<PartName, 'axle'>, { readonly x: string; readonly height: string }>
> = {
  pivot: { x: 'rear.axlePath.pivotX', height: 'rear.axlePath.pivotHeight' },
  'arm eye': at('armEye'),
  'frame eye': at('frameEye'),
  'rocker pivot': at('rocker.pivot'),
  'link pin': at('rocker.pin'),
  'link end': at('linkEnd'),
  'rocker eye': at('rockerEye'),
  'far eye': at('farEye'),
};

function at(place: string): { readonly x: string; readonly height: string } {
  return { x: `rear.kinematics.${place}.x`, height: `rear.kinematics.${place}.height` };
}

/** The parts of a rear of this kind whose places are figures: all but the axle, which is where x counts from. */
export function partsOf(kind: HardPointsSI['kind']): readonly Exclude<PartName, 'axle'>[] {
  return kind === 'direct'
    ? ['pivot', 'arm eye', 'frame eye']
    : ['pivot', 'rocker pivot', 'link pin', 'link end', 'rocker eye', 'far eye'];
}
