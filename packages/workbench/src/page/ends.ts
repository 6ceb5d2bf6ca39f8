import { type AdjusterSetting, rangeOf, settingNear } from '@sagwright/model/plan/adjuster';
import type { PlanCell, Planned, Reach, SpringPlan } from '@sagwright/model/plan/answer';
import { travelAtStroke } from '@sagwright/model/rear/kinematics';
import type { Spring } from '@sagwright/records/schema/springs';
import {
  format,
  formatFigure,
  formatPlainNumber,
  formatRange,
  formatTyped,
  formatWidth,
} from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { type End, springInView } from '../result/inView.ts';
import { adjusterOf, settingAt, settingDocument } from '../result/setting.ts';
import { narrowing, narrowingWords } from '../words/assumed.ts';
import { words } from '../words/catalogue.ts';
import { reasonLines } from '../words/reasons.ts';
import { adjusterName, settingWords, shortSettingWords, turnsWords } from '../words/settings.ts';
import { suggestionWords } from '../words/suggestion.ts';
import { verdictWords } from '../words/verdict.ts';
import type { AdjusterView, EndView, LaneView, SpringView, WantedView } from './shapes.ts';
import { figureWords } from './stands.ts';

/** One end for the page: its travel, what each load wants, its adjuster and its springs. */
export function endView(
  planned: JobPlan,
  end: End,
  letters: ReadonlyMap<string, string>,
  units: Units,
): EndView {
  const { plan, inputs } = planned;
  const machine = inputs.question.machine;
  const { rake } = machine.geometry;
  const here = machine[end];
  const travelMax = travelAtStroke(here.kinematics, rake, here.strokeMax);
  const hangs = plan.alone.answer.kind === 'rest' ? plan.alone.answer.rest[end].hangingTravel : 0;
  const starts = here.struts.flatMap((strut) => (strut.rubber === null ? [] : [strut.rubber.start]));
  const rubber = starts.length === 0 ? null : travelAtStroke(here.kinematics, rake, Math.min(...starts));
  const { spring, by } = plan.planned[end];
  const { suggestion } = plan[end];
  const suggested = suggestionWords(planned, end, units);
  const inView = springInView(planned, end);
  return {
    travelMaxMm: travelMax * 1000,
    travelMaxWords: formatPlainNumber(travelMax, 'length', units),
    hangsMm: hangs * 1000,
    hangsWords: formatPlainNumber(hangs, 'length', units),
    rubberMm: rubber === null ? null : rubber * 1000,
    wanted: wantedByLoad(planned, end, units),
    adjuster: adjusterView(planned, end, units),
    springs: plan[end].springs.map((each) => springView(planned, end, each, letters, units)),
    planned: spring,
    plannedBy: by,
    suggested: suggestion.kind === 'spring' ? suggestion.spring : null,
    headline: suggested.headline,
    suggestion: suggested.sentences,
    remedies: suggested.remedies,
    kilogramsPerTurn:
      inView?.kilogramsPerTurn == null ? null : format(inView.kilogramsPerTurn, 'mass', units),
    narrowing: narrowingView(planned, end, units),
  };
}

function narrowingView(planned: JobPlan, end: End, units: Units): EndView['narrowing'] {
  const says = narrowingWords(planned, end, units);
  const narrowest = narrowing(planned, end);
  return says === null || narrowest === null ? null : { says, path: narrowest.input };
}

function wantedByLoad(planned: JobPlan, end: End, units: Units): Readonly<Record<string, WantedView>> {
  const wanted: Record<string, WantedView> = {};
  for (const { cells } of planned.plan[end].springs) {
    for (const cell of cells) {
      if (cell.kind !== 'planned') continue;
      const { low, aim, high } = cell.cell.wanted;
      wanted[cell.loadCase] = {
        fromMm: low * 1000,
        aimMm: aim * 1000,
        toMm: high * 1000,
        words: formatRange(low, high, 'length', units),
      };
    }
  }
  return wanted;
}

function adjusterView(planned: JobPlan, end: End, units: Units): AdjusterView | null {
  const { adjuster } = planned.inputs.question[end];
  const typed = adjusterOf(planned, end);
  if (adjuster === null || typed === undefined || typed.kind === 'none') return null;
  const { most } = rangeOf(adjuster);
  const at = (position: number): string =>
    shortSettingWords(settingAt(typed, settingNear(adjuster, position, 0)), units);
  return {
    mostMm: most * 1000,
    kind: typed.kind,
    name: adjusterName(planned, end),
    fromWords: at(0),
    toWords: at(most),
  };
}

function springView(
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
    aimMm: 0,
    toMm: 0,
    plusMinusMm: 0,
    interval: '',
    plusMinus: '',
    hands: [],
  } as const;
  if (cell.kind !== 'planned') return { ...bare, words: words.emptyCells[cell.kind] };
  const { positions, reach, setting } = cell.cell;
  if (positions === null)
    return {
      ...bare,
      words: reachWords(cell.cell, units),
      hands: handsOf(planned, end, spring, cell.loadCase, cell.cell, units),
    };
  return {
    load: cell.loadCase,
    letter,
    kind: laneKinds[reach.kind],
    fromMm: positions.loosest * 1000,
    aimMm: positions.aim.value * 1000,
    toMm: positions.tightest * 1000,
    plusMinusMm: (positions.aim.plusMinus ?? 0) * 1000,
    interval: formatRange(positions.loosest, positions.tightest, 'length', units),
    plusMinus: formatWidth(positions.aim.plusMinus ?? 0, 'length', units),
    words:
      reach.kind === 'reached' && setting !== null
        ? shortAt(planned, end, setting, units)
        : reachWords(cell.cell, units),
    hands: handsOf(planned, end, spring, cell.loadCase, cell.cell, units),
  };
}

const laneKinds = {
  reached: 'in reach',
  'at the edge': 'at the edge',
  'out of reach': 'past',
  'between steps': 'between steps',
  'no spring wanted': 'words',
  'no adjuster': 'words',
} as const satisfies { readonly [K in Reach['kind']]: LaneView['kind'] };

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

/** What hands do for one load with this spring, line by line. */
function handsOf(
  planned: JobPlan,
  end: End,
  spring: SpringPlan,
  loadCase: string,
  { setting, set }: Planned,
  units: Units,
): readonly string[] {
  const lines: string[] = [];
  if (setting !== null) {
    lines.push(settingWords(planned, end, setting, units));
    if (set.springLength !== null)
      lines.push(words.page.springLength(format(set.springLength, 'length', units)));
    const { turnsFromFound } = settingDocument(planned, end, spring, loadCase, setting) ?? {};
    for (const { strut, turns } of spring.fitted ? (turnsFromFound ?? []) : []) {
      const name = words.settings.strut[strut];
      lines.push(
        turns === 0 ? words.page.turnsAsFound(name) : words.page.turnsFromFound(name, turnsWords(turns)),
      );
    }
  }
  if (set.rest !== null) {
    const { travel, travelMax } = set.rest[end];
    lines.push(
      words.page.rests(formatFigure(set.travel, 'length', units), format(travel / travelMax, 'share', units)),
    );
  }
  if (set.rideFrequency !== null && set.frequencyWithoutTyre !== null) {
    const hertz = (value: number): string => format(value, 'frequency', units);
    lines.push(words.page.frequency(hertz(set.rideFrequency), hertz(set.frequencyWithoutTyre)));
  }
  return lines;
}

function shortAt(planned: JobPlan, end: End, setting: AdjusterSetting, units: Units): string {
  return shortSettingWords(settingAt(adjusterOf(planned, end)!, setting), units);
}
