import { rubberSentences } from '@sagwright/workbench/rubber/words';
import { gasWords, lengthAdjusterWords } from '@sagwright/workbench/shock/words';
import { shock as say } from '@sagwright/workbench/words/english/shock';
import { wrap } from '../terminal/text.ts';
import { heading, type Page } from './page.ts';

/** What is told of the rear shock by itself. */
export function shockLines(page: Page): readonly string[] {
  const { rubber } = page.result.rear;
  const sentences = [
    ...(page.full ? [gasWords(page.planned, page.units)] : []),
    ...lengthAdjusterWords(page.planned, page.units),
    ...(rubber === null || !page.full ? [] : rubberSentences(page.planned, rubber, page.units)),
  ];
  if (sentences.length === 0) return [];
  return [
    ...heading(page, say.title, say.titleWords),
    ...sentences.flatMap((sentence) => wrap(sentence, page.width, '  ', '  ')),
  ];
}
