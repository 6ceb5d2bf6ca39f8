import { problems as words } from '../../words/page.ts';
import type { PageProblem } from '../../worker/messages.ts';
import type { Figure, FigureGroup, FigurePart } from './figure.ts';

/**
 * A problem as the page says it: the place by the names that its sheet has for it, and what is missing as a figure that is needed. What
 * lies in no field of the sheet keeps the sentence that it came with.
 */
export function plainProblem(groups: readonly FigureGroup[], problem: PageProblem): string {
  const { path, code, message } = problem;
  const all = groups.flatMap((group) =>
    group.parts.flatMap((part) => part.figures.map((figure) => ({ group, part, figure }))),
  );
  const field = all.find(({ figure }) => path === figure.path || path.startsWith(`${figure.path}.`));
  const inside = all.filter(({ figure }) => figure.path.startsWith(`${path}.`));
  const [first] = inside;
  if (code === 'noneFits' && first !== undefined) {
    return `${placeIn(first.group, first.part)}: ${words.oneOf(inside.map(({ figure }) => figure.label))}`;
  }
  if (code === 'missing' && field === undefined && first !== undefined) {
    return `${placeIn(first.group, first.part)}: ${words.allOf(inside.map(({ figure }) => figure.label))}`;
  }
  if (field === undefined) return message;
  const isWhole = code === 'missing' && path === field.figure.path;
  const says = isWhole ? words.needed(needs(field.figure)) : said(message);
  return `${placeIn(field.group, field.part)} · ${field.figure.label}: ${says}`;
}

/** Parts of the rear and of the front have the same names; all others tell themselves where they belong. */
function placeIn({ id, title }: FigureGroup, part: FigurePart): string {
  if (part.title === null) return title;
  return id === 'rear' || id === 'front' ? `${title} · ${part.title}` : part.title;
}

function needs(figure: Figure): 'figure' | 'rows' | 'words' {
  if (figure.kind === 'rows') return 'rows';
  return figure.kind === 'text' || figure.kind === 'size' || figure.kind === 'choice' ? 'words' : 'figure';
}

/** The sentence without the place that goes before it. */
function said(message: string): string {
  return message.slice(message.indexOf(': ') + 2);
}
