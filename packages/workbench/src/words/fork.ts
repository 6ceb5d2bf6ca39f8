import type { ForkDocument } from '../fork/document.ts';
import { format } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import { words } from './catalogue.ts';

/** What is to be said of the fork beside its figures: how its legs rest on their top-out springs, its bare air gap, what more oil adds. */
export function forkSentences({ legs, air, along, oilStep }: ForkDocument, units: Units): readonly string[] {
  const say = words.fork;
  const length = (value: number): string => format(value, 'length', units);
  const growths = legs.flatMap(({ strut, topOut }) =>
    topOut === null
      ? []
      : [say.growth(say.leg[strut], length(topOut.relaxed), length(topOut.pressed), length(topOut.preload))],
  );
  if (air === null) return growths;
  const { air: pressed, airMoreOil, whole } = along.at(-1)!;
  const step = length(oilStep);
  const more = airMoreOil === null ? 0 : airMoreOil - pressed.value;
  return [
    ...growths,
    say.bareGap(length(air.bareGap)),
    airMoreOil === null
      ? say.locks(step)
      : say.moreOil(step, format(more, 'force', units), format(whole.value + more, 'force', units)),
  ];
}
