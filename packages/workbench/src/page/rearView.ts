import type { Figure } from '@sagwright/model/plan/answer';
import type { PartName } from '@sagwright/model/rear/hardPoints';
import { isHardPoints } from '@sagwright/model/rear/kinematics';
import { partsAt } from '@sagwright/model/rear/partsAt';
import { wheelTravelAt } from '@sagwright/model/rear/wheelMotion';
import { REAR_TRAVEL } from '@sagwright/model/statics/gradient';
import { differenceFromSI, fromSI } from '@sagwright/records/units';
import { formatFigureNumber, formatNumber, unitOf } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { rearMotionOf } from '../result/rearMotion.ts';
import type { RearMotionDocument } from '../result/rearMotionDocument.ts';
import { standingShown } from '../why/standingShown.ts';
import { words } from '../words/catalogue.ts';
import { readingName } from '../words/names.ts';
import { rearMotionSentences } from '../words/rearMotion.ts';

/** How the rear moves its shock, for a drawing and a table: numbers in the units shown, words beside them. */
export interface RearView {
  readonly lengthUnit: string;
  readonly ratioUnit: string;
  readonly leverageUnit: string;
  /** Where the ratios come from. */
  readonly source: string;
  /** Even steps from fully out to full bump. */
  readonly steps: readonly RatioView[];
  readonly rests: readonly RearRestView[];
  /** Where the parts stand; null where no hard points are known. */
  readonly parts: PartsView | null;
  readonly readings: ReadingsView;
  readonly sentences: readonly string[];
}

/** What the hard points came of and what was known before them, as tables: cells in words, in the units shown; empty where there is none. */
export interface ReadingsView {
  readonly parts: readonly {
    readonly part: PartName;
    readonly cells: readonly [x: string, height: string, away: string];
  }[];
  readonly lengths: readonly NamedReading[];
  readonly survey: readonly NamedReading[];
}

/** A reading, the same by the points, and what lies between. */
export interface NamedReading {
  readonly name: string;
  readonly cells: readonly [read: string, byPoints: string, off: string, verdict: string];
}

/** The ratio at one wheel travel; ± 0 where it has none. */
export interface RatioView {
  readonly travel: number;
  readonly ratio: number;
  readonly ratioDoubt: number;
  readonly words: Readonly<Record<'travel' | 'ratio' | 'leverage', string>>;
}

/** Null: the machine alone, as found; loads stand as planned. */
export interface RearRestView extends RatioView {
  readonly load: string | null;
}

/** Places of the rear's parts in the body; `rest` is null where the load has none. */
export interface PartsView {
  readonly fullyOut: readonly PartView[];
  readonly rest: readonly PartView[] | null;
  readonly fullBump: readonly PartView[];
}

/** Forward of the rear axle as it was measured, and above the ground then, in the units shown. */
export interface PartView {
  readonly part: PartName;
  readonly x: number;
  readonly height: number;
  readonly words: { readonly x: string; readonly height: string };
}

/** The rear, its parts drawn where one load (null: the machine alone) rests. */
export function rearView(planned: JobPlan, load: string | null, units: Units): RearView {
  const motion = rearMotionOf(planned);
  return {
    lengthUnit: unitOf('length', units),
    ratioUnit: unitOf('motion', units),
    leverageUnit: unitOf('leverage', units),
    source: words.rearMotion.source[motion.knownBy],
    steps: motion.along.map((step) => ratioView(step, units)),
    rests: motion.rests.map((rest) => ({ load: rest.loadCase, ...ratioView(rest, units) })),
    parts: partsView(planned, load, units),
    readings: readingsView(planned, motion, units),
    sentences: rearMotionSentences(motion, planned, units),
  };
}

interface AtTravel {
  readonly travel: number;
  readonly motionRatio: Figure;
  readonly leverage: Figure;
}

function ratioView({ travel, motionRatio, leverage }: AtTravel, units: Units): RatioView {
  const { length, motion } = units.unit;
  return {
    travel: fromSI(travel, length),
    ratio: fromSI(motionRatio.value, motion),
    ratioDoubt: differenceFromSI(motionRatio.plusMinus ?? 0, motion),
    words: {
      travel: formatNumber(travel, 'length', units),
      ratio: formatFigureNumber(motionRatio, 'motion', units),
      leverage: formatFigureNumber(leverage, 'leverage', units),
    },
  };
}

function readingsView(
  { job }: JobPlan,
  { tape, earlierSurvey }: RearMotionDocument,
  units: Units,
): ReadingsView {
  const figure = (each: Figure): string => formatFigureNumber(each, 'length', units);
  const plain = (length: number): string => formatNumber(length, 'length', units);
  const { verdicts } = words.rearMotion;
  return {
    parts: (tape?.points ?? []).map(({ part, x, height, away }) => ({
      part,
      cells: [figure(x), figure(height), plain(away)],
    })),
    lengths: (tape?.lengths ?? []).map(({ path, taped, byPoints, misfit, verdict }) => ({
      name: readingName(job, path),
      cells: [
        figure(taped),
        plain(byPoints),
        verdict === 'not checked' ? '' : figure(misfit),
        verdicts[verdict],
      ],
    })),
    survey: (earlierSurvey?.rows ?? []).map(({ wheel, shock, byPoints, difference, verdict }) => ({
      name: plain(wheel),
      cells: [figure(shock), figure(byPoints), figure(difference), verdicts[verdict]],
    })),
  };
}

/** All three on the machine as the load stands on it: a longer shock moves its ends of travel too. */
function partsView(planned: JobPlan, load: string | null, units: Units): PartsView | null {
  const standing = standingShown(planned, load, load === null ? 'asFound' : 'planned');
  const { rear } = standing?.prepared.machine ?? planned.inputs.question.machine;
  if (!isHardPoints(rear.kinematics)) return null;
  const at = (travel: number): readonly PartView[] =>
    partsAt(rear, travel).map(({ part, x, height }) => ({
      part,
      x: fromSI(x, units.unit.length),
      height: fromSI(height, units.unit.length),
      words: { x: formatNumber(x, 'length', units), height: formatNumber(height, 'length', units) },
    }));
  return {
    fullyOut: at(0),
    rest: standing === null ? null : at(standing.state[REAR_TRAVEL]!),
    fullBump: at(wheelTravelAt(rear, 0, rear.strokeMax)),
  };
}
