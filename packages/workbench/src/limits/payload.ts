import type { JobPlan } from '../path.ts';
import type { PayloadDocument } from './document.ts';

/** A person in gear as approvals reckon one [kg]: the driver of Regulation (EU) 168/2013, from memory. */
export const PERSON = 75;

/** What the gross rating leaves with every load, in people and things. */
export function payloadOfJob(planned: JobPlan): readonly PayloadDocument[] {
  return planned.plan.loadCases.map(({ loadCase }) => payloadOfLoad(planned, loadCase));
}

/**
 * As many people as there are seats free and kilograms left for sure, and the rest in things. Axles, tyres and places may allow less:
 * the room at each place tells that.
 */
export function payloadOfLoad({ job, plan }: JobPlan, loadCase: string): PayloadDocument {
  const { limits } = plan.loadCases.find((each) => each.loadCase === loadCase)!;
  const gross = limits.find(({ of }) => of.kind === 'gross');
  const seats = freeSeats(job, loadCase);
  if (gross === undefined || gross.over === null) return { loadCase, left: null, seats, people: null };
  const left = { value: -gross.over, plusMinus: Math.hypot(gross.plusMinus, gross.allowedPlusMinus) };
  const sure = Math.max(0, left.value - left.plusMinus);
  const people = seats === null ? null : Math.min(seats, Math.floor(sure / PERSON));
  return { loadCase, left, seats, people };
}

/** Null for a load that was only weighed: nobody knows who sits where. */
function freeSeats({ machine, loadCases }: JobPlan['job'], loadCase: string): number | null {
  const load = loadCases[loadCase]!;
  if ('scales' in load) return null;
  const taken = new Set(Object.values(load.aboard).map(({ place }) => place));
  return Object.entries(machine.places).filter(([id, { kind }]) => kind.endsWith('seat') && !taken.has(id))
    .length;
}
