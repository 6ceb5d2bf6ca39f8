import { corrected } from '@sagwright/model/estimation/corrected';
import { type Estimate, mostProbable } from '@sagwright/model/estimation/mostProbable';
import { type Inquiry, inquiryOf, type ReadingSI, type StoodSI } from '@sagwright/model/estimation/readings';
import { halfWidthOf } from '@sagwright/model/uncertainty/spread';
import { type Desk, inOrder } from '../inputs/desk.ts';
import { takeFrom } from '../inputs/take.ts';
import { type JobPlan, planInputs } from '../path.ts';
import { readingsOf } from './asRead.ts';
import {
  type FaultCode,
  type FigureRead,
  type MeasuredDocument,
  measuredFormat,
  measuredVersion,
  type Trouble,
} from './document.ts';
import { foundDocument } from './found.ts';
import { sagsOf } from './sags.ts';
import { stoodFor } from './stood.ts';

/** What was read, held against the sum; and the job planned as readings have it, null where no most probable machine was found. */
export interface Measured {
  readonly document: MeasuredDocument;
  readonly corrected: JobPlan | null;
}

/** Holds the readings of a job against its sum: each sag with what was expected, the most probable machine, what does not fit. */
export function measuredJob(planned: JobPlan): Measured {
  const { job, inputs } = planned;
  const desk: Desk = { job, take: takeFrom(), tape: null, places: null, problems: [], notes: [] };
  const readings = readingsOf(desk);
  const inquiry = readings.length === 0 ? null : inquiryOf(stoodIn(desk, planned), readings);
  const estimate = inquiry === null ? null : estimateOf(inquiry);
  const found = estimate === null || typeof estimate === 'string' ? null : estimate;
  const after =
    inquiry === null || found === null
      ? null
      : planInputs(job, { ...inputs, question: corrected(inputs.question, inquiry, found) });
  const figures = (path: string) => inputs.figures.get(path) ?? desk.take.figures.get(path);
  return {
    corrected: after,
    document: {
      format: measuredFormat,
      version: measuredVersion,
      job: { name: job.name, machine: job.machine.name },
      sags: sagsOf(job, inputs.question.machine, readings, inquiry?.predict(inquiry.start) ?? null),
      figures: readings.map((reading, i) => figureOf(reading, found?.predicted.figures[i] ?? null)),
      found:
        inquiry === null || found === null || after === null
          ? null
          : foundDocument(planned, after, figures, inquiry, found),
      trouble: troubleOf(readings, inquiry, estimate),
    },
  };
}

/** Whether readings and sum agree: no sag is apart or at odds with itself, nothing is suspect, and no more is left than chance leaves. */
export function isSound({ sags, found }: MeasuredDocument): boolean {
  const isAtOdds = (fault: FaultCode): boolean => fault !== 'settled once' && fault !== 'never hanging';
  return (
    found !== null &&
    found.suspect === null &&
    !found.beyondChance &&
    sags.every(({ verdict, faults }) => verdict !== 'apart' && !faults.some(isAtOdds))
  );
}

/** Every way in which the machine stood while it was read, once. */
function stoodIn(desk: Desk, { inputs: { question } }: JobPlan): readonly StoodSI[] {
  const stood = inOrder(desk.job.readings ?? {}).map(([id, reading]) =>
    stoodFor(desk, question, id, reading),
  );
  return [...new Map(stood.map((each) => [each.id, each])).values()];
}

function estimateOf(inquiry: Inquiry): Estimate | 'not told' | 'not found' {
  const answer = mostProbable(
    inquiry.readings.map(({ evidence }) => evidence),
    inquiry.predict,
    inquiry.start,
  );
  return answer.kind === 'estimate' ? answer.estimate : answer.kind;
}

function troubleOf(
  readings: readonly ReadingSI[],
  inquiry: Inquiry | null,
  estimate: Estimate | 'not told' | 'not found' | null,
): Trouble | null {
  if (readings.length === 0) return 'nothing read';
  if (inquiry === null) return 'no rest';
  return typeof estimate === 'string' ? estimate : null;
}

function figureOf({ id, of, evidence }: ReadingSI, found: number | null): FigureRead {
  const { value, deviation } = evidence;
  return {
    id,
    dimension: of.kind === 'scale' ? 'mass' : 'length',
    read: { value, plusMinus: halfWidthOf(deviation) },
    found,
    miss: found === null ? null : (value - found) / deviation,
  };
}
