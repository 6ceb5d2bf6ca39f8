import type { AtSetting, PlanCell, Planned, SpringPlan } from '@sagwright/model/plan/answer';
import type { JobPlan } from '../path.ts';
import { pressureOf } from '../shock/pressure.ts';
import type { CellDocument, PlannedDocument, SagDocument, SetDocument } from './document.ts';
import type { End } from './inView.ts';
import { settingDocument } from './setting.ts';
import { attitudeChange, sagOf } from './standing.ts';

/** One spring with one load. */
export function cellDocument(planned: JobPlan, end: End, spring: SpringPlan, cell: PlanCell): CellDocument {
  if (cell.kind !== 'planned') return cell;
  const { wanted, preload, preloadBothAtTarget, positions, reach, contributions } = cell.cell;
  return {
    kind: 'planned',
    loadCase: cell.loadCase,
    wanted,
    preload,
    preloadInterval: preloadInterval(planned, end, spring, cell.cell),
    preloadBothAtTarget,
    positions,
    reach,
    pressure: pressureOf(planned, cell.cell),
    set: setDocument(planned, end, spring, cell.loadCase, cell.cell),
    contributions,
  };
}

function preloadInterval(
  planned: JobPlan,
  end: End,
  spring: SpringPlan,
  { positions }: Planned,
): PlannedDocument['preloadInterval'] {
  if (positions === null) return null;
  const { preloadAtZero } = planned.inputs.question[end].choices.find(({ id }) => id === spring.spring)!;
  return { loosest: preloadAtZero + positions.loosest, tightest: preloadAtZero + positions.tightest };
}

function setDocument(
  planned: JobPlan,
  end: End,
  spring: SpringPlan,
  loadCase: string,
  cell: Planned,
): SetDocument {
  const { set, setting } = cell;
  const { rest } = set;
  const away: End = end === 'rear' ? 'front' : 'rear';
  const { asFound } = planned.plan.loadCases.find((load) => load.loadCase === loadCase)!;
  const own = rest?.[end] ?? null;
  const other = rest?.[away] ?? null;
  const otherFound = asFound.answer.kind === 'rest' ? asFound.answer.rest[away] : null;
  return {
    setting: setting === null ? null : settingDocument(planned, end, spring, loadCase, setting),
    preload: set.preload,
    springLength: set.springLength,
    sag: own === null ? null : sagOf(own, set.travel.plusMinus, set.band),
    free: freeSag(end, set),
    other: other === null ? null : sagOf(other, set.otherTravel.plusMinus, set.otherBand),
    otherChange: other === null || otherFound === null ? null : other.travel - otherFound.travel,
    wheelRate: own?.wheelRate ?? null,
    rideRate: own?.rideRate ?? null,
    frequency: own?.rideFrequency ?? null,
    frequencyWithoutTyre: own?.frequencyWithoutTyre ?? null,
    travelToRubber: own === null ? null : set.travelToRubber,
    travelToMetal: own === null ? null : set.travelToMetal,
    strokeToCoilBind: set.strokeToCoilBind,
    preloadAtExtension: set.preloadAtExtension,
    attitude: set.attitude,
    attitudeChange: attitudeChange(set.attitude, asFound.attitude),
    otherRests: rest?.otherRests ?? [],
  };
}

function freeSag(end: End, { alone, rest }: AtSetting): SagDocument | null {
  if (alone === null || rest === null) return null;
  const { standing, travel, band } = alone;
  return sagOf({ ...rest[end], travel: travel.value, standing }, travel.plusMinus, band);
}
