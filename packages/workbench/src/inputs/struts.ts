import type { GasSI } from '@sagwright/model/dampers/gas';
import type { TopOutSI } from '@sagwright/model/dampers/topOut';
import { ATMOSPHERE } from '@sagwright/model/statics/machine';
import type { Shock, TopOut } from '@sagwright/records/schema/struts';
import { assumptions } from './assumptions.ts';
import { type Desk, impossible, note } from './desk.ts';

/** Temperature at which a machine stands while its sag is read [K]: 20 °C. */
export const SETTLED = 293.15;

/** Stroke of the rear shock [m]; assumed where nobody said. */
export function rearStroke({ job, take }: Desk): number {
  return take.orAssumed('machine.rear.shock.stroke', job.machine.rear.shock.stroke, 'stroke', 'rearStroke');
}

/** Gas of each rear shock; assumed where nobody said, null where there is none. */
export function shockGas(desk: Desk, { gas, build }: Shock, stroke: number): GasSI | null {
  if (gas === 'none') return null;
  const { take } = desk;
  const path = 'machine.rear.shock.gas';
  const diameter = take.orAssumed(`${path}.shaft`, gas?.shaft, 'shaft', 'gasShaft');
  const gauge = take.orAssumed(
    `${path}.pressure`,
    gas?.pressure,
    'gasPressure',
    build === 'twin-tube' ? 'twinTubePressure' : 'gasPressure',
  );
  const area = circle(diameter);
  const volume = gasVolume(desk, gas, build, area * stroke);
  const warm =
    gas?.temperature === undefined
      ? 1
      : SETTLED / take.known(`${path}.temperature`, gas.temperature, 'temperature');
  if (!(volume > 1.02 * area * stroke)) {
    impossible(
      desk,
      `${path}.volume`,
      `Gas of the shock: ${(volume * 1e6).toFixed(1)} ml, but the shaft takes up ${(area * stroke * 1e6).toFixed(1)} ml at full stroke; the gas needs more room. Is it the volume with the shock fully out?`,
    );
    return null;
  }
  return { area, pressure: (gauge + ATMOSPHERE) * warm, volume, exponent: 1 };
}

/** Typed, or assumed: and then at least three times what the shaft takes up, as any damper has. */
function gasVolume(
  desk: Desk,
  gas: Exclude<Shock['gas'], 'none'>,
  build: Shock['build'],
  swept: number,
): number {
  const { take } = desk;
  const path = 'machine.rear.shock.gas.volume';
  if (gas?.volume !== undefined) return take.known(path, gas.volume, 'gasVolume');
  const assumption = build === 'mono-tube with reservoir' ? 'reservoirVolume' : 'gasVolume';
  const usual = take.orAssumed(path, undefined, 'gasVolume', assumption);
  if (usual > 3 * swept) return usual;
  return take.workedOut(
    path,
    3 * swept,
    0.6 * swept,
    'volume',
    'ml',
    `${assumptions[assumption].why}; here three times the shaft's`,
  );
}

export function topOutOf(
  desk: Desk,
  path: string,
  topOut: TopOut | 'none' | undefined,
  stroke: number,
): TopOutSI | null {
  if (topOut === undefined) note(desk, 'top-out not known', path);
  if (topOut === undefined || topOut === 'none') return null;
  const length = desk.take.known(`${path}.length`, topOut.length, 'tape');
  requireWithin(desk, `${path}.length`, 'Top-out spring: free', length, stroke);
  return { length, rate: desk.take.known(`${path}.rate`, topOut.rate, 'topOut') };
}

/** What works within the stroke lies within it. The reader has seen to that where the stroke is typed, not where it is assumed. */
export function requireWithin(desk: Desk, path: string, what: string, at: number, stroke: number): void {
  if (at < stroke) return;
  const [there, whole] = [at, stroke].map((length) => `${(length * 1000).toFixed(1)} mm`);
  impossible(
    desk,
    path,
    `${what} at ${there} of stroke, but the whole stroke, which nobody gave, is taken as ${whole}; it must be less. Type the stroke.`,
  );
}

/** Section [m²] of something round. */
export function circle(diameter: number): number {
  return (Math.PI / 4) * diameter * diameter;
}
