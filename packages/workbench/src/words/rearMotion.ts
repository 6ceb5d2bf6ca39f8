import type { Figure } from '@sagwright/model/plan/answer';
import { format, formatFigure } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import type { EarlierDocument, RearMotionDocument } from '../result/rearMotionDocument.ts';
import { words } from './catalogue.ts';

/** What is to be said of how the rear moves, beside its figures: where it was read, what the link does, where the drive is tightest. */
export function rearMotionSentences(
  motion: RearMotionDocument,
  { drive }: JobPlan['inputs'],
  units: Units,
): readonly string[] {
  const { knownBy, referenceTravel, earlier, link, tightest, rests } = motion;
  const say = words.rearMotion;
  const byPoints = knownBy === 'direct' || knownBy === 'linkage';
  return [
    ...(byPoints ? [say.readAt(format(referenceTravel, 'length', units))] : []),
    ...(earlier === null ? [] : [earlierSentence(earlier, units)]),
    ...(link === null ? [] : [say.link[link]]),
    ...(tightest === null || drive === null || drive.kind === 'shaft'
      ? []
      : [
          say.tightest(
            drive.kind,
            format(tightest.centreDistance, 'length', units),
            format(tightest.travel, 'length', units),
          ),
        ]),
    ...(rests.some(({ squatAngle }) => squatAngle !== null) ? [say.squat] : []),
  ];
}

function earlierSentence({ leverage, byPoints, difference, verdict }: EarlierDocument, units: Units): string {
  const figure = (each: Figure): string => formatFigure(each, 'leverage', units);
  return verdict === 'agrees'
    ? words.rearMotion.earlier.agrees(figure(leverage), figure(byPoints))
    : words.rearMotion.earlier.differs(
        figure(leverage),
        figure(byPoints),
        figure({ ...difference, value: Math.abs(difference.value) }),
      );
}
