import { beamAgainst } from '@sagwright/model/attitude/beam';
import type { Figure } from '@sagwright/model/plan/answer';
import { asChosen } from '@sagwright/model/plan/question';
import type { JobPlan } from '../path.ts';
import { standingShown } from '../why/standingShown.ts';
import { beamRules } from './beamRules.ts';
import type { BeamDocument, StanceDocument, StanceFigureDocument, StanceLoadDocument } from './document.ts';
import { keepsOf, keepTwosOf } from './keep.ts';
import { type OwnFigures, ownFigures } from './own.ts';
import { changeAt, figureAt, type Posture, postureAt } from './posture.ts';
import { type StanceRow, stanceRows } from './rows.ts';
import { steadyOfLoad } from './steadyOfLoad.ts';

/** How the machine stands and steers: the machine alone, then every load. */
export function stanceOf(planned: JobPlan): StanceDocument {
  const loads = [null, ...planned.inputs.question.loadCases.map(({ id }) => id)];
  return {
    massCentre: planned.inputs.massCentre,
    loads: loads.flatMap((load) => stanceOfLoad(planned, load) ?? []),
  };
}

/** One load (null: the machine alone); null where it does not rest as found. */
export function stanceOfLoad(planned: JobPlan, load: string | null): StanceLoadDocument | null {
  const found = standingShown(planned, load, 'asFound');
  if (found === null) return null;
  const set = isPlanned(planned, load) ? standingShown(planned, load, 'planned') : null;
  const rows = rowsOf(planned);
  const mine = ownFigures(planned);
  const before = postureAt(planned, rows, found, mine);
  const now = set === null ? null : postureAt(planned, rows, set, mine);
  return {
    loadCase: load,
    figures: rows.map((row, place) => figureDocument(row, place, before, now)),
    beam: beamDocument(rows, now ?? before, mine, planned),
    keep: load === null ? [] : keepsOf(planned, load, set ?? found),
    keepTwo: load === null ? [] : keepTwosOf(planned, load, set ?? found),
    steady: steadyOfLoad(planned, set ?? found),
  };
}

/** The rows that this job has. */
export function rowsOf({ inputs }: JobPlan): readonly StanceRow[] {
  const { seat, forkOffset } = asChosen(inputs.question).machine.geometry;
  return stanceRows(inputs.stance, { seat: seat !== null, forkOffset: forkOffset !== null });
}

/** Whether something is set otherwise than as found with a load. */
function isPlanned({ plan, inputs }: JobPlan, load: string | null): boolean {
  if (load === null) return false;
  const set = plan.planned.loadCases.find(({ loadCase }) => loadCase === load);
  return (
    inputs.question.chosen !== undefined || (set !== undefined && (set.rear !== null || set.front !== null))
  );
}

function figureDocument(
  { figure, point, needs }: StanceRow,
  place: number,
  before: Posture,
  now: Posture | null,
): StanceFigureDocument {
  const change = changeAt(now, before, place);
  return {
    figure,
    point: point?.id ?? null,
    needs,
    asFound: figureAt(before, place),
    planned: figureAt(now, place),
    change,
    felt: change === null ? null : feltOf(change),
  };
}

/** A change that is beyond its own ±. */
function feltOf({ value, plusMinus }: Figure): 'more' | 'less' | null {
  if (Math.abs(value) <= (plusMinus ?? 0)) return null;
  return value > 0 ? 'more' : 'less';
}

function beamDocument(
  rows: readonly StanceRow[],
  posture: Posture,
  { own }: OwnFigures,
  { inputs }: JobPlan,
): BeamDocument | null {
  const drop = figureAt(
    posture,
    rows.findIndex(({ figure }) => figure === 'beam-drop'),
  );
  if (drop === null || inputs.stance.beam === null) return null;
  const rule = beamRules[0]!;
  const distance = own.at('machine.beam.distance');
  const lamp = figureAt(
    posture,
    rows.findIndex(({ figure }) => figure === 'lamp-height'),
  );
  const told = { rule: rule.name, where: rule.where, source: rule.source, distance, drop };
  const against = lamp === null ? null : beamAgainst(rule, lamp.value, drop.value / distance);
  if (against === null) return { ...told, least: null, most: null, verdict: 'not checked' };
  const [least, most] = [against.row.least * distance, against.row.most * distance];
  const room = Math.min(Math.abs(drop.value - least), Math.abs(most - drop.value));
  const isSure = room > (drop.plusMinus ?? 0);
  return { ...told, least, most, verdict: isSure ? against.verdict : 'within its ±' };
}
