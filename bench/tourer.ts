/** An invented heavy tourer, for measuring only: no machine that is built has these figures. */
import { forkAir } from '@sagwright/model/dampers/gas';
import type { StrutSI } from '@sagwright/model/dampers/strut';
import type { PointMass } from '@sagwright/model/masses/pointMass';
import { monotoneCubic } from '@sagwright/model/numerics/monotoneCubic';
import type { KinematicsSI } from '@sagwright/model/rear/kinematics';
import type { MachineSI } from '@sagwright/model/statics/machine';
import type { WeighingSI } from '@sagwright/model/statics/weighing';

export const rider: PointMass = { mass: 92, x: 0.55, height: 0.98 };
export const lightRider: PointMass = { mass: 66, x: 0.55, height: 0.95 };
export const passenger: PointMass = { mass: 74, x: 0.15, height: 1.08 };
export const sideCases: PointMass = { mass: 18, x: -0.05, height: 0.62 };
export const topBox: PointMass = { mass: 12, x: -0.35, height: 0.95 };

/** Two shocks at one motion ratio. */
export const twinShocks: KinematicsSI = { kind: 'ratio', motionRatio: 0.9 };

/** A linkage whose ratio rises along its travel, as drawn points. */
export const linkage: KinematicsSI = {
  kind: 'table',
  curve: monotoneCubic([0, 0.02, 0.04, 0.06, 0.08, 0.1], [0, 0.0172, 0.0348, 0.0528, 0.0712, 0.09]),
  scale: 1,
};

export const shock: StrutSI = {
  spring: { kind: 'linear', rate: 23000 },
  preload: 0.022,
  gas: { area: 1.227e-4, pressure: 701325, volume: 6e-5, exponent: 1 },
  rubber: { start: 0.055, rate: 20000, hardening: 2e8 },
  topOut: { rate: 60000, length: 0.004 },
  friction: 35,
};

const leg: StrutSI = {
  spring: { kind: 'linear', rate: 10500 },
  preload: 0.026,
  gas: forkAir(1.45e-3, 1.32e-3, 0.125, 0.117, 101325, 1),
  rubber: { start: 0.105, rate: 40000, hardening: 1e9 },
  topOut: { rate: 30000, length: 0.01 },
  friction: 35,
};

/** What two wheel scales read of it with nobody aboard. */
export const weighing: WeighingSI = { front: 168, rear: 202, wholeHeight: 0.5, attitude: 'own sag' };

/** Its sprung body is what `weighing` gives with the machine held level. */
export function tourer(kinematics: KinematicsSI, strut: StrutSI): MachineSI {
  return {
    geometry: { wheelbase: 1.625, rake: 0.4712, forkOffset: 0.048, seat: { x: 0.52, height: 0.74 } },
    sprung: { mass: 315, x: 0.743, height: 0.532 },
    load: { mass: 0, momentX: 0, momentHeight: 0 },
    rear: {
      unsprung: 31,
      tyre: { radius: 0.318, rate: 185000 },
      referenceTravel: 0,
      strokeMax: 0.069,
      kinematics,
      axlePath: { kind: 'circle', pivotX: 0.5, pivotHeight: 0.36 },
      struts: [strut, strut],
    },
    front: {
      unsprung: 24,
      tyre: { radius: 0.312, rate: 170000 },
      referenceTravel: 0,
      strokeMax: 0.117,
      kinematics: { kind: 'fork' },
      axlePath: { kind: 'fork' },
      struts: [leg, leg],
    },
  };
}
