import { format } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import type { RearMotionDocument } from '../result/rearMotionDocument.ts';
import { words } from './catalogue.ts';

/** What is to be said of how the rear moves, beside its figures: where it was read, what the link does, where the drive is tightest. */
export function rearMotionSentences(
  motion: RearMotionDocument,
  { drive }: JobPlan['inputs'],
  units: Units,
): readonly string[] {
  const { knownBy, referenceTravel, link, tightest, rests } = motion;
  const say = words.rearMotion;
  const byPoints = knownBy === 'direct' || knownBy === 'linkage';
  return [
    ...(byPoints ? [say.readAt(format(referenceTravel, 'length', units))] : []),
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
