import { attitudeAt } from '@sagwright/model/attitude/attitude';
import { beamDrop } from '@sagwright/model/attitude/beam';
import { heightAt, leanToTouch } from '@sagwright/model/attitude/leanAngle';
import type { Prepared } from '@sagwright/model/statics/prepared';
import type { PointFigures, StanceFigures } from '../inputs/stance.ts';

/** Every figure of how a machine stands and steers. */
export type StanceFigure =
  | 'seat-height'
  | 'peg-height'
  | 'rake'
  | 'trail'
  | 'normal-trail'
  | 'wheelbase'
  | 'pitch'
  | 'lean'
  | 'lean-in-bend'
  | 'stand-lean'
  | 'lamp-height'
  | 'beam-drop';

/** What somebody would have to read before a figure can be told. */
export type StanceNeed =
  | 'seat'
  | 'peg'
  | 'fork offset'
  | 'hard part'
  | 'side stand'
  | 'sideways'
  | 'headlamp'
  | 'beam';

/** One figure, of a point of the machine where it has one. */
export interface StanceRow {
  readonly figure: StanceFigure;
  readonly point: PointFigures | null;
  /** What is missing; then there is nothing to read. */
  readonly needs: StanceNeed | null;
  readonly read: ReadStance | null;
}

/** A figure from a rest; `own` gives a figure of the job by its path (points, crowns, beam). Null: it never comes to that. */
export type ReadStance = (prepared: Prepared, state: ArrayLike<number>, own: Own) => number | null;

export interface Own {
  readonly at: (path: string) => number;
  /** Pitch at which the beam was read [rad]; null where the machine had no rest then. */
  readonly pitchOfBeam: number | null;
}

/** The rows of a machine in the order they are told: seat and pegs first, since that is what is asked first. */
export function stanceRows(
  stance: StanceFigures,
  known: { seat: boolean; forkOffset: boolean },
): readonly StanceRow[] {
  const { points } = stance;
  const of = (kinds: readonly PointFigures['kind'][]): readonly PointFigures[] =>
    points.filter(({ kind }) => kinds.includes(kind));
  const needed = (figure: StanceFigure, needs: StanceNeed, point: PointFigures | null = null): StanceRow => ({
    figure,
    point,
    needs,
    read: null,
  });
  const plain = (figure: StanceFigure, read: ReadStance): StanceRow => ({
    figure,
    point: null,
    needs: null,
    read,
  });
  const each = (
    figure: StanceFigure,
    list: readonly PointFigures[],
    none: StanceNeed,
    row: (point: PointFigures) => StanceRow,
  ): readonly StanceRow[] => (list.length === 0 ? [needed(figure, none)] : list.map(row));
  const height =
    (figure: StanceFigure) =>
    (point: PointFigures): StanceRow => ({
      figure,
      point,
      needs: null,
      read: heightOf(point),
    });
  const lean =
    (figure: StanceFigure) =>
    (point: PointFigures): StanceRow =>
      point.sideways === null
        ? needed(figure, 'sideways', point)
        : { figure, point, needs: null, read: leanOf(point, stance) };
  const parts = [
    ...of(['hard part']),
    ...of(['rider peg', 'passenger peg']).filter((peg) => peg.sideways !== null),
  ];
  return [
    known.seat ? plain('seat-height', attitudePart('seatHeight')) : needed('seat-height', 'seat'),
    ...each('peg-height', of(['rider peg', 'passenger peg']), 'peg', height('peg-height')),
    plain('rake', attitudePart('rake')),
    known.forkOffset ? plain('trail', attitudePart('groundTrail')) : needed('trail', 'fork offset'),
    known.forkOffset
      ? plain('normal-trail', attitudePart('normalTrail'))
      : needed('normal-trail', 'fork offset'),
    plain('wheelbase', attitudePart('wheelbase')),
    plain('pitch', attitudePart('pitch')),
    ...each('lean', parts, 'hard part', lean('lean')),
    ...parts.filter(({ sideways }) => sideways !== null).map(lean('lean-in-bend')),
    ...each('stand-lean', of(['side stand']), 'side stand', lean('stand-lean')),
    ...each('lamp-height', of(['headlamp']), 'headlamp', height('lamp-height')),
    stance.beam === null ? needed('beam-drop', 'beam') : plain('beam-drop', beamBelow),
  ];
}

function attitudePart(part: keyof ReturnType<typeof attitudeAt>): ReadStance {
  return (prepared, state) => attitudeAt(prepared, state)[part];
}

function heightOf({ path }: PointFigures): ReadStance {
  return (_prepared, state, { at }) =>
    heightAt(state, { x: at(`${path}.at.x`), height: at(`${path}.at.height`) });
}

function leanOf({ path }: PointFigures, { crowns }: StanceFigures): ReadStance {
  return (prepared, state, { at }) =>
    leanToTouch(
      prepared,
      state,
      { x: at(`${path}.at.x`), height: at(`${path}.at.height`), sideways: at(`${path}.sideways`) },
      {
        rear: crowns.rear === null ? 0 : at('machine.rear.tyre.crown'),
        front: crowns.front === null ? 0 : at('machine.front.tyre.crown'),
      },
    );
}

/** How far below the lamp's centre the beam's edge falls at the distance where it was read [m]. */
const beamBelow: ReadStance = (prepared, state, { at, pitchOfBeam }) => {
  if (pitchOfBeam === null) return null;
  const distance = at('machine.beam.distance');
  const read = at('machine.beam.drop') / distance;
  return distance * beamDrop(read, pitchOfBeam, attitudeAt(prepared, state).pitch);
};
