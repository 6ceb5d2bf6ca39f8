import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boxesMeet, isInside } from '../box.ts';
import { textBox } from '../lettering.ts';
import { reachHead } from './reachHead.ts';
import { reachScale } from './reachLine.ts';

const anyHead = fc
  .record({
    from: fc.double({ min: -15, max: 0, noNaN: true }),
    reach: fc.double({ min: 2, max: 40, noNaN: true }),
    beyond: fc.double({ min: 0, max: 30, noNaN: true }),
    steps: fc.integer({ min: 2, max: 9 }),
    words: fc.constantFrom('5.0', '30.5', '113.5', '9 1/2'),
  })
  .map(({ from, reach, beyond, steps, words }) => ({
    domain: { fromMm: from - 1, toMm: reach + beyond },
    collar: { fromMm: 0, toMm: reach },
    title: 'collar, mm',
    marks: Array.from({ length: steps }, (_, i) => ({ atMm: (reach * i) / (steps - 1), words })),
    past: 'past its end',
  }));

test('the head keeps every word inside the drawing, and none upon another', () => {
  fc.assert(
    fc.property(anyHead, fc.constantFrom(350, 480, 640), (head, width) => {
      const { height, title, marks, past } = reachHead(head, width);
      const boxes = [title, ...marks, ...(past === null ? [] : [past])].map(textBox);
      boxes.forEach((box, i) => {
        expect(isInside(box, { x: 0, y: 0, width, height })).toBe(true);
        for (const other of boxes.slice(i + 1)) expect(boxesMeet(box, other)).toBe(false);
      });
      expect(marks.length).toBeGreaterThanOrEqual(2);
    }),
    { seed: 63, numRuns: 300 },
  );
});

test('where they have room, marks stand at their millimetres', () => {
  const domain = { fromMm: -10, toMm: 45 };
  const head = {
    domain,
    collar: { fromMm: 0, toMm: 25.5 },
    title: 'collar, mm',
    marks: [
      { atMm: 0, words: '5.0' },
      { atMm: 25.5, words: '30.5' },
    ],
    past: 'past its end',
  };
  const { pxPerMm, zeroX } = reachScale(domain, 480);
  const { marks, stops } = reachHead(head, 480);
  expect(marks.map(({ x, text }) => [x, text])).toEqual([
    [zeroX, '5.0'],
    [zeroX + 25.5 * pxPerMm, '30.5'],
  ]);
  expect(stops).toEqual([zeroX, zeroX + 25.5 * pxPerMm]);
});
