import type { SagSI, WantedSI } from '@sagwright/model/plan/wanted';
import type { LoadCase } from '@sagwright/records/schema/loads';
import type { TargetSet, Wanted } from '@sagwright/records/schema/targets';
import { toSI } from '@sagwright/records/units';
import { rowOfLoad } from '../targets/rowOfLoad.ts';
import { shippedTargets, usualSet } from '../targets/shipped.ts';
import { type Desk, inOrder, note } from './desk.ts';

/** The set in use: the job's own, or the shipped one that stands in, which is said. */
export function targetSetInUse(desk: Desk): { readonly id: string; readonly set: TargetSet } {
  const { job } = desk;
  const own = job.targetSet === undefined ? undefined : job.targetSets[job.targetSet];
  if (own !== undefined) return { id: job.targetSet!, set: own };
  const [first] = inOrder(job.targetSets);
  if (first !== undefined) return { id: first[0], set: first[1] };
  note(desk, 'target set shipped', 'targetSet');
  return { id: usualSet, set: shippedTargets[usualSet]! };
}

/** What a load wants of both ends: its own words first, then the first row of the set that matches who and what is aboard. */
export function wantedOfLoad(
  desk: Desk,
  id: string,
  loadCase: LoadCase,
  set: TargetSet,
): { readonly rear: WantedSI | null; readonly front: WantedSI | null } {
  const wanted = (end: 'rear' | 'front'): WantedSI | null => {
    const typed = loadCase.wanted?.[end] ?? rowOfLoad(desk.job, end, loadCase, set)?.row.wanted;
    if (typed === undefined) {
      note(desk, 'no target', `loadCases.${id}.wanted.${end}`);
      return null;
    }
    return wantedSI(typed);
  };
  return { rear: wanted('rear'), front: wanted('front') };
}

function wantedSI(wanted: Wanted): WantedSI {
  return {
    low: sagSI(wanted.low),
    aim: sagSI(wanted.aim),
    high: sagSI(wanted.high),
    from: wanted.from,
    along: wanted.along,
  };
}

function sagSI(sag: Wanted['aim']): SagSI {
  return sag.unit === '%'
    ? { kind: 'share', share: sag.value / 100 }
    : { kind: 'length', length: toSI(sag.value, sag.unit) };
}
