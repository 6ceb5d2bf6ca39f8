import type { Quantity } from '@sagwright/records/schema/quantity';
import { describe, expect, test } from 'vitest';
import { planJob } from '../path.ts';
import { resultJson } from '../result/result.ts';
import { type Change, q, tourerWith } from '../testing/tourerJob.ts';
import { why } from '../why/why.ts';

/** Figures whose ± moves no result, each with the reason: what is told of them is told as it stands. */
const informative: readonly (readonly [RegExp, string])[] = [
  [/\.friction$/, 'friction is no doubt of the rest: it is told as the band in which the wheel may stay'],
  [
    /\.adjuster\.(?:least|most)$/,
    'the ends at which an adjuster stops; what is left to them is told against the ± of the aim',
  ],
  [/\.adjuster\.steps\.[23]$/, 'no load of this job is set to that step of its cam'],
  [/\.adjuster\.cut$/, 'to what hands cut'],
  [/\.drive\.pitch$/, "a chain's or belt's pitch is a standard's, and exact"],
  [
    /\.air\.(?:least|most)$/,
    'the range that a unit may hold; what is left to it is told against the ± of the pressure',
  ],
  [/\.air\.gauge$/, 'it is a ± itself: how much of the air a gauge may take'],
  [/\.shock\.length$/, 'nothing hangs on it where the ratio is told; it is drawn to scale'],
  [/^things\.(?:friend|packed|box)\./, 'not aboard in any load of this job'],
  [/^machine\.places\.(?:pillion|cases|carrier|box)\./, 'nothing lies there in any load of this job'],
];

/** One load and two rear springs: every figure is followed, and each is planned with twice. */
const small: readonly Change[] = [
  ['loadCases.trip', undefined],
  ['loadCases.both', undefined],
  ['loadCases.all', undefined],
  ['springs.c1', undefined],
  ['springs.c2', undefined],
  ['springs.c4', undefined],
];

const at = (spring: string, setting: object) =>
  ['setups.asFound.rear', { both: { spring, at: setting } }] as const;

const air = {
  diameter: q(30, 'mm'),
  volume: q(160, 'ml'),
  pressure: q(4, 'bar'),
  readAt: q(12, 'mm'),
  least: q(0, 'bar'),
  most: q(9, 'bar'),
  gauge: q(2, 'ml'),
};

const lengthAdjuster = {
  change: q(3, 'mm'),
  least: q(-5, 'mm'),
  lead: q(1.25, 'mm'),
  thread: { diameter: q(14, 'mm'), engaged: q(20, 'mm') },
};

const byRange = { change: q(3, 'mm'), least: q(-5, 'mm'), most: q(14, 'mm'), lead: q(1.25, 'mm') };

const jobs: Readonly<Record<string, readonly Change[]>> = {
  'a collar, gas and rubber': [
    ['machine.rear.shock.gas.temperature', q(40, 'C')],
    ['machine.rear.shock.length', q(330, 'mm')],
    ['machine.rear.shock.topOut', { length: q(15, 'mm'), rate: q(20, 'N/mm') }],
    ['machine.rear.measuredAt', q(20, 'mm')],
    ['machine.front.measuredAt', q(25, 'mm')],
  ],
  'a collar that touches': [
    ['machine.rear.shock.adjuster.springLength', undefined],
    ['machine.rear.shock.adjuster.touches', q(10, 'mm')],
  ],
  'a screwed cap': [
    [
      'machine.rear.shock.adjuster',
      { kind: 'cap', lead: q(1.5, 'mm'), turns: 14, springLength: q(238, 'mm') },
    ],
    at('fitted', { turns: 4 }),
  ],
  'a cam': [
    [
      'machine.rear.shock.adjuster',
      { kind: 'cam', steps: [0, 8, 16, 24].map((rise) => q(rise, 'mm')), springLength: q(238, 'mm') },
    ],
    at('fitted', { step: 2 }),
  ],
  clicks: [
    [
      'machine.rear.shock.adjuster',
      { kind: 'clicks', perClick: q(0.8, 'mm'), count: 30, springLength: q(238, 'mm') },
    ],
    at('fitted', { click: 9 }),
  ],
  'air alone to set': [
    ['machine.rear.shock.air', air],
    ['machine.rear.shock.adjuster', { kind: 'none' }],
    at('c3', { preload: q(6, 'mm') }),
  ],
  'air beside a collar': [['machine.rear.shock.air', air]],
  'a length adjuster by its thread': [
    ['machine.rear.shock.length', q(330, 'mm')],
    ['machine.rear.shock.lengthAdjuster', lengthAdjuster],
    ['choice.shockLength', q(4, 'mm')],
  ],
  'a length adjuster by its range': [
    ['machine.rear.shock.lengthAdjuster', byRange],
    ['choice.shockLength', q(-3, 'mm')],
  ],
  'a length adjuster by its mark': [
    [
      'machine.rear.shock.lengthAdjuster',
      { change: q(3, 'mm'), least: q(-5, 'mm'), lead: q(1.25, 'mm'), mark: { left: q(6, 'mm') } },
    ],
    ['machine.rear.shock.length', q(330, 'mm')],
  ],
  'a bump rubber by rows': [
    [
      'machine.rear.shock.rubber',
      {
        start: q(55, 'mm'),
        rows: [
          [0, 0],
          [20, 1900],
        ].map(([pressed, force]) => ({ compression: q(pressed!, 'mm'), force: q(force!, 'N') })),
      },
    ],
  ],
  'a coil that is marked': [
    [
      'springs.c3.rate',
      {
        kind: 'coil',
        wire: q(9, 'mm'),
        outside: q(75, 'mm'),
        coils: 9.5,
        ends: 'closed ground',
        material: 'chrome silicon',
        marked: q(28, 'N/mm'),
      },
    ],
    ['springs.c3.solidLength', undefined],
    ['machine.rear.shock.springOver', q(55, 'mm')],
    ['springs.c3.spacer', q(4, 'mm')],
  ],
  'a spring of several pitches': [
    [
      'springs.c3.rate',
      {
        kind: 'wound',
        wire: q(9, 'mm'),
        mean: q(66, 'mm'),
        sections: {
          tight: { order: 1, coils: 3, pitch: q(16, 'mm') },
          wide: { order: 2, coils: 5, length: q(160, 'mm') },
        },
        ends: 'closed ground',
        material: 'chrome silicon',
      },
    ],
    ['springs.c3.freeLength', undefined],
    ['springs.c3.solidLength', undefined],
  ],
  'a table': [
    [
      'machine.rear.travel',
      {
        kind: 'table',
        rows: [
          [0, 350],
          [30, 325],
          [60, 301],
          [86, 281],
        ].map(([wheel, shock]) => ({ wheel: q(wheel!, 'mm'), shock: q(shock!, 'mm') })),
      },
    ],
  ],
};

const [first] = Object.values(jobs);

describe('A ± that is typed is carried into some result, or is on the list of those that are told as they stand', () => {
  test.each(Object.entries(jobs))('with %s', (_, changes) => {
    const shown = (...more: readonly Change[]): string => told(...small, ...changes, ...more);
    const before = shown();
    const data = JSON.parse(JSON.stringify(tourerWith(...small, ...changes))) as Record<string, unknown>;
    // Whatever a job is not about is followed in the first of them.
    const isFollowed = (path: string): boolean =>
      changes === first || changes.some(([changed]) => path.startsWith(`${changed}.`) || path === changed);
    const dropped = quantitiesIn(data, '').filter(([path, typed]) => {
      if (!isFollowed(path) || informative.some(([pattern]) => pattern.test(path))) return false;
      return shown([`${path}.plusMinus`, widthOf(typed)]) === before;
    });
    expect(dropped.map(([path]) => path).join(', ')).toBe('');
  });
});

/** Everything that is told of a job, but for the list of what was assumed, which holds each ± by itself. */
function told(...changes: readonly Change[]): string {
  const planned = planJob(tourerWith(...changes));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join(' '));
  const { assumptions: _, ...rest } = resultJson(planned);
  const opened = (['rear', 'front'] as const).flatMap((end) =>
    planned.plan[end].springs.flatMap(({ spring }) =>
      (['coil-bind', 'kg-per-turn'] as const).map((figure) =>
        why(planned, { figure, end, spring, loadCase: null }),
      ),
    ),
  );
  return JSON.stringify([rest, opened]);
}

/** Like no ± that is usual for any reading. */
function widthOf({ value, unit }: Quantity): object {
  return value === 0 ? { value: 3.7, unit } : { value: 7.3, unit: '%' };
}

function quantitiesIn(value: unknown, path: string): readonly (readonly [string, Quantity])[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('value' in value && 'unit' in value) return [[path, value as Quantity]];
  return Object.entries(value).flatMap(([name, inner]) =>
    quantitiesIn(inner, path === '' ? name : `${path}.${name}`),
  );
}
