import type { StrutSI } from '../dampers/strut.ts';
import type { EndSI, MachineSI } from '../statics/machine.ts';

/** A strut with one straight spring and nothing else: rate [N/m], preload [m]. */
export function plainStrut(rate: number, preload: number): StrutSI {
  return { spring: { kind: 'linear', rate }, preload, gas: null, rubber: null, topOut: null, friction: 0 };
}

/**
 * A machine for sums by hand: both ends alike, the body midway between them, axles straight up and down. It stays level
 * whatever its springs do, so each end bears half of the 200 kg body, 980.665 N, over its motion ratio of 0.5:
 * 1961.33 N along its one strut. Stroke 100 mm, wheel travel 200 mm, 20 kg on each wheel.
 */
export function levelMachine(strut: StrutSI): MachineSI {
  const end: EndSI = {
    unsprung: 20,
    tyre: { radius: 0.3, rate: 200_000 },
    referenceTravel: 0,
    strokeMax: 0.1,
    kinematics: { kind: 'ratio', motionRatio: 0.5 },
    axlePath: { kind: 'straight' },
    struts: [strut],
  };
  return {
    geometry: { wheelbase: 1.5, rake: 0.45, forkOffset: 0.05, seat: { x: 0.5, height: 0.8 } },
    sprung: { mass: 200, x: 0.75, height: 0.5 },
    load: { mass: 0, momentX: 0, momentHeight: 0 },
    rear: end,
    front: end,
  };
}
