import { type Problem, problem } from '../problem.ts';
import { airOfLegs, type Fork } from '../schema/fork.ts';
import { asTyped, isBelow } from './compare.ts';

const path = ['machine', 'front', 'fork'] as const;

/** A fork by itself: a tube that has room within itself, and one thing only that says how long the installed spring is. */
export function* forkProblems({ tubes, air, stack, adjuster }: Fork): Generator<Problem> {
  for (const { air: told, step } of airOfLegs(air)) {
    if (tubes !== 'conventional' || told === undefined || told === 'none') continue;
    const { bore, seal } = told;
    if (!bore || !seal || isBelow(bore, seal)) continue;
    yield problem(
      [...path, 'air', ...step, 'bore'],
      'notBelow',
      asTyped(bore),
      'what the same tube measures at its seal',
      asTyped(seal),
    );
  }
  if (stack === undefined) return;
  if (adjuster?.kind === 'spacer' && stack.spacer) yield problem([...path, 'stack', 'spacer'], 'spacerTwice');
  if (adjuster && adjuster.kind !== 'none' && adjuster.springLength) {
    yield problem([...path, 'adjuster', 'springLength'], 'springLengthTwice');
  }
}
