import { adjusterProblems } from './coherence/adjusters.ts';
import { fittingProblems } from './coherence/fitting.ts';
import { frontTravelProblems } from './coherence/frontTravel.ts';
import { limitProblems } from './coherence/limits.ts';
import { loadProblems } from './coherence/loads.ts';
import { machineProblems } from './coherence/machine.ts';
import { readingProblems } from './coherence/readings.ts';
import { setupProblems } from './coherence/setups.ts';
import { springProblems } from './coherence/springs.ts';
import { stanceProblems } from './coherence/stance.ts';
import { strutProblems } from './coherence/struts.ts';
import { targetProblems } from './coherence/targets.ts';
import { travelProblems } from './coherence/travel.ts';
import type { Problem } from './problem.ts';
import type { JobDocument } from './schema.ts';

/** What one part of a job says against another, once each part by itself has its shape. */
export function incoherences(job: JobDocument): Problem[] {
  return [
    ...machineProblems(job.machine),
    ...travelProblems(job.machine.rear),
    ...frontTravelProblems(job),
    ...strutProblems(job.machine),
    ...adjusterProblems(job.machine),
    ...springProblems(job.springs),
    ...loadProblems(job),
    ...targetProblems(job),
    ...setupProblems(job),
    ...stanceProblems(job),
    ...limitProblems(job.machine),
    ...fittingProblems(job),
    ...readingProblems(job),
  ];
}
