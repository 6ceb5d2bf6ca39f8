import { corrected } from '@sagwright/model/estimation/corrected';
import type { Evidence } from '@sagwright/model/estimation/evidence';
import { type EstimateAnswer, mostProbable } from '@sagwright/model/estimation/mostProbable';
import { type Inquiry, inquiryOf, type ReadingSI, type StoodSI } from '@sagwright/model/estimation/readings';
import { halfWidthOf } from '@sagwright/model/uncertainty/spread';
import { type Desk, inOrder } from '../inputs/desk.ts';
import { takeFrom } from '../inputs/take.ts';
import { type JobPlan, planInputs } from '../path.ts';
import { readDimension, readingsOf } from './asRead.ts';
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
  const answer = inquiry === null ? null : mostProbable(evidenceOf(inquiry), inquiry.predict, inquiry.start);
  const estimate = answer?.kind === 'estimate' ? answer.estimate : null;
  const question =
    inquiry === null || estimate === null ? null : corrected(inputs.question, inquiry, estimate);
  const after = question === null ? null : planInputs(job, { ...inputs, question });
  const figures = (path: string) => inputs.figures.get(path) ?? desk.take.figures.get(path);
  return {
    corrected: after,
    document: {
      format: measuredFormat,
      version: measuredVersion,
      job: { name: job.name, machine: job.machine.name },
      sags: sagsOf(job, inputs.question.machine, readings, inquiry?.asThought ?? null),
      figures: readings.map((reading, i) => figureOf(reading, estimate?.predicted.figures[i] ?? null)),
      found:
        inquiry === null || estimate === null || after === null
          ? null
          : foundDocument(planned, after, figures, inquiry, estimate),
      trouble: troubleOf(readings, answer),
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

function evidenceOf({ readings }: Inquiry): readonly Evidence[] {
  return readings.map(({ evidence }) => evidence);
}

function troubleOf(readings: readonly ReadingSI[], answer: EstimateAnswer | null): Trouble | null {
  if (answer === null) return readings.length === 0 ? 'nothing read' : 'no rest';
  return answer.kind === 'estimate' ? null : answer.kind;
}

function figureOf(reading: ReadingSI, found: number | null): FigureRead {
  const { value, deviation } = reading.evidence;
  return {
    id: reading.id,
    dimension: readDimension(reading),
    read: { value, plusMinus: halfWidthOf(deviation) },
    found,
    miss: found === null ? null : (value - found) / deviation,
  };
}
