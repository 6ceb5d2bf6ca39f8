import { longerLeft } from '@sagwright/model/limits/threadLeft';
import { rangeOf } from '@sagwright/model/plan/adjuster';
import type { Figure, Planned, Reach } from '@sagwright/model/plan/answer';
import { adjusterSI, leftOfChosen } from '../inputs/lengthAdjuster.ts';
import { margins } from '../inputs/margins.ts';
import { ownParts } from '../inputs/ownFigure.ts';
import { type Take, takeAgain } from '../inputs/take.ts';
import type { JobPlan } from '../path.ts';
import { type End, springInView } from '../result/inView.ts';
import { coilBind } from '../why/lengths.ts';
import type { LeftOut, LimitNeeded } from './document.ts';
import { needed } from './needs.ts';
import { type Held, judgedRow, type LimitRow, type RowName, spreadOf } from './row.ts';

/** What is turned and what is squeezed: preload adjusters, the length adjuster's thread, coil bind. */
export function shockRows(planned: JobPlan): readonly LimitRow[] {
  return [
    ...preloadRow(planned, 'rear'),
    ...preloadRow(planned, 'front'),
    ...lengthRow(planned),
    ...coilBindRow(planned, 'rear'),
    ...coilBindRow(planned, 'front'),
  ];
}

/**
 * Where hands are told to set it, and how far that is from the nearer end; where its range does not get to the wanted sag, how far
 * past it that lies. Nothing where nothing is set.
 */
function preloadRow(planned: JobPlan, end: End): readonly LimitRow[] {
  const name: RowName = { id: `${end}-preload`, kind: 'preload', end, of: null, dimension: 'length' };
  const { adjuster } = planned.inputs.question[end];
  if (adjuster === null) return [];
  const range = rangeOf(adjuster).most;
  const { cells, leftOut, needs } = cellsInView(planned, end);
  const held = cells.flatMap(({ loadCase, cell }): Held[] => {
    const margin = preloadMargin(cell, range);
    if (margin === null) return [];
    return [
      {
        loadCase,
        found: { value: cell.setting!.position, plusMinus: 0 },
        allowed: { value: range, plusMinus: 0 },
        margin,
        contributions: () => (margin.plusMinus === 0 ? [] : cell.contributions),
      },
    ];
  });
  const isOne = (kind: Reach['kind']): boolean => cells.some(({ cell }) => cell.reach.kind === kind);
  const notes = [
    ...(isOne('at the edge') ? (['only at its end'] as const) : []),
    ...(isOne('between steps') ? (['between its steps'] as const) : []),
  ];
  const bare = cells.flatMap(({ loadCase, cell: { reach } }) =>
    reach.kind === 'no spring wanted' ? [{ loadCase, why: reach.kind }] : [],
  );
  return [judgedRow(name, held, orUnplanned(held, needs), notes, [...leftOut, ...bare])];
}

/** What hands set is exact; where they cannot, what is wanted has its ±. At the edge some of the wanted band is in reach: 0 is left. */
function preloadMargin({ setting, reach, positions }: Planned, range: number): Figure | null {
  if (setting === null) return null;
  const plusMinus = positions?.aim.plusMinus ?? null;
  if (reach.kind === 'out of reach') return { value: -reach.short, plusMinus };
  if (reach.kind === 'at the edge') return { value: 0, plusMinus };
  return { value: Math.min(setting.position, range - setting.position), plusMinus: 0 };
}

/** How far the shock can still be made longer from where it stands or is to stand; and shorter, where that is chosen. */
function lengthRow({ job, inputs }: JobPlan): readonly LimitRow[] {
  const name: RowName = {
    id: 'rear-shock-length',
    kind: 'shock length',
    end: 'rear',
    of: null,
    dimension: 'length',
  };
  const typed = job.machine.rear.shock.lengthAdjuster;
  const stands = inputs.shock.lengthAdjuster?.stands;
  if (typed === undefined || stands === undefined) return [];
  const choice = job.choice?.shockLength;
  const chosen = inputs.shock.lengthAdjuster?.chosen?.change.value ?? 0;
  const ways: readonly ((take: Take) => number | null)[] = [
    ...(chosen > 0 ? [] : [(take: Take) => longerLeft(adjusterSI(take, typed))?.length ?? null]),
    ...(chosen === 0 ? [] : [(take: Take) => leftOfChosen(take, typed, choice!)]),
  ];
  const found = { value: stands.value + chosen, plusMinus: stands.plusMinus };
  const held = ways.map((way): Held | null => {
    const parts = ownParts(takeAgain(inputs.figures), way);
    if (parts === null) return null;
    const { figure: margin, contributions } = spreadOf(parts.value, parts.moves);
    return { loadCase: null, found, allowed: null, margin, contributions: () => contributions };
  });
  const path = 'machine.rear.shock.lengthAdjuster';
  const lacks = held.flatMap((each, i) =>
    each !== null ? [] : [i === 0 ? needed('thread', path) : needed('shortest length', `${path}.least`)],
  );
  const known = held.flatMap((each) => each ?? []);
  return [judgedRow(name, known, lacks)];
}

/** Stroke left before the coils touch at full bump, less what is kept in hand. */
function coilBindRow(planned: JobPlan, end: End): readonly LimitRow[] {
  const name: RowName = { id: `${end}-coil-bind`, kind: 'coil bind', end, of: null, dimension: 'length' };
  const spring = springInView(planned, end);
  if (spring === null) return [];
  const allowed = { value: margins.keepFromCoilBind, plusMinus: 0 };
  const { cells, leftOut, needs } = cellsInView(planned, end);
  const held = cells.flatMap(({ loadCase, cell }): Held[] => {
    const opened = coilBind(planned, end, spring, cell);
    if (typeof opened === 'string') return [];
    const { value: found, contributions } = opened;
    const margin = { value: found.value - allowed.value, plusMinus: found.plusMinus };
    return [{ loadCase, found, allowed, margin, contributions: () => contributions }];
  });
  const { freeLength, solidLength } = planned.inputs.question[end].choices.find(
    ({ id }) => id === spring.spring,
  )!;
  const path = `springs.${spring.spring}`;
  const lacks = [
    ...(freeLength === null ? [needed('free length', `${path}.freeLength`)] : []),
    ...(solidLength === null ? [needed('solid length', `${path}.solidLength`)] : []),
  ];
  return [judgedRow(name, held, orUnplanned(held, [...lacks, ...needs]), [], leftOut)];
}

/** Where nothing is held against it and no figure is known to lack, no load is planned. */
function orUnplanned(held: readonly Held[], needs: readonly LimitNeeded[]): readonly LimitNeeded[] {
  return held.length === 0 && needs.length === 0 ? [needed('nothing planned', 'loadCases')] : needs;
}

/**
 * Planned cells of the spring in view, for every load: also those that are only looked at. A load that may not be ridden so, or for
 * which no sag is wanted, is left out: nothing tells what its collar would be set to.
 */
function cellsInView(
  planned: JobPlan,
  end: End,
): {
  readonly cells: readonly { readonly loadCase: string; readonly cell: Planned }[];
  readonly leftOut: readonly LeftOut[];
  readonly needs: readonly LimitNeeded[];
} {
  const cells = springInView(planned, end)?.cells ?? [];
  return {
    cells: cells.flatMap((cell) => (cell.kind === 'planned' ? [cell] : [])),
    leftOut: cells.flatMap(({ kind, loadCase }) =>
      kind === 'refused' || kind === 'not wanted' ? [{ loadCase, why: kind }] : [],
    ),
    needs: cells.flatMap((cell): readonly LimitNeeded[] => {
      if (cell.kind === 'no rest') return [needed('rest', `loadCases.${cell.loadCase}`)];
      return cell.kind === 'target outside travel'
        ? [needed('sag within travel', `loadCases.${cell.loadCase}`)]
        : [];
    }),
  };
}
