import { rangeOf } from '@sagwright/model/plan/adjuster';
import type { Planned } from '@sagwright/model/plan/answer';
import { margins } from '../inputs/margins.ts';
import type { JobPlan } from '../path.ts';
import { type End, springInView } from '../result/inView.ts';
import { coilBind } from '../why/lengths.ts';
import { checkedRow, type Held, type LimitRow, needed, neededRow, type RowName } from './row.ts';

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

/** Where hands are told to set it, and how far that is from the nearer end. Nothing where nothing is set. */
function preloadRow(planned: JobPlan, end: End): readonly LimitRow[] {
  const name: RowName = { id: `${end}-preload`, kind: 'preload', end, of: null, dimension: 'length' };
  const { adjuster } = planned.inputs.question[end];
  if (adjuster === null) return [];
  const range = rangeOf(adjuster).most;
  const cells = plannedCells(planned, end);
  const held = cells.flatMap(({ loadCase, cell }): Held[] => {
    if (cell.setting === null) return [];
    const { position } = cell.setting;
    return [
      {
        loadCase,
        found: { value: position, plusMinus: 0 },
        allowed: { value: range, plusMinus: 0 },
        margin: { value: Math.min(position, range - position), plusMinus: 0 },
        contributions: () => [],
      },
    ];
  });
  if (held.length === 0) return [neededRow(name, [needed('nothing planned', 'loadCases')])];
  const past = cells.some(
    ({ cell }) => cell.reach.kind === 'out of reach' || cell.reach.kind === 'at the edge',
  );
  return [checkedRow(name, held, past ? ['past its end'] : [])];
}

/** How much longer the shock could still be made, from where it stands or is to stand. */
function lengthRow({ inputs }: JobPlan): readonly LimitRow[] {
  const name: RowName = {
    id: 'rear-shock-length',
    kind: 'shock length',
    end: 'rear',
    of: null,
    dimension: 'length',
  };
  const at = inputs.shock.lengthAdjuster;
  if (at === null) return [];
  const { longer, chosen, stands } = at;
  const margin = chosen !== null && chosen.change.value > 0 ? chosen.left : (longer?.length ?? null);
  if (margin === null) return [neededRow(name, [needed('thread', 'machine.rear.shock.lengthAdjuster')])];
  const found = { value: stands.value + (chosen?.change.value ?? 0), plusMinus: stands.plusMinus };
  return [checkedRow(name, [{ loadCase: null, found, allowed: null, margin, contributions: () => [] }])];
}

/** Stroke left before the coils touch at full bump, less what is kept in hand. */
function coilBindRow(planned: JobPlan, end: End): readonly LimitRow[] {
  const name: RowName = { id: `${end}-coil-bind`, kind: 'coil bind', end, of: null, dimension: 'length' };
  const spring = springInView(planned, end);
  if (spring === null) return [];
  const allowed = { value: margins.keepFromCoilBind, plusMinus: 0 };
  const held = plannedCells(planned, end).flatMap(({ loadCase, cell }): Held[] => {
    const opened = coilBind(planned, end, spring, cell);
    if (typeof opened === 'string') return [];
    const { value: found, contributions } = opened;
    const margin = { value: found.value - allowed.value, plusMinus: found.plusMinus };
    return [{ loadCase, found, allowed, margin, contributions: () => contributions }];
  });
  if (held.length > 0) return [checkedRow(name, held)];
  const { freeLength, solidLength } = planned.inputs.question[end].choices.find(
    ({ id }) => id === spring.spring,
  )!;
  const path = `springs.${spring.spring}.${freeLength === null ? 'freeLength' : 'solidLength'}`;
  return [
    freeLength === null || solidLength === null
      ? neededRow(name, [needed('spring lengths', path)])
      : neededRow(name, [needed('nothing planned', 'loadCases')]),
  ];
}

/** Planned cells of the spring in view, for every load: also those that are only looked at. */
function plannedCells(
  planned: JobPlan,
  end: End,
): readonly { readonly loadCase: string; readonly cell: Planned }[] {
  return springInView(planned, end)?.cells.flatMap((cell) => (cell.kind === 'planned' ? [cell] : [])) ?? [];
}
