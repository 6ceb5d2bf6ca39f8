import type { DeadCentre } from '@sagwright/model/rear/deadCentres';
import type { HardPointsSI } from '@sagwright/model/rear/hardPoints';
import type { LocksUp, RearSurvey } from '@sagwright/model/rear/survey';
import { type Desk, impossible } from './desk.ts';
import { partPaths } from './partFields.ts';

/** What each dead centre looks like on the machine. */
const stops: Readonly<Record<DeadCentre, string>> = {
  'arm upright': 'the swingarm stands upright',
  'link straight': 'link and rocker are pulled into one line',
  'link folded': 'link and rocker lie folded over each other',
  'damper over centre': 'the shock is pulled over its centre and no longer gets shorter',
};

/** Tells why hard points do not let the shock make its whole stroke, on the field that is nearest to the cause. */
export function tellStuck(desk: Desk, survey: Stuck, points: HardPointsSI, strokeMax: number): void {
  const { path, message } = causeOf(survey, points, strokeMax);
  impossible(desk, path, message);
}

type Stuck = Exclude<RearSurvey, { readonly kind: 'moves' }>;

interface Cause {
  readonly path: string;
  readonly message: string;
}

function causeOf(survey: Stuck, points: HardPointsSI, strokeMax: number): Cause {
  switch (survey.kind) {
    case 'pivot behind':
      return {
        path: partPaths.pivot,
        message: `Swingarm pivot: ${mm(survey.pivotX)} ahead of the rear axle; it must lie ahead of it. x counts forward from the axle.`,
      };
    case 'same place': {
      const [one, other] = survey.parts;
      return {
        path: partPaths[one === 'axle' ? other : one],
        message: `Hard points: ${one} and ${other} stand at one place; they must stand apart. Read both again.`,
      };
    }
    case 'lined up':
      return {
        path: suspectOf(points, survey.by),
        message: `Hard points: where they were read, ${stops[survey.by]}, so that they do not tell which way it goes on. Read them with the wheel higher or lower.`,
      };
    case 'wrong way':
      return {
        path: suspectOf(points, 'damper over centre'),
        message: `Hard points: the shock gets longer as the wheel rises, by ${(-survey.motionRatio).toFixed(2)} mm for each mm of wheel; it must get shorter. Is a point at the wrong place, or two of them swapped?`,
      };
    case 'never extended':
      return {
        path: 'machine.rear.shock.length',
        message: `Length of the shock: ${mm(points.damper.extendedLength)} fully out, but the eyes come no nearer to that than ${mm(survey.nearest)} (${mm(survey.short)} away): there ${stops[survey.by]}. Check the length and the points.`,
      };
    case 'locks up':
      return lockUpOf(survey, points, strokeMax);
  }
}

function lockUpOf(survey: LocksUp, points: HardPointsSI, strokeMax: number): Cause {
  const { by, travel, stroke, short, tooShort } = survey;
  const where = `Hard points: the rear gets no further than ${mm(travel)} of wheel travel and ${mm(stroke)} of stroke, where ${stops[by]}; the stroke is ${mm(strokeMax)}, so ${mm(short)} are missing.`;
  if (tooShort === null) {
    return { path: suspectOf(points, by), message: `${where} Check the stroke and the points.` };
  }
  const isLink = tooShort.part === 'link';
  const part = isLink ? 'link' : "rocker's arm to the link";
  return {
    path: partPaths[isLink ? 'link end' : 'link pin'],
    message: `${where} The ${part} is too short by ${mm(tooShort.by)} for it, all else as read. Read its ends again.`,
  };
}

/** The field to look at first where parts line up so. */
function suspectOf({ kind }: HardPointsSI, by: DeadCentre): string {
  if (by === 'arm upright') return partPaths.pivot;
  if (by === 'damper over centre') return partPaths[kind === 'direct' ? 'frame eye' : 'rocker eye'];
  return partPaths['link pin'];
}

function mm(length: number): string {
  return `${(length * 1000).toFixed(1)} mm`;
}
