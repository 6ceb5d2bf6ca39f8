import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lanesInRoom, laneTargets } from './laneTargets.ts';

/** A ladder: axis, lanes, names of the levels. */
const anyRoom = fc.record({
  before: fc.integer({ min: 50, max: 70 }),
  across: fc.integer({ min: 124, max: 500 }),
  after: fc.integer({ min: 30, max: 90 }),
  /** A finger in a glove, 12 mm at 132 px to the inch; a mouse. */
  target: fc.constantFrom(62, 32),
  most: fc.integer({ min: 2, max: 6 }),
});

const columnsOf = (before: number, across: number, lanes: number) =>
  Array.from({ length: lanes }, (_, index) => ({
    x: before + (index * across) / lanes,
    y: 0,
    width: across / lanes,
    height: 300,
  }));

describe('the targets of the lanes', () => {
  it('are wide enough, inside the drawing, clear of each other, and each holds its own mark', () => {
    fc.assert(
      fc.property(anyRoom, ({ before, across, after, target, most }) => {
        const width = before + across + after;
        const columns = columnsOf(before, across, lanesInRoom(across, width, target, most));
        const targets = laneTargets(columns, width, target);
        let free = 0;
        targets.forEach(({ left, width: wide }, index) => {
          expect(wide).toBeGreaterThanOrEqual(target);
          expect(left).toBeGreaterThanOrEqual(free - 1e-9);
          free = left + wide;
          const middle = columns[index]!.x + columns[index]!.width / 2;
          // The block of a band is 24 px wide.
          expect(middle - 12).toBeGreaterThanOrEqual(left);
          expect(middle + 12).toBeLessThanOrEqual(left + wide);
        });
        expect(free).toBeLessThanOrEqual(width + 1e-9);
      }),
      { seed: 54, numRuns: 500 },
    );
  });

  it('never make fewer lanes where there is more room', () => {
    fc.assert(
      fc.property(anyRoom, ({ before, across, after, target, most }) => {
        const lanes = (more: number) =>
          lanesInRoom(across + more, before + across + more + after, target, most);
        expect(lanes(40)).toBeGreaterThanOrEqual(lanes(0));
        expect(lanes(0)).toBeGreaterThanOrEqual(2);
        expect(lanes(0)).toBeLessThanOrEqual(most);
      }),
      { seed: 55, numRuns: 300 },
    );
  });
});
