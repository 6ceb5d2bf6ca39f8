import { type FieldPath, type Problem, problem } from '../problem.ts';
import type { Adjuster } from '../schema/adjusters.ts';
import type { Machine } from '../schema/machine.ts';
import { siOf } from '../schema/quantity.ts';
import { asTyped, isAtMost, isBelow, isBetween } from './compare.ts';

/** Each adjuster by itself: a range that is one, and marks within it. */
export function* adjusterProblems({ rear, front }: Machine): Generator<Problem> {
  yield* problemsOf(rear.shock.adjuster, ['machine', 'rear', 'shock', 'adjuster']);
  if (front.fork?.adjuster) yield* problemsOf(front.fork.adjuster, ['machine', 'front', 'fork', 'adjuster']);
}

function* problemsOf(adjuster: Adjuster, path: FieldPath): Generator<Problem> {
  switch (adjuster.kind) {
    case 'collar':
      yield* collarProblems(adjuster, path);
      return;
    case 'cam':
      yield* camProblems(adjuster, path);
      return;
    case 'clicks':
      if (adjuster.dead !== undefined && adjuster.dead >= adjuster.count) {
        yield problem(
          [...path, 'dead'],
          'notBelow',
          String(adjuster.dead),
          'the count of clicks',
          String(adjuster.count),
        );
      }
      return;
    case 'spacer':
      if (isAtMost(adjuster.least, adjuster.most)) return;
      yield problem(
        [...path, 'least'],
        'notAtMost',
        asTyped(adjuster.least),
        'the most',
        asTyped(adjuster.most),
      );
      return;
    case 'cap':
    case 'none':
  }
}

/** The ends of a reading may be given in either order: it may grow or shrink with preload. */
function* collarProblems(collar: Extract<Adjuster, { kind: 'collar' }>, path: FieldPath): Generator<Problem> {
  const { least, most, springLength, touches } = collar;
  if (!isBelow(least, most) && !isBelow(most, least))
    yield problem([...path, 'most'], 'noRange', asTyped(most));
  if (springLength && !isBetween(springLength.at, least, most)) {
    const at = [...path, 'springLength', 'at'];
    yield problem(at, 'outsideEnds', asTyped(springLength.at), asTyped(least), asTyped(most));
  }
  if (touches && !isBetween(touches, least, most)) {
    yield problem([...path, 'touches'], 'outsideEnds', asTyped(touches), asTyped(least), asTyped(most));
  }
}

function* camProblems({ steps }: Extract<Adjuster, { kind: 'cam' }>, path: FieldPath): Generator<Problem> {
  const first = steps[0]!;
  if (siOf(first) !== 0) yield problem([...path, 'steps', 0], 'notFromZero', asTyped(first));
  for (let i = 1; i < steps.length; i++) {
    const [before, here] = [steps[i - 1]!, steps[i]!];
    if (!isBelow(before, here))
      yield problem([...path, 'steps', i], 'notRising', asTyped(here), asTyped(before));
  }
}
