import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textBox } from '../lettering.ts';
import { type ForceInput, forcePlot } from './forcePlot.ts';

const input: ForceInput = {
  lengthUnit: 'mm',
  forceUnit: 'N',
  travel: [0, 50, 100],
  lines: [
    { id: 'whole', name: 'in all', force: [400, 1500, 3000], doubt: [100, 200, 400] },
    { id: 'more', name: 'more oil', force: [0, 60, null], doubt: null },
  ],
};

describe('a plot of forces', () => {
  test('draws each line through its forces, and ends one where there is none', () => {
    const { lines } = forcePlot(input, 390);
    expect(lines[0]!.path.match(/[ML]/g)).toEqual(['M', 'L', 'L']);
    expect(lines[1]!.path.match(/[ML]/g)).toEqual(['M', 'L']);
    expect(lines[0]!.band).toMatch(/Z$/);
    expect(lines[1]!.band).toBeNull();
  });

  test('keeps every letter inside itself and apart from the others, at any width and any force', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 300, max: 1200 }),
        fc.double({ min: -900, max: 900, noNaN: true }),
        fc.double({ min: 1000, max: 9999, noNaN: true }),
        (width, least, most) => {
          const marks = forcePlot(
            { ...input, lines: [{ id: 'a', name: 'a', force: [least, 500, most], doubt: null }] },
            width,
          );
          const boxes = marks.letters.map(textBox);
          for (const [i, box] of boxes.entries()) {
            expect(box.x).toBeGreaterThanOrEqual(-0.5);
            expect(box.x + box.width).toBeLessThanOrEqual(width + 0.5);
            expect(box.y + box.height).toBeLessThanOrEqual(marks.height);
            for (const other of boxes.slice(i + 1)) {
              const apart =
                box.x + box.width <= other.x ||
                other.x + other.width <= box.x ||
                box.y + box.height <= other.y ||
                other.y + other.height <= box.y;
              expect(apart, JSON.stringify([box, other])).toBe(true);
            }
          }
        },
      ),
      { seed: 71, numRuns: 200 },
    );
  });

  test('of a line without a force for each travel is refused', () => {
    const short = { ...input, lines: [{ id: 'a', name: 'a', force: [1], doubt: null }] };
    expect(() => forcePlot(short, 390)).toThrow('1 forces of a at 3 travels');
  });
});
