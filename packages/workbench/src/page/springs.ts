import type { AdjusterSetting } from '@sagwright/model/plan/adjuster';
import type { PlanCell, Planned, SpringPlan } from '@sagwright/model/plan/answer';
import type { Spring } from '@sagwright/records/schema/springs';
import { format, formatRange, formatTyped, formatWidth } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import type { End } from '../result/inView.ts';
import { adjusterOf, settingAt } from '../result/setting.ts';
import { fitSentences } from '../springs/fitWords.ts';
import { rateSentences, workedOutRate } from '../springs/words.ts';
import { words } from '../words/catalogue.ts';
import { choiceOf, reasonLines } from '../words/reasons.ts';
import { settingNumber } from '../words/settings.ts';
import { verdictWords } from '../words/verdict.ts';
import { handsView } from './hands.ts';
import { laneKinds } from './laneKinds.ts';
import type { LaneView, SpringView } from './shapes.ts';
import { pressureLane } from './shock.ts';
import { figureWords } from './stands.ts';

/** One spring for the page, with every load in its order. */
export function springView(
  planned: JobPlan,
  end: End,
  spring: SpringPlan,
  letters: ReadonlyMap<string, string>,
  units: Units,
): SpringView {
  const typed: Spring = planned.job.springs[spring.spring]!;
  const said = reasonLines(planned, end, spring, units);
  return {
    id: spring.spring,
    name: typed.name,
    rate: figureWords({ value: spring.rate, plusMinus: null }, 'rate', units),
    typed: typed.rate.kind === 'linear' ? formatTyped(typed.rate.rate, units) : null,
    workedOut: workedOutRate(planned, spring, units),
    about: [...rateSentences(planned, spring, units), ...fitSentences(planned, end, spring.spring, units)],
    where: typed.where ?? null,
    fitted: spring.fitted,
    atHand: typed.hand !== false,
    fits: spring.fits,
    verdict: verdictWords(planned, spring),
    lanes: spring.cells.map((cell) =>
      laneView(planned, end, spring, cell, letters.get(cell.loadCase)!, units),
    ),
    for: said.for,
    against: said.against,
    notChecked: said.notChecked,
  };
}

function laneView(
  planned: JobPlan,
  end: End,
  spring: SpringPlan,
  cell: PlanCell,
  letter: string,
  units: Units,
): LaneView {
  const bare = {
    load: cell.loadCase,
    letter,
    kind: 'words',
    fromMm: 0,
    toMm: 0,
    plusMinusMm: 0,
    preload: '',
    plusMinus: '',
    hands: null,
  } as const;
  if (cell.kind === 'refused') return { ...bare, words: words.page.overALimit };
  if (cell.kind !== 'planned') return { ...bare, words: words.emptyCells[cell.kind] };
  const { positions, reach, setting, pressure } = cell.cell;
  const hands = handsView(planned, end, spring, cell, units);
  if (pressure?.isPlanned) {
    return { load: cell.loadCase, letter, ...pressureLane(planned, pressure, units), hands };
  }
  if (positions === null) return { ...bare, words: reachWords(cell.cell, units), hands };
  const { loosest, aim, tightest } = positions;
  const { preloadAtZero } = choiceOf(planned, end, spring);
  return {
    load: cell.loadCase,
    letter,
    kind: laneKinds[reach.kind],
    fromMm: loosest * 1000,
    toMm: tightest * 1000,
    plusMinusMm: (aim.plusMinus ?? 0) * 1000,
    preload: formatRange(preloadAtZero + loosest, preloadAtZero + tightest, 'length', units),
    plusMinus:
      aim.plusMinus === null ? words.page.plusMinusUnknown : formatWidth(aim.plusMinus, 'length', units),
    words:
      reach.kind === 'reached' && setting !== null
        ? settingAlone(planned, end, setting, units)
        : reachWords(cell.cell, units),
    hands,
  };
}

function reachWords({ reach }: Planned, units: Units): string {
  switch (reach.kind) {
    case 'out of reach':
      return (reach.past === 'tightest' ? words.page.pastBy : words.page.shortBy)(
        format(reach.short, 'length', units),
      );
    default:
      return words.reaches[reach.kind]();
  }
}

function settingAlone(planned: JobPlan, end: End, setting: AdjusterSetting, units: Units): string {
  return settingNumber(settingAt(adjusterOf(planned, end)!, setting), units);
}
