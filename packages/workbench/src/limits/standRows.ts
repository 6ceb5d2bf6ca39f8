import { asChosen } from '@sagwright/model/plan/question';
import type { Knob } from '@sagwright/records/schema/limits';
import { inOrder } from '../inputs/desk.ts';
import type { JobPlan } from '../path.ts';
import { ownFigures } from '../stance/own.ts';
import { type Posture, postureAt } from '../stance/posture.ts';
import { rowsOf } from '../stance/stance.ts';
import { standing } from '../why/standing.ts';
import type { LimitNote } from './document.ts';
import { needed } from './needs.ts';
import { checkedRow, type Held, type LimitRow, neededRow, type RowName, spreadOf } from './row.ts';

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
    if (posture === null || posture.values[place] == null)
      return neededRow(name, [needed('rest', 'machine.weighing')]);
    return leanRow(planned, name, posture, place);
  });
}

/** Between two bounds: whichever leaves less, its ± taken off. */
function leanRow({ inputs }: JobPlan, name: RowName, { values, slopes }: Posture, place: number): LimitRow {
  const lean = values[place]!;
  const moves = new Map([...slopes].map(([input, each]) => [input, each[place] ?? 0]));
  const isKnown = [...moves.values()].every(Number.isFinite);
  const found = { value: lean, plusMinus: isKnown ? spreadOf(lean, moves).figure.plusMinus : null };
  const bounds = [
    { bound: inputs.figures.get('machine.limits.standLean.least'), over: 1 },
    { bound: inputs.figures.get('machine.limits.standLean.most'), over: -1 },
  ];
  const held = bounds.flatMap(({ bound, over }): Held[] => {
    if (bound === undefined) return [];
    const margin = over * (lean - bound.value);
    const parts = [
      ...[...moves].map(([input, slope]) => [input, over * slope] as const),
      [bound.path, -over * bound.deviation] as const,
    ];
    const spread = isKnown ? spreadOf(margin, new Map(parts)) : null;
    return [
      {
        loadCase: null,
        found,
        allowed: { value: bound.value, plusMinus: bound.halfWidth },
        margin: spread?.figure ?? { value: margin, plusMinus: null },
        contributions: () => spread?.contributions ?? [],
      },
    ];
  });
  if (held.length < bounds.length) return neededRow(name, [needed('stand lean', 'machine.limits.standLean')]);
  return checkedRow(name, held, isKnown ? [] : ['± not known']);
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
