import { type Problem, problem } from '../problem.ts';
import type { Quantity } from '../schema/quantity.ts';
import { type Template, type TemplateKind, templateFormat, templateVersion } from '../schema/template.ts';
import type { JobDocument } from '../schema.ts';
import { fittedIn } from './around.ts';
import { isFields, pathsOf, without } from './fields.ts';
import { type LeftOutBecause, neverKept } from './leftOut.ts';
import { unitOf } from './unit.ts';

export interface LeftOut {
  /** In the job. */
  readonly path: string;
  readonly because: LeftOutBecause;
}

/** A template taken out of a job, and what it does not take along; or why there is none. */
export type KeptTemplate =
  | {
      readonly ok: true;
      readonly template: Template;
      readonly leftOut: readonly LeftOut[];
      /** Figures that are true of the machine they were read on: kept as told, so that nobody takes them for read. */
      readonly told: readonly string[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Takes a machine, its shock or its fork out of a job, as a pattern for others of its kind. */
export function keepTemplate(job: JobDocument, kind: TemplateKind, name: string): KeptTemplate {
  const missing = missingFor(job, kind);
  if (missing !== null) return { ok: false, problems: [missing] };
  const leftOut = leftOutOf(job, kind);
  const bare = leftOut.reduce((left, { path }) => without(left, path.split('.')), job);
  const told: string[] = [];
  const asTold = <T>(part: T, path: string): T => partAsTold(part, path, told) as T;
  const { rear, front } = job.setups.asFound;
  const every = { format: templateFormat, version: templateVersion, name, springs: bare.springs } as const;
  return { ok: true, template: ofKind(), leftOut: leftOut.filter(isOf(job, kind)), told };

  function ofKind(): Template {
    const { name: _, ...machine } = bare.machine;
    switch (kind) {
      case 'machine': {
        const fitted = { rear: fittedIn(rear), ...(front && { front: fittedIn(front) }) };
        return { ...every, kind, machine: asTold(machine, 'machine'), fitted };
      }
      case 'shock': {
        const { shock } = machine.rear;
        const unit = job.fitting?.rear && unitOf(job.fitting.rear);
        const fitted = { rear: fittedIn(rear) };
        return {
          ...every,
          kind,
          machine: { rear: { shock } },
          fitted,
          ...(unit && { fitting: { rear: unit } }),
        };
      }
      case 'fork': {
        const fork = machine.front.fork ?? {};
        return {
          ...every,
          kind,
          machine: { front: { fork } },
          fitted: { ...(front && { front: fittedIn(front) }) },
        };
      }
    }
  }
}

/** A fork is kept where there is one to tell of, and it is one. */
function missingFor({ machine, setups }: JobDocument, kind: TemplateKind): Problem | null {
  if (kind !== 'fork') return null;
  if (machine.front.travel !== undefined) return problem(['machine', 'front', 'travel'], 'noForkHere');
  const isTold = machine.front.fork !== undefined || setups.asFound.front !== undefined;
  return isTold ? null : problem(['machine', 'front', 'fork'], 'nothingToKeep');
}

/** All of the job that no template of this kind takes along. */
function leftOutOf(job: JobDocument, kind: TemplateKind): LeftOut[] {
  const fitted = new Set(springsIn(job, kind));
  return Object.entries(neverKept).flatMap(([pattern, because]) =>
    pathsOf(job, pattern.split('.'))
      .filter(([list, id]) => list !== 'springs' || fitted.has(id!) !== (pattern === 'springs.*'))
      .filter((path) => isTyped(job, path))
      .map((path) => ({ path: path.join('.'), because })),
  );
}

/** Of a shock or a fork only what belongs to it: that the machine around it is not in it, nobody needs to be told. */
function isOf({ springs }: JobDocument, kind: TemplateKind): (leftOut: LeftOut) => boolean {
  if (kind === 'machine') return () => true;
  const end = kind === 'shock' ? 'rear' : 'front';
  const [part, setup] = [`machine.${end}.${kind}.`, `setups.asFound.${end}`];
  return ({ path }) => {
    const [list, id] = path.split('.');
    if (list === 'springs') return springs[id!]?.end === end;
    return path === setup || path.startsWith(part) || (list === 'fitting' && kind === 'shock');
  };
}

/** An empty list is nothing that could be missed. */
function isTyped(job: JobDocument, path: readonly string[]): boolean {
  const value = path.reduce<unknown>((here, name) => (isFields(here) ? here[name] : undefined), job);
  return !isFields(value) || Object.keys(value).length > 0;
}

function springsIn({ setups }: JobDocument, kind: TemplateKind): string[] {
  const { rear, front } = setups.asFound;
  const inIt = [...(kind === 'fork' ? [] : [rear]), ...(kind === 'shock' || !front ? [] : [front])];
  return inIt.flatMap((setting) => Object.values<string>(fittedIn(setting)));
}

/** What the scales read of one machine with its own fuel, bars and boxes: the ± is of that reading, not of the next machine. */
const weighed = new Set(['machine.weighing.front', 'machine.weighing.rear', 'machine.weighing.fuel']);

/** The next machine's own plate is still to be read, and it still has to be weighed. */
function partAsTold(value: unknown, path: string, told: string[]): unknown {
  if (Array.isArray(value)) return value.map((inner, i) => partAsTold(inner, `${path}.${i}`, told));
  if (!isFields(value)) return value;
  if (isQuantity(value)) {
    if (value.origin !== 'plate' && !weighed.has(path)) return value;
    told.push(path);
    const { plusMinus, ...typed } = value;
    return { ...typed, ...(plusMinus && !weighed.has(path) && { plusMinus }), origin: 'told' };
  }
  return Object.fromEntries(
    Object.entries(value).map(([name, inner]) => [name, partAsTold(inner, `${path}.${name}`, told)]),
  );
}

function isQuantity(value: object): value is Quantity {
  return 'value' in value && 'unit' in value;
}
