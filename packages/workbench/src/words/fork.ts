import type { ForkDocument } from '../fork/document.ts';
import { format, formatPlainNumber } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { words } from './catalogue.ts';
import { loadName } from './names.ts';

/** What is to be said of the fork beside its figures: how its legs rest on their top-out springs, its bare air gap, what more oil adds, and when its air is the quick one. */
export function forkSentences(
  { job }: JobPlan,
  { legs, air, quick, along, oilStep }: ForkDocument,
  units: Units,
): readonly string[] {
  const say = words.fork;
  const length = (value: number): string => format(value, 'length', units);
  const growths = legs.flatMap(({ strut, topOut }) =>
    topOut === null
      ? []
      : [say.growth(say.leg[strut], length(topOut.relaxed), length(topOut.pressed), length(topOut.preload))],
  );
  if (air.length === 0) return growths;
  const { air: pressed, airMoreOil, whole } = along.at(-1)!;
  const step = length(oilStep);
  const more = airMoreOil === null ? 0 : airMoreOil - pressed.value;
  return [
    ...growths,
    ...air.map(({ leg, bareGap }) => say.bareGap(say.leg[leg], length(bareGap))),
    airMoreOil === null
      ? say.locks(step)
      : say.moreOil(step, format(more, 'force', units), format(whole.value + more, 'force', units)),
    ...(quick === null
      ? []
      : [
          say.settled,
          say.quick(
            formatPlainNumber(quick.exponent, 'motion', units),
            loadName(job, quick.loadCase),
            length(quick.stroke),
          ),
        ]),
  ];
}
