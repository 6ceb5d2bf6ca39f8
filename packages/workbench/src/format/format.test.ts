import { arbitraryQuantity } from '@sagwright/records/testing/arbitraryQuantity';
import { type Dimension, differenceToSI, toSI } from '@sagwright/records/units';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planJob } from '../path.ts';
import { tourerWith } from '../testing/tourerJob.ts';
import {
  format,
  formatChange,
  formatFigure,
  formatPlainNumber,
  formatQuantity,
  formatRange,
  formatSome,
  formatTyped,
  formatUsed,
  formatValueNumber,
} from './format.ts';
import { parseQuantity } from './parse.ts';
import { type Units, unitsFor } from './units.ts';

const metric = unitsFor('metric', tourerWith(), '.');
const imperial = unitsFor('imperial', tourerWith(), '.');

describe('A figure', () => {
  test.each([
    [23.71, 1.84, '23.7 ± 1.8 mm'],
    [22.41, 4.05, '22 ± 4 mm'],
    [22.41, 0.27, '22.4 ± 0.3 mm'],
    [187.3, 34, '190 ± 30 mm'],
    [-0.3, 2.2, '-0.3 ± 2.2 mm'],
    [-0.2, 4, '0 ± 4 mm'],
  ])('of %d mm with a ± of %d mm is told as "%s"', (value, plusMinus, text) => {
    expect(formatFigure({ value: value / 1000, plusMinus: plusMinus / 1000 }, 'length', metric)).toBe(text);
  });

  test('with a ± finer than any tool of the workshop reads shows that place, never ± 0', () => {
    expect(formatFigure({ value: 0.0234, plusMinus: 2e-6 }, 'length', metric)).toBe('23.4 ± 0.1 mm');
    expect(formatFigure({ value: 0.0234, plusMinus: 0 }, 'length', metric)).toBe('23.4 ± 0 mm');
  });

  test('without a ± has the digits of the finest tool', () => {
    expect(format(0.02371, 'length', metric)).toBe('23.7 mm');
    expect(formatFigure({ value: 1.80419, plusMinus: null }, 'frequency', metric)).toBe('1.80 Hz');
    expect(formatValueNumber({ value: 0.02371, plusMinus: 0.004 }, 'length', metric)).toBe('24');
  });

  test('that is taken as it stands has no more decimals than it needs', () => {
    expect(formatPlainNumber(405, 'mass', metric)).toBe('405');
    expect(formatPlainNumber(12.54, 'mass', metric)).toBe('12.5');
    expect(formatPlainNumber(45.359237, 'mass', imperial)).toBe('100');
  });

  test('of a distance that is there is never told as nothing', () => {
    expect(formatSome(0.00002, 'length', metric)).toBe('0.1 mm');
    expect(formatSome(0.0012, 'length', metric)).toBe('1.2 mm');
    expect(formatSome(0.00002, 'length', imperial)).toBe('0.01 in');
  });

  test('as a range has its unit once; a change has its sign', () => {
    expect(formatRange(0.0206, 0.024, 'length', metric)).toBe('20.6 to 24.0 mm');
    expect(formatChange(0.0021, 'length', metric)).toBe('+2.1');
    expect(formatChange(-0.0021, 'length', metric)).toBe('-2.1');
    expect(formatChange(0.00001, 'length', metric)).toBe('0.0');
    expect(formatChange(-0.00001, 'length', metric)).toBe('0.0');
  });

  // 1 in = 25.4 mm and 1 lb = 0.45359237 kg, exactly.
  test('goes to inches and pounds as the definitions say', () => {
    expect(format(0.254, 'length', imperial)).toBe('10.00 in');
    expect(format(45.359237, 'mass', imperial)).toBe('100.0 lb');
    expect(format(175 * 175.126835, 'rate', imperial)).toBe('175 lbf/in');
  });

  test('takes the comma where the language does', () => {
    const comma = unitsFor('metric', tourerWith(), ',');
    expect(formatFigure({ value: 0.02371, plusMinus: 0.0018 }, 'length', comma)).toBe('23,7 ± 1,8 mm');
  });
});

describe('Units as typed', () => {
  test('are those most used in the job, for each dimension', () => {
    const typed = unitsFor('typed', tourerWith(), '.');
    expect(typed.unit).toMatchObject({
      length: 'mm',
      mass: 'kg',
      rate: 'N/mm',
      pressure: 'bar',
      angle: 'deg',
    });
    const inPounds = tourerWith(
      ...['owner', 'packed', 'box'].map((id) => [`things.${id}.mass.unit`, 'lb'] as const),
      ['machine.limits', undefined],
      ['machine.places.carrier.limit', undefined],
      ['machine.rear.tyre', undefined],
      ['machine.front.tyre', undefined],
      ['machine.rear.unsprung', undefined],
      ['machine.front.unsprung', undefined],
    );
    expect(unitsFor('typed', inPounds, '.').unit.mass).toBe('lb');
  });

  test('are left for others where others are chosen', () => {
    const marked = { value: 160, unit: 'lbf/in', plusMinus: { value: 5, unit: '%' } } as const;
    expect(formatQuantity(marked, unitsFor('typed', tourerWith(), '.'))).toBe('160 lbf/in');
    // 1 lbf/in = 4.4482216152605 N / 25.4 mm = 0.17512684 N/mm.
    expect(formatQuantity(marked, metric)).toBe('28.0 N/mm');
  });

  test('give back what was typed, to the last digit', () => {
    const typed = unitsFor('typed', tourerWith(), '.');
    expect(formatTyped({ value: 160, unit: 'lbf/in' }, typed)).toBe('160 lbf/in');
    expect(formatTyped({ value: 27.5, unit: 'N/mm', plusMinus: { value: 5, unit: '%' } }, typed)).toBe(
      '27.5 N/mm ± 5 %',
    );
    expect(formatTyped({ value: 1625, unit: 'mm', plusMinus: { value: 5, unit: 'mm' } }, typed)).toBe(
      '1625 ± 5 mm',
    );
  });
});

test('What went into the sum is told as typed, or in the units chosen, always with its ±', () => {
  const job = tourerWith();
  const planned = planJob(job);
  if (!planned.ok) throw new Error('the tourer is planned');
  const { figures } = planned.inputs;
  const rate = figures.get('springs.fitted.rate.rate')!;
  const tyre = figures.get('machine.rear.tyre.rate')!;
  // A marked rate is good to 5 %, an unknown touring tyre to 30 in 185 N/mm; 1 lbf/in = 0.1751268 N/mm.
  expect(formatUsed(rate, unitsFor('typed', job, '.'))).toBe('125 ± 6 lbf/in');
  expect(formatUsed(rate, metric)).toBe('21.9 ± 1.1 N/mm');
  expect(formatUsed(tyre, unitsFor('typed', job, '.'))).toBe('185 ± 30 N/mm');
  expect(formatUsed(tyre, imperial)).toBe('1060 ± 170 lbf/in');
});

const shownDimensions: readonly (readonly [Dimension, number, number])[] = [
  ['length', -0.1, 2],
  ['mass', 0, 700],
  ['rate', 5e3, 3e5],
  ['force', 0, 6000],
  ['angle', -0.2, 0.7],
  ['volume', 0, 0.03],
  ['pressure', 0, 2e6],
];

describe('What is shown can be typed again', () => {
  test.each(shownDimensions)('%s: and comes out where it was, to the place shown', (dimension, min, max) => {
    const choice = fc.constantFrom(metric, imperial, { ...metric, decimal: ',' } satisfies Units);
    fc.assert(
      fc.property(
        fc.double({ min, max, noNaN: true }),
        fc.double({ min: 1e-3, max: 0.3, noNaN: true }),
        choice,
        (value, width, units) => {
          const plusMinus = width * (max - min);
          const text = formatFigure({ value, plusMinus }, dimension, units);
          // Three decimals after one to three digits could be a thousand: refused, as it must be.
          fc.pre(!/[1-9]\d{0,2}[.,]\d{3}\b/.test(text));
          const read = parseQuantity(text, dimension, units.unit[dimension]);
          if (!read.ok) throw new Error(`${text}: ${read.fault}`);
          const { quantity } = read;
          expect(Math.abs(toSI(quantity.value, quantity.unit) - value)).toBeLessThanOrEqual(
            0.6 * Math.max(plusMinus, differenceToSI(1, quantity.unit)),
          );
          expect(quantity.plusMinus).toBeDefined();
        },
      ),
      { seed: 21, numRuns: 400 },
    );
  });

  test('and a typed quantity survives to the last digit', () => {
    fc.assert(
      fc.property(arbitraryQuantity('rate', 1e4, 1e5), (quantity) => {
        const { origin: _, ...typed } = quantity;
        const text = formatTyped(typed, metric);
        fc.pre(!text.includes('e') && !/\b[1-9]\d{0,2}\.\d{3}\b/.test(text));
        expect(parseQuantity(text, 'rate', 'N/mm')).toEqual({ ok: true, quantity: typed });
      }),
      { seed: 22, numRuns: 500 },
    );
  });
});
