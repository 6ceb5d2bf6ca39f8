import { type Problem, problem } from '../problem.ts';
import type { Machine } from '../schema/machine.ts';
import { type Quantity, siOf } from '../schema/quantity.ts';
import { asTyped, isBelow } from './compare.ts';

/** Rows of a table in order, leans that leave room between them, and a base within its knob's clicks. */
export function* limitProblems({ rear, front, limits, clearances, knobs }: Machine): Generator<Problem> {
  for (const [end, { tyre }] of [
    ['rear', rear],
    ['front', front],
  ] as const) {
    const rows = tyre?.byPressure ?? [];
    const path = ['machine', end, 'tyre', 'byPressure'];
    yield* notRising(
      path,
      'pressure',
      rows.map(({ pressure }) => pressure),
    );
    yield* notRising(
      path,
      'capacity',
      rows.map(({ capacity }) => capacity),
    );
  }
  for (const [id, { readings }] of Object.entries(clearances ?? {})) {
    const path = ['machine', 'clearances', id, 'readings'];
    yield* notRising(
      path,
      'travel',
      readings.map(({ travel }) => travel),
    );
  }
  for (const [id, { count, base }] of Object.entries(knobs ?? {})) {
    if (base === undefined || base <= count) continue;
    const path = ['machine', 'knobs', id, 'base'];
    yield problem(path, 'notAtMost', `${base} clicks`, 'all that it has', `${count} clicks`);
  }
  const lean = limits?.standLean;
  if (lean !== undefined && !isBelow(lean.least, lean.most)) {
    const path = ['machine', 'limits', 'standLean', 'least'];
    yield problem(path, 'notBelow', asTyped(lean.least), 'the greatest lean', asTyped(lean.most));
  }
}

function* notRising(path: readonly string[], name: string, column: readonly Quantity[]): Generator<Problem> {
  for (const [i, cell] of column.entries()) {
    const before = column[i - 1];
    if (before !== undefined && !(siOf(cell) > siOf(before)))
      yield problem([...path, i, name], 'notRising', asTyped(cell), asTyped(before));
  }
}
