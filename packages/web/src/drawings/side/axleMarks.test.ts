import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxesMeet, isInside } from '../box.ts';
import { textBox } from '../lettering.ts';
import { axleMarks } from './axleMarks.ts';
import type { LoadWords } from './sideViewInput.ts';

const load = fc.record({
  mass: fc.constantFrom('98 kg', '336 kg', '541 kg', '741 lb'),
  plusMinus: fc.constantFrom('', '± 2', '± 11'),
  limit: fc.constantFrom('', '339 of 345', '1194 of 1235', 'limit not read'),
  verdict: fc.constantFrom<LoadWords['verdict']>('within', 'over', 'unknown'),
});
const words = fc.record({
  rear: load,
  whole: load,
  front: load,
  limitsAt: fc.constantFrom('', 'at full tank'),
});

describe('axle loads', () => {
  it('keep all their words apart and inside the drawing, on a phone as at a desk', () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 390, max: 900 }), (said, width) => {
        // The wheels of a machine that fills the drawing from edge to edge, as on a phone.
        const room = { rearX: width * 0.19, frontX: width * 0.81, groundY: 300, topY: 320, width };
        const marks = axleMarks(said, room);
        const boxes = [marks.rear, marks.whole, marks.front]
          .flatMap(({ texts, limit }) => [...texts, limit])
          .concat(marks.limitsAt ?? [])
          .filter((mark) => mark.text !== '')
          .map(textBox);
        boxes.forEach((box, index) => {
          expect(isInside(box, { x: 0, y: 300, width, height: 100 })).toBe(true);
          for (const other of boxes.slice(index + 1)) expect(boxesMeet(box, other, -1)).toBe(false);
        });
      }),
      { seed: 71, numRuns: 300 },
    );
  });

  it('always write the ±', () => {
    const said = { mass: '336 kg', plusMinus: '± 2', limit: '339 of 345', verdict: 'within' } as const;
    for (const width of [390, 640, 728]) {
      const room = { rearX: width * 0.2, frontX: width * 0.8, groundY: 300, topY: 320, width };
      const marks = axleMarks({ rear: said, whole: said, front: said, limitsAt: '' }, room);
      for (const mark of [marks.rear, marks.whole, marks.front]) {
        expect(mark.texts.map((text) => text.text)).toEqual(['336 kg', '± 2']);
      }
    }
  });

  it('have arrows that end under the contact points', () => {
    const said = { mass: '336 kg', plusMinus: '', limit: '', verdict: 'within' } as const;
    const room = { rearX: 150, frontX: 550, groundY: 300, topY: 320, width: 728 };
    const { arrows } = axleMarks({ rear: said, whole: said, front: said, limitsAt: '' }, room);
    expect(arrows.map((arrow) => arrow.x)).toEqual([150, 550]);
    for (const arrow of arrows) expect(arrow.to).toBeLessThan(arrow.from);
  });
});
