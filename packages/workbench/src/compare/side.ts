import type { JobDocument } from '@sagwright/records/schema';
import type { Front, Rear } from '@sagwright/records/schema/machine';
import type { EndSetting } from '@sagwright/records/schema/setups';
import type { Spring } from '@sagwright/records/schema/springs';
import type { Template } from '@sagwright/records/schema/template';
import { jobAround } from '@sagwright/records/template/around';
import { keepTemplate } from '@sagwright/records/template/keep';
import { unitOf } from '@sagwright/records/template/unit';
import { inputsOf } from '../inputs/inputs.ts';
import type { UsedFigure } from '../inputs/take.ts';
import { usualPreload } from '../template/preload.ts';
import type { ComparedPart } from './comparison.ts';

/** One of the two that are compared. */
export type Compared =
  | { readonly from: 'job'; readonly job: JobDocument }
  | { readonly from: 'template'; readonly template: Template };

/** The parts that both have, the largest first. */
export function partsToCompare(a: Compared, b: Compared): readonly ComparedPart[] {
  const [ofA, ofB] = [partsOf(a), partsOf(b)];
  return ofA.filter((part) => ofB.includes(part));
}

function partsOf(side: Compared): readonly ComparedPart[] {
  if (side.from === 'template' && side.template.kind !== 'machine') return [side.template.kind];
  const { front } = jobOf(side).machine;
  return ['machine', 'shock', ...(front.travel === undefined ? (['fork'] as const) : [])];
}

/** What is laid beside the other: the part itself, the springs in it by the strut they are in, and every figure's usual ±. */
export interface LaidOut {
  readonly job: JobDocument;
  readonly part: unknown;
  /** What goes with a shock into any machine beside it. */
  readonly fitting: unknown;
  readonly springs: readonly { readonly strut: string; readonly id: string; readonly spring: Spring }[];
  readonly figures: ReadonlyMap<string, UsedFigure>;
}

/** `asKept`: without what no template takes along, so that a job can be held against one. */
export function layOut(side: Compared, part: ComparedPart, asKept: boolean): LaidOut {
  const whole = jobOf(side);
  const kept = asKept && side.from === 'job' ? keepTemplate(whole, part, whole.name) : null;
  const job = kept?.ok ? { ...whole, machine: machineOf(kept.template, whole) } : whole;
  const inputs = inputsOf(whole);
  const { rear, front } = whole.setups.asFound;
  const springs = [
    ...(part === 'fork' || !isTold(side, 'rear') ? [] : springsIn(whole, 'rear', rear)),
    ...(part === 'shock' || front === undefined ? [] : springsIn(whole, 'front', front)),
  ];
  const unit = part === 'shock' && whole.fitting?.rear ? unitOf(whole.fitting.rear) : undefined;
  return {
    job,
    part: partOf(job, part),
    fitting: unit && { rear: unit },
    springs,
    figures: inputs.ok ? inputs.inputs.figures : new Map(),
  };
}

export function jobOf(side: Compared): JobDocument {
  return side.from === 'job' ? side.job : jobAround(side.template, usualPreload);
}

/** A shock that was kept without a spring stands with one that means nothing. */
function isTold(side: Compared, end: 'rear'): boolean {
  return side.from === 'job' || side.template.kind === 'fork' || side.template.fitted[end] !== undefined;
}

/** The machine of a job as far as a template holds it, figures as they were typed. */
function machineOf(template: Template, { machine }: JobDocument): JobDocument['machine'] {
  return heldBy(machine, { ...template.machine, name: '' }) as JobDocument['machine'];
}

function heldBy(value: unknown, pattern: unknown): unknown {
  if (!isGroup(value) || !isGroup(pattern)) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, inner]) =>
      name === 'plusMinus' || name === 'origin' || Object.hasOwn(pattern, name)
        ? [[name, heldBy(inner, pattern[name])]]
        : [],
    ),
  );
}

function isGroup(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function partOf(job: JobDocument, part: ComparedPart): unknown {
  const { machine } = job;
  switch (part) {
    case 'machine':
      return byNames(job);
    case 'shock':
      return { rear: { shock: machine.rear.shock } };
    case 'fork':
      return { front: { fork: machine.front.fork ?? {} } };
  }
}

/** Ids mean nothing in another job: what one part says of another is told by its name. */
function byNames({ machine, loadCases }: JobDocument): unknown {
  const { places, beam, rear, front } = machine;
  const named = Object.entries(places).map(([id, { carriedBy, ...place }]) => [
    id,
    { ...place, ...(carriedBy && { carriedBy: places[carriedBy]?.name }) },
  ]);
  return {
    ...machine,
    rear: ratioByOneName(rear),
    front: ratioByOneName(front),
    places: Object.fromEntries(named),
    ...(beam && { beam: { ...beam, ...(beam.load && { load: loadCases[beam.load]?.name }) } }),
  };
}

/** One ratio has two names, by which way it is told: the figure says which. */
function ratioByOneName(end: Rear | Front): unknown {
  return end.travel?.kind === 'motion' ? { ...end, travel: { ...end.travel, kind: 'leverage' } } : end;
}

/** The springs in an end, one where both sides have the same. */
function springsIn({ springs }: JobDocument, end: string, setting: EndSetting): LaidOut['springs'] {
  const one = (strut: string, id: string) => ({ strut: `${end}.${strut}`, id, spring: springs[id]! });
  if ('single' in setting) return [one('every', setting.single.spring)];
  if ('both' in setting) return [one('every', setting.both.spring)];
  const { left, right } = setting;
  if (left.spring === right.spring) return [one('every', left.spring)];
  return [one('every', left.spring), one('right', right.spring)];
}
