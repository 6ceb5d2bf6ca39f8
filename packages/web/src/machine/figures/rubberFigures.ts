import { assumedRubbers, type Rubber } from '@sagwright/records/schema/struts';
import { at, write } from '../../job/edits.ts';
import { formerValue } from '../../job/formerKind.ts';
import { struts as words } from '../../words/figures.ts';
import { type Figure, type FigurePart, quantity, together } from './figure.ts';

/** How a bump rubber is told. */
type Told = 'read' | 'none' | 'rows' | NonNullable<Rubber['assumed']>;

/** The bump rubber of a strut: not known, none, by two figures, by rows from a tester, or by a made-up curve. */
export function rubberPart(strut: string, rubber: unknown): FigurePart {
  const path = `${strut}.rubber`;
  const steps = path.split('.');
  const told = toldBy(rubber);
  const choice: Figure = {
    kind: 'choice',
    path: `${path}.kind`,
    label: words.rubber,
    value: told,
    choices: [
      ...(['read', 'none'] as const).map((value) => ({ value, word: words.known[value] })),
      { value: 'rows', word: words.rubberTested },
      ...assumedRubbers.map((value) => ({ value, word: words.rubberAssumed(value) })),
    ],
    change: (document, value, done) => {
      const now = at(document, steps);
      if (toldBy(now) === value) return [];
      const former = formerValue(document, done, steps, (before) => toldBy(before) === value);
      return former ?? [write(document, steps, newlyTold(value as Told, now))];
    },
  };
  return { title: words.rubber, figures: [choice, ...figuresOf(path, told)] };
}

function figuresOf(path: string, told: Told): readonly Figure[] {
  const start = quantity(`${path}.start`, words.rubberStart, 'rubberStart', 'rubberStart');
  switch (told) {
    case 'none':
      return [];
    case 'read':
      return together(
        path,
        ['start', 'rate'],
        [
          ['start', words.rubberStart, 'rubberStart', 'rubberStart'],
          ['rate', words.rubberRate, 'rubberRate', 'rubberRate'],
          ['hardening', words.rubberHardening, 'rubberHardening', 'rubberRate'],
        ],
      );
    case 'rows':
      return [
        start,
        {
          kind: 'rows',
          path: `${path}.rows`,
          label: words.rubberRows,
          columns: [
            {
              name: 'compression',
              label: words.rubberPressed,
              bound: 'rubberCompression',
              reading: 'springPoint',
            },
            { name: 'force', label: words.rubberForce, bound: 'rubberForce', reading: 'springPoint' },
          ],
          least: 2,
          held: 'list',
        },
      ];
    default:
      return [start];
  }
}

function toldBy(rubber: unknown): Told {
  if (rubber === 'none') return 'none';
  if (typeof rubber !== 'object' || rubber === null) return 'read';
  const { rows, assumed } = rubber as Rubber;
  return assumed ?? (rows === undefined ? 'read' : 'rows');
}

/** Told in another way: where it is met stays. */
function newlyTold(told: Told, now: unknown): unknown {
  if (told === 'none') return 'none';
  if (told === 'read') return undefined;
  const start = typeof now === 'object' && now !== null ? (now as Rubber).start : undefined;
  return { ...(start && { start }), ...(told === 'rows' ? { rows: [] } : { assumed: told }) };
}
