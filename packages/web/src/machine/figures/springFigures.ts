import type { JobDocument } from '@sagwright/records/schema';
import type { Spring, SpringRate } from '@sagwright/records/schema/springs';
import { inOrder } from '@sagwright/workbench/inputs/desk';
import { write } from '../../job/edits.ts';
import { formerKind } from '../../job/formerKind.ts';
import { groups, springs as words } from '../../words/figures.ts';
import { choice, coilFigures, woundFigures } from './coilFigures.ts';
import { type Figure, type FigureGroup, quantity } from './figure.ts';

/** Every spring of the job, in its order. */
export function springGroup(job: JobDocument): FigureGroup {
  return {
    id: 'springs',
    title: groups.springs,
    parts: inOrder(job.springs).map(([id, spring]) => ({
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
    ...(spring.end === 'front'
      ? []
      : [
          quantity(`${path}.inside`, words.inside, 'coilDiameter', 'coilDiameter'),
          quantity(`${path}.spacer`, words.spacer, 'springSpacer', 'shaft'),
        ]),
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
      return coilFigures(path, rate);
    case 'wound':
      return woundFigures(path, rate);
  }
}
