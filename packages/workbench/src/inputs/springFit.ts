import { meanOf, wireOf } from './coil.ts';
import type { Desk } from './desk.ts';

/** Inner diameter of a spring [m]: typed, or from its coil; null where neither is known. */
export function insideOf(desk: Desk, id: string): number | null {
  const { inside, rate } = desk.job.springs[id]!;
  if (inside !== undefined) return desk.take.known(`springs.${id}.inside`, inside, 'coilDiameter');
  if (rate.kind !== 'coil' && rate.kind !== 'wound') return null;
  const path = `springs.${id}.rate`;
  const wire = wireOf(desk, path, rate);
  return meanOf(desk, path, rate, wire) - wire;
}

/** The largest diameter that a rear spring goes over [m]; null where nobody measured it. */
export function springOverOf({ job, take }: Desk): number | null {
  const { springOver } = job.machine.rear.shock;
  return springOver === undefined
    ? null
    : take.known('machine.rear.shock.springOver', springOver, 'coilDiameter');
}

/** Takes what a spring's fit needs and the balance does not, so that it stands among the figures of the job. */
export function takeFitFigures(desk: Desk): void {
  springOverOf(desk);
  for (const [id, { end }] of Object.entries(desk.job.springs)) if (end === 'rear') insideOf(desk, id);
}
