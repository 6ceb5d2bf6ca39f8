import type { JobDocument } from '@sagwright/records/schema';
import type { InputProblem } from './desk.ts';

const why = {
  sidecar: 'a sidecar carries part of the load on a third wheel',
  trike: 'a trike does not stand in one plane',
  'rigid rear': 'a rigid rear has no spring to choose',
} as const;

/** What is not planned at all, said at once; null for a machine that is. */
export function outOfScope(job: JobDocument): InputProblem | null {
  const { kind } = job.machine;
  if (kind === 'solo') return null;
  return {
    path: 'machine.kind',
    code: 'out of scope',
    message: `Kind of machine: ${kind}; only machines on two sprung wheels are planned, since ${why[kind]}.`,
  };
}
