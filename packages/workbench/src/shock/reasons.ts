import type { PlannedPressure, Reason, Remedy } from '@sagwright/model/plan/answer';
import { format, formatFigure, formatRange, formatSome, formatWidth } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import { reasons } from '../words/english/reasons.ts';
import { shock } from '../words/english/shock.ts';

const say = shock.pressure;

/** What speaks for or against a spring beside the air that sets its end. */
export function pressureReasonWords(
  load: string,
  { code, figures }: Reason,
  planned: PlannedPressure | null,
  units: Units,
): string {
  const { pressure = 0, end = 0, short = 0, travel = 0 } = figures;
  const doubt = planned?.aim.plusMinus ?? null;
  const wanted = formatFigure({ value: pressure, plusMinus: doubt }, 'pressure', units);
  if (code === 'pressure reaches') return say.reaches(load, wanted);
  const ends = format(end, 'pressure', units);
  if (code === 'pressure only at the edge')
    return say.atTheEdge(load, wanted, ends, format(travel, 'length', units));
  const past = code === 'pressure past its most' ? say.pastMost : say.pastLeast;
  const said = past(load, wanted, ends, formatSome(short, 'pressure', units));
  return doubt === null || short >= doubt
    ? said
    : reasons.lessThanItsDoubt(said, formatWidth(doubt, 'pressure', units));
}

/** What would help where a pressure sets the end and no spring reaches. */
export function pressureRemedyWords(
  remedy: Extract<Remedy, { kind: 'other coil' | 'other pressures' }>,
  nameOf: (spring: string) => string,
  units: Units,
): string {
  return remedy.kind === 'other coil'
    ? say.otherCoil(formatRange(remedy.least, remedy.most, 'rate', units))
    : say.otherPressures(formatRange(remedy.least, remedy.most, 'pressure', units), nameOf(remedy.spring));
}
