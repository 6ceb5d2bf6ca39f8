import type { Adjuster } from '@sagwright/records/schema/adjusters';
import { choicesOf } from '../../fields/choicesOf.ts';
import { write } from '../../job/edits.ts';
import { adjusters as words } from '../../words/figures.ts';
import { changeAdjuster } from './changeAdjuster.ts';
import { type Figure, quantity, together } from './figure.ts';

/** What sets the preload at an end, as its kind is described. `adjuster` undefined: nobody looked. */
export function adjusterFigures(path: string, adjuster: Adjuster | undefined): readonly Figure[] {
  const kind = adjuster?.kind ?? 'none';
  return [
    {
      kind: 'choice',
      path: `${path}.kind`,
      label: words.kind,
      value: kind,
      choices: choicesOf(words.kinds),
      change: (document, value, done) => changeAdjuster(document, path, value, done),
    },
    ...figuresOfKind[kind](path),
  ];
}

const figuresOfKind: { readonly [K in Adjuster['kind']]: (path: string) => readonly Figure[] } = {
  collar: (path) => [
    { kind: 'text', path: `${path}.between`, label: words.between, most: 120 },
    { kind: 'text', path: `${path}.and`, label: words.and, most: 120 },
    quantity(`${path}.least`, words.leastReading, 'collarReading', 'collar'),
    quantity(`${path}.most`, words.mostReading, 'collarReading', 'collar'),
    {
      kind: 'choice',
      path: `${path}.reading`,
      label: words.reading,
      value: '',
      choices: choicesOf(words.readings),
      change: (document, value) => [write(document, [...path.split('.'), 'reading'], value)],
    },
    quantity(`${path}.lead`, words.lead, 'lead', 'lead'),
    ...lengthReadAt(path, 'collarReading'),
    quantity(`${path}.touches`, words.touches, 'collarReading', 'collar'),
  ],
  cap: (path) => [
    quantity(`${path}.lead`, words.lead, 'lead', 'lead'),
    number(`${path}.turns`, words.turns, words.turnsUnit, 0.25, 100, false),
    quantity(`${path}.springLength`, words.springLength, 'springLength', 'springLength'),
  ],
  cam: (path) => [
    {
      kind: 'rows',
      path: `${path}.steps`,
      label: words.steps,
      columns: [{ name: null, label: words.rise, bound: 'camRise', reading: 'collar' }],
      least: 2,
      held: 'list',
    },
    quantity(`${path}.springLength`, words.springLength, 'springLength', 'springLength'),
  ],
  clicks: (path) => [
    quantity(`${path}.perClick`, words.perClick, 'perClick', 'lead'),
    number(`${path}.count`, words.count, words.clicksUnit, 1, 400, true),
    number(`${path}.dead`, words.dead, words.clicksUnit, 0, 400, true),
    quantity(`${path}.springLength`, words.springLength, 'springLength', 'springLength'),
  ],
  spacer: (path) => [
    quantity(`${path}.least`, words.leastSpacer, 'spacer', 'collar'),
    quantity(`${path}.most`, words.mostSpacer, 'spacer', 'collar'),
    quantity(`${path}.cut`, words.cut, 'spacerCut'),
    ...lengthReadAt(path, 'spacer'),
  ],
  none: () => [],
};

function lengthReadAt(path: string, at: 'collarReading' | 'spacer'): readonly Figure[] {
  return together(
    `${path}.springLength`,
    ['at', 'length'],
    [
      ['length', words.springLength, 'springLength', 'springLength'],
      ['at', words.lengthAt, at, 'collar'],
    ],
  );
}

function number(
  path: string,
  label: string,
  unit: string,
  least: number,
  most: number,
  whole: boolean,
): Figure {
  return { kind: 'number', path, label, unit, least, most, whole };
}
