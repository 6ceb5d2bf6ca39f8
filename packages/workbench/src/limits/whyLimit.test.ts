import { expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { planJob } from '../path.ts';
import { tourerWith } from '../testing/tourerJob.ts';
import { limitRows } from './list.ts';
import { roomsOpened } from './room.ts';
import { openLimit, whyLimit, whyRoom } from './whyLimit.ts';
import { exactWords } from './words.ts';

const planned = planJob(
  tourerWith([
    'machine.knobs',
    { rebound: { name: 'rebound', order: 1, end: 'rear', count: 20, base: 10, at: 8 } },
  ]),
);
if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
const units = unitsFor('metric', planned.job, '.');

test('every limit that was checked opens up with what is left, and shares that make the whole of its ±', () => {
  const rows = limitRows(planned).filter(({ told }) => told.margin !== null);
  expect(new Set(rows.map(({ told }) => told.kind)).size).toBeGreaterThan(6);
  for (const { told } of rows) {
    const opened = whyLimit(planned, told.id, units);
    if (typeof opened === 'string') throw new Error(opened);
    expect(opened.value, told.id).toBe(
      told.dimension === 'count'
        ? `${told.margin!.value} clicks`
        : exactWords(told.margin!, told.dimension, units),
    );
    if (opened.inputs.length > 0)
      expect(
        opened.inputs.reduce((sum, { share }) => sum + share, 0),
        told.id,
      ).toBeCloseTo(1, 6);
    else expect(told.margin!.plusMinus ?? 0, told.id).toBe(0);
  }
});

test('a limit that lacks a figure says what is needed, and one that is none names those there are', () => {
  const lacking = limitRows(planned).find(({ told }) => told.verdict === 'not checked')!;
  expect(whyLimit(planned, lacking.told.id, units)).toMatch(/not checked, figure needed: ./);
  expect(whyLimit(planned, 'moon', units)).toMatch(/rear-axle/);
});

test('every room opens up with its figure and shares that make the whole of its ±', () => {
  const rooms = planned.inputs.question.loadCases.flatMap(({ id }) => roomsOpened(planned, id));
  const known = rooms.filter(({ told }) => (told.mass?.plusMinus ?? 0) > 0);
  expect(known.length).toBeGreaterThan(5);
  for (const { told } of known) {
    const opened = whyRoom(planned, told.loadCase, told.place, units);
    if (typeof opened === 'string') throw new Error(opened);
    expect(opened.value).toBe(exactWords(told.mass!, 'mass', units));
    expect(opened.inputs.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 6);
  }
  expect(whyRoom(planned, 'both', 'pillion', units)).toMatch(/a seat that is taken/);
});

test('where none is named it is the limit that is nearest, and the load that is ridden most', () => {
  const margin = openLimit(planned, { figure: 'margin', of: null, load: null }, units);
  expect(margin).toMatchObject({ title: expect.stringMatching(/^what is left: ./) });
  const room = openLimit(planned, { figure: 'room', of: 'Carrier', load: null }, units);
  expect(room).toMatchObject({ place: expect.stringMatching(/^With "to work": at "carrier"/) });
});
