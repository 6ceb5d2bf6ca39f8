import { type Problem, problem } from '../problem.ts';
import type { JobDocument } from '../schema.ts';
import { notFalling, notRising } from './tables.ts';

const path = ['machine', 'front', 'travel'] as const;

/** A front that is no telescopic fork: rows that go one way, what it needs beside them, and nothing that only a fork has. */
export function* frontTravelProblems({ machine, setups, choice }: JobDocument): Generator<Problem> {
  const { travel, fork } = machine.front;
  if (travel === undefined) return;
  for (const field of ['tubes', 'stack', 'clampHeight'] as const) {
    if (fork?.[field]) yield problem(['machine', 'front', 'fork', field], 'onlyOfFork');
  }
  if (fork?.air && fork.air !== 'none') yield problem(['machine', 'front', 'fork', 'air'], 'onlyOfFork');
  if (choice?.clampHeight) yield problem(['choice', 'clampHeight'], 'onlyOfFork');
  if (travel.kind === 'force') {
    yield* notRising(travel.rows, 'wheel', [...path, 'rows']);
    yield* notRising(travel.rows, 'force', [...path, 'rows']);
    for (const field of ['stroke', 'rubber', 'topOut', 'adjuster'] as const) {
      if (fork?.[field]) yield problem(['machine', 'front', 'fork', field], 'forcesAlready');
    }
    if (setups.asFound.front) yield problem(['setups', 'asFound', 'front'], 'forcesAlready');
    return;
  }
  if (travel.kind === 'table') {
    yield* notRising(travel.rows, 'wheel', [...path, 'rows']);
    yield* notFalling(travel.rows, 'shock', [...path, 'rows']);
  }
  if (!fork?.stroke)
    yield problem(['machine', 'front', 'fork', 'stroke'], 'missing', 'the stroke of its springs');
  if (!setups.asFound.front) yield problem(['setups', 'asFound', 'front'], 'missing', 'what stands in it');
}
