import { forkAir } from '../dampers/gas.ts';
import type { StrutSI } from '../dampers/strut.ts';
import type { PointMass } from '../masses/pointMass.ts';
import type { MachineSI } from '../statics/machine.ts';
import { plainStrut } from './levelMachine.ts';

export const rider: PointMass = { mass: 92, x: 0.55, height: 0.98 };
export const passenger: PointMass = { mass: 74, x: 0.15, height: 1.08 };
export const cases: PointMass = { mass: 18, x: -0.05, height: 0.62 };

/** An invented heavy tourer with two shocks: gas, air, top-out springs, a swingarm. No machine that is built has these figures. */
export function tourer(): MachineSI {
  const shock: StrutSI = {
    ...plainStrut(26_000, 0.022),
    gas: { area: 1.2e-4, pressure: 8e5, volume: 6e-5, exponent: 1 },
    topOut: { rate: 60_000, length: 0.004 },
  };
  const leg: StrutSI = {
    ...plainStrut(10_500, 0.026),
    gas: forkAir(1.45e-3, 1.32e-3, 0.125, 0.117, 101_325, 1),
  };
  return {
    geometry: { wheelbase: 1.625, rake: 0.471, forkOffset: 0.05, seat: { x: 0.5, height: 0.72 } },
    sprung: { mass: 315, x: 0.743, height: 0.532 },
    load: { mass: 0, momentX: 0, momentHeight: 0 },
    rear: {
      unsprung: 31,
      tyre: { radius: 0.318, rate: 185_000 },
      referenceTravel: 0,
      strokeMax: 0.069,
      kinematics: { kind: 'ratio', motionRatio: 0.9 },
      axlePath: { kind: 'circle', pivotX: 0.5, pivotHeight: 0.36 },
      struts: [shock, shock],
    },
    front: {
      unsprung: 24,
      tyre: { radius: 0.312, rate: 170_000 },
      referenceTravel: 0,
      strokeMax: 0.117,
      kinematics: { kind: 'fork' },
      axlePath: { kind: 'fork' },
      struts: [leg, leg],
    },
  };
}
