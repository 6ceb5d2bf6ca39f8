import { expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { planJob } from '../path.ts';
import { q, tourerWith } from '../testing/tourerJob.ts';
import { rowsOf } from './stance.ts';
import { openStance, stanceNames, whyStance } from './whyStance.ts';

const planned = planJob(
  tourerWith(
    [
      'machine.points',
      {
        board: {
          name: 'left board',
          order: 1,
          kind: 'rider peg',
          at: { x: q(800, 'mm'), height: q(300, 'mm') },
          sideways: q(330, 'mm'),
        },
        lamp: { name: 'lamp', order: 2, kind: 'headlamp', at: { x: q(1400, 'mm'), height: q(860, 'mm') } },
      },
    ],
    ['machine.beam', { drop: q(150, 'mm'), distance: q(10, 'm') }],
  ),
);
if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
const units = unitsFor('metric', planned.job, '.');

test('every figure opens up, found, planned and as a change; its parts make up the whole of its ±', () => {
  for (const { figure, point, needs } of rowsOf(planned)) {
    for (const of of ['asFound', 'planned', 'change'] as const) {
      const opened = whyStance(planned, { figure, point: point?.id ?? null, load: 'both', of }, units);
      if (needs !== null) {
        expect(opened).toMatch(/figure needed/);
        continue;
      }
      if (typeof opened === 'string') throw new Error(opened);
      expect(opened.value).toMatch(/±/);
      expect(opened.inputs.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 6);
    }
  }
});

test('what both share is no part of a change: the place of the seat drops out', () => {
  const of = (part: 'planned' | 'change'): readonly string[] => {
    const opened = whyStance(planned, { figure: 'seat-height', point: null, load: 'both', of: part }, units);
    return typeof opened === 'string'
      ? []
      : opened.inputs.filter(({ share }) => share > 0.01).map(({ path }) => path);
  };
  expect(of('planned')).toContain('machine.seat.height');
  expect(of('change')).not.toContain('machine.seat.height');
});

test('in the terminal a point goes by its name, and the first where none is named', () => {
  const open = (point: string | null, load: string | null = null) =>
    openStance(planned, { figure: 'lean', point, load }, units);
  expect(open('left board')).toEqual(open(null));
  expect(open('no such part')).toMatch(/no such point/);
  expect(open(null, 'no such load')).toMatch(/no load/);
  expect(stanceNames).toContain('beam-drop');
});
