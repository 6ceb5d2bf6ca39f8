/** Every word of the fields and of the keypad sheet. English; figures go in as text. */
import type { Unit } from '@sagwright/records/units';

// The closed field
export const figureNeeded = 'Figure needed';
export const addFigure = 'Add figure';
export const assumedWord = 'assumed';
export const typedAs = (figure: string) => `typed ${figure}`;
export const lessBy = (label: string, step: string) => `${label}: less by ${step}`;
export const moreBy = (label: string, step: string) => `${label}: more by ${step}`;

// The sheet
export const onFile = (figure: string) => `on file ${figure}`;
export const assumedNow = (figure: string, why: string) => `Assumed ${figure}: ${why}.`;
export const reads = (figure: string) => `Reads ${figure}.`;
export const nothingTyped = 'Nothing typed.';
export const writeFigure = (figure: string) => `Write ${figure}`;
export const takeAway = 'Take figure away';
export const typeFigure = 'Type a figure';
export const notReadable = 'Not clear yet';
export const close = 'Close';
export const undoTyping = 'Undo typing';
export const undoWriting = (figure: string | null) => `Undo: ${figure ?? 'no figure'}`;
export const writeOrClose = 'Write it, or close without writing.';

// The rows of the sheet
export const whichUnit = (text: string) => (text === '' ? 'In which unit?' : `${text}, in which unit?`);
export const howSure = 'How sure, ±';
export const sureEntry = 'How sure, ±, typed';
export const notSaid = 'not said';
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

/** A unit as it stands beside a number. */
export function unitWord(unit: Unit | '%'): string {
  return unitWords[unit] ?? unit;
}
