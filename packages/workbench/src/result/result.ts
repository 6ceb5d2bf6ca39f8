import { rangeOf } from '@sagwright/model/plan/adjuster';
import type { SpringPlan } from '@sagwright/model/plan/answer';
import { forkOf } from '../fork/fork.ts';
import { limitListOf } from '../limits/list.ts';
import type { JobPlan } from '../path.ts';
import { rubberDocument } from '../rubber/rubber.ts';
import { fitDocument } from '../springs/fit.ts';
import { rateDocument } from '../springs/rate.ts';
import { stanceOf } from '../stance/stance.ts';
import { assumptionsOf } from './assumptions.ts';
import { cellDocument } from './cell.ts';
import {
  type EndDocument,
  type LoadDocument,
  type PlanDocument,
  planFormat,
  planVersion,
  type SpringDocument,
} from './document.ts';
import type { End } from './inView.ts';
import { rearMotionOf } from './rearMotion.ts';
import { adjusterOf } from './setting.ts';
import { attitudeChange, standingOf } from './standing.ts';

/** The plan of a job as a document for programs: SI, plain data, explained in docs/plan-json.md. */
export function resultJson(planned: JobPlan): PlanDocument {
  const { job, inputs, plan } = planned;
  const { id, set } = inputs.targetSet;
  return {
    format: planFormat,
    version: planVersion,
    job: { name: job.name, machine: job.machine.name },
    targetSet: { id, name: set.name, origin: set.origin },
    alone: standingOf(plan.alone),
    loadCases: plan.loadCases.map((load): LoadDocument => {
      const { name, share } = job.loadCases[load.loadCase]!;
      return {
        id: load.loadCase,
        name,
        share: share / 100,
        refused: load.refused,
        asFound: standingOf(load.asFound),
        axleLoadsFullTank: load.loadsFullTank,
        limits: load.limits,
      };
    }),
    rear: endDocument(planned, 'rear'),
    front: endDocument(planned, 'front'),
    rearMotion: rearMotionOf(planned),
    shock: inputs.shock,
    fork: forkOf(planned),
    stance: stanceOf(planned),
    limits: limitListOf(planned),
    planned: plan.planned.loadCases.map(({ loadCase, stand }) => {
      const { asFound } = plan.loadCases.find((load) => load.loadCase === loadCase)!;
      return {
        loadCase,
        standing: standingOf(stand),
        attitudeChange: attitudeChange(stand.attitude, asFound.attitude),
      };
    }),
    assumptions: assumptionsOf(planned),
    notes: inputs.notes,
  };
}

function endDocument(planned: JobPlan, end: End): EndDocument {
  const { alone } = planned.plan;
  const { springs, suggestion } = planned.plan[end];
  const { adjuster } = planned.inputs.question[end];
  const typed = adjusterOf(planned, end);
  return {
    travelMax: alone.answer.kind === 'rest' ? alone.answer.rest[end].travelMax : null,
    adjuster:
      adjuster === null || typed === undefined
        ? null
        : {
            kind: typed.kind,
            range: rangeOf(adjuster).most,
            lead: adjuster.kind === 'continuous' ? adjuster.lead : null,
          },
    rubber: rubberDocument(planned, end),
    inView: planned.plan.planned[end],
    suggestion,
    springs: springs.map((spring) => springDocument(planned, end, spring)),
  };
}

function springDocument(planned: JobPlan, end: End, spring: SpringPlan): SpringDocument {
  const choice = planned.inputs.question[end].choices.find(({ id }) => id === spring.spring)!;
  return {
    id: spring.spring,
    name: planned.job.springs[spring.spring]!.name,
    fitted: spring.fitted,
    fits: spring.fits,
    rate: spring.rate,
    rateFrom: rateDocument(planned, spring),
    fit: fitDocument(planned, end, spring.spring),
    freeLength: choice.freeLength,
    solidLength: choice.solidLength,
    preloadAtLoosest: choice.preloadAtZero,
    kilogramsPerTurn: spring.kilogramsPerTurn,
    reasons: spring.reasons,
    cells: spring.cells.map((cell) => cellDocument(planned, end, spring, cell)),
  };
}
