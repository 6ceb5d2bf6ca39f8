import type { JobDocument } from '@sagwright/records/schema';
import { adjusterAt } from '@sagwright/records/schema/machine';
import { type Desk, inOrder } from './desk.ts';
import { type ChoiceFigures, choiceFigures } from './ends.ts';
import { type LoadFigures, loadFigures } from './loads.ts';
import { type MachineFigures, machineFigures } from './machine.ts';

/** A job with its units off: numbers only, before the weighing is worked out. */
export interface Converted {
  readonly machine: MachineFigures;
  readonly loads: Readonly<Record<string, LoadFigures>>;
  readonly choices: Readonly<Record<string, ChoiceFigures>>;
}

/** One part of the conversion: it hangs on no other, so that a figure is followed through the parts that took it, and no more. */
export interface Part {
  readonly of: keyof Converted;
  /** Id of the load or spring; '' for the machine. */
  readonly id: string;
  readonly convert: (desk: Desk) => object;
}

/** What a part is called: 'machine', 'loads.errand', 'choices.blue-pair'. */
export function partName({ of, id }: Pick<Part, 'of' | 'id'>): string {
  return id === '' ? of : `${of}.${id}`;
}

/** The parts of a job: the machine, each load, and each spring that could be fitted to an end found with settings. */
export function partsOf(job: JobDocument): readonly Part[] {
  const { rear } = job.machine;
  const { asFound } = job.setups;
  const choices = inOrder(job.springs).flatMap(([id, { end }]): Part[] => {
    const setting = asFound[end];
    if (setting === undefined) return [];
    const adjuster = adjusterAt(job.machine, end);
    const count = end === 'rear' ? rear.shock.count : 2;
    return [{ of: 'choices', id, convert: (desk) => choiceFigures(desk, end, count, adjuster, setting, id) }];
  });
  const loads = inOrder(job.loadCases).map(
    ([id, loadCase]): Part => ({ of: 'loads', id, convert: (desk) => loadFigures(desk, id, loadCase) }),
  );
  return [{ of: 'machine', id: '', convert: machineFigures }, ...choices, ...loads];
}

/** Takes a job apart, part by part. */
export function convert(desk: Desk, parts: readonly Part[]): Converted {
  const [machine, ...others] = parts;
  const of = (name: 'loads' | 'choices'): Record<string, object> =>
    Object.fromEntries(
      others.filter((part) => part.of === name).map((part) => [part.id, part.convert(desk)]),
    );
  return { machine: machine!.convert(desk), choices: of('choices'), loads: of('loads') } as Converted;
}
