import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textFaults } from './textFaults.ts';

describe('the faults of a text', () => {
  test.each([
    ['', 0, 'a value'],
    ['{"a":1,}', 7, 'a name in quotation marks'],
    ['[1,]', 3, 'a value'],
    ['[1 2]', 3, 'a comma or ]'],
    ['{"a" 1}', 5, 'a colon'],
    ['{"a":1]', 6, 'a comma or }'],
    ['{} {}', 3, 'the end of the file'],
    ['"abc', 4, 'a closing quotation mark'],
    ['"a\nb"', 2, 'a closing quotation mark'],
    ['"a\\x"', 2, 'a known escape'],
    ['[01]', 1, 'a value'],
    ['[NaN]', 1, 'a value'],
    ['[1.]', 1, 'a value'],
    ["{'a':1}", 1, 'a name in quotation marks'],
  ])('%j: the first one is at %d, where %s is needed', (text, offset, needed) => {
    expect(textFaults(text).fault).toEqual({ offset, needed });
  });

  test('are found where and only where JSON.parse finds one', () => {
    const spoiled = fc
      .tuple(
        fc.json(),
        fc.nat(),
        fc.constantFrom('', ',', '}', ']', '"', '\\', ':', '-', 'e', ' ', '\u0001', '\u00a0'),
      )
      .map(([text, at, put]) => {
        const i = at % (text.length + 1);
        return text.slice(0, i) + put + text.slice(i + 1);
      });
    fc.assert(
      fc.property(fc.oneof(spoiled, fc.json(), fc.string()), (text) => {
        expect(textFaults(text).fault === undefined).toBe(isJson(text));
      }),
      { seed: 6, numRuns: 5000 },
    );
  });

  test('are not names that are the same in different objects', () => {
    expect(textFaults('[{"a":1},{"a":{"a":2}}]').twice).toEqual([]);
  });

  test('are names that are the same in one object, spelt alike or not', () => {
    const { twice } = textFaults('{"x":[0,{"a":1,"\\u0061":2}]}');
    expect(twice).toEqual([{ path: ['x', 1, 'a'], offset: 15 }]);
  });

  test('are looked for in four million characters of one text or one number', () => {
    expect(textFaults(`"${'x'.repeat(4e6)}"`).fault).toBeUndefined();
    expect(textFaults('1'.repeat(4e6)).fault).toBeUndefined();
  });
});

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
