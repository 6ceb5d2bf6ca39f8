import type { JobDocument } from '@sagwright/records/schema';
import { limitFigures as words } from '../../words/limitFigures.ts';
import { type Column, type FigureGroup, type FigurePart, quantity, together } from './figure.ts';

/** What limits are held against that the sum has no use for: speed, lean, air, and room at full bump. */
export function limitGroup({ machine }: JobDocument): FigureGroup {
  return {
    id: 'limits',
    title: words.group,
    parts: [
      {
        title: null,
        figures: [
          quantity('machine.limits.topSpeed', words.topSpeed, 'speed', 'stated'),
          ...together(
            'machine.limits.standLean',
            ['least', 'most'],
            [
              ['least', words.leastLean, 'standLean', 'stated'],
              ['most', words.mostLean, 'standLean', 'stated'],
            ],
          ),
        ],
      },
      ...(['rear', 'front'] as const).map(
        (end): FigurePart => ({
          title: words.tyre[end],
          figures: [
            quantity(`machine.${end}.tyre.placardPressure`, words.placardPressure, 'tyrePressure', 'stated'),
            quantity(`machine.${end}.tyre.mostPressure`, words.mostPressure, 'tyrePressure', 'stated'),
            ...(machine[end].tyre?.byPressure === undefined
              ? []
              : [
                  {
                    kind: 'rows' as const,
                    path: `machine.${end}.tyre.byPressure`,
                    label: words.byPressure,
                    columns: byPressure,
                    least: 2,
                    held: 'list' as const,
                  },
                ]),
          ],
        }),
      ),
      ...Object.entries(machine.clearances ?? {})
        .sort(([, a], [, b]) => a.order - b.order)
        .map(
          ([id, { name }]): FigurePart => ({
            title: name,
            figures: [
              { kind: 'text', path: `machine.clearances.${id}.name`, label: words.name, most: 120 },
              {
                kind: 'rows',
                path: `machine.clearances.${id}.readings`,
                label: words.readings,
                columns: readings,
                least: 1,
                held: 'list',
              },
              quantity(`machine.clearances.${id}.keep`, words.keep, 'gap', 'stated'),
            ],
          }),
        ),
    ],
  };
}

const byPressure: readonly Column[] = [
  { name: 'pressure', label: words.pressure, bound: 'tyrePressure', reading: 'tyrePressure' },
  { name: 'capacity', label: words.capacity, bound: 'ratedMass', reading: 'stated' },
];

const readings: readonly Column[] = [
  { name: 'travel', label: words.travel, bound: 'wheelTravel', reading: 'tape' },
  { name: 'gap', label: words.gap, bound: 'gap', reading: 'tape' },
];
