import type { PlannedPressure, Reach } from '@sagwright/model/plan/answer';
import { ATMOSPHERE } from '@sagwright/model/statics/machine';
import { formatNumber, formatRange, formatSome, formatWidth, unitOf } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import type { PressureDocument } from '../shock/document.ts';
import { lengthAdjusterWords, pressureNotes, wantedPressureWords } from '../shock/words.ts';
import { words } from '../words/catalogue.ts';
import { shock as say } from '../words/english/shock.ts';
import { laneKinds } from './laneKinds.ts';
import type { AdjusterView, LaneView, PressureView, ShockView } from './shapes.ts';

/** How much pressure stands for a millimetre of a reach line [Pa]: a tenth of a bar. */
const PRESSURE_PER_MM = 1e4;

/** What is told of the rear shock by itself. */
export function shockView(planned: JobPlan, units: Units): ShockView {
  const { lengthAdjuster } = planned.inputs.shock;
  const says = lengthAdjusterWords(planned, units);
  const opens = [lengthAdjuster?.longer && 'longer-left', lengthAdjuster?.shorter && 'shorter-left'] as const;
  return {
    length: says.map((each, i) => ({ says: each, figure: opens[i] ?? null })),
    air:
      planned.inputs.question.rear.pressure === undefined
        ? null
        : { unit: unitOf('pressure', units), says: pressureNotes(planned, units) },
  };
}

/** The air of the shock as what sets its end; null where something else does. */
export function airAsAdjuster({ inputs }: JobPlan, units: Units): AdjusterView | null {
  const { pressure: range, adjuster } = inputs.question.rear;
  if (range === undefined || adjuster !== null) return null;
  const at = (pressure: number): string => formatNumber(pressure - ATMOSPHERE, 'pressure', units);
  return {
    sets: 'pressure',
    mostMm: (range.most - range.least) / PRESSURE_PER_MM,
    name: say.pressure.air,
    unit: unitOf('pressure', units),
    fromWords: at(range.least),
    toWords: at(range.most),
    stepsMm: [],
  };
}

/** The lane of a load whose pressure is planned, along that range. */
export function pressureLane(
  { inputs }: JobPlan,
  pressure: PlannedPressure,
  units: Units,
): Pick<LaneView, 'kind' | 'fromMm' | 'toMm' | 'plusMinusMm' | 'preload' | 'plusMinus' | 'words'> {
  const { aim, least, most, reach, set } = pressure;
  const range = inputs.question.rear.pressure!;
  const along = (value: number): number => (value - range.least) / PRESSURE_PER_MM;
  const gauge = (value: number): number => Math.max(0, value - ATMOSPHERE);
  return {
    kind: laneKinds[reach.kind],
    fromMm: along(least),
    toMm: along(most),
    plusMinusMm: (aim.plusMinus ?? 0) / PRESSURE_PER_MM,
    preload:
      most < ATMOSPHERE ? say.pressure.none : formatRange(gauge(least), gauge(most), 'pressure', units),
    plusMinus:
      aim.plusMinus === null ? words.page.plusMinusUnknown : formatWidth(aim.plusMinus, 'pressure', units),
    words: laneWords(reach, set, units),
  };
}

function laneWords(reach: Reach, set: number, units: Units): string {
  if (reach.kind === 'at the edge') return words.reaches[reach.kind]();
  if (reach.kind !== 'out of reach') return formatNumber(set - ATMOSPHERE, 'pressure', units);
  const past = reach.past === 'tightest' ? words.page.pastBy : words.page.shortBy;
  return past(formatSome(reach.short, 'pressure', units));
}

/** What the gauge reads for one load: as wanted, and as it is set in other states. */
export function pressureView({ aim, set }: PressureDocument, units: Units): PressureView {
  const number = (value: number | null): string | null =>
    value === null ? null : formatNumber(value, 'pressure', units);
  return { wanted: wantedPressureWords(aim, units), alone: number(set.alone), laden: number(set.laden) };
}
