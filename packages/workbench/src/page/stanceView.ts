import { formatPlainNumber, unitOf } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import { radiusBySize } from '../inputs/tyreRadius.ts';
import type { JobPlan } from '../path.ts';
import type { KeepDocument, KeepTwoDocument, KeptChange, StanceFigureDocument } from '../stance/document.ts';
import type { StanceFigure, StanceNeed } from '../stance/rows.ts';
import { stanceOfLoad } from '../stance/stance.ts';
import {
  beamWords,
  brakeNotes,
  changeNumber,
  feltWords,
  keepTwoWords,
  keepWords,
  leanNotes,
  stanceDimension,
  stanceName,
  steadyWords,
} from '../stance/words.ts';
import { stance as say } from '../words/english/stance.ts';
import type { FigureWords } from './shapes.ts';
import { figureWords } from './stands.ts';

/** How one load stands and steers, in words ready in the units chosen. */
export interface StanceView {
  readonly rows: readonly StanceRowView[];
  readonly feltBy: string;
  readonly notes: readonly string[];
  readonly beam: readonly string[];
  readonly keep: readonly KeepView[];
  readonly look: string;
  readonly tyres: readonly string[];
  readonly steady: readonly {
    readonly action: 'braking' | 'driving';
    readonly needs: boolean;
    readonly says: readonly string[];
  }[];
  readonly brakeNotes: readonly string[];
}

export interface StanceRowView {
  readonly figure: StanceFigure;
  readonly point: string | null;
  readonly name: string;
  readonly asFound: FigureWords | null;
  readonly planned: FigureWords | null;
  readonly change: string | null;
  readonly felt: string | null;
  /** What must be read first, and the field of the job where it goes. */
  readonly needs: { readonly says: string; readonly path: string } | null;
}

export interface KeepView {
  readonly wanted: string;
  readonly does: string;
  readonly verdict: string;
  /** What the job's choice would hold [mm, against as found]; nothing where it cannot be set, or lies beyond an adjuster. */
  readonly set: readonly { readonly part: 'shockLength' | 'clampHeight'; readonly mm: number }[];
}

/** Null where the machine does not rest with this load. */
export function stanceView(planned: JobPlan, load: string | null, units: Units): StanceView | null {
  const document = stanceOfLoad(planned, load);
  if (document === null) return null;
  const { figures, beam, keep, keepTwo, steady } = document;
  return {
    rows: figures.map((row) => rowView(planned, row, units)),
    feltBy: say.feltNote,
    notes: leanNotes(planned, figures),
    beam: beam === null ? [] : beamWords(planned, beam, units),
    keep: [
      ...keep.map((each) => keepView(planned, each, units)),
      ...keepTwo.map((each) => keepTwoView(planned, each, units)),
    ],
    look: say.keep.look,
    tyres: (['rear', 'front'] as const).flatMap((end) => tyreWords(planned, end, units) ?? []),
    steady: steady.map((each) => ({
      action: each.action,
      needs: each.kind === 'needs',
      says: steadyWords(planned, each, units),
    })),
    brakeNotes: brakeNotes(planned),
  };
}

function rowView(planned: JobPlan, row: StanceFigureDocument, units: Units): StanceRowView {
  const { figure, point, needs, asFound, planned: now, change } = row;
  const dimension = stanceDimension[figure];
  return {
    figure,
    point,
    name: stanceName(planned, figure, point),
    asFound: asFound === null ? null : figureWords(asFound, dimension, units),
    planned: now === null ? null : figureWords(now, dimension, units),
    change: change === null ? null : changeNumber(change, dimension, units),
    felt: feltWords(row),
    needs: needs === null ? null : { says: say.needs[needs], path: pathOf(needs, point) },
  };
}

/** The field at which a missing figure is written. */
function pathOf(needs: StanceNeed, point: string | null): string {
  switch (needs) {
    case 'seat':
      return 'machine.seat.x';
    case 'fork offset':
      return 'machine.forkOffset';
    case 'sideways':
      return `machine.points.${point}.sideways`;
    case 'beam':
      return 'machine.beam';
    default:
      return 'machine.points';
  }
}

/** A turn of a thread is not finer than this [mm]. Common practice, no source. */
const STEP = 0.5;

function keepView(planned: JobPlan, keep: KeepDocument, units: Units): KeepView {
  return {
    ...keepWords(planned, keep, units),
    set: setOf(keep.by === 'shock length' ? 'shockLength' : 'clampHeight', keep),
  };
}

/** Both changes are put in at once, or neither. */
function keepTwoView(planned: JobPlan, keep: KeepTwoDocument, units: Units): KeepView {
  const sets = (['shockLength', 'clampHeight'] as const).map((part) => setOf(part, keep[part]));
  return {
    ...keepTwoWords(planned, keep, units),
    set: sets.some(({ length }) => length === 0) ? [] : sets.flat(),
  };
}

function setOf(part: 'shockLength' | 'clampHeight', { choice, verdict }: KeptChange): KeepView['set'] {
  if (choice === null || verdict === 'outside') return [];
  return [{ part, mm: Math.round((1000 * choice) / STEP) * STEP }];
}

/** Two sizes of one end beside each other; null where none was chosen, or the one found has no size. */
function tyreWords({ job }: JobPlan, end: 'rear' | 'front', units: Units): string | null {
  const [was, now] = [job.machine[end].tyre?.size, job.choice?.[`${end}Tyre`]];
  if (was === undefined || now === undefined) return null;
  const unit = unitOf('length', units);
  const length = (value: number): string => `${formatPlainNumber(value, 'length', units)} ${unit}`;
  const by = radiusBySize(now) - radiusBySize(was);
  return say.tyres(
    end,
    was,
    length(radiusBySize(was)),
    now,
    length(radiusBySize(now)),
    length(Math.abs(by)),
    by >= 0,
  );
}
