import type { PlanCell, Planned, Reason } from './answer.ts';
import { pressureReason, reachOfCell } from './pressureReach.ts';
import type { EndQuestion, LoadCaseSI, SpringChoiceSI } from './question.ts';

/** What speaks for and against one spring, and whether it fits every load that is ridden. */
export interface Judged {
  readonly reasons: readonly Reason[];
  readonly fits: boolean;
}

/**
 * Every reason as a code with its figures. A spring fits when, for every load with a share of the riding that is not refused,
 * its adjuster reaches the aim, the coils stay apart and the stated preload is left at full extension. What is not known
 * is listed as not checked: it neither passes nor fails. A load that is only looked at rules nothing out.
 */
export function reasonsOf(
  choice: SpringChoiceSI,
  end: EndQuestion,
  loadCases: readonly LoadCaseSI[],
  cells: readonly PlanCell[],
): Judged {
  const isRidden = (cell: PlanCell, i: number): boolean =>
    loadCases[i]!.share > 0 && cell.kind !== 'refused' && cell.kind !== 'not wanted';
  const ridden = cells.filter(isRidden);
  const over = choice.spring.kind === 'none' ? [] : overAll(ridden.length > 0 ? ridden : cells, end);
  const fails = [...ridden.flatMap((cell) => reasonsOfCell(cell, end)), ...over].some(rulesOut);
  const fitted: readonly Reason[] = choice.fitted ? [{ code: 'fitted', side: 'for', figures: {} }] : [];
  return {
    reasons: [...fitted, ...cells.flatMap((cell) => reasonsOfCell(cell, end)), ...over],
    fits: ridden.length > 0 && !fails,
  };
}

/** Whether a reason rules a spring out; the rest is said, and weighed by the technician. */
export function rulesOut(reason: Reason): boolean {
  return reason.side === 'against' && FAILING.has(reason.code);
}

const FAILING: ReadonlySet<Reason['code']> = new Set([
  'only at the edge',
  'past the tightest',
  'past the loosest',
  'between steps',
  'no spring wanted',
  'no adjuster',
  'pressure only at the edge',
  'pressure past its most',
  'pressure past its least',
  'target outside travel',
  'no rest',
  'rests elsewhere',
  'coil bind',
  'little preload',
]);

function reasonsOfCell(cell: PlanCell, end: EndQuestion): readonly Reason[] {
  const { loadCase } = cell;
  switch (cell.kind) {
    case 'refused':
    case 'not wanted':
      return [];
    case 'target outside travel': {
      const figures = { wanted: cell.wanted, travelMax: cell.travelMax };
      return [{ code: 'target outside travel', side: 'against', loadCase, figures }];
    }
    case 'no rest':
      return [{ code: 'no rest', side: 'against', loadCase, figures: { residual: cell.residual } }];
    case 'planned':
      return [reachReason(loadCase, cell.cell, end), ...standingReasons(loadCase, cell.cell)];
  }
}

function reachReason(loadCase: string, cell: Planned, end: EndQuestion): Reason {
  const { reach, pressure, set } = cell;
  if (pressure?.isPlanned) return pressureReason(loadCase, pressure, set.travel.value, end.pressure!);
  const aim = cell.positions?.aim.value ?? 0;
  const preload = cell.preload?.value ?? 0;
  const most = end.adjuster === null ? 0 : positionMost(end.adjuster);
  switch (reach.kind) {
    case 'reached':
      return {
        code: 'reaches',
        side: 'for',
        loadCase,
        figures: { position: aim, preload, left: reach.left },
      };
    case 'at the edge':
    case 'out of reach': {
      const edge = reach.kind === 'at the edge';
      const past = reach.past === 'tightest' ? 'past the tightest' : 'past the loosest';
      const figures = { position: aim, preload, most, short: reach.short, travel: cell.set.travel.value };
      return { code: edge ? 'only at the edge' : past, side: 'against', loadCase, figures };
    }
    case 'between steps':
      return {
        code: 'between steps',
        side: 'against',
        loadCase,
        figures: { position: aim, miss: reach.nearest },
      };
    case 'no spring wanted':
      return { code: 'no spring wanted', side: 'against', loadCase, figures: { wanted: cell.wanted.aim } };
    case 'no adjuster': {
      const { value: travel } = cell.set.travel;
      const { low, high } = cell.wanted;
      const inside = travel >= low && travel <= high;
      return {
        code: inside ? 'reaches' : 'no adjuster',
        side: inside ? 'for' : 'against',
        loadCase,
        figures: { travel, low, high },
      };
    }
  }
}

function positionMost(adjuster: NonNullable<EndQuestion['adjuster']>): number {
  return adjuster.kind === 'continuous' ? adjuster.most : adjuster.positions.at(-1)!;
}

function standingReasons(loadCase: string, cell: Planned): readonly Reason[] {
  const reasons: Reason[] = [];
  const { set } = cell;
  if (set.rest === null)
    reasons.push({ code: 'no rest', side: 'against', loadCase, figures: { residual: 0 } });
  if (set.alone?.standing === 'topped out') {
    reasons.push({
      code: 'machine alone tops out',
      side: 'against',
      loadCase,
      figures: { preload: set.preload },
    });
  }
  if (isElsewhere(cell)) {
    const { low, high } = cell.wanted;
    const figures = { travel: set.travel.value, low, high };
    reasons.push({ code: 'rests elsewhere', side: 'against', loadCase, figures });
  }
  const standing = standingOf(cell);
  if (standing === 'on rubber') {
    reasons.push({
      code: 'rests on rubber',
      side: 'against',
      loadCase,
      figures: { travel: set.travel.value },
    });
  }
  if (standing === 'bottomed') {
    reasons.push({
      code: 'rests on metal',
      side: 'against',
      loadCase,
      figures: { travel: set.travel.value },
    });
  }
  return reasons;
}

/** How far past the wanted band a wheel may stand for the quarter turn or the step that hands can make [m of travel]. */
const COARSENESS = 0.005;

/**
 * Whether the machine, set as near to the aim as hands can, comes to rest away from the band that the adjuster reaches. Where a
 * falling ratio makes the wanted place a knife's edge there is a balance, but no rest; and a spacer may be cut too coarsely.
 */
function isElsewhere(cell: Planned): boolean {
  const { wanted, set } = cell;
  if (reachOfCell(cell).kind !== 'reached' || set.rest === null) return false;
  const { value } = set.travel;
  return value < wanted.low - COARSENESS || value > wanted.high + COARSENESS;
}

function standingOf(cell: Planned): 'free' | 'on rubber' | 'bottomed' {
  const { set } = cell;
  if (set.travelToMetal <= 0) return 'bottomed';
  return set.travelToRubber !== null && set.travelToRubber < 0 ? 'on rubber' : 'free';
}

/** Coil bind and preload at extension, judged at the loads' tightest and loosest settings. */
function overAll(cells: readonly PlanCell[], end: EndQuestion): readonly Reason[] {
  const sets = cells.flatMap((cell) => (cell.kind === 'planned' ? [cell.cell.set] : []));
  if (sets.length === 0) return [];
  const reasons: Reason[] = [];
  const rooms = sets.map((set) => set.strokeToCoilBind);
  if (rooms.some((room) => room === null)) {
    reasons.push({ code: 'coil bind not checked', side: 'not checked', figures: {} });
  } else {
    const room = Math.min(...rooms.map((each) => each!));
    const clear = room >= end.keepFromCoilBind;
    const figures = { room, keep: end.keepFromCoilBind };
    reasons.push({
      code: clear ? 'clear of coil bind' : 'coil bind',
      side: clear ? 'for' : 'against',
      figures,
    });
  }
  const left = Math.min(...sets.map((set) => set.preloadAtExtension));
  const kept = left >= end.keepPreload;
  const figures = { left, keep: end.keepPreload };
  reasons.push({ code: kept ? 'keeps preload' : 'little preload', side: kept ? 'for' : 'against', figures });
  if (sets.some((set) => set.travelToRubber === null)) {
    reasons.push({ code: 'rubber not checked', side: 'not checked', figures: {} });
  }
  return reasons;
}
