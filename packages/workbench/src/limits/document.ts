import type { LimitOf, LimitResult } from '@sagwright/model/limits/limits';
import type { RoomEnd } from '@sagwright/model/limits/room';
import type { Figure } from '@sagwright/model/plan/answer';

/** Everything that the machine may not be ridden beyond, in one order, and what it may still be given. SI. */
export interface LimitListDocument {
  readonly rows: readonly LimitRowDocument[];
  readonly payload: readonly PayloadDocument[];
  readonly room: readonly RoomDocument[];
}

/** What the gross rating leaves with a load, tank full [kg], wherever it goes: axles, tyres and places may allow less. */
export interface PayloadDocument {
  readonly loadCase: string;
  /** Below 0 by how much it is exceeded; null where nobody has read the rating, or the machine does not rest. */
  readonly left: Figure | null;
  /** Seats that nobody sits on; null for a load that was only weighed. */
  readonly seats: number | null;
  /** How many of them people of 75 kg may take for sure; null where one of both is not known. */
  readonly people: number | null;
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
  /** Loads that it says nothing of. */
  readonly leftOut: readonly LeftOut[];
}

/** A load that is refused, for which no sag is wanted at that end, or that wants no spring there at all. */
export interface LeftOut {
  readonly loadCase: string;
  readonly why: 'refused' | 'not wanted' | 'no spring wanted';
}

export type LimitKind =
  | 'gross'
  | 'axle'
  | 'tyre load'
  | 'tyre speed'
  | 'tyre pressure'
  | 'most pressure'
  | 'place'
  | 'preload'
  | 'shock length'
  | 'coil bind'
  | 'clearance'
  | 'side stand'
  | 'clicks';

/** Clicks are counted. */
export type LimitDimension = 'mass' | 'length' | 'speed' | 'pressure' | 'angle' | 'count';

export interface LimitNeeded<What extends LimitNeed = LimitNeed> {
  readonly what: What;
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
  | 'most pressure'
  | 'place limit'
  | 'what lies where'
  | 'rest'
  | 'nothing planned'
  | 'thread'
  | 'sag within travel'
  | 'shortest length'
  | 'free length'
  | 'solid length'
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
  | 'only at its end'
  | 'between its steps'
  | '± not known'
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
  /** All known limits leave more than this [kg]; null where `mass` tells it, or none is known. */
  readonly moreThan: number | null;
  /** Limits nobody has read, or that are known at best only: the room may be less. */
  readonly notChecked: readonly LimitOf[];
}
