import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxesMeet, type Point } from '../box.ts';
import { sideViews } from '../invented.ts';
import { clearLeaders } from './clearLeaders.ts';
import { sideView } from './sideView.ts';
import { dotArea, type Slot, seatTags, slotsOf } from './tags.ts';

const TAG = { width: 111, height: 76 };
/** A tablet's drawing, a desk's beside a sheet, and the narrow one beside another tab: width and ground line. */
const sizes = fc.constantFrom([728, 430] as const, [895, 336] as const, [620, 336] as const);
/** A dot is 5 px in radius, its edge 2: 9 px from its middle a leader is seen to pass by. */
const SEEN_APART = 9;
/** Dots nearer than this to each other are one spot to the eye: no leader can point at one and keep off the other. */
const TOO_NEAR = 15;

function drawing(most: number) {
  return sizes.chain(([width, ground]) => {
    const area = dotArea(width, ground, TAG);
    const dot = fc.record({
      x: fc.integer({ min: area.x, max: area.x + area.width }),
      y: fc.integer({ min: area.y, max: area.y + area.height }),
    });
    return fc.array(dot, { minLength: 1, maxLength: most }).map((dots) => ({
      area,
      dots: dots.filter((at, index) => dots.slice(0, index).every((other) => apart(at, other) >= TOO_NEAR)),
      slots: slotsOf(width, ground, TAG),
    }));
  });
}

function apart(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** How near a leader comes to a dot, looked up at points of it that are at most 2 px apart: at worst 0.1 px too much. */
function nearest(from: Point, to: Point, dot: Point): number {
  const points = Math.ceil(apart(from, to) / 2) + 1;
  const gaps = Array.from({ length: points + 1 }, (_, index) => {
    const part = index / points;
    return apart(dot, { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) });
  });
  return Math.min(...gaps);
}

function passes(own: Point, bend: Point, dots: readonly Point[]): number {
  return dots.filter((dot) => apart(dot, own) >= TOO_NEAR && nearest(bend, own, dot) < SEEN_APART).length;
}

function passesOf(dots: readonly Point[], seats: readonly Slot[]): number {
  return seats.reduce((count, { bend }, index) => count + passes(dots[index]!, bend, dots), 0);
}

function side(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

function crossing(a: Point, b: Point, c: Point, d: Point): boolean {
  return side(a, b, c) * side(a, b, d) < -1e-6 && side(c, d, a) * side(c, d, b) < -1e-6;
}

describe('leaders cleared of dots', () => {
  it('pass over no other dot, of up to five anywhere', () => {
    fc.assert(
      fc.property(drawing(5), ({ dots, slots }) => {
        expect(passesOf(dots, clearLeaders(dots, [], seatTags(dots, slots), slots))).toBe(0);
      }),
      { seed: 41, numRuns: 400 },
    );
  });

  it('pass over no dot that has no tag either', () => {
    fc.assert(
      fc.property(drawing(5), ({ dots, slots }) => {
        const [tagged, others] = [dots.slice(0, 3), dots.slice(3)];
        const seats = clearLeaders(tagged, others, seatTags(tagged, slots), slots);
        seats.forEach(({ bend }, index) => {
          expect(passes(tagged[index]!, bend, dots)).toBe(0);
        });
      }),
      { seed: 42, numRuns: 200 },
    );
  });

  it('still do not cross, leave their own tag, bend at the edge of the dots and share no place, of up to ten', () => {
    fc.assert(
      fc.property(drawing(10), ({ area, dots, slots }) => {
        const seats = clearLeaders(dots, [], seatTags(dots, slots), slots);
        seats.forEach(({ box, port, bend }, index) => {
          expect(slots.some((slot) => slot.box === box)).toBe(true);
          expect(boxesMeet(box, { ...port, width: 0, height: 0 }, 0.01)).toBe(true);
          expect(boxesMeet(area, { ...bend, width: 0, height: 0 }, 0.01)).toBe(true);
          expect(
            Math.min(
              Math.abs(bend.x - area.x),
              Math.abs(bend.x - area.x - area.width),
              Math.abs(bend.y - area.y),
            ),
          ).toBeLessThan(0.01);
          seats.slice(index + 1).forEach((other, after) => {
            expect(other.box).not.toBe(box);
            expect(crossing(bend, dots[index]!, other.bend, dots[index + 1 + after]!)).toBe(false);
          });
        });
      }),
      { seed: 43, numRuns: 200 },
    );
  });

  it('are left as they were where they pass over nothing', () => {
    const dots = [
      { x: 200, y: 300 },
      { x: 500, y: 160 },
    ];
    const slots = slotsOf(728, 430, TAG);
    const seats = seatTags(dots, slots);
    expect(passesOf(dots, seats)).toBe(0);
    expect(clearLeaders(dots, [], seats, slots)).toEqual(seats);
  });

  it('are clear on a tablet and at a desk with what the examples carry', () => {
    for (const [name, input] of Object.entries(sideViews)) {
      for (const size of [
        { width: 698, height: 540 },
        { width: 895, height: 440 },
      ]) {
        const { tags, dots } = sideView(input, size);
        const spots = dots.map(({ at }) => at);
        for (const { leader } of tags) expect(passes(leader[2], leader[1], spots), name).toBe(0);
      }
    }
  });
});
