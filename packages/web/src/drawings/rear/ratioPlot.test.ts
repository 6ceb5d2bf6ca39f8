import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxesMeet, isInside } from '../box.ts';
import { textBox } from '../lettering.ts';
import { type RatioInput, type RatioMarks, ratioPlot } from './ratioPlot.ts';

const input: RatioInput = {
  lengthUnit: 'mm',
  ratioUnit: 'shock/wheel',
  leverageUnit: 'wheel/shock',
  steps: [0, 50, 100].map((travel, i) => ({ travel, ratio: 0.5 + 0.05 * i, doubt: 0.01 })),
  rests: [
    { sign: 'alone', travel: 20, ratio: 0.52, chosen: false },
    { sign: 'A', travel: 50, ratio: 0.55, chosen: true },
  ],
};

/** Places of a path such as "M1 2L3 4". */
const places = (path: string): readonly (readonly number[])[] =>
  path
    .slice(1)
    .split('L')
    .map((place) => place.split(' ').map(Number));

const scaleLetters = ({ letters }: RatioMarks, x: (at: number) => boolean) =>
  letters.filter((mark) => Number.isFinite(Number(mark.text)) && x(mark.x));

describe('a plot of the ratio', () => {
  test('rises with the ratio, and a rest that lies on the curve is drawn on it', () => {
    const { line, rests } = ratioPlot(input, 390);
    const drawn = places(line);
    expect(drawn[0]![1]).toBeGreaterThan(drawn[2]![1]!);
    const chosen = rests.find((rest) => rest.chosen)!;
    expect([chosen.x, chosen.y]).toEqual(drawn[1]);
  });

  test('has at each height the leverage that is the inverse of the ratio there', () => {
    const { letters, line, width } = ratioPlot(input, 810);
    // Straight between 0.5 and 0.6, the ends of the curve, as the ratio's own scale is.
    const [first, , last] = places(line);
    const ratioAt = (y: number): number => 0.5 + (0.1 * (y - first![1]!)) / (last![1]! - first![1]!);
    const marks = ratioPlot(input, 810);
    const leverages = scaleLetters(marks, (x) => x > width - 60).filter(({ align }) => align === 'start');
    expect(leverages.length).toBeGreaterThan(1);
    for (const mark of leverages) expect(Number(mark.text) * ratioAt(mark.y - 6)).toBeCloseTo(1, 2);
    expect(letters.map(({ text }) => text)).toContain('wheel/shock');
  });

  test('keeps every letter inside itself and apart from the others, at any width, ratio and rests', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 300, max: 1200 }),
        fc.double({ min: 0.2, max: 2, noNaN: true }),
        fc.double({ min: 0.2, max: 2, noNaN: true }),
        fc.array(fc.double({ min: 0, max: 120, noNaN: true }), { maxLength: 8 }),
        (width, one, other, at) => {
          const steps = [0, 60, 120].map((travel, i) => ({
            travel,
            ratio: one + ((other - one) * i) / 2,
            doubt: 0.02,
          }));
          const rests = at.map((travel, i) => ({
            sign: i === 0 ? 'alone' : 'ABCDEFGH'[i]!,
            travel,
            ratio: one + ((other - one) * travel) / 120,
            chosen: i === 1,
          }));
          const marks = ratioPlot({ ...input, steps, rests }, width);
          const sheet = { x: -0.5, y: 0, width: width + 1, height: marks.height };
          const boxes = marks.letters.map(textBox);
          for (const [i, box] of boxes.entries()) {
            expect(isInside(box, sheet), JSON.stringify(marks.letters[i])).toBe(true);
            for (const later of boxes.slice(i + 1))
              expect(boxesMeet(box, later, -0.2), JSON.stringify([box, later])).toBe(false);
          }
        },
      ),
      { seed: 72, numRuns: 300 },
    );
  });

  test('of one step, or of a ratio that is not above 0, is refused', () => {
    expect(() => ratioPlot({ ...input, steps: input.steps.slice(0, 1) }, 390)).toThrow('1 steps');
    const stuck = { travel: 120, ratio: 0, doubt: 0 };
    expect(() => ratioPlot({ ...input, steps: [...input.steps, stuck] }, 390)).toThrow('a ratio of 0 at 120');
  });
});
