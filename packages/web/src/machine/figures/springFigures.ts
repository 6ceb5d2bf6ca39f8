import type { JobDocument } from '@sagwright/records/schema';
import type { Spring, SpringRate } from '@sagwright/records/schema/springs';
import { write } from '../../job/edits.ts';
import { formerKind } from '../../job/formerKind.ts';
import { groups, springs as words } from '../../words/figures.ts';
import { type Figure, type FigureGroup, quantity } from './figure.ts';

/** Every spring of the job, in its order. */
export function springGroup(job: JobDocument): FigureGroup {
  const inOrder = Object.entries(job.springs).sort(([, x], [, y]) => x.order - y.order);
  return {
    id: 'springs',
    title: groups.springs,
    parts: inOrder.map(([id, spring]) => ({
      title: `${words.end[spring.end]}: ${spring.name}`,
      figures: springFigures(id, spring),
    })),
  };
}

function springFigures(id: string, spring: Spring): readonly Figure[] {
  const path = `springs.${id}`;
  return [
    { kind: 'text', path: `${path}.name`, label: words.name, most: 120 },
    choice(
      `${path}.rate.kind`,
      words.rateKind,
      spring.rate.kind,
      words.rateKinds,
      (document, kind, done) =>
        formerKind(document, done, ['springs', id, 'rate'], kind) ?? [
          write(document, ['springs', id, 'rate'], { kind }),
        ],
    ),
    ...rateFigures(`${path}.rate`, spring.rate),
    quantity(`${path}.freeLength`, words.freeLength, 'springLength', 'springLength'),
    quantity(`${path}.solidLength`, words.solidLength, 'springLength', 'springLength'),
    { kind: 'text', path: `${path}.where`, label: words.where, most: 120 },
    choice(
      `${path}.hand`,
      words.hand,
      spring.hand === false ? 'no' : 'yes',
      words.hands,
      (document, hand) => [write(document, ['springs', id, 'hand'], hand === 'yes' ? undefined : false)],
    ),
  ];
}

function rateFigures(path: string, rate: SpringRate): readonly Figure[] {
  switch (rate.kind) {
    case 'none':
      return [];
    case 'linear':
      return [quantity(`${path}.rate`, words.rate, 'springRate', 'springRate')];
    case 'series':
      return [
        quantity(`${path}.soft`, words.soft, 'springRate', 'springRate'),
        quantity(`${path}.stiff`, words.stiff, 'springRate', 'springRate'),
        quantity(`${path}.softCloses`, words.softCloses, 'softCloses', 'springLength'),
      ];
    case 'table':
      return [
        {
          kind: 'rows',
          path: `${path}.rows`,
          label: words.rows,
          columns: [
            {
              name: 'compression',
              label: words.compression,
              bound: 'springCompression',
              reading: 'springPoint',
            },
            { name: 'force', label: words.force, bound: 'springForce', reading: 'springPoint' },
          ],
          least: 2,
          held: 'list',
        },
      ];
    case 'coil':
      return coilFigures(path);
  }
}

function coilFigures(path: string): readonly Figure[] {
  const plain = (name: 'ends' | 'material', label: string, values: readonly string[]): Figure =>
    choice(
      `${path}.${name}`,
      label,
      '',
      Object.fromEntries(values.map((value) => [value, value])),
      (document, value) => [write(document, `${path}.${name}`.split('.'), value)],
    );
  return [
    quantity(`${path}.wire`, words.wire, 'wire', 'wire'),
    quantity(`${path}.outside`, words.outside, 'coilDiameter', 'coilDiameter'),
    quantity(`${path}.mean`, words.mean, 'coilDiameter', 'coilDiameter'),
    {
      kind: 'number',
      path: `${path}.coils`,
      label: words.coils,
      unit: words.coilsUnit,
      least: 1.5,
      most: 80,
      whole: false,
    },
    plain('ends', words.ends, ['closed ground', 'closed', 'plain ground', 'plain']),
    plain('material', words.material, [
      'chrome silicon',
      'chrome vanadium',
      'silicon manganese',
      'music wire',
      'oil hardened',
      'hard drawn',
      'patented drawn',
      'hot rolled',
    ]),
  ];
}

function choice(
  path: string,
  label: string,
  value: string,
  words: Readonly<Record<string, string>>,
  change: Extract<Figure, { kind: 'choice' }>['change'],
): Figure {
  const choices = Object.entries(words).map(([each, word]) => ({ value: each, word }));
  return { kind: 'choice', path, label, value, choices, change };
}
