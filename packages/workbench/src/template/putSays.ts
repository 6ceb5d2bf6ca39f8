import type { JobDocument } from '@sagwright/records/schema';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import { valueAt } from './valueAt.ts';

type PartKind = 'shock' | 'fork';

/** What goes from a job with the part that was in it, where it was there. */
const ofTheOther: { readonly [K in PartKind]: readonly string[] } = {
  shock: [
    'setups.asFound.rear',
    'choice.rear',
    'choice.shockLength',
    'machine.rear.shock.adjuster.touches',
    'machine.rear.shock.lengthAdjuster.thread',
    'machine.rear.shock.lengthAdjuster.mark',
    'fitting',
  ],
  fork: ['setups.asFound.front', 'choice.front', 'machine.front.fork.adjuster.touches'],
};

export function dropped(kind: PartKind, job: JobDocument): readonly string[] {
  return ofTheOther[kind].filter((path) => valueAt(job, path) !== undefined);
}

/** Where the part itself stands; what the machine was weighed with; and what was read along a wheel that now hangs elsewhere. */
export function readAgain(kind: PartKind, before: JobDocument, after: JobDocument): readonly string[] {
  const own =
    kind === 'shock'
      ? ['setups.asFound.rear', 'machine.rear.shock.lengthAdjuster.change', 'machine.rear.shock.air.pressure']
      : ['setups.asFound.front'];
  const weighed = after.machine.weighing.attitude === 'own sag' ? ['machine.weighing'] : [];
  const hangs = kind === 'shock' ? readAtTheRear(before, after) : [];
  const there = [...own, ...weighed, 'machine.beam', 'machine.clearances'];
  return [...there.filter((path) => valueAt(after, path) !== undefined), ...hangs];
}

/** Travel counts from fully out: with another length, or an unknown one, it begins elsewhere; hard points follow by themselves. */
function readAtTheRear({ machine: before }: JobDocument, { machine: after }: JobDocument): readonly string[] {
  const { kind } = after.rear.travel;
  if (kind === 'direct' || kind === 'linkage') return [];
  if (isSameLength(before.rear.shock.length, after.rear.shock.length)) return [];
  return [
    'machine.rear.measuredAt',
    ...(kind === 'table' || kind === 'taped' ? ['machine.rear.travel'] : []),
  ];
}

function isSameLength(a: Quantity | undefined, b: Quantity | undefined): boolean {
  return a !== undefined && b !== undefined && Math.abs(siOf(a) - siOf(b)) < 1e-9;
}
