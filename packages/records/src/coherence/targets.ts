import { type FieldPath, type Problem, problem } from '../problem.ts';
import type { Wanted } from '../schema/targets.ts';
import type { JobDocument } from '../schema.ts';
import { asTyped, isAtMost } from './compare.ts';
import { noSuch } from './references.ts';

/** Wanted sags whose band holds their aim, in the target sets and in the load cases. */
export function* targetProblems(job: JobDocument): Generator<Problem> {
  for (const [set, { rows }] of Object.entries(job.targetSets)) {
    for (const [id, { people, wanted }] of Object.entries(rows)) {
      const path = ['targetSets', set, 'rows', id];
      if (people.least > people.most) {
        yield problem(
          [...path, 'people', 'least'],
          'notAtMost',
          String(people.least),
          'the most',
          String(people.most),
        );
      }
      yield* wantedProblems(wanted, [...path, 'wanted']);
    }
  }
  for (const [id, { wanted }] of Object.entries(job.loadCases)) {
    for (const end of ['rear', 'front'] as const) {
      const sag = wanted?.[end];
      if (sag) yield* wantedProblems(sag, ['loadCases', id, 'wanted', end]);
    }
  }
  if (job.targetSet !== undefined && !job.targetSets[job.targetSet]) {
    yield noSuch(['targetSet'], 'target set', job.targetSet, job.targetSets);
  }
}

function* wantedProblems({ low, aim, high }: Wanted, path: FieldPath): Generator<Problem> {
  if (new Set([low, aim, high].map(({ unit }) => unit === '%')).size > 1) {
    yield problem([...path, 'aim'], 'wantedMixed', asTyped(low), asTyped(aim), asTyped(high));
  } else if (!isAtMost(low, aim) || !isAtMost(aim, high)) {
    yield problem([...path, 'aim'], 'wantedOrder', asTyped(low), asTyped(aim), asTyped(high));
  }
}
