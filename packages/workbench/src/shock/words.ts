import type { Figure } from '@sagwright/model/plan/answer';
import { decimalsFor, fixed, marked } from '../format/digits.ts';
import {
  formatFigure,
  formatFigureNumber,
  formatNumber,
  formatRange,
  formatSome,
  formatSomeNumber,
  formatWidth,
} from '../format/format.ts';
import { sizeOf } from '../format/size.ts';
import type { Units } from '../format/units.ts';
import { ONE_DIAMETER } from '../inputs/lengthAdjuster.ts';
import { SET_LOSS } from '../inputs/shockAir.ts';
import type { JobPlan } from '../path.ts';
import { reachesShort } from '../words/english/reasons.ts';
import { shock as say } from '../words/english/shock.ts';
import type { ChosenLength, LengthAdjusterDocument, LengthLeft, PressureDocument } from './document.ts';

/** How many turns are left both ways, and what the chosen length takes, in sentences. */
export function lengthAdjusterWords(planned: JobPlan, units: Units): readonly string[] {
  const { lengthAdjuster: at } = planned.inputs.shock;
  if (at === null) return [];
  return [
    longerWords(planned, at, units),
    at.shorter === null ? say.shorterUnknown : say.shorter(leftWords(at.shorter, units)),
    ...(at.chosen === null ? [] : [chosenWords(at.chosen, units), say.lockNut]),
  ];
}

/** What its gas bears, in a sentence. */
export function gasWords({ inputs, job }: JobPlan, units: Units): string {
  const { gas } = inputs.shock;
  if (gas === null) return say.noGas;
  const force = (figure: Figure): string => formatFigure(figure, 'force', units);
  return say.gas(force(gas.fullyOut), force(gas.fullStroke), job.machine.rear.shock.gas === undefined);
}

function longerWords(planned: JobPlan, { longer }: LengthAdjusterDocument, units: Units): string {
  if (longer === null) return say.longerUnknown;
  const end = endWords(planned, longer);
  return longer.length.value < 0
    ? say.beyond(leftWords(turned(longer), units), end)
    : say.longer(leftWords(longer, units), end);
}

function endWords({ job }: JobPlan, { by }: LengthLeft): string {
  const { thread, mark } = job.machine.rear.shock.lengthAdjuster!;
  switch (by) {
    case 'range':
      return say.ends.range();
    case 'thread':
      return say.ends.thread(say.diameters(String(thread?.atLeast ?? ONE_DIAMETER)));
    case 'mark':
      return say.ends.mark(mark?.name ?? say.mark);
  }
}

function leftWords({ length, turns }: LengthLeft, units: Units): string {
  const told = formatFigure(length, 'length', units);
  return turns === null ? told : say.turns(turnsWords(turns, units), told);
}

/** "2.4 ± 0.8": turns of a thread, in the digits of their ±, a tenth at the finest. */
export function turnsWords({ value, plusMinus }: Figure, units: Units): string {
  const decimals = plusMinus === null || plusMinus === 0 ? 1 : Math.min(1, decimalsFor(plusMinus));
  const width = plusMinus === null ? '' : ` ± ${fixed(Math.max(plusMinus, 10 ** -decimals), decimals)}`;
  return marked(`${fixed(value, decimals)}${width}`, units.decimal);
}

function chosenWords({ change, turns, left, verdict }: ChosenLength, units: Units): string {
  const size = formatFigure(sizeOf(change), 'length', units);
  const count = turns === null ? null : turnsWords(sizeOf(turns), units);
  const way = change.value < 0 ? say.chosenShorter(size, count) : say.chosenLonger(size, count);
  return left === null
    ? say.chosen['not checked'](way)
    : say.chosen[verdict](way, formatFigure(sizeOf(left), 'length', units));
}

function turned({ length, turns, by }: LengthLeft): LengthLeft {
  return { length: sizeOf(length), turns: turns === null ? null : sizeOf(turns), by };
}

/** The wanted pressure as a bare figure; in words where even no pressure is too much. */
export function wantedPressureWords(aim: Figure, units: Units): string {
  return aim.value < 0 ? say.pressure.none : formatFigureNumber(aim, 'pressure', units);
}

/** The pressures that keep the sag in the wanted band, as far as there are such. */
export function pressureBandWords({ least, most }: PressureDocument, units: Units): string {
  return most < 0 ? '' : formatRange(Math.max(0, least), most, 'pressure', units);
}

/** What is set, in a column of a wide table: "38", "edge", "past 5". */
export function shortPressureWords({ set, reach }: PressureDocument, units: Units): string {
  if (reach.kind === 'at the edge') return reachesShort[reach.kind]();
  return reach.kind === 'out of reach'
    ? reachesShort[reach.kind](formatSomeNumber(reach.short, 'pressure', units))
    : formatNumber(set.fullyOut, 'pressure', units);
}

/** "ok", or by how much the wanted pressure lies past the unit's range. */
export function pressureReachWords({ reach }: PressureDocument, units: Units): string {
  switch (reach.kind) {
    case 'at the edge':
      return say.pressure.edge(formatSome(reach.short, 'pressure', units));
    case 'out of reach':
      return say.pressure.beyond(formatSome(reach.short, 'pressure', units));
    default:
      return '';
  }
}

/** What is said beside the pressures: in which states they are read, and what the gauge takes. */
export function pressureNotes({ inputs }: JobPlan, units: Units): readonly string[] {
  const loss = inputs.figures.get(SET_LOSS);
  return [
    say.pressure.state,
    ...(loss === undefined ? [] : [say.pressure.loss(formatWidth(loss.halfWidth, 'share', units))]),
  ];
}
