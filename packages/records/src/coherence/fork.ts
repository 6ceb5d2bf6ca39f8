import { type Problem, problem } from '../problem.ts';
import type { Fork } from '../schema/fork.ts';
import { asTyped, isBelow } from './compare.ts';

const path = ['machine', 'front', 'fork'] as const;

/** A fork by itself: a tube that has room within itself, and one thing only that says how long the installed spring is. */
export function* forkProblems({ tubes, air, stack, adjuster }: Fork): Generator<Problem> {
  if (tubes === 'conventional' && air && air !== 'none' && air.bore && air.seal) {
    const { bore, seal } = air;
    if (!isBelow(bore, seal)) {
      yield problem(
        [...path, 'air', 'bore'],
        'notBelow',
        asTyped(bore),
        'what the same tube measures at its seal',
        asTyped(seal),
      );
    }
  }
  if (stack === undefined) return;
  if (adjuster?.kind === 'spacer' && stack.spacer) yield problem([...path, 'stack', 'spacer'], 'spacerTwice');
  if (adjuster && adjuster.kind !== 'none' && adjuster.springLength) {
    yield problem([...path, 'adjuster', 'springLength'], 'springLengthTwice');
  }
}
