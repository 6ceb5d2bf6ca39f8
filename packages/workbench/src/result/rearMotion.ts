import type { Figure } from '@sagwright/model/plan/answer';
import { tightestDrive } from '@sagwright/model/rear/alongTravel';
import { isHardPoints } from '@sagwright/model/rear/kinematics';
import { linkForce } from '@sagwright/model/rear/linkForce';
import { damperAt, wheelAt, wheelTravelAt } from '@sagwright/model/rear/wheelMotion';
import { REAR_TRAVEL } from '@sagwright/model/statics/gradient';
import type { MachineSI } from '@sagwright/model/statics/machine';
import type { JobPlan } from '../path.ts';
import type { Opened } from '../why/question.ts';
import { armAngleAt, inverted, motionRatioAt, type RearFigure, rearFigure } from '../why/rearFigures.ts';
import { readAt, type Standing } from '../why/standing.ts';
import { standingShown } from '../why/standingShown.ts';
import { earlierLeverage } from './earlierLeverage.ts';
import { earlierSurvey } from './earlierSurvey.ts';
import { pointTapeOf } from './pointTape.ts';
import type { RearMotionDocument, RearRestDocument, TravelDocument } from './rearMotionDocument.ts';

/** Steps of the travel that are told: enough to draw a curve by. */
const STEPS = 10;

/** How the rear moves: along its travel, and where each load rests. */
export function rearMotionOf(planned: JobPlan): RearMotionDocument {
  const { inputs, job, plan } = planned;
  const { rear } = inputs.question.machine;
  const { drive } = inputs;
  const travelMax = wheelTravelAt(rear, 0, rear.strokeMax);
  const alone = standingShown(planned, null, 'asFound');
  const loads = plan.planned.loadCases.flatMap(({ loadCase }) => {
    const standing = standingShown(planned, loadCase, 'planned');
    return standing === null ? [] : [restDocument(planned, loadCase, standing)];
  });
  return {
    knownBy: job.machine.rear.travel.kind,
    referenceTravel: rear.referenceTravel,
    link: isHardPoints(rear.kinematics) ? linkForce(rear.kinematics) : null,
    earlier: earlierLeverage(planned, alone),
    earlierSurvey: earlierSurvey(planned, alone),
    tape: pointTapeOf(planned),
    along: Array.from({ length: STEPS + 1 }, (_, i) => travelDocument(planned, alone, travelMax, i / STEPS)),
    tightest:
      drive === null || drive.kind === 'shaft' ? null : tightestDrive(rear, travelMax, drive.frontSprocket),
    rests: alone === null ? loads : [restDocument(planned, null, alone), ...loads],
  };
}

function travelDocument(
  { inputs }: JobPlan,
  alone: Standing | null,
  travelMax: number,
  share: number,
): TravelDocument {
  const { machine } = inputs.question;
  const travel = travelMax * share;
  const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  damperAt(machine.rear, 0, travel, at);
  const ratio = readAlong(machine, alone, travel, share, (here, z) => motionRatioAt(here, 'rear', z));
  return {
    travel,
    stroke: at.stroke,
    motionRatio: ratio.value,
    leverage: inverted(ratio).value,
    armAngle:
      machine.rear.axlePath.kind === 'circle'
        ? readAlong(machine, alone, travel, share, armAngleAt).value
        : null,
    centreDistance: centreDistanceAt(inputs, travel),
    axleForward: machine.rear.axlePath.kind === 'circle' ? axleAtTravel(machine.rear, travel).x : null,
  };
}

/** A figure at a share of the travel, however long that is; its ± from the machine alone, null where that has no rest. */
function readAlong(
  machine: MachineSI,
  alone: Standing | null,
  travel: number,
  share: number,
  read: (machine: MachineSI, travel: number) => number,
): Exclude<Opened, string> {
  if (alone === null) return { value: { value: read(machine, travel), plusMinus: null }, contributions: [] };
  return readAt(alone, (prepared) => read(prepared.machine, prepared.rearTravelMax * share));
}

function centreDistanceAt({ drive, question }: JobPlan['inputs'], travel: number): number | null {
  if (drive === null || drive.kind === 'shaft') return null;
  const axle = axleAtTravel(question.machine.rear, travel);
  return Math.hypot(drive.frontSprocket.x - axle.x, drive.frontSprocket.height - axle.height);
}

function axleAtTravel(
  rear: MachineSI['rear'],
  travel: number,
): { readonly x: number; readonly height: number } {
  const axle = { x: 0, height: 0, axleSlope: 0, axleBend: 0, stroke: 0, motionRatio: 0, ratioSlope: 0 };
  wheelAt(rear, 0, 0, travel, axle);
  return axle;
}

function restDocument(planned: JobPlan, loadCase: string | null, standing: Standing): RearRestDocument {
  const figure = (name: RearFigure): Figure | null => {
    const opened = rearFigure(planned, name, 'rear', standing);
    return typeof opened === 'string' ? null : opened.value;
  };
  return {
    loadCase,
    travel: standing.state[REAR_TRAVEL]!,
    motionRatio: figure('motion-ratio')!,
    leverage: figure('leverage')!,
    armAngle: figure('arm-angle'),
    squatAngle: figure('squat-angle'),
    squatRatio: figure('squat-ratio'),
  };
}
