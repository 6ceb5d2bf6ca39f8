import { PITCH } from '@sagwright/model/statics/gradient';
import type { JobPlan } from '../path.ts';
import type { Standing } from '../why/standing.ts';
import { standingShown } from '../why/standingShown.ts';
import type { Own } from './rows.ts';

/** Figures that no balance needs: points, crowns and beam; closed geometry at a rest that they do not move. */
export interface OwnFigures {
  readonly own: Own;
  readonly paths: readonly string[];
  /** The machine as the beam was read; null where none was, or it had no rest so. */
  readonly beamRead: Standing | null;
}

/** For differences of closed geometry [m, rad]. */
export const OWN_STEP = 1e-5;

export function ownFigures(planned: JobPlan): OwnFigures {
  const { figures, stance } = planned.inputs;
  const beamRead = stance.beam === null ? null : standingShown(planned, stance.beam.load, 'asFound');
  return {
    own: { at: (path) => figures.get(path)!.value, pitchOfBeam: beamRead?.state[PITCH] ?? null },
    paths: [...figures.keys()].filter((path) => isOwn(path)),
    beamRead,
  };
}

function isOwn(path: string): boolean {
  return /^machine\.(?:points|beam)\.|\.tyre\.crown$/.test(path);
}

/** d(figure)/d(one of them), by a central difference. */
export function ownSlope(read: (own: Own) => number | null, own: Own, path: string): number {
  const at = (by: number): number =>
    read({ ...own, at: (each) => own.at(each) + (each === path ? by : 0) }) ?? 0;
  return (at(OWN_STEP) - at(-OWN_STEP)) / (2 * OWN_STEP);
}
