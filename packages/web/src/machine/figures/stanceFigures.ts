import type { JobDocument } from '@sagwright/records/schema';
import { write } from '../../job/edits.ts';
import { loadsInOrder } from '../../job/loads.ts';
import { scales } from '../../words/figures.ts';
import { stance, stanceFigures as words } from '../../words/stance.ts';
import { type Figure, type FigureGroup, type FigurePart, quantity } from './figure.ts';

/** Points of the machine that are told of, and where its beam falls. */
export function stanceGroup(job: JobDocument): FigureGroup {
  const points = Object.entries(job.machine.points ?? {}).sort(([, x], [, y]) => x.order - y.order);
  return {
    id: 'stance',
    title: words.group,
    parts: [
      ...points.map(([id, { name, kind }]): FigurePart => {
        const path = `machine.points.${id}`;
        return {
          title: name,
          figures: [
            { kind: 'text', path: `${path}.name`, label: words.name, most: 120 },
            chosen(path, 'kind', words.kind, kind, words.kinds),
            quantity(`${path}.at.x`, words.x, 'forwardOfRearAxle', 'geometry'),
            quantity(`${path}.at.height`, words.height, 'height', 'geometry'),
            quantity(`${path}.sideways`, words.sideways, 'fromMiddle', 'geometry'),
          ],
        };
      }),
      ...beamPart(job),
      ...statedPart(job),
    ],
  };
}

function beamPart(job: JobDocument): readonly FigurePart[] {
  const { beam } = job.machine;
  if (beam === undefined) return [];
  const loads = loadsInOrder(job).map(([id, { name }]) => ({ value: id, word: name }));
  return [
    {
      title: words.beam,
      figures: [
        quantity('machine.beam.drop', words.beamDrop, 'beamDrop', 'beam'),
        quantity('machine.beam.distance', words.beamDistance, 'beamDistance', 'beamDistance'),
        {
          kind: 'choice',
          path: 'machine.beam.load',
          label: words.beamLoad,
          value: beam.load ?? ALONE,
          choices: [{ value: ALONE, word: words.beamAlone }, ...loads],
          change: (document, value) => [
            write(document, ['machine', 'beam', 'load'], value === ALONE ? undefined : value),
          ],
        },
      ],
    },
  ];
}

/** What is planned or looked at, as far as it is stated: in the sheet of how it stands, and here; a shock's length is with the shock. */
function statedPart({ choice, steady }: JobDocument): readonly FigurePart[] {
  const has = (part: object | undefined, name: string): boolean => part !== undefined && name in part;
  const figures = [
    ...(has(choice, 'clampHeight')
      ? [quantity('choice.clampHeight', stance.fields.clampHeight, 'lengthChange', 'collar')]
      : []),
    ...statedFigures.flatMap(([action, name, bound]) =>
      has(steady?.[action], name)
        ? [quantity(`steady.${action}.${name}`, stance.steady[name], bound, 'stated')]
        : [],
    ),
  ];
  return figures.length === 0 ? [] : [{ title: words.stated, figures }];
}

const statedFigures = [
  ['braking', 'deceleration', 'acceleration'],
  ['braking', 'frontShare', 'frontShare'],
  ['driving', 'acceleration', 'acceleration'],
  ['driving', 'thrust', 'thrust'],
] as const;

/** Stands for no load; no id looks so. */
const ALONE = '(alone)';

/** The height of the mass centre as typed, or the readings with a wheel raised. */
export function massCentreFigures(job: JobDocument): readonly Figure[] {
  const { raised } = job.machine.weighing;
  if (raised === undefined)
    return [quantity('machine.weighing.massCentreHeight', scales.massCentreHeight, 'height', 'massCentre')];
  const path = 'machine.weighing.raised';
  return [
    chosen(path, 'wheel', words.wheel, raised.wheel, words.ends),
    quantity(`${path}.by`, words.by, 'raisedBy', 'geometry'),
    chosen(path, 'scale', words.scale, raised.scale, words.ends),
    quantity(`${path}.level`, words.level, 'massOnWheel', 'scale'),
    quantity(`${path}.raised`, words.reads, 'massOnWheel', 'scale'),
  ];
}

function chosen(
  path: string,
  name: string,
  label: string,
  value: string,
  choices: Readonly<Record<string, string>>,
): Figure {
  return {
    kind: 'choice',
    path: `${path}.${name}`,
    label,
    value,
    choices: Object.entries(choices).map(([each, word]) => ({ value: each, word })),
    change: (document, next) => [write(document, [...path.split('.'), name], next)],
  };
}
