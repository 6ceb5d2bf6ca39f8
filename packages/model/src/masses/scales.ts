import type { PointMass } from './pointMass.ts';

/**
 * The sprung body from two wheel scales read in the reference attitude (level, tyres undeflected in effect):
 *   x = (L·m_front − L·m_u,front) / m_sprung,   h = (m·h_whole − m_u,front R_front − m_u,rear R_rear) / m_sprung
 * front, rear      scale readings [kg];  wholeHeight  height of the whole machine's mass centre [m]
 * wheelbase [m];   unsprung masses [kg] sit at their axles, at the tyres' radii [m]
 * Throws RangeError where the unsprung masses are not less than what the scales read.
 * Source: moments about the rear contact point (any mechanics text); checked in checks/energy-minimised-machines.test.ts.
 */
export function sprungFromScales(weighed: {
  readonly front: number;
  readonly rear: number;
  readonly wholeHeight: number;
  readonly wheelbase: number;
  readonly rearUnsprung: number;
  readonly frontUnsprung: number;
  readonly rearRadius: number;
  readonly frontRadius: number;
}): PointMass {
  const { front, rear, wheelbase, rearUnsprung, frontUnsprung } = weighed;
  if (!(front > frontUnsprung) || !(rear > rearUnsprung)) {
    throw new RangeError(
      `sprungFromScales: scales read ${front} and ${rear} kg, unsprung ${frontUnsprung} and ${rearUnsprung} kg; each scale must read more`,
    );
  }
  const mass = front + rear - frontUnsprung - rearUnsprung;
  const x = ((front - frontUnsprung) * wheelbase) / mass;
  const momentHeight =
    (front + rear) * weighed.wholeHeight -
    frontUnsprung * weighed.frontRadius -
    rearUnsprung * weighed.rearRadius;
  return { mass, x, height: momentHeight / mass };
}
