import type { Quantity } from '@sagwright/records/schema/quantity';
import { describe, expect, test } from 'vitest';
import { at, withEdits } from './edits.ts';
import { type Together, writeFigure } from './figures.ts';

const mm = (value: number, plusMinus?: number): Quantity => ({
  value,
  unit: 'mm',
  ...(plusMinus === undefined ? {} : { plusMinus: { value: plusMinus, unit: 'mm' } }),
});
const place: Together = { at: 'places.box.at', needs: { x: mm(-320, 70), height: mm(930, 80) } };
const rubber: Together = { at: 'shock.rubber', needs: { start: null, rate: null } };

function written(document: unknown, path: string, quantity: Quantity | null, together?: Together): unknown {
  return withEdits(document, writeFigure(document, path, quantity, together));
}

describe('A figure that needs another beside it', () => {
  test('brings the usual one along with its whole ±, and leaves a given one alone', () => {
    const first = written({}, 'places.box.at.x', mm(-300), place);
    expect(at(first, ['places', 'box', 'at'])).toEqual({ x: mm(-300), height: mm(930, 80) });
    const second = written(first, 'places.box.at.height', mm(900), place);
    expect(at(second, ['places', 'box', 'at'])).toEqual({ x: mm(-300), height: mm(900) });
  });

  test('taken away, leaves the usual figures of the whole group', () => {
    const given = { places: { box: { at: { x: mm(-300), height: mm(900) } } } };
    expect(written(given, 'places.box.at.x', null, place)).toEqual({ places: { box: {} } });
  });

  test('loses itself alone where nothing usual could stand in, and the group with its last figure', () => {
    const given = { shock: { rubber: { start: mm(60), rate: mm(1) } } };
    const less = written(given, 'shock.rubber.rate', null, rubber);
    expect(less).toEqual({ shock: { rubber: { start: mm(60) } } });
    expect(written(less, 'shock.rubber.start', null, rubber)).toEqual({ shock: {} });
  });
});

test('a figure by itself is written and taken away by itself', () => {
  const document = { machine: { wheelbase: mm(1600), rake: mm(1) } };
  expect(written(document, 'machine.wheelbase', null)).toEqual({ machine: { rake: mm(1) } });
  expect(written({}, 'machine.wheelbase', mm(1600))).toEqual({ machine: { wheelbase: mm(1600) } });
});
