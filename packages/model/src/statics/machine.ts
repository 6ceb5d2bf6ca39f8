import type { StrutSI } from '../dampers/strut.ts';
import type { FirstMoments, PointMass } from '../masses/pointMass.ts';
import type { AxlePathSI } from '../rear/axlePath.ts';
import type { KinematicsSI } from '../rear/kinematics.ts';

/** One end of the machine, rear or front. */
export interface EndSI {
  /** Mass that moves with the wheel [kg]. */
  readonly unsprung: number;
  /** Radius unloaded [m]; vertical rate [N/m]. */
  readonly tyre: { readonly radius: number; readonly rate: number };
  /** Of the axle in the reference attitude [m]; left out: the tyre's radius, as with the tyre that the machine was measured on. */
  readonly axleHeight?: number;
  /**
   * Wheel travel [m] at which the body coordinates (wheelbase, heights, places) hold; with hard points it follows from
   * them (`referenceTravelOf`).
   */
  readonly referenceTravel: number;
  /** Damper stroke from the hard extension stop to metal [m]. */
  readonly strokeMax: number;
  readonly kinematics: KinematicsSI;
  readonly axlePath: AxlePathSI;
  /** The shocks or fork legs of this end; each is summed, never "times two". */
  readonly struts: readonly StrutSI[];
}

/** Body coordinates in the reference attitude: body level, tyres undeflected, wheels at their reference travel. */
export interface GeometrySI {
  readonly wheelbase: number;
  /** Steering head angle from the vertical [rad]. */
  readonly rake: number;
  /** Distance from steering axis to front axle [m]; null where nobody has read it: trail is then not known. */
  readonly forkOffset: number | null;
  readonly seat: { readonly x: number; readonly height: number } | null;
}

/** A machine as the physics sees it: SI, plain data. */
export interface MachineSI {
  readonly geometry: GeometrySI;
  /** The sprung body without what is carried: its centre of mass is a property of the body, found once. */
  readonly sprung: PointMass;
  /** What is carried, added up. */
  readonly load: FirstMoments;
  readonly rear: EndSI;
  readonly front: EndSI;
}

/** Standard gravity [m/s²] (ISO 80000-3, exact). */
export const GRAVITY = 9.80665;

/** Standard atmosphere [Pa] (exact). */
export const ATMOSPHERE = 101325;
