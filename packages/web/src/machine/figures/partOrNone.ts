import { choicesOf } from '../../fields/choicesOf.ts';
import { at, type Edit, write } from '../../job/edits.ts';
import { struts as words } from '../../words/figures.ts';
import type { Figure, FigurePart } from './figure.ts';

/** A part that may be known not to be there: then it has no figures. */
export function partOrNone(
  path: string,
  title: string,
  part: unknown,
  figures: readonly Figure[],
  /** What stands there before anything of it was read. */
  unread?: object,
): FigurePart {
  const steps = path.split('.');
  const isNone = part === 'none';
  const choice: Figure = {
    kind: 'choice',
    path,
    label: title,
    value: isNone ? 'none' : 'read',
    choices: choicesOf(words.known),
    change: (document, value): readonly Edit[] => {
      const now = at(document, steps);
      if ((value === 'none') === (now === 'none')) return [];
      return [write(document, steps, value === 'none' ? 'none' : unread)];
    },
  };
  return { title, figures: isNone ? [choice] : [choice, ...figures] };
}
