import { asChosen } from '@sagwright/model/plan/question';
import type { Knob } from '@sagwright/records/schema/limits';
import { inOrder } from '../inputs/desk.ts';
import type { JobPlan } from '../path.ts';
import { ownFigures } from '../stance/own.ts';
import { figureAt, postureAt } from '../stance/posture.ts';
import { rowsOf } from '../stance/stance.ts';
import { standing } from '../why/standing.ts';
import type { LimitNote } from './document.ts';
import { checkedRow, type LimitRow, needed, neededRow, type RowName } from './row.ts';

/** The lean on each side stand, nothing aboard, with the shock length and clamp height that are chosen. */
export function sideStandRows(planned: JobPlan): readonly LimitRow[] {
  const rows = rowsOf(planned);
  const stands = rows.flatMap((row, place) => (row.figure === 'stand-lean' ? [{ row, place }] : []));
  const { machine, inputs } = asChosen(planned.inputs.question);
  const alone = stands.some(({ row }) => row.read !== null) ? standing(machine, null, inputs) : null;
  const posture = alone === null ? null : postureAt(planned, rows, alone, ownFigures(planned));
  return stands.map(({ row: { point, needs }, place }) => {
    const of = point?.id ?? null;
    const name: RowName = {
      id: of === null ? 'side-stand' : `side-stand-${of}`,
      kind: 'side stand',
      end: null,
      of,
      dimension: 'angle',
    };
    if (needs === 'sideways') return neededRow(name, [needed('sideways', `machine.points.${of}.sideways`)]);
    if (needs !== null) return neededRow(name, [needed('side stand', 'machine.points')]);
    const lean = figureAt(posture, place);
    if (lean === null) return neededRow(name, [needed('rest', 'machine.weighing')]);
    return leanRow(planned, name, lean);
  });
}

function leanRow(
  { inputs }: JobPlan,
  name: RowName,
  lean: { readonly value: number; readonly plusMinus: number | null },
): LimitRow {
  const least = inputs.figures.get('machine.limits.standLean.least');
  const most = inputs.figures.get('machine.limits.standLean.most');
  if (least === undefined || most === undefined)
    return neededRow(name, [needed('stand lean', 'machine.limits.standLean')]);
  const nearer = lean.value - least.value < most.value - lean.value ? least : most;
  const margin = {
    value: Math.min(lean.value - least.value, most.value - lean.value),
    plusMinus: Math.hypot(lean.plusMinus ?? 0, nearer.halfWidth),
  };
  const allowed = { value: nearer.value, plusMinus: nearer.halfWidth };
  return checkedRow(name, [{ loadCase: null, found: lean, allowed, margin, contributions: () => [] }]);
}

/** As far from its base as this share of all clicks a knob counts as far away. Common practice, no source. */
const FAR = 0.25;

/** Every damper knob: within its clicks, and how far from where its maker starts. */
export function knobRows(planned: JobPlan): readonly LimitRow[] {
  return inOrder(planned.job.machine.knobs ?? {}).map(([id, knob]) => {
    const name: RowName = { id: `clicks-${id}`, kind: 'clicks', end: knob.end, of: id, dimension: 'count' };
    const { at, count } = knob;
    if (at === undefined) return neededRow(name, [needed('clicks', `machine.knobs.${id}.at`)]);
    const exact = (value: number) => ({ value, plusMinus: 0 });
    const margin = exact(Math.min(at, count - at));
    const held = { loadCase: null, found: exact(at), allowed: exact(count), margin };
    return checkedRow(name, [{ ...held, contributions: () => [] }], knobNotes(knob, at));
  });
}

function knobNotes({ base, count }: Knob, at: number): readonly LimitNote[] {
  if (base === undefined) return ['base not known'];
  return Math.abs(at - base) > FAR * count ? ['far from base'] : [];
}
