import type { Figure } from '@sagwright/model/plan/answer';
import { differenceFromSI, fromSI } from '@sagwright/records/units';
import type { ForkStepDocument } from '../fork/document.ts';
import { forkOf } from '../fork/fork.ts';
import { format, formatFigureNumber, formatNumber, unitOf } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { forkSentences } from '../words/fork.ts';

/** What works in the fork along its travel, for a drawing and a table: numbers in the units shown, words beside them. */
export interface ForkView {
  readonly lengthUnit: string;
  readonly forceUnit: string;
  /** "10.0 mm": by how much the oil stands higher and lower below. */
  readonly oilStep: string;
  readonly steps: readonly ForkStepView[];
  readonly sentences: readonly string[];
}

/** One wheel travel; null where no air would be left. */
export interface ForkStepView {
  readonly travel: number;
  readonly springs: number;
  readonly air: number;
  readonly airDoubt: number;
  readonly airQuick: number | null;
  readonly moreOil: number | null;
  readonly lessOil: number | null;
  readonly whole: number;
  readonly wholeDoubt: number;
  readonly words: Readonly<Record<ForkColumn, string>>;
}

export type ForkColumn =
  | 'travel'
  | 'stroke'
  | 'springs'
  | 'air'
  | 'airQuick'
  | 'moreOil'
  | 'lessOil'
  | 'rubber'
  | 'topOut'
  | 'whole';

/** The fork as found; null where the front is none. */
export function forkView(planned: JobPlan, units: Units): ForkView | null {
  const fork = forkOf(planned);
  if (fork === null) return null;
  return {
    lengthUnit: unitOf('length', units),
    forceUnit: unitOf('force', units),
    oilStep: format(fork.oilStep, 'length', units),
    steps: fork.along.map((step) => stepView(step, units)),
    sentences: forkSentences(planned, fork, units),
  };
}

function stepView(step: ForkStepDocument, units: Units): ForkStepView {
  const { length, force } = units.unit;
  const shown = (value: number): number => fromSI(value, force);
  const orNone = (value: number | null): number | null => (value === null ? null : shown(value));
  const doubt = ({ plusMinus }: Figure): number => differenceFromSI(plusMinus ?? 0, force);
  const plain = (value: number | null): string =>
    value === null ? '–' : formatNumber(value, 'force', units);
  const { travel, stroke, springs, air, airQuick, airMoreOil, airLessOil, rubber, topOut, whole } = step;
  return {
    travel: fromSI(travel, length),
    springs: shown(springs.value),
    air: shown(air.value),
    airDoubt: doubt(air),
    airQuick: airQuick === null ? null : shown(airQuick.value),
    moreOil: orNone(airMoreOil),
    lessOil: orNone(airLessOil),
    whole: shown(whole.value),
    wholeDoubt: doubt(whole),
    words: {
      travel: formatNumber(travel, 'length', units),
      stroke: formatNumber(stroke, 'length', units),
      springs: formatFigureNumber(springs, 'force', units),
      air: formatFigureNumber(air, 'force', units),
      airQuick: airQuick === null ? '–' : formatFigureNumber(airQuick, 'force', units),
      moreOil: plain(airMoreOil),
      lessOil: plain(airLessOil),
      rubber: plain(rubber),
      topOut: plain(-topOut),
      whole: formatFigureNumber(whole, 'force', units),
    },
  };
}
