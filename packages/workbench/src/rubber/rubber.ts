import { rubberAt } from '@sagwright/model/dampers/rubber';
import type { Figure } from '@sagwright/model/plan/answer';
import { damperAt, wheelTravelAt } from '@sagwright/model/rear/wheelMotion';
import type { MachineSI } from '@sagwright/model/statics/machine';
import type { Rubber } from '@sagwright/records/schema/struts';
import type { JobPlan } from '../path.ts';
import type { End } from '../result/inView.ts';
import { readAt, type Standing, travelOf } from '../why/standing.ts';
import { type SetUpShown, standingShown } from '../why/standingShown.ts';
import type { LeftToRubber, RubberDocument } from './document.ts';

/** The bump rubber of an end; null where there is none, or nobody knows of one. */
export function rubberDocument(planned: JobPlan, end: End): RubberDocument | null {
  const { machine, loadCases } = planned.inputs.question;
  if (machine[end].struts.every(({ rubber }) => rubber === null)) return null;
  const alone = standingShown(planned, null, 'asFound');
  const read = (figure: (machine: MachineSI) => number): Figure =>
    alone === null
      ? { value: figure(machine), plusMinus: null }
      : readAt(alone, (prepared) => figure(prepared.machine)).value;
  return {
    assumed: rubberTyped(planned, end)?.assumed ?? null,
    stroke: read((each) => rubberStart(each, end)),
    travel: read((each) => travelAtRubber(each, end)),
    pressed: read((each) => each[end].strokeMax - rubberStart(each, end)),
    force: read((each) => forceAtFullBump(each, end)),
    atWheel: read((each) => forceOnWheel(each, end)),
    loads: loadCases.map(({ id }) => ({
      loadCase: id,
      asFound: leftAt(planned, end, id, 'asFound'),
      planned: leftAt(planned, end, id, 'planned'),
    })),
  };
}

/** The rubber as the job has it, where it was told. */
function rubberTyped({ job }: JobPlan, end: End): Rubber | null {
  const strut = end === 'rear' ? job.machine.rear.shock : job.machine.front.fork;
  return strut?.rubber === undefined || strut.rubber === 'none' ? null : strut.rubber;
}

/** Stroke at which the first rubber of an end is met [m]; infinite where there is none. */
export function rubberStart(machine: MachineSI, end: End): number {
  return Math.min(...machine[end].struts.map(({ rubber }) => rubber?.start ?? Number.POSITIVE_INFINITY));
}

/** The same as wheel travel [m]. */
export function travelAtRubber(machine: MachineSI, end: End): number {
  return wheelTravelAt(machine[end], machine.geometry.rake, rubberStart(machine, end));
}

/** Force of one strut's rubber at full bump, the greatest where they differ [N]. */
export function forceAtFullBump(machine: MachineSI, end: End): number {
  return Math.max(...forcesAtFullBump(machine, end));
}

/** Of all struts, at the wheel [N]: Σ F · MR. */
function forceOnWheel(machine: MachineSI, end: End): number {
  const { strokeMax } = machine[end];
  const { rake } = machine.geometry;
  const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  damperAt(machine[end], rake, wheelTravelAt(machine[end], rake, strokeMax), at);
  return at.motionRatio * forcesAtFullBump(machine, end).reduce((sum, force) => sum + force, 0);
}

function forcesAtFullBump(machine: MachineSI, end: End): readonly number[] {
  const part = { force: 0, rate: 0, energy: 0 };
  return machine[end].struts.map(({ rubber }) => {
    if (rubber === null) return 0;
    rubberAt(rubber, machine[end].strokeMax, part);
    return part.force;
  });
}

function leftAt(planned: JobPlan, end: End, load: string, setUp: SetUpShown): LeftToRubber | null {
  const standing = standingShown(planned, load, setUp);
  if (standing === null) return null;
  const left = leftToRubber(standing, end);
  const { value, plusMinus } = left;
  if (Math.abs(value) < (plusMinus ?? 0)) return { left, verdict: 'within its ±' };
  return { left, verdict: value < 0 ? 'rests on it' : 'clear' };
}

function leftToRubber(standing: Standing, end: End): Figure {
  return readAt(standing, ({ machine }, state) => travelAtRubber(machine, end) - travelOf(end, state)).value;
}
