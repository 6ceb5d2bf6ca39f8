import type { JobDocument } from '@sagwright/records/schema';
import { speedSymbols } from '@sagwright/records/schema/limits';
import { inOrder } from '@sagwright/workbench/inputs/desk';
import { choicesOf } from '../../fields/choicesOf.ts';
import { write } from '../../job/edits.ts';
import { limitFigures as words } from '../../words/limitFigures.ts';
import { type Column, type Figure, type FigureGroup, type FigurePart, quantity, together } from './figure.ts';

/** What limits are held against that the sum has no use for: speed, lean, air, clicks, and room at full bump. */
export function limitGroup({ machine }: JobDocument): FigureGroup {
  return {
    id: 'limits',
    title: words.group,
    parts: [
      { title: null, figures: machineFigures },
      ...(['rear', 'front'] as const).map(
        (end): FigurePart => ({ title: words.tyre[end], figures: tyreFigures(end) }),
      ),
      ...inOrder(machine.clearances ?? {}).map(([id, { name }]) => ({
        title: name,
        figures: clearanceFigures(`machine.clearances.${id}`),
      })),
      ...inOrder(machine.knobs ?? {}).map(([id, { name }]) => ({
        title: name,
        figures: knobFigures(`machine.knobs.${id}`),
      })),
    ],
  };
}

const machineFigures: readonly Figure[] = [
  quantity('machine.limits.topSpeed', words.topSpeed, 'speed', 'stated'),
  ...together(
    'machine.limits.standLean',
    ['least', 'most'],
    [
      ['least', words.leastLean, 'standLean', 'stated'],
      ['most', words.mostLean, 'standLean', 'stated'],
    ],
  ),
];

function tyreFigures(end: 'rear' | 'front'): readonly Figure[] {
  const path = `machine.${end}.tyre`;
  return [
    quantity(`${path}.placardPressure`, words.placardPressure, 'tyrePressure', 'stated'),
    quantity(`${path}.mostPressure`, words.mostPressure, 'tyrePressure', 'stated'),
    wordOf(
      `${path}.speedSymbol`,
      words.speedSymbol,
      Object.fromEntries(speedSymbols.map((each) => [each, each])),
    ),
    wordOf(`${path}.state`, words.state, words.states),
    {
      kind: 'rows',
      path: `${path}.byPressure`,
      label: words.byPressure,
      columns: byPressure,
      least: 0,
      held: 'list',
    },
  ];
}

/** One of a few words, or that nobody looked. */
function wordOf(path: string, label: string, choices: Readonly<Record<string, string>>): Figure {
  return {
    kind: 'choice',
    path,
    label,
    value: '',
    choices: [{ value: 'undefined', word: words.notRead }, ...choicesOf(choices)],
    change: (document, value) => [
      write(document, path.split('.'), value === 'undefined' ? undefined : value),
    ],
  };
}

function clearanceFigures(path: string): readonly Figure[] {
  return [
    { kind: 'text', path: `${path}.name`, label: words.name, most: 120 },
    {
      kind: 'rows',
      path: `${path}.readings`,
      label: words.readings,
      columns: readings,
      least: 1,
      held: 'list',
    },
    quantity(`${path}.keep`, words.keep, 'gap', 'stated'),
  ];
}

function knobFigures(path: string): readonly Figure[] {
  const clicks = (name: 'count' | 'base' | 'at', least: number): Figure => ({
    kind: 'number',
    path: `${path}.${name}`,
    label: words.clicks[name],
    unit: words.clicks.unit,
    least,
    most: 100,
    whole: true,
  });
  return [
    { kind: 'text', path: `${path}.name`, label: words.knobName, most: 120 },
    clicks('count', 1),
    clicks('at', 0),
    clicks('base', 0),
  ];
}

const byPressure: readonly Column[] = [
  { name: 'pressure', label: words.pressure, bound: 'tyrePressure', reading: 'tyrePressure' },
  { name: 'capacity', label: words.capacity, bound: 'ratedMass', reading: 'stated' },
];

const readings: readonly Column[] = [
  { name: 'travel', label: words.travel, bound: 'wheelTravel', reading: 'tape' },
  { name: 'gap', label: words.gap, bound: 'gap', reading: 'tape' },
];
