import fc from 'fast-check';
import { expect, it } from 'vitest';
import { hatch } from './hatch.ts';

const box = fc.record({
  x: fc.integer({ min: 0, max: 300 }),
  y: fc.integer({ min: 0, max: 300 }),
  width: fc.integer({ min: 5, max: 400 }),
  height: fc.integer({ min: 5, max: 200 }),
});

it('a hatch is made of lines at 45° that stay in their box', () => {
  fc.assert(
    fc.property(box, fc.integer({ min: 6, max: 20 }), (area, spacing) => {
      const lines = hatch(area, spacing).match(/M[^M]+/g) ?? [];
      for (const line of lines) {
        const [x1, y1, x2, y2] = line.match(/[\d.]+/g)!.map(Number) as [number, number, number, number];
        expect(x2 - x1).toBeCloseTo(y1 - y2, 6);
        for (const x of [x1, x2]) {
          expect(x).toBeGreaterThanOrEqual(area.x);
          expect(x).toBeLessThanOrEqual(area.x + area.width);
        }
        for (const y of [y1, y2]) {
          expect(y).toBeGreaterThanOrEqual(area.y);
          expect(y).toBeLessThanOrEqual(area.y + area.height);
        }
      }
      if (area.width + area.height > 2 * spacing) expect(lines.length).toBeGreaterThan(0);
    }),
    { seed: 42 },
  );
});
