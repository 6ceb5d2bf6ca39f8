import type { Plan } from '@sagwright/model/plan/answer';
import { plan } from '@sagwright/model/plan/plan';
import type { JobDocument } from '@sagwright/records/schema';
import type { InputProblem } from './inputs/desk.ts';
import { type Inputs, inputsOf } from './inputs/inputs.ts';

/** A job planned, or why it cannot be. */
export type PlannedJob = JobPlan | { readonly ok: false; readonly problems: readonly InputProblem[] };

/** A job with its plan, and with all that went into it. */
export interface JobPlan {
  readonly ok: true;
  readonly job: JobDocument;
  readonly inputs: Inputs;
  readonly plan: Plan;
}

/** The path that page, terminal and tests share: job → SI inputs → balance and plan. Units go on again in `format`. */
export function planJob(job: JobDocument): PlannedJob {
  const result = inputsOf(job);
  if (!result.ok) return result;
  return planInputs(job, result.inputs);
}

/** The second half of that path, for inputs that are there already. */
export function planInputs(job: JobDocument, inputs: Inputs): JobPlan {
  return { ok: true, job, inputs, plan: plan(inputs.question) };
}
