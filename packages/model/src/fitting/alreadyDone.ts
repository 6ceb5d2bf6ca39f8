import { type Before, type Step, type WorkOrder, workOrder } from './workOrder.ts';

/** Where a piece of work stands, from what has been done of it in whatever order. */
export interface WorkLeft {
  /** Each step that was done, in the order of the work: whether it can stand. */
  readonly done: readonly DoneStep[];
  /** To be undone before anything else, in this order: what was built last comes off first. */
  readonly undo: readonly string[];
  /** Can no longer be done as it was meant, since `by` was done before it. */
  readonly lost: readonly { readonly step: string; readonly by: string }[];
  /** What is left, what was undone and what is done again among it. */
  readonly order: WorkOrder;
}

export interface DoneStep {
  readonly step: string;
  readonly standing: 'stands' | 'undo' | 'again';
  /** The steps that should have come before it and are missing, or are undone or done again themselves. */
  readonly because: readonly string[];
}

/**
 * What follows from the steps done so far. A done step stands unless one that should have come before it is missing and that
 * one's `forgotten` says otherwise; what rests on a step that is undone or done again is judged by the same rule. A step never
 * comes back unless it is told to be undone or done again, and never before what it waits for.
 *
 * done   ids of steps; RangeError where one is no step of this work, or where the steps wait in a circle
 * start  how the machine stands now; null: any way
 */
export function alreadyDone(
  steps: readonly Step[],
  done: ReadonlySet<string>,
  start: string | null = null,
): WorkLeft {
  const sorted = inOrder(steps);
  const known = new Set(steps.map(({ id }) => id));
  for (const id of done) {
    if (!known.has(id)) throw new RangeError(`"${id}" was done, but is none of the ${known.size} steps`);
  }
  const lost = lostSteps(sorted, done);
  const given = new Set(lost.map(({ step }) => step));
  const standing = standings(sorted, done, given);
  const left = sorted.filter(
    ({ id }) => !given.has(id) && (!done.has(id) || standing.get(id)!.standing !== 'stands'),
  );
  const doneSteps = sorted.flatMap(({ id }) => standing.get(id) ?? []);
  return {
    done: doneSteps,
    undo: doneSteps.flatMap(({ step, standing: how }) => (how === 'undo' ? [step] : [])).reverse(),
    lost,
    order: workOrder(declared(steps, waitingForEachOther(sorted, left)), start),
  };
}

/** The steps, each after those that it waits for. */
function inOrder(steps: readonly Step[]): readonly Step[] {
  const order = workOrder(steps);
  if (order.kind === 'circle') throw new RangeError(`steps wait in a circle: ${order.steps.join(', ')}`);
  const byId = new Map(steps.map((step) => [step.id, step] as const));
  return order.phases.flatMap((phase) => phase.steps.map((id) => byId.get(id)!));
}

function lostSteps(sorted: readonly Step[], done: ReadonlySet<string>): WorkLeft['lost'] {
  const by = new Map<string, string>();
  for (const { id, after } of sorted) {
    if (!done.has(id)) continue;
    for (const { step, forgotten } of after) {
      if (forgotten === 'lost' && !done.has(step) && !by.has(step)) by.set(step, id);
    }
  }
  return sorted.flatMap(({ id }) => (by.has(id) ? [{ step: id, by: by.get(id)! }] : []));
}

function standings(
  sorted: readonly Step[],
  done: ReadonlySet<string>,
  lost: ReadonlySet<string>,
): ReadonlyMap<string, DoneStep> {
  const found = new Map<string, DoneStep>();
  const isMissing = ({ step }: Before): boolean =>
    done.has(step) ? found.get(step)!.standing !== 'stands' : !lost.has(step);
  for (const { id, after } of sorted) {
    if (!done.has(id)) continue;
    const missing = after.filter(isMissing);
    const causes = (how: Before['forgotten']): readonly string[] =>
      missing.filter(({ forgotten }) => forgotten === how).map(({ step }) => step);
    const [undo, again] = [causes('undo'), causes('again')];
    const standing = undo.length > 0 ? 'undo' : again.length > 0 ? 'again' : 'stands';
    found.set(id, { step: id, standing, because: standing === 'undo' ? undo : again });
  }
  return found;
}

/** The steps that are left, each waiting for those among them that it waited for, be it through others. */
function waitingForEachOther(sorted: readonly Step[], left: readonly Step[]): readonly Step[] {
  const among = new Set(left.map(({ id }) => id));
  const leftBefore = new Map<string, ReadonlySet<string>>();
  for (const { id, after } of sorted) {
    const all = after.flatMap(({ step }) => (among.has(step) ? [step] : [...leftBefore.get(step)!]));
    leftBefore.set(id, new Set(all));
  }
  return left.map((step) => ({
    ...step,
    after: [...leftBefore.get(step.id)!].map((each): Before => ({ step: each, forgotten: 'undo' })),
  }));
}

/** In the order in which they were declared: it decides between steps that could come next. */
function declared(steps: readonly Step[], some: readonly Step[]): readonly Step[] {
  const byId = new Map(some.map((step) => [step.id, step] as const));
  return steps.flatMap(({ id }) => byId.get(id) ?? []);
}
