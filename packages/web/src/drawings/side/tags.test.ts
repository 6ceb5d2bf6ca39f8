import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxesMeet, isInside, type Point } from '../box.ts';
import { dotArea, freeSlots, seatTags, slotsOf } from './tags.ts';

const TAG = { width: 111, height: 76 };
const [WIDTH, GROUND] = [728, 430];

const area = dotArea(WIDTH, GROUND, TAG);

/** Up to ten dots anywhere that dots may be, also on top of each other; on whole px, since a screen shows no finer ones. */
const dots = fc.array(
  fc.record({
    x: fc.integer({ min: area.x, max: area.x + area.width }),
    y: fc.integer({ min: area.y, max: area.y + area.height }),
  }),
  { minLength: 1, maxLength: 10 },
);

/** Twice the area of a triangle; its sign tells on which side of ab the point c lies. */
function side(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

/** Whether two lines cross between their ends; touching at an end is no crossing. */
function cross(a: Point, b: Point, c: Point, d: Point): boolean {
  return side(a, b, c) * side(a, b, d) < -1e-6 && side(c, d, a) * side(c, d, b) < -1e-6;
}

describe('places for tags', () => {
  const slots = slotsOf(WIDTH, GROUND, TAG);

  it('keep apart and inside the drawing, over the ground', () => {
    slots.forEach((slot, index) => {
      expect(isInside(slot.box, { x: 0, y: 0, width: WIDTH, height: GROUND })).toBe(true);
      for (const other of slots.slice(index + 1)) expect(boxesMeet(slot.box, other.box)).toBe(false);
    });
  });

  it('are enough for ten tags on a tablet and at a desk', () => {
    expect(slots.length).toBeGreaterThanOrEqual(11);
    expect(slotsOf(640, 371, TAG).length).toBeGreaterThanOrEqual(11);
  });

  it('are not free where they would hide a wheel or a box', () => {
    const wheel = { centre: { x: 60, y: 350 }, radius: 70 };
    const box = { x: 650, y: 90, width: 40, height: 40 };
    const free = freeSlots(slots, [wheel, box], 0);
    expect(free.length).toBeLessThan(slots.length);
    for (const { box: tag } of free) expect(boxesMeet(tag, box)).toBe(false);
    const moved = [
      { ...wheel, centre: { ...wheel.centre, x: 100 } },
      { ...box, x: 690 },
    ];
    expect(freeSlots(slots, [wheel, box], 40)).toEqual(freeSlots(slots, moved, 0));
  });
});

describe('tags seated beside up to ten dots', () => {
  it('never share a place, and no two leaders cross', () => {
    fc.assert(
      fc.property(dots, (points) => {
        const seats = seatTags(points, slotsOf(WIDTH, GROUND, TAG));
        expect(new Set(seats).size).toBe(points.length);
        const lines = seats.flatMap(({ port, bend }, index) => [
          [port, bend, index] as const,
          [bend, points[index]!, index] as const,
        ]);
        for (const [a, b, one] of lines) {
          for (const [c, d, other] of lines) {
            if (one < other) expect(cross(a, b, c, d)).toBe(false);
          }
        }
      }),
      { seed: 21, numRuns: 400 },
    );
  });

  it('have leaders that run under no other tag', () => {
    fc.assert(
      fc.property(dots, (points) => {
        const seats = seatTags(points, slotsOf(WIDTH, GROUND, TAG));
        seats.forEach(({ port, bend }, index) => {
          for (const [other, { box }] of seats.entries()) {
            if (other === index) continue;
            const corners = [
              { x: box.x, y: box.y },
              { x: box.x + box.width, y: box.y },
              { x: box.x + box.width, y: box.y + box.height },
              { x: box.x, y: box.y + box.height },
            ];
            corners.forEach((corner, at) => {
              const next = corners[(at + 1) % 4]!;
              expect(cross(port, bend, corner, next)).toBe(false);
              expect(cross(bend, points[index]!, corner, next)).toBe(false);
            });
          }
        });
      }),
      { seed: 22, numRuns: 200 },
    );
  });

  it('are seated the same way each time', () => {
    const points = [
      { x: 140, y: 300 },
      { x: 140, y: 300 },
      { x: 500, y: 160 },
    ];
    expect(seatTags(points, slotsOf(WIDTH, GROUND, TAG))).toEqual(
      seatTags(points, slotsOf(WIDTH, GROUND, TAG)),
    );
  });

  it('are refused where there are fewer places than tags', () => {
    expect(() => seatTags([{ x: 1, y: 1 }], [])).toThrow(RangeError);
  });
});
