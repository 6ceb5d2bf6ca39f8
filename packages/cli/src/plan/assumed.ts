import {
  assumptionWords,
  effectWords,
  narrowingWords,
  shortAssumptionWords,
} from '@sagwright/workbench/words/assumed';
import { words } from '@sagwright/workbench/words/catalogue';
import { noteWords } from '@sagwright/workbench/words/notes';
import { wrap } from '../terminal/text.ts';
import { ends, heading, type Page } from './page.ts';

const SHORT = 6;

/** What nobody gave, with what it does to the collar; and the one figure that would narrow it most. */
export function assumedLines(page: Page): readonly string[] {
  const { planned, result, units, width, full } = page;
  const values = result.assumptions.filter(({ assumed }) => assumed === 'value');
  const widths = result.assumptions.length - values.length;
  const shown = full ? values : values.slice(0, SHORT);
  const left = values.length - shown.length;
  const narrowing = ends.flatMap((end) => narrowingWords(planned, end, units) ?? []);
  return [
    ...heading(page, 'ASSUMED', values.length === 0 ? words.assumed.none() : ''),
    ...shown.flatMap((each) => {
      const effects = ends.flatMap((end) => effectWords(planned, each, end, units) ?? []);
      const figure = (full ? assumptionWords : shortAssumptionWords)(planned, each, units);
      return wrap([figure, ...effects].join('; '), width, '  ', '  ');
    }),
    ...(left === 0
      ? []
      : wrap(`and ${left} more, with less effect; why each is what it is: --full`, width, '  ', '  ')),
    ...(widths === 0 ? [] : wrap(words.assumed.plusMinus(widths), width, '  ', '  ')),
    ...narrowing.flatMap((sentence) => wrap(sentence, width, '  ', '  ')),
  ];
}

export function noteLines(page: Page): readonly string[] {
  const { planned, result, units, width } = page;
  if (result.notes.length === 0) return [];
  return [
    ...heading(page, 'NOTES', ''),
    ...result.notes.flatMap((note) => wrap(noteWords(planned, note, units), width, '  ', '  ')),
  ];
}

export function cautionLines(page: Page): readonly string[] {
  return wrap(words.caution, page.width);
}
