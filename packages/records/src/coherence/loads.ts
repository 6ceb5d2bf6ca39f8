import { type FieldPath, type Problem, problem } from '../problem.ts';
import type { LoadCase } from '../schema/loads.ts';
import type { JobDocument } from '../schema.ts';
import { asTyped, isAtMost } from './compare.ts';
import { noSuch } from './references.ts';

/** Percent by which shares may add up to more than the whole: they are rounded, three thirds to 33.5 each. */
const shareRounding = 0.5;

/** Things that exist, at places that exist, once each; and shares that are parts of one whole. */
export function* loadProblems(job: JobDocument): Generator<Problem> {
  const cases = Object.entries(job.loadCases);
  for (const [id, loadCase] of cases) {
    const path = ['loadCases', id];
    yield* fuelProblems(loadCase, path, job);
    if ('aboard' in loadCase) yield* aboardProblems(loadCase.aboard, [...path, 'aboard'], job);
  }
  const sum = cases.reduce((total, [, { share }]) => total + share, 0);
  if (sum > 100 + shareRounding) yield problem(['loadCases'], 'sharesOverWhole', sum);
}

function* fuelProblems({ fuel }: LoadCase, path: FieldPath, { machine }: JobDocument): Generator<Problem> {
  const capacity = machine.tank?.capacity;
  if (!fuel || !capacity || isAtMost(fuel, capacity)) return;
  yield problem([...path, 'fuel'], 'notAtMost', asTyped(fuel), "the tank's capacity", asTyped(capacity));
}

function* aboardProblems(
  aboard: Extract<LoadCase, { aboard: unknown }>['aboard'],
  path: FieldPath,
  { things, machine }: JobDocument,
): Generator<Problem> {
  const seen = new Set<string>();
  for (const [id, { thing, place }] of Object.entries(aboard)) {
    if (!things[thing]) yield noSuch([...path, id, 'thing'], 'thing', thing, things);
    if (!machine.places[place]) yield noSuch([...path, id, 'place'], 'place', place, machine.places);
    if (seen.has(thing)) yield problem([...path, id, 'thing'], 'aboardTwice', thing);
    seen.add(thing);
  }
}
