import { bounds } from '@sagwright/records/schema/bounds';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import { type Dimension, unitsOf } from '@sagwright/records/units';
import { otherUnit, rangeInWords } from '@sagwright/records/wording/range';
import type { FirstFigure } from '@sagwright/workbench/first/entries';
import { parseQuantity } from '@sagwright/workbench/format/parse';
import type { Asker } from './asker.ts';

/** A figure that is asked for: what it is, in which words, what it means to leave it out, and how to come by it. */
export interface FigureAsked<D extends Dimension> {
  readonly figure: FirstFigure<D>;
  readonly ask: string;
  readonly without: string | null;
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
    const answer = await askOnce(asker, `${asked.ask} (${asked.figure.unit}): `, asked);
    if (answer !== null) return answer;
    asker.say(`  This one is needed. ${asked.hint}`);
  }
}

/** The same where there may be none: an empty line, "?" or "none" says so. */
export function askOptional<D extends Dimension>(
  asker: Asker,
  asked: FigureAsked<D>,
): Promise<Quantity<D> | null> {
  return askOnce(asker, `${asked.ask} (${asked.figure.unit}; empty: ${asked.without ?? 'none'}): `, asked);
}

async function askOnce<D extends Dimension>(
  asker: Asker,
  prompt: string,
  asked: FigureAsked<D>,
): Promise<Quantity<D> | null> {
  for (;;) {
    const answer = await answerOf(asker, prompt);
    if (isUnknown(answer)) return null;
    const read = judge(answer, asked.figure);
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
  { dimension, unit, bound: name }: FirstFigure<D>,
): Quantity<D> | string {
  const bound = bounds[name];
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
