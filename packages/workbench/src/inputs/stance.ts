import type { PointSI } from '@sagwright/model/attitude/leanAngle';
import { type StancePoint, sizeFigures } from '@sagwright/records/schema/stance';
import { type Desk, inOrder } from './desk.ts';

/** A point of the machine whose height or lean is told; its figures by their paths below `path`. */
export interface PointFigures extends PointSI {
  readonly id: string;
  readonly kind: StancePoint['kind'];
  readonly path: string;
}

/** What is read of how the machine stands that its balance does not need. SI; each figure with its ± stands in the list of figures. */
export interface StanceFigures {
  readonly points: readonly PointFigures[];
  /** Round of the tyres' crowns [m]; null where no size says it: then tyres are taken as thin as blades. */
  readonly crowns: { readonly rear: number | null; readonly front: number | null };
  /** Where the dipped beam's edge falls as found, and with which load (null: none). */
  readonly beam: { readonly drop: number; readonly distance: number; readonly load: string | null } | null;
  readonly braking: { readonly deceleration: number; readonly frontShare: number } | null;
  /** An acceleration [m/s²] or a thrust [N]. */
  readonly driving: { readonly acceleration: number } | { readonly thrust: number } | null;
}

export function stanceFigures(desk: Desk): StanceFigures {
  const { job, take } = desk;
  const { beam } = job.machine;
  const braking = job.steady?.braking;
  return {
    points: inOrder(job.machine.points ?? {}).map(([id, point]) => pointFigures(desk, id, point)),
    crowns: { rear: crownOf(desk, 'rear'), front: crownOf(desk, 'front') },
    beam:
      beam === undefined
        ? null
        : {
            drop: take.known('machine.beam.drop', beam.drop, 'beam'),
            distance: take.known('machine.beam.distance', beam.distance, 'beamDistance'),
            load: beam.load ?? null,
          },
    braking:
      braking === undefined
        ? null
        : {
            deceleration: take.known('steady.braking.deceleration', braking.deceleration, 'stated'),
            frontShare: take.known('steady.braking.frontShare', braking.frontShare, 'stated'),
          },
    driving: drivingOf(desk),
  };
}

function pointFigures({ take }: Desk, id: string, { kind, at, sideways }: StancePoint): PointFigures {
  const path = `machine.points.${id}`;
  return {
    id,
    kind,
    path,
    x: take.known(`${path}.at.x`, at.x, 'geometry'),
    height: take.known(`${path}.at.height`, at.height, 'geometry'),
    sideways: sideways === undefined ? null : take.known(`${path}.sideways`, sideways, 'geometry'),
  };
}

/** A tyre's crown as a part of a circle [m]: about half as wide as the tyre. Common practice, no source. */
function crownOf({ job, take }: Desk, end: 'rear' | 'front'): number | null {
  const size = job.machine[end].tyre?.size;
  if (size === undefined) return null;
  const half = sizeFigures(size).width / 2000;
  const why = 'about half as wide as the tyre; touring tyres are flatter in the middle';
  return take.workedOut(`machine.${end}.tyre.crown`, half, 0.2 * half, 'length', 'mm', why);
}

function drivingOf({ job, take }: Desk): StanceFigures['driving'] {
  const driving = job.steady?.driving;
  if (driving === undefined) return null;
  return 'thrust' in driving
    ? { thrust: take.known('steady.driving.thrust', driving.thrust, 'stated') }
    : { acceleration: take.known('steady.driving.acceleration', driving.acceleration, 'stated') };
}
