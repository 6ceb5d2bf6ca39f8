import type { JobPlan } from '../path.ts';
import { type Desk, deskOf } from './desk.ts';
import { takeAgain } from './take.ts';

/** A job taken apart once more by the figures that went into its sum, with the one at `moved` off by `by` (SI). A taped rear is not fitted again. */
export function deskAgain(
  { job, inputs }: Pick<JobPlan, 'job' | 'inputs'>,
  moved?: string,
  by?: number,
): Desk {
  return deskOf(job, takeAgain(inputs.figures, moved, by));
}
