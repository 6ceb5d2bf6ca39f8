import { type FieldPath, type Problem, problem } from '../problem.ts';
import type { Machine } from '../schema/machine.ts';
import { type Quantity, siOf } from '../schema/quantity.ts';
import type { LengthAdjuster, Rubber, Shock, TopOut } from '../schema/struts.ts';
import { asTyped, isAtMost, isBelow, isBetween } from './compare.ts';
import { forkProblems } from './fork.ts';
import { forceTableProblems } from './tables.ts';

/** Shock and fork by themselves: what works within the stroke lies within it, and the gas has room for the shaft. */
export function* strutProblems({ rear, front }: Machine): Generator<Problem> {
  const path = ['machine', 'rear', 'shock'];
  const { stroke, length, lengthAdjuster } = rear.shock;
  yield* withinStroke(rear.shock, path);
  yield* gasProblems(rear.shock, path);
  yield* airProblems(rear.shock, [...path, 'air']);
  if (stroke && length && !isBelow(stroke, length)) {
    yield problem([...path, 'stroke'], 'notBelow', asTyped(stroke), 'the eye-to-eye length', asTyped(length));
  }
  if (lengthAdjuster) yield* lengthAdjusterProblems(lengthAdjuster, [...path, 'lengthAdjuster']);
  if (front.fork) {
    yield* withinStroke(front.fork, ['machine', 'front', 'fork']);
    yield* forkProblems(front.fork);
  }
}

function* airProblems({ air, stroke }: Shock, path: FieldPath): Generator<Problem> {
  if (!air) return;
  const { least, most, readAt, volume, diameter } = air;
  if (!isBelow(least, most)) {
    yield problem([...path, 'least'], 'notBelow', asTyped(least), 'the most', asTyped(most));
  }
  if (!stroke) return;
  if (readAt && !isAtMost(readAt, stroke)) {
    yield problem([...path, 'readAt'], 'notAtMost', asTyped(readAt), 'the stroke', asTyped(stroke));
  }
  const swept = (Math.PI / 4) * siOf(diameter) ** 2 * siOf(stroke);
  if (1.02 * swept < siOf(volume)) return;
  yield problem([...path, 'volume'], 'airTooSmall', asTyped(volume), `${(swept * 1e6).toFixed(1)} cm3`);
}

function* lengthAdjusterProblems(
  { change, least, most }: LengthAdjuster,
  path: FieldPath,
): Generator<Problem> {
  if (least && most) {
    if (isBetween(change, least, most)) return;
    yield problem([...path, 'change'], 'outsideEnds', asTyped(change), asTyped(least), asTyped(most));
  } else if (least && !isAtMost(least, change)) {
    yield problem([...path, 'least'], 'notAtMost', asTyped(least), 'where it stands', asTyped(change));
  } else if (most && !isAtMost(change, most)) {
    yield problem([...path, 'change'], 'notAtMost', asTyped(change), 'its most', asTyped(most));
  }
}

interface Strut {
  readonly stroke?: Quantity<'length'>;
  readonly rubber?: Rubber | 'none';
  readonly topOut?: TopOut | 'none';
}

function* withinStroke({ stroke, rubber, topOut }: Strut, path: FieldPath): Generator<Problem> {
  if (rubber && rubber !== 'none') yield* rubberProblems(rubber, [...path, 'rubber']);
  if (!stroke) return;
  if (rubber && rubber !== 'none' && rubber.start && !isBelow(rubber.start, stroke)) {
    yield problem(
      [...path, 'rubber', 'start'],
      'notBelow',
      asTyped(rubber.start),
      'the stroke',
      asTyped(stroke),
    );
  }
  if (topOut && topOut !== 'none' && !isBelow(topOut.length, stroke)) {
    yield problem(
      [...path, 'topOut', 'length'],
      'notBelow',
      asTyped(topOut.length),
      'the stroke',
      asTyped(stroke),
    );
  }
}

function* rubberProblems(
  { start, rate, hardening, rows, assumed }: Rubber,
  path: FieldPath,
): Generator<Problem> {
  const told = [rate, rows, assumed].filter((each) => each !== undefined).length;
  if (told !== 1) yield problem([...path, 'rate'], 'oneRubber', told);
  if (hardening && !rate) yield problem([...path, 'hardening'], 'hardeningOfRate');
  if (!start && !assumed) yield problem([...path, 'start'], 'rubberStartNeeded');
  if (rows) yield* forceTableProblems(rows, [...path, 'rows']);
}

function* gasProblems({ gas, stroke }: Shock, path: FieldPath): Generator<Problem> {
  if (!gas || gas === 'none' || !gas.volume || !stroke) return;
  const swept = (Math.PI / 4) * siOf(gas.shaft) ** 2 * siOf(stroke);
  if (swept < siOf(gas.volume)) return;
  const shaftInWords = `${(swept * 1e6).toFixed(1)} cm3`;
  yield problem([...path, 'gas', 'volume'], 'gasTooSmall', asTyped(gas.volume), shaftInWords);
}
