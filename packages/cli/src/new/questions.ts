import { type Bound, bounds } from '@sagwright/records/schema/bounds';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import { type Dimension, type UnitOf, unitsOf } from '@sagwright/records/units';
import { otherUnit, rangeInWords } from '@sagwright/records/wording/range';
import { parseQuantity } from '@sagwright/workbench/format/parse';
import type { Asker } from './asker.ts';

/** A figure that is asked for: in words, in the unit that stands in where none is typed, and how to come by it. */
export interface FigureAsked<D extends Dimension> {
  readonly text: string;
  readonly dimension: D;
  readonly unit: UnitOf<D>;
  readonly bound: Bound;
  readonly hint: string;
}

/** The answers have ended before all was asked. */
export class AnswersEnded extends Error {}

/** Asks until a quantity within its bounds is typed. */
export async function askNeeded<D extends Dimension>(
  asker: Asker,
  asked: FigureAsked<D>,
): Promise<Quantity<D>> {
  for (;;) {
    const answer = await askOnce(asker, `${asked.text} (${asked.unit}): `, asked);
    if (answer !== null) return answer;
    asker.say(`  This one is needed. ${asked.hint}`);
  }
}

/** The same where the plan can do without: an empty line, "?" or "none" leaves it out; `leftOut` says when to. */
export function askOptional<D extends Dimension>(
  asker: Asker,
  asked: FigureAsked<D>,
  leftOut: string,
): Promise<Quantity<D> | null> {
  return askOnce(asker, `${asked.text} (${asked.unit}; ${leftOut}): `, asked);
}

async function askOnce<D extends Dimension>(
  asker: Asker,
  prompt: string,
  asked: FigureAsked<D>,
): Promise<Quantity<D> | null> {
  for (;;) {
    const answer = await answerOf(asker, prompt);
    if (isUnknown(answer)) return null;
    const read = judge(answer, asked);
    if (typeof read !== 'string') return read;
    asker.say(`  ${read}`);
  }
}

/** Asks until one of the words is typed. */
export async function askWord<W extends string>(asker: Asker, text: string, words: readonly W[]): Promise<W> {
  for (;;) {
    const answer = await answerOf(asker, `${text} (${words.join(' or ')}): `);
    const found = words.find((word) => word === answer.toLowerCase());
    if (found !== undefined) return found;
    asker.say(`  ${words.join(' or ')}, please.`);
  }
}

async function answerOf(asker: Asker, prompt: string): Promise<string> {
  const answer = await asker.ask(prompt);
  if (answer === null) throw new AnswersEnded();
  return answer.trim();
}

function isUnknown(answer: string): boolean {
  return answer === '' || /^(?:\?|no|none|unknown|don'?t know)$/i.test(answer);
}

/** A quantity; or what is wrong with it, and what to type instead. */
function judge<D extends Dimension>(
  answer: string,
  { dimension, unit, bound }: FigureAsked<D>,
): Quantity<D> | string {
  const read = parseQuantity(answer, dimension, unit);
  if (!read.ok) {
    if (read.fault === 'number') return read.why;
    const units = unitsOf(dimension).join(', ');
    if (read.fault === 'empty') return `A figure is needed, in ${units}.`;
    return read.fault === 'other dimension'
      ? `"${read.found}" measures something else; here it is ${units}.`
      : `"${read.found}" is no unit known here; there is ${units}.`;
  }
  const { quantity } = read;
  const value = siOf(quantity);
  if (value >= bound.least && value <= bound.most) return quantity;
  const other = otherUnit(quantity.value, quantity.unit, bound);
  const hint = other === undefined ? '' : ` Was it ${quantity.value} ${other}?`;
  return `${quantity.value} ${quantity.unit}; allowed: ${rangeInWords(bound, quantity.unit)}.${hint}`;
}

/** The figures of a first job. */
export const figuresAsked = {
  front: {
    text: 'Front wheel on the scale, nobody aboard',
    dimension: 'mass',
    unit: 'kg',
    bound: bounds.massOnWheel,
    hint: 'A platform scale under the wheel, the machine upright and level.',
  },
  rear: {
    text: 'Rear wheel on the scale, nobody aboard',
    dimension: 'mass',
    unit: 'kg',
    bound: bounds.massOnWheel,
    hint: 'A platform scale under the wheel, the machine upright and level.',
  },
  ratio: {
    text: 'Wheel travel for each mm of shock stroke',
    dimension: 'leverage',
    unit: 'wheel/shock',
    bound: bounds.leverage,
    hint: 'Lift the wheel by 40 mm and see how much shorter the shock gets: 40 / 35 = 1.14.',
  },
  rate: {
    text: 'Rate of one rear spring, as marked',
    dimension: 'rate',
    unit: 'N/mm',
    bound: bounds.springRate,
    hint: 'It is marked on the spring or its box: 25, or 140 lbf/in.',
  },
  lead: {
    text: 'How far one turn of the preload collar moves it',
    dimension: 'length',
    unit: 'mm',
    bound: bounds.lead,
    hint: '',
  },
  loosest: {
    text: 'Collar reading at its loosest end, between two faces of the shock',
    dimension: 'length',
    unit: 'mm',
    bound: bounds.collarReading,
    hint: 'Pick two faces that a caliper gets at, one of them on the collar, never a thread end.',
  },
  tightest: {
    text: 'Collar reading at its tightest end',
    dimension: 'length',
    unit: 'mm',
    bound: bounds.collarReading,
    hint: 'Where the thread ends, between the same two faces.',
  },
  now: {
    text: 'Collar reading now',
    dimension: 'length',
    unit: 'mm',
    bound: bounds.collarReading,
    hint: 'As found, between the same two faces.',
  },
  preload: {
    text: 'Preload now: free length of the spring less its installed length, shock fully out',
    dimension: 'length',
    unit: 'mm',
    bound: bounds.preload,
    hint: 'Measure the spring on the shock, fully out; its free length is in the catalogue.',
  },
  rider: {
    text: 'Rider in riding gear',
    dimension: 'mass',
    unit: 'kg',
    bound: bounds.thingMass,
    hint: '',
  },
  passenger: {
    text: 'Passenger in riding gear',
    dimension: 'mass',
    unit: 'kg',
    bound: bounds.thingMass,
    hint: '',
  },
} as const satisfies Readonly<Record<string, FigureAsked<Dimension>>>;
