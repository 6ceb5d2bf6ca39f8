import { rangeOf } from '@sagwright/model/plan/adjuster';
import type { Planned, PlannedPressure, Reason, SpringPlan } from '@sagwright/model/plan/answer';
import type { SpringChoiceSI } from '@sagwright/model/plan/question';
import { rulesOut } from '@sagwright/model/plan/reasons';
import { format, formatFigure, formatRange, formatSome, formatWidth } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { type End, leastLeft, riddenCells } from '../result/inView.ts';
import { pressureReasonWords } from '../shock/reasons.ts';
import { words } from './catalogue.ts';
import { fieldName, loadName } from './names.ts';
import { adjusterName, settingWords } from './settings.ts';

/** What is said of one spring, grouped. */
export interface Said {
  readonly for: readonly string[];
  readonly against: readonly string[];
  /** The part of `against` that rules the spring out. */
  readonly rulesOut: readonly string[];
  readonly notChecked: readonly string[];
}

/** One reason in words, with its figures in the units chosen. */
export function reasonWords(
  planned: JobPlan,
  end: End,
  spring: SpringPlan,
  reason: Reason,
  units: Units,
): string {
  const say = words.reasons;
  const { figures } = reason;
  const mm = (name: string): string => format(figures[name] ?? 0, 'length', units);
  const load = reason.loadCase === undefined ? '' : loadName(planned.job, reason.loadCase);
  switch (reason.code) {
    case 'fitted':
      return say.fitted();
    case 'reaches':
    case 'only at the edge':
    case 'past the tightest':
    case 'past the loosest':
      return reachWords(planned, end, spring, reason, units);
    case 'pressure reaches':
    case 'pressure only at the edge':
    case 'pressure past its most':
    case 'pressure past its least':
      return pressureReasonWords(load, reason, pressureOfCell(spring, reason.loadCase), units);
    case 'between steps':
      return figures.miss! > 0
        ? say.stepTooTight(load, mm('miss'))
        : say.stepTooLoose(load, formatSome(-figures.miss!, 'length', units));
    case 'no spring wanted':
      return say.noSpringWanted(load, mm('wanted'));
    case 'no adjuster':
      return say.noAdjuster(load, mm('travel'), bandWords(figures, units));
    case 'target outside travel':
      return say.targetOutsideTravel(load, mm('wanted'), mm('travelMax'));
    case 'no rest':
      return say.noRest(load, format(figures.residual ?? 0, 'force', units));
    case 'rests elsewhere':
      return say.restsElsewhere(load, mm('travel'), bandWords(figures, units));
    case 'machine alone tops out':
      return say.aloneToppedOut(load);
    case 'rests on rubber':
      return say.restsOnRubber(load, mm('travel'));
    case 'rests on metal':
      return say.restsOnMetal(load, mm('travel'));
    case 'clear of coil bind':
      return say.clearOfCoilBind(mm('room'));
    case 'coil bind':
      return figures.room! < 0
        ? say.coilBind(formatSome(-figures.room!, 'length', units))
        : say.nearCoilBind(mm('room'), mm('keep'));
    case 'keeps preload':
      return say.keepsPreload(mm('left'));
    case 'little preload':
      return figures.left! < 0
        ? say.looseAtExtension(formatSome(-figures.left!, 'length', units))
        : say.littlePreload(mm('left'), mm('keep'));
    case 'coil bind not checked':
      return say.coilBindNotChecked(lengthsNeeded(planned, end, spring));
    case 'rubber not checked':
      return say.rubberNotChecked(end);
  }
}

/** All reasons of a spring, what holds for several loads said once. */
export function reasonLines(planned: JobPlan, end: End, spring: SpringPlan, units: Units): Said {
  const reached = reachedTogether(planned, spring, units);
  const sayAll = (reasons: readonly Reason[]): readonly string[] =>
    reasons.map((reason) => reasonWords(planned, end, spring, reason, units));
  const single = spring.reasons.filter(({ code }) => !together.has(code) && code !== 'reaches');
  const against = single.filter(({ side }) => side === 'against');
  const alone = spring.reasons.filter(({ code }) => code === 'machine alone tops out');
  const failing = [...failingTogether(planned, end, spring, units), ...sayAll(against.filter(rulesOut))];
  return {
    for: [...(reached === null ? [] : [reached]), ...sayAll(single.filter(({ side }) => side === 'for'))],
    against: [
      ...failing,
      ...sayAll(against.filter((reason) => !rulesOut(reason))),
      ...(alone.length === 0 ? [] : [words.reasons.aloneToppedOut(loadNames(planned, alone))]),
    ],
    rulesOut: failing,
    notChecked: sayAll(single.filter(({ side }) => side === 'not checked')),
  };
}

/** What several loads can fail on alike. */
const together: ReadonlySet<Reason['code']> = new Set([
  'past the tightest',
  'past the loosest',
  'only at the edge',
  'machine alone tops out',
]);

/** Loads that are past an end of the adjuster, or only at it, told together by the end and by how far. */
function failingTogether(planned: JobPlan, end: End, spring: SpringPlan, units: Units): readonly string[] {
  const say = words.reasons;
  const atEdge =
    (past: 'tightest' | 'loosest') =>
    (reason: Reason): boolean =>
      reason.code === 'only at the edge' && pastOf(spring, reason) === past;
  const groups = [
    [(reason: Reason) => reason.code === 'past the tightest', say.pastTightestTogether],
    [(reason: Reason) => reason.code === 'past the loosest', say.pastLoosestTogether],
    [atEdge('tightest'), say.edgeTightestTogether],
    [atEdge('loosest'), say.edgeLoosestTogether],
  ] as const;
  return groups.flatMap(([belongs, sayTogether]) => {
    const failing = spring.reasons.filter(belongs);
    const [first] = failing;
    if (first === undefined) return [];
    if (failing.length === 1) return [reasonWords(planned, end, spring, first, units)];
    const short = ({ figures }: Reason): number => figures.short ?? 0;
    const worst = failing.reduce((a, b) => (short(b) > short(a) ? b : a));
    const said = sayTogether(
      loadNames(planned, failing),
      loadName(planned.job, worst.loadCase!),
      formatSome(short(worst), 'length', units),
    );
    return [withDoubt(said, short(worst), cellOf(spring, worst.loadCase!), units)];
  });
}

/** The end of the adjuster that a reason is about. */
function pastOf(spring: SpringPlan, { loadCase }: Reason): 'tightest' | 'loosest' {
  const reach = cellOf(spring, loadCase!)?.reach;
  return reach !== undefined && 'past' in reach ? reach.past : 'tightest';
}

function loadNames(planned: JobPlan, reasons: readonly Reason[]): string {
  return words.list(reasons.map(({ loadCase }) => loadName(planned.job, loadCase!)));
}

/** The loads that are reached, in one sentence; the one with least left to tighten is named. */
function reachedTogether(planned: JobPlan, spring: SpringPlan, units: Units): string | null {
  const ridden = riddenCells(planned, spring);
  const reached = spring.reasons.filter(({ code }) => code === 'reaches');
  if (reached.length === 0) return null;
  const some = (): string => words.reasons.reachesSome(loadNames(planned, reached));
  const least = leastLeft(planned, spring);
  const inReach = ridden.filter(({ cell }) => cell.reach.kind === 'reached').length;
  if (least === null || inReach < ridden.length) return some();
  const { loadCase, left } = least;
  const all = words.reasons.reachesAll(
    inReach,
    format(left, 'length', units),
    loadName(planned.job, loadCase),
  );
  return withDoubt(all, left, cellOf(spring, loadCase), units);
}

function reachWords(planned: JobPlan, end: End, spring: SpringPlan, reason: Reason, units: Units): string {
  const say = words.reasons;
  const { code, figures, loadCase } = reason;
  const load = loadName(planned.job, loadCase!);
  const cell = cellOf(spring, loadCase!);
  if (cell === null || cell.setting === null) {
    return say.reachesAsItIs(load, format(figures.travel ?? 0, 'length', units), bandWords(figures, units));
  }
  if (code === 'reaches') {
    const setting = settingWords(planned, end, cell.setting, units);
    const left = figures.left ?? 0;
    return left <= 0
      ? say.reachesLast(load, setting)
      : withDoubt(say.reaches(load, setting, format(left, 'length', units)), left, cell, units);
  }
  const { preloadAtZero } = choiceOf(planned, end, spring);
  const adjuster = adjusterName(planned, end);
  const loosest = pastOf(spring, reason) === 'loosest';
  const most = loosest ? 0 : rangeOf(planned.inputs.question[end].adjuster!).most;
  const preload = formatFigure(cell.preload ?? { value: 0, plusMinus: null }, 'length', units);
  const endsAt = format(preloadAtZero + most, 'length', units);
  const short = formatSome(figures.short ?? 0, 'length', units);
  const travel = format(figures.travel ?? 0, 'length', units);
  const said =
    code === 'only at the edge'
      ? (loosest ? say.edgeLoosest : say.edgeTightest)(load, preload, adjuster, endsAt, travel)
      : (loosest ? say.pastLoosest : say.pastTightest)(load, preload, adjuster, endsAt, short);
  return withDoubt(said, figures.short ?? 0, cell, units);
}

/** Says so where a distance to the adjuster's end is less than the ± of the aim. */
function withDoubt(said: string, distance: number, cell: Planned | null, units: Units): string {
  const doubt = cell?.positions?.aim.plusMinus ?? null;
  if (doubt === null || distance >= doubt) return said;
  return words.reasons.lessThanItsDoubt(said, formatWidth(doubt, 'length', units));
}

function bandWords(figures: Reason['figures'], units: Units): string {
  return formatRange(figures.low ?? 0, figures.high ?? 0, 'length', units);
}

function pressureOfCell(spring: SpringPlan, loadCase: string | undefined): PlannedPressure | null {
  return (loadCase === undefined ? null : cellOf(spring, loadCase)?.pressure) ?? null;
}

/** The lengths without which coil bind cannot be checked. */
function lengthsNeeded(planned: JobPlan, end: End, spring: SpringPlan): string {
  const { freeLength, solidLength } = choiceOf(planned, end, spring);
  const missing = [
    ...(freeLength === null ? ['freeLength'] : []),
    ...(solidLength === null ? ['solidLength'] : []),
  ];
  return words.list(missing.map((name) => fieldName(planned.job, `springs.${spring.spring}.${name}`)));
}

export function choiceOf(planned: JobPlan, end: End, spring: SpringPlan): SpringChoiceSI {
  return planned.inputs.question[end].choices.find(({ id }) => id === spring.spring)!;
}

function cellOf(spring: SpringPlan, loadCase: string): Planned | null {
  const cell = spring.cells.find((each) => each.loadCase === loadCase);
  return cell?.kind === 'planned' ? cell.cell : null;
}
