/** One step of a piece of work, and what it asks for. */
export interface Step {
  readonly id: string;
  /** What must be done before it. */
  readonly after: readonly Before[];
  /** How the machine must stand for it; null: it does not matter. */
  readonly stance: string | null;
  /** What it is best done together with, the weightiest first: a side, a tool. Null: it does not matter. */
  readonly together: readonly (string | null)[];
}

/** A step that comes first, and what is to be done where it was forgotten. */
export interface Before {
  readonly step: string;
  readonly forgotten: Forgotten;
}

/**
 * What follows where a step was done without the one that should have come before it:
 * 'undo'   it is in the way and must be undone first;
 * 'again'  the earlier one can be done now, and then this one is done again;
 * 'still'  the earlier one can be done now, and nothing is lost;
 * 'lost'   the earlier one can no longer be done as it was meant.
 */
export type Forgotten = 'undo' | 'again' | 'still' | 'lost';

/** The work in an order, or the steps that wait for each other in a circle. */
export type WorkOrder =
  | { readonly kind: 'order'; readonly phases: readonly Phase[] }
  | { readonly kind: 'circle'; readonly steps: readonly string[] };

/** What is done while the machine stands one way; null where no step asks how. */
export interface Phase {
  readonly stance: string | null;
  readonly steps: readonly string[];
}

/**
 * A shortest safe order: each step after all that it waits for, with the fewest changes of stance; among those, what is best
 * done together is, step by step, and else the order in which the steps were declared.
 *
 * While the machine stands one way, all that can be done so is done: leaving a step for later never saves a change. So an order
 * is a row of stances, and the shortest one is found by breadth, rows whose work another of the same length includes left out.
 * Exact for up to `ROWS_AT_MOST` rows of one length that none includes (three ways to stand and a few dozen steps have a handful).
 *
 * start  how the machine stands at first; null: any way
 * RangeError where two steps have one id, or a step waits for one that there is not.
 */
export function workOrder(steps: readonly Step[], start: string | null = null): WorkOrder {
  const work = prepare(steps);
  const circle = circleIn(work);
  if (circle !== null) return { kind: 'circle', steps: circle };
  const stances = fewestStances(work, start);
  return { kind: 'order', phases: layOut(work, stances) };
}

/** The steps by number. */
interface Work {
  readonly steps: readonly Step[];
  readonly before: readonly (readonly number[])[];
}

function prepare(steps: readonly Step[]): Work {
  const numbers = new Map(steps.map(({ id }, i) => [id, i] as const));
  if (numbers.size < steps.length) {
    const twice = steps.find(({ id }, i) => numbers.get(id) !== i)!;
    throw new RangeError(`step "${twice.id}" is there twice; each id must be its step's own`);
  }
  const before = steps.map(({ id, after }) =>
    after.map(({ step }) => {
      const number = numbers.get(step);
      if (number === undefined) throw new RangeError(`step "${id}" waits for "${step}", which there is not`);
      return number;
    }),
  );
  return { steps, before };
}

/** Steps that wait for each other, each for the next; null where there are none. */
function circleIn({ steps, before }: Work): readonly string[] | null {
  const free = new Set<number>();
  for (let grew = true; grew; ) {
    grew = false;
    for (const i of steps.keys()) {
      if (free.has(i) || !before[i]!.every((each) => free.has(each))) continue;
      free.add(i);
      grew = true;
    }
  }
  let at = steps.findIndex((_, i) => !free.has(i));
  if (at < 0) return null;
  const way: number[] = [];
  while (!way.includes(at)) {
    way.push(at);
    at = before[at]!.find((each) => !free.has(each))!;
  }
  return way.slice(way.indexOf(at)).map((i) => steps[i]!.id);
}

/** What has been done once the machine stood each way in a row. */
interface Row {
  readonly stances: readonly (string | null)[];
  readonly done: ReadonlySet<number>;
}

const ROWS_AT_MOST = 500;

function fewestStances(work: Work, start: string | null): readonly (string | null)[] {
  const ways = [...new Set(work.steps.flatMap(({ stance }) => stance ?? []))];
  const first = start !== null ? [start] : ways.length === 0 ? [null] : ways;
  let rows: readonly Row[] = first.map((stance) => ({
    stances: [stance],
    done: allThatCan(work, new Set(), stance),
  }));
  // Each row of the next length does at least one step more: there are no more lengths than steps.
  for (let length = 0; length <= work.steps.length; length++) {
    const whole = rows.find(({ done }) => done.size === work.steps.length);
    if (whole !== undefined) return whole.stances;
    const next = rows.flatMap(({ stances, done }): Row[] =>
      ways.flatMap((stance): Row[] => {
        const more = allThatCan(work, done, stance);
        return more.size > done.size ? [{ stances: [...stances, stance], done: more }] : [];
      }),
    );
    rows = withoutIncluded(next).slice(0, ROWS_AT_MOST);
  }
  throw new RangeError(`${work.steps.length} steps without a circle came to no end`);
}

/** The steps done, and all others that can be done with the machine standing so. */
function allThatCan({ steps, before }: Work, done: ReadonlySet<number>, stance: string | null): Set<number> {
  const all = new Set(done);
  for (let grew = true; grew; ) {
    grew = false;
    for (const [i, step] of steps.entries()) {
      if (all.has(i) || (step.stance !== null && step.stance !== stance)) continue;
      if (!before[i]!.every((each) => all.has(each))) continue;
      all.add(i);
      grew = true;
    }
  }
  return all;
}

/** Rows in whose stance at the end no other row has done as much and more; of equals the first. */
function withoutIncluded(rows: readonly Row[]): readonly Row[] {
  const kept: Row[] = [];
  for (const row of [...rows].sort((a, b) => b.done.size - a.done.size)) {
    const includes = kept.some(
      ({ stances, done }) =>
        stances.at(-1) === row.stances.at(-1) && [...row.done].every((each) => done.has(each)),
    );
    if (!includes) kept.push(row);
  }
  return kept;
}

function layOut(work: Work, stances: readonly (string | null)[]): readonly Phase[] {
  const done = new Set<number>();
  let last: readonly (string | null)[] = [];
  const phases = stances.map((stance): Phase => {
    const left = [...allThatCan(work, done, stance)].filter((i) => !done.has(i));
    const steps: string[] = [];
    while (steps.length < left.length) {
      const next = nextOf(work, left, done, last);
      const { id, together } = work.steps[next]!;
      done.add(next);
      steps.push(id);
      last = together.map((each, i) => each ?? last[i] ?? null);
    }
    return { stance, steps };
  });
  // A start that no step asks for, or that none can begin with, is no phase.
  return phases.filter((phase) => phase.steps.length > 0);
}

/** Of the steps that can be done now, one that goes with the last; of alike ones the first declared. */
function nextOf(
  { steps, before }: Work,
  left: readonly number[],
  done: ReadonlySet<number>,
  last: readonly (string | null)[],
): number {
  const ready = left.filter((i) => !done.has(i) && before[i]!.every((each) => done.has(each)));
  return ready.reduce((best, i) => {
    const order = compare(apart(steps[i]!, last), apart(steps[best]!, last));
    return order < 0 || (order === 0 && i < best) ? i : best;
  });
}

/** For each thing that steps are done together by, whether it changes from the last step to this. */
function apart({ together }: Step, last: readonly (string | null)[]): readonly boolean[] {
  return together.map((each, i) => each !== null && (last[i] ?? null) !== null && each !== last[i]);
}

function compare(a: readonly boolean[], b: readonly boolean[]): number {
  for (let i = 0; i < Math.max(a.length, b.length); i++) {
    const difference = Number(a[i] ?? false) - Number(b[i] ?? false);
    if (difference !== 0) return difference;
  }
  return 0;
}
