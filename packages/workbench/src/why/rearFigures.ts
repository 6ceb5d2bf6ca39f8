import { squatAtRest } from '@sagwright/model/attitude/squatAtRest';
import type { FinalDriveSI, Squat } from '@sagwright/model/rear/finalDrive';
import { armAngle } from '@sagwright/model/rear/swingarm';
import { damperAt, wheelAt } from '@sagwright/model/rear/wheelMotion';
import { PITCH, REAR_TRAVEL } from '@sagwright/model/statics/gradient';
import type { MachineSI } from '@sagwright/model/statics/machine';
import type { Prepared } from '@sagwright/model/statics/prepared';
import type { JobPlan } from '../path.ts';
import type { End } from '../result/inView.ts';
import type { FigureName } from './figures.ts';
import type { Opened } from './question.ts';
import { readAt, type Standing, summed, travelOf } from './standing.ts';

/** Figures of how a wheel moves its shock, and of what the drive does there. */
export type RearFigure = (typeof rearFigures)[number];

const rearFigures = ['motion-ratio', 'leverage', 'arm-angle', 'squat-angle', 'squat-ratio'] as const;

export function isRearFigure(figure: FigureName): figure is RearFigure {
  return rearFigures.some((each) => each === figure);
}

/** Opens one of them up where a machine stands; all but the ratios are of the rear. */
export function rearFigure(planned: JobPlan, figure: RearFigure, end: End, standing: Standing): Opened {
  const ratio = (): Exclude<Opened, string> =>
    readAt(standing, ({ machine }, state) => motionRatioAt(machine, end, travelOf(end, state)));
  if (figure === 'motion-ratio') return ratio();
  if (figure === 'leverage') return inverted(ratio());
  if (end === 'front') return 'rear only';
  if (standing.prepared.machine.rear.axlePath.kind !== 'circle') return 'pivot not known';
  if (figure === 'arm-angle') {
    return readAt(standing, ({ machine }, state) => armAngleAt(machine, state[REAR_TRAVEL]!));
  }
  return squatFigure(planned, figure, standing);
}

/** Stroke of the shock for each metre of wheel, at a wheel travel [m]. */
export function motionRatioAt(machine: MachineSI, end: End, travel: number): number {
  const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  damperAt(machine[end], machine.geometry.rake, travel, at);
  return at.motionRatio;
}

/** How steeply the arm falls from its pivot to the axle, against the body's level [rad]; the axle must run about a pivot. */
export function armAngleAt({ rear }: MachineSI, travel: number): number {
  if (rear.axlePath.kind !== 'circle') {
    throw new RangeError(`armAngleAt: an axle path that is ${rear.axlePath.kind}; it must be a circle`);
  }
  const axle = { x: 0, height: 0, axleSlope: 0, axleBend: 0, stroke: 0, motionRatio: 0, ratioSlope: 0 };
  wheelAt(rear, 0, 0, travel, axle);
  return armAngle(axle, rear.axlePath.pivotX, rear.axlePath.pivotHeight);
}

/** 1/v of a figure that is not 0: ∂(1/v) = −∂v/v². */
export function inverted({
  value: { value, plusMinus },
  contributions,
}: Exclude<Opened, string>): Exclude<Opened, string> {
  const by = 1 / value ** 2;
  return {
    value: { value: 1 / value, plusMinus: plusMinus === null ? null : plusMinus * by },
    contributions: contributions.map(({ input, slope, halfWidth, share }) => ({
      input,
      slope: -slope * by,
      halfWidth: halfWidth * by,
      share,
    })),
  };
}

/** Steeper than this against the ground an arm gives no squat line worth telling [rad]. */
const UPRIGHT = 1.5;

function squatFigure(planned: JobPlan, figure: 'squat-angle' | 'squat-ratio', standing: Standing): Opened {
  const { drive } = planned.inputs;
  if (drive === null) return 'drive not known';
  const { prepared, state } = standing;
  const slope = armAngleAt(prepared.machine, state[REAR_TRAVEL]!) - state[PITCH]!;
  if (Math.abs(slope) > UPRIGHT) return 'arm upright';
  if (figure === 'squat-angle') return readDriven(planned, standing, drive, ({ squatAngle }) => squatAngle);
  // The inverse stays smooth where the squat line is level, the ratio does not.
  const inverse = readDriven(
    planned,
    standing,
    drive,
    ({ squatAngle, transferAngle }) => Math.tan(squatAngle) / Math.tan(transferAngle),
  );
  return inverse.value.value === 0 ? 'squat line level' : inverted(inverse);
}

const SPROCKET = 'machine.rear.drive.frontSprocket';

/** A figure of the squat with its ±: what moves it through the balance, and where the front sprocket is. */
function readDriven(
  planned: JobPlan,
  standing: Standing,
  drive: FinalDriveSI,
  of: (squat: Squat) => number,
): Exclude<Opened, string> {
  const read = (by: FinalDriveSI) => (prepared: Prepared, state: Float64Array) =>
    of(squatAtRest(prepared, state, by));
  const { value, contributions } = readAt(standing, read(drive));
  const slopes = new Map(contributions.map(({ input, slope }) => [input, slope]));
  const deviationOf = (input: string): number => planned.inputs.figures.get(input)!.deviation;
  if (drive.kind !== 'shaft') {
    for (const part of ['x', 'height'] as const) {
      const moved = (by: number): number => {
        const frontSprocket = { ...drive.frontSprocket, [part]: drive.frontSprocket[part] + by };
        return read({ ...drive, frontSprocket })(standing.prepared, standing.state);
      };
      slopes.set(`${SPROCKET}.${part}`, (moved(STEP) - moved(-STEP)) / (2 * STEP));
    }
  }
  return summed(value.value, slopes, deviationOf);
}

/** Of a sprocket's place, for a central difference of closed geometry [m]. */
const STEP = 1e-5;
