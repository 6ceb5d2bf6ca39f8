import { alreadyDone, type WorkLeft } from '@sagwright/model/fitting/alreadyDone';
import { type Step, workOrder } from '@sagwright/model/fitting/workOrder';
import type { JobDocument } from '@sagwright/records/schema';
import type { Fastening } from '@sagwright/records/schema/fastenings';
import type { DoneRecord, RearFitting, Tool, Torque } from '@sagwright/records/schema/fitting';
import type { Machine } from '@sagwright/records/schema/machine';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import { type Desk, deskOf, inOrder } from '../inputs/desk.ts';
import { takeFrom } from '../inputs/take.ts';
import {
  type AsTyped,
  type CautionCode,
  type DoneDocument,
  type FittedPart,
  type Judged,
  type PhaseDocument,
  type RearWorkDocument,
  type StepDocument,
  type ToolDocument,
  type TorqueDocument,
  type WorkListDocument,
  workListFormat,
  workListVersion,
} from './document.ts';
import { bracketOf, mountDocument, offsetOf, threadLeftOf } from './mounts.ts';
import { fittingOptions, mountEnds } from './options.ts';
import { type BareStep, rearSteps } from './steps.ts';

/**
 * What hands do to fit what the job tells of: from the machine, the unit and what was done. Steps of other work that the job notes
 * as done are told apart; those of `more` are done too, and a RangeError where one of them is no step.
 */
export function workListOf(job: JobDocument, more: readonly string[] = []): WorkListDocument {
  const fitting = job.fitting?.rear;
  return {
    format: workListFormat,
    version: workListVersion,
    job: { name: job.name, machine: job.machine.name },
    rear: fitting === undefined ? null : rearWork(job, fitting, more),
  };
}

/** Whether something that was measured does not go together, or must not be ridden so. */
export function doesNotFit(work: RearWorkDocument): boolean {
  return unfitParts(work).length > 0;
}

type Measured = Pick<RearWorkDocument, 'mounts' | 'offset' | 'threadLeft'>;

function unfitParts({ mounts, offset, threadLeft }: Measured): readonly FittedPart[] {
  const isUnfit = (judged: Judged | null): boolean =>
    judged?.verdict === 'too little' || judged?.verdict === 'too much';
  return [
    ...mounts.flatMap(({ mount, checks }) => (checks.some(isUnfit) ? [mount] : [])),
    ...(isUnfit(offset) ? (['offset'] as const) : []),
    ...(isUnfit(threadLeft) ? (['thread'] as const) : []),
  ];
}

/** A sleeve does not go into an eye that it does not fit; nothing goes in as long as anything does not. */
function stopsOf({ kind, mount }: BareStep, unfit: readonly FittedPart[]): readonly FittedPart[] {
  if (kind === 'in') return unfit;
  if (kind === 'sleeve') return unfit.filter((part) => part === mount);
  return kind === 'turn' ? unfit.filter((part) => part === 'thread') : [];
}

function rearWork(job: JobDocument, fitting: RearFitting, more: readonly string[]): RearWorkDocument {
  const desk = deskOf(job, takeFrom());
  const bare = rearSteps(fittingOptions(job, fitting));
  const byId = new Map(bare.map((step) => [step.id, step] as const));
  const noted = fitting.done ?? {};
  const known = Object.keys(noted).filter((id) => byId.has(id));
  const done = new Set([...known, ...more]);
  const steps = bare.map((step) => asStep(step, fitting));
  // Nobody has begun: it stands on its wheels. Later it may stand either way.
  const left = alreadyDone(steps, done, done.size === 0 ? 'wheels' : null);
  const order = phasesOf(left.order, byId);
  const mounts = mountEnds.map((end) => mountDocument(desk, fitting, end));
  const [offset, threadLeft] = [offsetOf(desk, fitting), threadLeftOf(desk)];
  const unfit = unfitParts({ mounts, offset, threadLeft });
  return {
    unit: fitting.name ?? null,
    steps: phasesOf(workOrder(steps, 'wheels'), byId).flatMap((phase) =>
      phase.steps.map((id) => stepDocument(byId.get(id)!, fitting, unfit)),
    ),
    left: order,
    changes: Math.max(0, order.length - 1),
    undo: left.undo,
    done: left.done.map((each) => doneDocument(each, byId.get(each.step)!, noted[each.step])),
    lost: left.lost,
    unknown: Object.keys(noted).filter((id) => !byId.has(id)),
    mounts,
    offset,
    threadLeft,
    bracket: bracketOf(fitting),
    usualWidths: usualWidthsOf(desk),
    cautions: cautionsOf(job.machine),
  };
}

/** Side first, then what it is tightened with. */
function asStep({ id, after, stance, side, on }: BareStep, fitting: RearFitting): Step {
  const [tool] = toolsOn(on.slice(0, 1), fitting);
  const size = tool?.size === undefined ? '' : siOf(tool.size);
  return { id, after, stance, together: [side, tool === undefined ? null : `${tool.kind} ${size}`] };
}

function phasesOf(order: WorkLeft['order'], byId: ReadonlyMap<string, BareStep>): readonly PhaseDocument[] {
  if (order.kind === 'circle') throw new RangeError(`steps wait in a circle: ${order.steps.join(', ')}`);
  return order.phases.map(({ steps }) => ({
    stance: steps.map((id) => byId.get(id)!.stance).find((stance) => stance !== null) ?? null,
    steps,
  }));
}

function stepDocument(bare: BareStep, fitting: RearFitting, unfit: readonly FittedPart[]): StepDocument {
  const { id, kind, side, mount, of, stance, after, on, fastens } = bare;
  return {
    id,
    kind,
    side,
    mount,
    of: of === null ? null : fitting.inTheWay![of]!.name,
    stance,
    after,
    tools: toolsOn(on, fitting).map(
      (tool): ToolDocument => ({
        kind: tool.kind,
        on: tool.on,
        size: asTyped(tool.size),
      }),
    ),
    torque: fastens === null ? null : torqueDocument(fastens, fitting.torques?.[fastens] ?? {}),
    stops: stopsOf(bare, unfit),
  };
}

function toolsOn(on: BareStep['on'], { tools = {} }: RearFitting): readonly Tool[] {
  const all = inOrder(tools).map(([, tool]) => tool);
  return on.flatMap((part) => all.filter((tool) => tool.on === part));
}

function torqueDocument(part: Fastening, torque: Torque): TorqueDocument {
  const { value, page = null, readBy = null, checkedBy = null } = torque;
  const state =
    value === undefined
      ? 'no figure'
      : page === null
        ? 'no page'
        : readBy === null
          ? 'no reader'
          : checkedBy === null
            ? 'read once'
            : checkedBy === readBy
              ? 'read twice by one'
              : 'read by two';
  return { part, value: asTyped(value), page, readBy, checkedBy, state };
}

function asTyped(typed: Quantity | undefined): AsTyped | null {
  return typed === undefined ? null : { value: typed.value, unit: typed.unit, si: siOf(typed) };
}

function doneDocument(
  { step, standing, because }: WorkLeft['done'][number],
  { after }: BareStep,
  noted: DoneRecord | undefined,
): DoneDocument {
  return {
    step,
    by: noted?.by ?? null,
    when: noted?.when ?? null,
    standing,
    because: because.map((id) => ({ step: id, why: after.find((before) => before.step === id)!.why })),
  };
}

function usualWidthsOf({ take }: Desk): RearWorkDocument['usualWidths'] {
  return [...take.figures.values()]
    .filter(({ width, halfWidth }) => width === 'default' && halfWidth > 0)
    .map(({ path, halfWidth }) => ({ path, plusMinus: halfWidth }));
}

function cautionsOf({ rear, ridingHeightControl }: Machine): readonly CautionCode[] {
  return [
    'manual',
    'two people',
    'spring',
    ...(rear.shock.gas === 'none' ? [] : (['gas'] as const)),
    ...(ridingHeightControl === 'electronic' ? (['electronic'] as const) : []),
    ...(ridingHeightControl === 'self-levelling' ? (['levelling'] as const) : []),
  ];
}
