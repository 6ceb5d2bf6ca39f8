import type { Figure } from '@sagwright/model/plan/answer';
import type { JobDocument } from '@sagwright/records/schema';
import { format, formatFigure } from '../format/format.ts';
import { sizeOf } from '../format/size.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import type {
  EarlierDocument,
  EarlierSurveyDocument,
  PointTapeDocument,
  RearMotionDocument,
} from '../result/rearMotionDocument.ts';
import { words } from './catalogue.ts';
import { readingName } from './names.ts';

/** What is to be said of how the rear moves, beside its figures: where it was read, what the link does, where the drive is tightest. */
export function rearMotionSentences(
  motion: RearMotionDocument,
  { job, inputs: { drive } }: Pick<JobPlan, 'job' | 'inputs'>,
  units: Units,
): readonly string[] {
  const { knownBy, referenceTravel, earlier, earlierSurvey, tape, link, tightest, rests } = motion;
  const say = words.rearMotion;
  const byPoints = knownBy === 'direct' || knownBy === 'linkage';
  return [
    ...(byPoints ? [say.readAt(format(referenceTravel, 'length', units))] : []),
    ...(earlier === null ? [] : [earlierSentence(earlier, units)]),
    ...(earlierSurvey === null ? [] : surveySentences(earlierSurvey, units)),
    ...(tape === null ? [] : [tapeSentence(job, tape, units)]),
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

function earlierSentence({ leverage, now, difference, verdict }: EarlierDocument, units: Units): string {
  const figure = (each: Figure): string => formatFigure(each, 'leverage', units);
  return verdict === 'agrees'
    ? words.rearMotion.earlier.agrees(figure(leverage), figure(now))
    : words.rearMotion.earlier.differs(figure(leverage), figure(now), figure(sizeOf(difference)));
}

function surveySentences({ zero, rows, worst }: EarlierSurveyDocument, units: Units): readonly string[] {
  const say = words.rearMotion.survey;
  const off = rows.filter(({ verdict }) => verdict === 'differs');
  const row = rows.find(({ id }) => id === worst);
  const told =
    row === undefined
      ? say.agrees(rows.length)
      : say.differs(
          off.length,
          rows.length,
          format(row.wheel, 'length', units),
          formatFigure(row.difference, 'length', units),
        );
  return [told, say.zero(formatFigure(zero, 'length', units))];
}

function tapeSentence(job: JobDocument, { lengths, spare, worst }: PointTapeDocument, units: Units): string {
  const say = words.rearMotion.tape;
  const length = lengths.find(({ path }) => path === worst);
  if (length === undefined) return say.agrees(lengths.length, spare);
  return say.differs(readingName(job, length.path), formatFigure(length.misfit, 'length', units));
}
