import type { LimitOf, LimitResult } from '@sagwright/model/limits/limits';
import type { RoomEnd } from '@sagwright/model/limits/room';
import type { Figure } from '@sagwright/model/plan/answer';

/** Everything that the machine may not be ridden beyond, in one order, and what it may still be given. SI. */
export interface LimitListDocument {
  readonly rows: readonly LimitRowDocument[];
  readonly room: readonly RoomDocument[];
}

/** One limit of the job, with the load that comes nearest to it. */
export interface LimitRowDocument {
  /** Unchanging: 'rear-axle', 'place-carrier', 'clearance-left-bag'. */
  readonly id: string;
  readonly kind: LimitKind;
  readonly end: 'rear' | 'front' | null;
  /** Id of the place, clearance, knob or point that it is of. */
  readonly of: string | null;
  readonly dimension: LimitDimension;
  readonly verdict: LimitResult['verdict'];
  /** The worst load; null where loads make no difference, or nothing was checked. */
  readonly loadCase: string | null;
  readonly found: Figure | null;
  readonly allowed: Figure | null;
  /** What is left; below 0 by how much it fails. Null where not checked. */
  readonly margin: Figure | null;
  /** What must be read before it can be checked; empty where it is checked. */
  readonly needs: readonly LimitNeeded[];
  readonly notes: readonly LimitNote[];
}

export type LimitKind =
  | 'gross'
  | 'axle'
  | 'tyre load'
  | 'tyre speed'
  | 'tyre pressure'
  | 'place'
  | 'preload'
  | 'shock length'
  | 'coil bind'
  | 'clearance'
  | 'side stand'
  | 'clicks';

/** Clicks are counted. */
export type LimitDimension = 'mass' | 'length' | 'speed' | 'pressure' | 'angle' | 'count';

export interface LimitNeeded {
  readonly what: LimitNeed;
  /** The field of the job where it goes. */
  readonly path: string;
}

export type LimitNeed =
  | 'gross rating'
  | 'axle rating'
  | 'tyre capacity'
  | 'capacity at pressure'
  | 'speed symbol'
  | 'top speed'
  | 'pressure'
  | 'placard pressure'
  | 'place limit'
  | 'what lies where'
  | 'rest'
  | 'nothing planned'
  | 'thread'
  | 'spring lengths'
  | 'gap'
  | 'gap at bump'
  | 'side stand'
  | 'sideways'
  | 'stand lean'
  | 'clicks';

/** What makes a limit less certain, or must be said beside it. */
export type LimitNote =
  | 'from load index'
  | 'at placard pressure'
  | 'from table'
  | 'tyre worn'
  | 'tyre aged'
  | 'tyre not looked at'
  | 'symbol holds at its load'
  | 'past its end'
  | 'line carried on'
  | 'far from base'
  | 'base not known';

/** How much more may lie at a place with a load, tank full [kg]; the least that any limit leaves. */
export interface RoomDocument {
  readonly loadCase: string;
  readonly place: string;
  /** A passenger, where the seat is free; else things. */
  readonly takes: 'person' | 'things';
  /** Null where nothing that is known ends it: not checked. */
  readonly mass: Figure | null;
  readonly by: RoomEnd | null;
  /** Limits nobody has read: the room may be less. */
  readonly notChecked: readonly LimitOf[];
}
