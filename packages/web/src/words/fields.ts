/** Every word of the fields and of the keypad sheet. English; figures go in as text. */
import type { Unit } from '@sagwright/records/units';

// The closed field
export const figureNeeded = 'Figure needed';
export const addFigure = 'Add figure';
export const mendFigure = 'Mend it';
export const assumedWord = 'assumed';
export const typedAs = (figure: string) => `typed ${figure}`;
export const lessBy = (label: string, step: string) => `${label}: less by ${step}`;
export const moreBy = (label: string, step: string) => `${label}: more by ${step}`;

// The sheet
export const assumedNow = (figure: string, why: string) => `Assumed ${figure}: ${why}.`;
export const reads = (figure: string, onFile: string | undefined) =>
  onFile === undefined ? `Reads ${figure}.` : `Reads ${figure}; on file ${onFile}.`;
export const nothingTyped = 'Nothing typed.';
export function writeKey(read: 'figure' | 'empty' | 'refused', figure: string, onFile: boolean): string {
  if (read === 'figure') return `Write ${figure}`;
  if (read === 'refused') return 'Not clear yet';
  return onFile ? 'Take the figure away' : 'Type a figure';
}
export const close = 'Close';
export const undo = 'Undo';
export const undoTyping = 'typing';
export const noFigure = 'no figure';

// The rows of the sheet
export const whichUnit = (text: string) => (text === '' ? 'In which unit?' : `${text}, in which unit?`);
export const howSure = 'How sure, ±';
export const sureEntry = 'How sure, ±, typed';
export const sureNotSaid = '± not said';
export const originNotSaid = 'origin not said';
export const otherSure = 'other';
export const more = 'more';
export const whereFrom = 'Where it comes from';
export const sureUnclear = (why: string) => `The ±: ${why}`;
export const sureNegative = (found: string) =>
  `The ±: found ${found.trim()}; it counts to both sides. Leave the minus out.`;

// The keys
export const deleteKey = 'delete last';
export const clearKey = 'Clear';
export const minusKey = 'minus';
export const commaKey = 'comma';
export const pointKey = 'point';
export const percentKey = 'percent';
export const fractionKey = (parts: number) => (parts === 16 ? 'one sixteenth more' : 'a half more');
export const stepUp = (step: string) => `${step} more`;
export const stepDown = (step: string) => `${step} less`;

// The small fields
export const outOfCount = (found: string, least: number, most: number | undefined, unit: string) =>
  most === undefined
    ? `found ${found}; at least ${least} ${unit}.`
    : `found ${found}; allowed: ${least} to ${most} ${unit}.`;
export const wholeOnly = (found: string) => `found ${found}; a whole number is needed.`;
export const tooLong = (found: number, most: number) => `found ${found} letters; at most ${most}.`;

const unitWords: Partial<Record<Unit | '%', string>> = {
  C: '°C',
  F: '°F',
  deg: '°',
  cm3: 'cm³',
  'N/mm^3': 'N/mm³',
};

/** A unit by itself. */
export function unitWord(unit: Unit | '%'): string {
  return unitWords[unit] ?? unit;
}

/** A unit behind its number, never on a line of its own: " mm", but "°" without a gap. */
export function afterNumber(unit: Unit | '%'): string {
  return unit === 'deg' ? unitWord(unit) : `\u00a0${unitWord(unit)}`;
}

/** A sentence that stands by itself: begins with a capital, keeps each number and its unit on one line. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + together(text.slice(1));
}

/** A text that keeps each number with its unit and its ± on one line. */
export function together(text: string): string {
  return text.replace(/(\d) (?=\S)/g, '$1\u00a0').replace(/± (?=\d)/g, '±\u00a0');
}
