import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxesMeet, isInside } from '../box.ts';
import { textBox } from '../lettering.ts';
import { type PartPlace, partsPlot } from './partsPlot.ts';

const linkage: readonly PartPlace[] = [
  { part: 'axle', x: 0, height: 300 },
  { part: 'pivot', x: 580, height: 420 },
  { part: 'rocker pivot', x: 553, height: 308 },
  { part: 'link pin', x: 457, height: 254 },
  { part: 'link end', x: 401, height: 357 },
  { part: 'rocker eye', x: 399, height: 242 },
  { part: 'far eye', x: 534, height: 564 },
];
const direct: readonly PartPlace[] = [
  { part: 'axle', x: 0, height: 300 },
  { part: 'pivot', x: 560, height: 365 },
  { part: 'arm eye', x: 80, height: 330 },
  { part: 'frame eye', x: 180, height: 640 },
];
const axleUp = (parts: readonly PartPlace[], by: number): readonly PartPlace[] =>
  parts.map((part) => (part.part === 'axle' ? { ...part, height: part.height + by } : part));

describe('a picture of the parts', () => {
  test('is to one scale both ways, the front to the right and up above', () => {
    const { points } = partsPlot({ stands: [{ id: 'out', parts: linkage }] }, 600);
    const scale = (points[1]!.x - points[0]!.x) / 580;
    for (const [i, { x, y }] of points.entries()) {
      expect((x - points[0]!.x) / scale).toBeCloseTo(linkage[i]!.x, 0);
      expect((points[0]!.y - y) / scale).toBeCloseTo(linkage[i]!.height - 300, 0);
    }
  });

  test('has an arm, rocker, link and shock, or an arm that holds the eye, and a shock', () => {
    const barsOf = (parts: readonly PartPlace[]) =>
      partsPlot({ stands: [{ id: 'out', parts }] }, 600).stands[0]!.bars.map(({ bar }) => bar);
    expect(barsOf(linkage)).toEqual(['arm', 'rocker', 'link', 'shock']);
    expect(barsOf(direct)).toEqual(['arm', 'shock']);
  });

  test('has the arm hold what moves with it, and nothing that the frame holds', () => {
    const stands = [
      { id: 'out', parts: direct },
      {
        id: 'full',
        parts: axleUp(direct, 90).map((part) => (part.part === 'arm eye' ? { ...part, height: 420 } : part)),
      },
    ];
    const arm = (picture: typeof stands): string =>
      partsPlot({ stands: picture }, 600).stands[0]!.bars[0]!.path;
    // A bare bar has one stroke; each corner that it holds adds a closed one.
    expect(arm(stands).match(/Z/g)).toHaveLength(1);
    expect(arm(stands.slice(0, 1))).not.toContain('Z');
  });

  test('tells what is bolted to the frame from what moves', () => {
    const stands = [
      { id: 'out', parts: direct },
      { id: 'full', parts: axleUp(direct, 90) },
    ];
    const still = partsPlot({ stands }, 600).points.flatMap(({ still, part }) => (still ? [part] : []));
    expect(still).toEqual(['pivot', 'arm eye', 'frame eye']);
  });

  test('keeps each number inside, clear of every point and every other number, wherever the points lie', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 300, max: 1200 }),
        fc.array(
          fc.record({ x: fc.integer({ min: 0, max: 600 }), height: fc.integer({ min: 150, max: 700 }) }),
          {
            minLength: 7,
            maxLength: 7,
          },
        ),
        (width, places) => {
          fc.pre(new Set(places.map(({ x, height }) => `${x} ${height}`)).size > 1);
          const parts = linkage.map((part, i) => ({ ...part, ...places[i]! }));
          const { points, height } = partsPlot({ stands: [{ id: 'out', parts }] }, width);
          const boxes = points.map(({ number }) => textBox(number));
          for (const [i, box] of boxes.entries()) {
            expect(isInside(box, { x: -0.5, y: 0, width: width + 1, height })).toBe(true);
            for (const later of boxes.slice(i + 1)) expect(boxesMeet(box, later)).toBe(false);
            for (const { x, y } of points)
              expect(boxesMeet(box, { x: x - 5, y: y - 5, width: 10, height: 10 })).toBe(false);
          }
        },
      ),
      { seed: 73, numRuns: 300 },
    );
  });

  test('without a stand, or with all parts in one place, is refused', () => {
    expect(() => partsPlot({ stands: [] }, 390)).toThrow('0 stands');
    const heap = linkage.map((part) => ({ ...part, x: 1, height: 1 }));
    expect(() => partsPlot({ stands: [{ id: 'out', parts: heap }] }, 390)).toThrow('parts span 0 by 0');
  });
});
