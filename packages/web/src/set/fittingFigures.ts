import type { JobDocument } from '@sagwright/records/schema';
import { gripped, toolKinds } from '@sagwright/records/schema/fastenings';
import type { RearFitting } from '@sagwright/records/schema/fitting';
import { inOrder } from '@sagwright/workbench/inputs/desk';
import { fitting as said } from '@sagwright/workbench/words/english/fitting';
import { choicesOf } from '../fields/choicesOf.ts';
import { write } from '../job/edits.ts';
import { type Figure, type FigurePart, quantity } from '../machine/figures/figure.ts';
import { fittingFields as words } from '../words/set.ts';

const REAR = 'fitting.rear';

/** All that the job may tell of what is fitted, but for torques and what was done. */
export function fittingParts(job: JobDocument): readonly FigurePart[] {
  const rear = job.fitting?.rear;
  if (rear === undefined) return [];
  return [unitPart(rear), mountPart('top', rear), mountPart('bottom', rear), reservoirPart(rear)];
}

function unitPart(rear: RearFitting): FigurePart {
  return {
    title: null,
    figures: [
      { kind: 'text', path: `${REAR}.name`, label: words.name, most: 120 },
      choice(`${REAR}.spring`, words.spring, rear.spring, words.springs),
      quantity(`${REAR}.mountOffset`, words.mountOffset, 'mountOffset', 'tape'),
    ],
  };
}

function mountPart(end: 'top' | 'bottom', rear: RearFitting): FigurePart {
  const path = `${REAR}.${end}`;
  const mount = rear[end];
  return {
    title: words.ends[end],
    figures: [
      choice(`${path}.bush`, words.bush, mount?.bush, words.bushes),
      quantity(`${path}.bore`, words.bore, 'eyeBore', 'caliper'),
      quantity(`${path}.bolt`, words.bolt, 'boltDiameter', 'caliper'),
      quantity(`${path}.eyeWidth`, words.eyeWidth, 'mountWidth', 'caliper'),
      quantity(`${path}.clampWidth`, words.clampWidth, 'mountWidth', 'caliper'),
      quantity(`${path}.sleeve.inner`, words.sleeve.inner, 'boltDiameter', 'caliper'),
      quantity(`${path}.sleeve.outer`, words.sleeve.outer, 'eyeBore', 'caliper'),
      quantity(`${path}.sleeve.length`, words.sleeve.length, 'mountWidth', 'caliper'),
      quantity(`${path}.keep`, words.keep, 'mountFloat', 'stated'),
      choice(`${path}.thread.into`, words.into, mount?.thread?.into, words.intos),
      quantity(`${path}.thread.engaged`, words.engaged, 'threadEngaged', 'threadEngaged'),
      {
        kind: 'number',
        path: `${path}.thread.atLeast`,
        label: words.atLeast,
        unit: words.diameters,
        least: 0.5,
        most: 5,
        whole: false,
      },
    ],
  };
}

function reservoirPart({ reservoir }: RearFitting): FigurePart {
  const path = `${REAR}.reservoir`;
  const kind: Figure = {
    kind: 'choice',
    path: `${path}.kind`,
    label: words.kind,
    value: reservoir?.kind ?? '',
    choices: choicesOf(words.reservoirs),
    change: (document, value) => [
      write(document, path.split('.'), value === '' ? undefined : { kind: value }),
    ],
  };
  if (reservoir?.kind !== 'by hose') return { title: words.reservoir, figures: [kind] };
  return {
    title: words.reservoir,
    figures: [
      kind,
      quantity(`${path}.offset`, words.offset, 'bracketOffset', 'tape'),
      quantity(`${path}.spacer`, words.spacer, 'washer', 'caliper'),
      choice(`${path}.heads`, words.heads, reservoir.heads, words.headWords),
    ],
  };
}

/** Parts that must come off first, and tools: lists that one adds to. */
export function inTheWayFigures({
  inTheWay = {},
}: RearFitting): readonly (readonly [string, FigurePart['figures']])[] {
  return inOrder(inTheWay).map(([id]) => [
    id,
    [{ kind: 'text', path: `${REAR}.inTheWay.${id}.name`, label: words.partName, most: 120 }],
  ]);
}

export function toolFigures({
  tools = {},
}: RearFitting): readonly (readonly [string, FigurePart['figures']])[] {
  return inOrder(tools).map(([id, tool]) => {
    const path = `${REAR}.tools.${id}`;
    const parts = Object.fromEntries(gripped.map((part) => [part, said.parts[part]]));
    const kinds = Object.fromEntries(toolKinds.map((kind) => [kind, kind]));
    return [
      id,
      [
        choice(`${path}.on`, words.on, tool.on, parts),
        choice(`${path}.kind`, words.toolKind, tool.kind, kinds),
        quantity(`${path}.size`, words.size, 'toolSize', 'stated'),
      ],
    ];
  });
}

/** One of a few words, or '' where nobody told. */
function choice(
  path: string,
  label: string,
  value: string | undefined,
  choices: Readonly<Record<string, string>>,
): Figure {
  return {
    kind: 'choice',
    path,
    label,
    value: value ?? '',
    choices: choicesOf(choices),
    change: (document, next) => [write(document, path.split('.'), next === '' ? undefined : next)],
  };
}
