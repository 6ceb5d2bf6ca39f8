import { type FieldPath, type Problem, problem } from '../problem.ts';
import { sizeFigures } from '../schema/stance.ts';
import type { JobDocument } from '../schema.ts';
import { noSuch } from './references.ts';

/** Rims that motorcycles have, in inches. */
const rims = { least: 8, most: 23 } as const;

/** Loads that exist, rims that there are, and other tyres only where those as found are known. */
export function* stanceProblems(job: JobDocument): Generator<Problem> {
  const { machine, choice, loadCases } = job;
  const load = machine.beam?.load;
  if (load !== undefined && !loadCases[load])
    yield noSuch(['machine', 'beam', 'load'], 'load case', load, loadCases);
  for (const end of ['rear', 'front'] as const) {
    const { tyre } = machine[end];
    const other = choice?.[`${end}Tyre`];
    yield* rimProblems(['machine', end, 'tyre', 'size'], tyre?.size);
    yield* rimProblems(['choice', `${end}Tyre`], other);
    if (other !== undefined && tyre?.size === undefined && tyre?.radius === undefined)
      yield problem(['choice', `${end}Tyre`], 'noOtherTyre', end);
  }
}

function* rimProblems(path: FieldPath, size: string | undefined): Generator<Problem> {
  if (size === undefined) return;
  const { rim } = sizeFigures(size);
  if (rim < rims.least || rim > rims.most) yield problem(path, 'rimOfOther', rim);
}
