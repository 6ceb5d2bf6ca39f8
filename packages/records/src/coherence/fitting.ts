import { type Problem, problem } from '../problem.ts';
import { fastenings } from '../schema/fastenings.ts';
import type { JobDocument } from '../schema.ts';
import { asTyped, isBelow } from './compare.ts';

/** A sleeve has a wall, and a torque comes from the manual or not at all. */
export function* fittingProblems({ fitting }: JobDocument): Generator<Problem> {
  const rear = fitting?.rear;
  if (rear === undefined) return;
  for (const end of ['top', 'bottom'] as const) {
    const { inner, outer } = rear[end]?.sleeve ?? {};
    if (inner === undefined || outer === undefined || isBelow(inner, outer)) continue;
    const path = ['fitting', 'rear', end, 'sleeve', 'inner'];
    yield problem(path, 'notBelow', asTyped(inner), 'its outer diameter', asTyped(outer));
  }
  for (const part of fastenings) {
    const origin = rear.torques?.[part]?.value?.origin;
    if (origin === undefined || origin === 'manual') continue;
    yield problem(['fitting', 'rear', 'torques', part, 'value', 'origin'], 'torqueFromManual', origin);
  }
}
