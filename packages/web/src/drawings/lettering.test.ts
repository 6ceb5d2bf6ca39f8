import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inTwoLines, textBox, textWidth } from './lettering.ts';

const words = fc.array(fc.stringMatching(/^[A-Za-z0-9±×.,]{1,14}$/), { minLength: 1, maxLength: 6 });

describe('lettering', () => {
  it('gives all figures one width, so that columns of numbers line up', () => {
    const widths = new Set([...'0123456789'].map((figure) => textWidth(figure, 100)));
    expect(widths.size).toBe(1);
  });

  it('grows with its size, and letter by letter', () => {
    expect(textWidth('rear 59', 32)).toBeCloseTo(2 * textWidth('rear 59', 16), 9);
    expect(textWidth('rear', 16) + textWidth(' 59', 16)).toBeCloseTo(textWidth('rear 59', 16), 9);
  });

  it('covers the same area whichever end it hangs from', () => {
    const mark = { text: '336 kg', x: 100, y: 50, size: 18, bold: true } as const;
    const width = textWidth(mark.text, mark.size);
    expect(textBox({ ...mark, align: 'start' }).x).toBe(100);
    expect(textBox({ ...mark, align: 'end' }).x).toBeCloseTo(100 - width, 9);
    expect(textBox({ ...mark, align: 'middle' }).x).toBeCloseTo(100 - width / 2, 9);
  });

  it('in two lines is never wider than allowed, and loses nothing that fits', () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 40, max: 300 }), (parts, width) => {
        const text = parts.join(' ');
        const lines = inTwoLines(text, 16, width);
        expect(lines.length).toBeLessThanOrEqual(2);
        for (const line of lines) expect(textWidth(line, 16)).toBeLessThanOrEqual(width);
        if (lines.every((line) => !line.endsWith('…'))) expect(lines.join(' ')).toBe(text);
      }),
      { seed: 41 },
    );
  });
});
