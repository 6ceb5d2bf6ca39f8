import { gasAt, gasEnergy } from '../dampers/gas.ts';
import { rubberAt } from '../dampers/rubber.ts';
import type { StrutSI } from '../dampers/strut.ts';
import { topOutAt } from '../dampers/topOut.ts';
import type { AxleAt } from '../rear/axlePath.ts';
import type { StrokeAt } from '../rear/kinematics.ts';
import { wheelAt } from '../rear/wheelMotion.ts';
import type { ForceAt, RatedForce } from '../springs/forceAt.ts';
import { springAt } from '../springs/spring.ts';
import { ATMOSPHERE, type EndSI } from './machine.ts';

/** One end at one wheel travel: axle in the body, damper, and what its struts do at the wheel. */
export interface EndAt extends AxleAt, StrokeAt {
  /** Generalised force of all struts at the wheel, Q = Σ F·MR, pushing wheel and body apart positive [N]. */
  force: number;
  /** dQ/dz = Σ (k·MR² + F·dMR/dz): the wheel rate [N/m]. */
  wheelRate: number;
}

/** Which way the machine came to rest, for friction: +1 after being lifted, −1 after being pressed down, 0 frictionless. */
export type Settling = -1 | 0 | 1;

/** An `EndAt` to be filled. */
export function blankEndAt(): EndAt {
  return {
    x: 0,
    height: 0,
    axleSlope: 0,
    axleBend: 0,
    stroke: 0,
    motionRatio: 0,
    ratioSlope: 0,
    force: 0,
    wheelRate: 0,
  };
}

/**
 * Everything of one end at wheel travel z.
 *   Q = Σ F_strut·MR,   dQ/dz = Σ (k·MR² + F_strut·dMR/dz)      (virtual work: F dz_wheel = F_strut ds)
 * z         wheel travel from the hard extension stop [m];  axleX  the axle at its reference travel, body coordinates [m]
 * settling  friction as a constant force along each strut
 * Checked: checks/energy-minimised-machines.test.ts.
 */
export function endAt(
  end: EndSI,
  rake: number,
  axleX: number,
  z: number,
  settling: Settling,
  out: EndAt,
): void {
  wheelAt(end, rake, axleX, z, out);
  let force = 0;
  let rate = 0;
  const struts = end.struts;
  for (let i = 0; i < struts.length; i += 1) {
    const strut = struts[i]!;
    strutAt(strut, out.stroke, total);
    force += total.force + settling * strut.friction;
    rate += total.rate;
  }
  out.force = force * out.motionRatio;
  out.wheelRate = rate * out.motionRatio * out.motionRatio + force * out.ratioSlope;
}

/**
 * One strut at damper stroke s [m]: F = max(0, F_spring(s + p)) + F_gas + F_air + F_rubber − F_topout, friction left out.
 * Returns into `out` force [N] and rate dF/ds [N/m].
 */
export function strutAt(strut: StrutSI, stroke: number, out: RatedForce): void {
  springAt(strut.spring, stroke + strut.preload, part);
  let { force, rate } = part;
  if (strut.gas !== null) {
    gasAt(strut.gas, stroke, ATMOSPHERE, part);
    force += part.force;
    rate += part.rate;
  }
  if (strut.air !== undefined) {
    gasAt(strut.air, stroke, ATMOSPHERE, part);
    force += part.force;
    rate += part.rate;
  }
  if (strut.rubber !== null && stroke > strut.rubber.start) {
    rubberAt(strut.rubber, stroke, part);
    force += part.force;
    rate += part.rate;
  }
  if (strut.topOut !== null && stroke < strut.topOut.length) {
    topOutAt(strut.topOut, stroke, part);
    force -= part.force;
    rate += part.rate;
  }
  out.force = force;
  out.rate = rate;
}

/** Energy of all struts of an end at damper stroke s [J]; friction is a constant force: the rest after lifting has +F_c s. */
export function strutsEnergy(end: EndSI, stroke: number, settling: Settling): number {
  let energy = 0;
  for (const strut of end.struts) {
    springAt(strut.spring, stroke + strut.preload, part);
    energy += part.energy + settling * strut.friction * stroke;
    if (strut.gas !== null) energy += gasEnergy(strut.gas, stroke, ATMOSPHERE);
    if (strut.air !== undefined) energy += gasEnergy(strut.air, stroke, ATMOSPHERE);
    if (strut.rubber !== null) {
      rubberAt(strut.rubber, stroke, part);
      energy += part.energy;
    }
    if (strut.topOut !== null) {
      topOutAt(strut.topOut, stroke, part);
      energy += part.energy;
    }
  }
  return energy;
}

const total: RatedForce = { force: 0, rate: 0 };
const part: ForceAt = { force: 0, rate: 0, energy: 0 };
