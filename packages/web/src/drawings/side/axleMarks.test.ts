import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxesMeet, isInside } from '../box.ts';
import { TEXT_MIN, textBox } from '../lettering.ts';
import { type AxleMarks, axleMarks, belowGround, wordsBox } from './axleMarks.ts';
import type { AxleWords, LoadWords } from './sideViewInput.ts';

const load = fc.record({
  mass: fc.constantFrom('98 kg', '336 kg', '487.7 kg', '741 lb', '1193 lb'),
  plusMinus: fc.constantFrom('', '± 2', '± 2.8', '± 11'),
  limit: fc.constantFrom('', '339 of 345', '497.0 of 620', '1208 of 1235', 'limit: figure needed'),
  verdict: fc.constantFrom<LoadWords['verdict']>('within', 'over', 'unknown'),
});
const words = fc.record({
  rear: load,
  whole: load,
  front: load,
  limitsAt: fc.constantFrom('', 'at full tank'),
});
const usual = { mass: '336 kg', plusMinus: '± 2', limit: '339 of 345', verdict: 'within' } as const;
const three: AxleWords = { rear: usual, whole: usual, front: usual, limitsAt: 'at full tank' };
const GROUND = 300;

function wheelsAt(width: number, rear = 0.19, front = 0.81) {
  return { rearX: width * rear, frontX: width * front, groundY: GROUND, width };
}

function loadsOf(marks: AxleMarks) {
  return [marks.rear, marks.whole, marks.front];
}

describe('axle loads', () => {
  it('keep all their words apart and inside the drawing, from 360 to 1000 px, wherever the wheels are', () => {
    fc.assert(
      fc.property(
        words,
        fc.integer({ min: 360, max: 1000 }),
        fc.double({ min: 0.1, max: 0.35, noNaN: true }),
        fc.double({ min: 0.65, max: 0.9, noNaN: true }),
        (said, width, rear, front) => {
          const marks = axleMarks(said, wheelsAt(width, rear, front));
          const boxes = loadsOf(marks)
            .flatMap(({ texts, limit }) => [...texts, ...limit])
            .concat(marks.limitsAt ?? [])
            .map(textBox);
          const room = { x: 0, y: GROUND + 34, width, height: belowGround(said, width) - 34 };
          boxes.forEach((box, index) => {
            expect(isInside(box, room)).toBe(true);
            for (const other of boxes.slice(index + 1)) expect(boxesMeet(box, other, -1)).toBe(false);
          });
        },
      ),
      { seed: 71, numRuns: 500 },
    );
  });

  it('lose no word, and write none smaller than 16 px', () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 360, max: 1000 }), (said, width) => {
        const marks = axleMarks(said, wheelsAt(width));
        for (const [name, mark] of Object.entries({
          rear: marks.rear,
          whole: marks.whole,
          front: marks.front,
        })) {
          const { mass, plusMinus, limit } = said[name as 'rear' | 'whole' | 'front'];
          expect(mark.texts.map(({ text }) => text)).toEqual(plusMinus === '' ? [mass] : [mass, plusMinus]);
          expect(mark.limit.map(({ text }) => text).join(' ')).toBe(limit);
          for (const { size } of [...mark.texts, ...mark.limit])
            expect(size).toBeGreaterThanOrEqual(TEXT_MIN);
        }
      }),
      { seed: 72, numRuns: 200 },
    );
  });

  it('stand under their arrows, the whole half way, where there is room', () => {
    const room = wheelsAt(698);
    const middles = loadsOf(axleMarks(three, room)).map((mark) => {
      const { x, width } = wordsBox([...mark.texts, ...mark.limit]);
      return x + width / 2;
    });
    [room.rearX, 349, room.frontX].forEach((x, index) => {
      expect(middles[index]).toBeCloseTo(x, 6);
    });
  });

  it('have arrows that end under the contact points, over the words', () => {
    const { arrows, ...marks } = axleMarks(three, wheelsAt(390));
    expect(arrows.map((arrow) => arrow.x)).toEqual([390 * 0.19, 390 * 0.81]);
    for (const arrow of arrows) {
      expect(arrow.to).toBeLessThan(arrow.from);
      expect(arrow.to).toBeGreaterThan(GROUND);
      expect(arrow.from).toBeLessThanOrEqual(wordsBox(marks.rear.texts).y);
    }
  });
});
