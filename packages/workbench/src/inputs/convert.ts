import type { JobDocument } from '@sagwright/records/schema';
import type { Desk, InputProblem, Note } from './desk.ts';
import { inOrder } from './desk.ts';
import { type LoadFigures, loadFigures } from './loads.ts';
import { type MachineFigures, machineFigures } from './machine.ts';
import type { Take } from './take.ts';

/** A job with its units off: numbers only, before the weighing is worked out. */
export interface Converted {
  readonly machine: MachineFigures;
  readonly loads: Readonly<Record<string, LoadFigures>>;
}

/** Takes a job apart; `take` says what each figure is. */
export function convert(
  job: JobDocument,
  take: Take,
): { readonly converted: Converted; readonly problems: InputProblem[]; readonly notes: Note[] } {
  const desk: Desk = { job, take, problems: [], notes: [] };
  const machine = machineFigures(desk);
  const { wheelbase } = machine.machine.geometry;
  const loads: Record<string, LoadFigures> = {};
  for (const [id, loadCase] of inOrder(job.loadCases)) loads[id] = loadFigures(desk, id, loadCase, wheelbase);
  return { converted: { machine, loads }, problems: desk.problems, notes: desk.notes };
}
