import type { LimitOf } from '@sagwright/model/limits/limits';
import { capacityFrom, type TyreLack, tyreLacks } from '../inputs/tyreCapacity.ts';
import type { JobPlan } from '../path.ts';
import type { LimitNeed, LimitNeeded } from './document.ts';

/** What may be missing of what something may bear. */
type RatingNeed = TyreLack | 'gross rating' | 'axle rating' | 'place limit';

/** What must be read before a load can be held against a limit; nothing where it can. */
export function limitNeeds(planned: JobPlan, of: LimitOf): readonly LimitNeeded<RatingNeed>[] {
  switch (of.kind) {
    case 'rear tyre':
    case 'front tyre':
      return tyreNeeds(planned, endOf(of.kind));
    case 'place': {
      const known = planned.inputs.limits.places[of.place] != null;
      return known ? [] : [needed('place limit', limitPath(planned, of))];
    }
    default: {
      const what = of.kind === 'gross' ? 'gross rating' : 'axle rating';
      const known = planned.inputs.question.limits[ratingField[of.kind]] !== null;
      return known ? [] : [needed(what, limitPath(planned, of))];
    }
  }
}

function tyreNeeds({ job }: JobPlan, end: 'rear' | 'front'): readonly LimitNeeded<RatingNeed>[] {
  const path = `machine.${end}.tyre`;
  const field = {
    'tyre capacity': 'loadIndex',
    'capacity at pressure': 'byPressure',
    pressure: 'pressure',
    'placard pressure': 'placardPressure',
  } as const;
  return tyreLacks(job.machine[end].tyre).map((lack) => needed(lack, `${path}.${field[lack]}`));
}

/** Where the job holds what a limit goes by. */
export function limitPath({ job }: JobPlan, of: LimitOf): string {
  switch (of.kind) {
    case 'place':
      return `machine.places.${of.place}.limit`;
    case 'rear tyre':
    case 'front tyre':
      return tyrePath(endOf(of.kind), job);
    default:
      return `machine.limits.${ratingField[of.kind]}`;
  }
}

function tyrePath(end: 'rear' | 'front', { machine }: JobPlan['job']): string {
  const path = `machine.${end}.tyre`;
  switch (capacityFrom(machine[end].tyre)) {
    case 'table':
    case 'below table':
      return `${path}.byPressure`;
    case 'own figure':
      return `${path}.capacity`;
    default:
      return `${path}.loadIndex`;
  }
}

const ratingField = { gross: 'gross', 'rear axle': 'rearAxle', 'front axle': 'frontAxle' } as const;

function endOf(tyre: 'rear tyre' | 'front tyre'): 'rear' | 'front' {
  return tyre === 'rear tyre' ? 'rear' : 'front';
}

export function needed<What extends LimitNeed>(what: What, path: string): LimitNeeded<What> {
  return { what, path };
}
