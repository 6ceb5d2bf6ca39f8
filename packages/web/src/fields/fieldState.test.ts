import { bounds } from '@sagwright/records/schema/bounds';
import { origins, type Quantity } from '@sagwright/records/schema/quantity';
import { arbitraryQuantity } from '@sagwright/records/testing/arbitraryQuantity';
import { type Unit, unitsOf } from '@sagwright/records/units';
import { plainDecimal } from '@sagwright/workbench/format/plainNumber';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FieldRules, FieldState } from './draft.ts';
import { type FieldAction, fieldAt, fieldState } from './fieldState.ts';

const run = { seed: 29, numRuns: 500 };

const springRate: FieldRules = { dimension: 'rate', bound: 'springRate', step: 500 };
const shockLength: FieldRules = { dimension: 'length', bound: 'shockLength', step: 0.0005 };
const inNewtons = { unit: 'N/mm' } as const;

describe('A figure', () => {
  test('is written exactly as typed: 160 lbf/in stays 160 lbf/in', () => {
    const state = after(fieldAt(springRate, null), [
      { kind: 'open', last: inNewtons },
      { kind: 'type', text: '160' },
      { kind: 'unit', unit: 'lbf/in' },
      { kind: 'write' },
    ]);
    expect(state.committed).toEqual({ value: 160, unit: 'lbf/in' });
    expect(state.entry).toBeNull();
  });

  test('keeps number and unit, whichever of two units is chosen last', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 900 }),
        fc.array(fc.constantFrom(...unitsOf('rate')), { minLength: 2, maxLength: 5 }),
        (tenths, units) => {
          const state = after(fieldAt({ ...springRate, bound: undefined }, null), [
            { kind: 'open', last: inNewtons },
            { kind: 'type', text: plainDecimal(tenths / 10) },
            ...units.map((unit): FieldAction => ({ kind: 'unit', unit })),
            { kind: 'write' },
          ]);
          expect(state.committed).toEqual({ value: tenths / 10, unit: units.at(-1) });
        },
      ),
      run,
    );
  });

  test('that is opened and written again is the very same', () => {
    const { least, most } = bounds.springRate;
    fc.assert(
      fc.property(arbitraryQuantity('rate', least, most), (quantity) => {
        const opened = fieldState(fieldAt(springRate, quantity), { kind: 'open', last: inNewtons });
        expect(fieldState(opened, { kind: 'write' }).committed).toEqual(quantity);
      }),
      run,
    );
  });

  test('begins empty with unit, ± and origin of the last use, and is written with them', () => {
    const last = { unit: 'mm', plusMinus: { value: 1, unit: 'mm' }, origin: 'own tape' } as const;
    const state = after(fieldAt(shockLength, null), [
      { kind: 'open', last },
      { kind: 'type', text: '571,5' },
      { kind: 'write' },
    ]);
    expect(state.committed).toEqual({ value: 571.5, ...last });
  });

  test('out of its bound is not written, and the sheet stays open with what was typed', () => {
    const typed = after(fieldAt(springRate, null), [
      { kind: 'open', last: { unit: 'N/mm' } },
      { kind: 'type', text: '5000' },
    ]);
    expect(fieldState(typed, { kind: 'write' })).toBe(typed);
  });

  test.each(['1,234', 'soft', '12 5'])('"%s" is not written', (text) => {
    const typed = after(fieldAt(springRate, null), [
      { kind: 'open', last: inNewtons },
      { kind: 'type', text },
    ]);
    expect(fieldState(typed, { kind: 'write' })).toBe(typed);
  });

  test('is taken away by writing an empty line', () => {
    const state = after(fieldAt(springRate, { value: 28, unit: 'N/mm' }), [
      { kind: 'open', last: inNewtons },
      { kind: 'type', text: '' },
      { kind: 'write' },
    ]);
    expect(state.committed).toBeNull();
  });
});

describe('What is being typed', () => {
  const edit: fc.Arbitrary<FieldAction> = fc.oneof(
    fc.string({ maxLength: 6 }).map((text): FieldAction => ({ kind: 'type', text })),
    fc.integer({ min: 0, max: 9999 }).map((value): FieldAction => ({ kind: 'type', text: String(value) })),
    fc.constantFrom<Unit>(...unitsOf('length')).map((unit): FieldAction => ({ kind: 'unit', unit })),
    fc.constantFrom<FieldAction>(
      { kind: 'next unit' },
      { kind: 'next origin' },
      { kind: 'fraction' },
      { kind: 'step', times: 10 },
      { kind: 'step', times: -1 },
      { kind: 'sure', sure: { kind: 'typed', text: '5 %' } },
      { kind: 'sure', sure: { kind: 'width', value: 1, unit: 'mm', own: true } },
    ),
  );

  test('counts for nothing when the sheet is closed, whatever was done in it', () => {
    const committed: Quantity = { value: 571.5, unit: 'mm', origin: 'own tape' };
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 12 }), (edits) => {
        const before = fieldAt(shockLength, committed);
        const opened = fieldState(before, { kind: 'open', last: { unit: 'in' } });
        const edited = after(opened, edits);
        expect(edited.committed).toBe(committed);
        expect(fieldState(edited, { kind: 'close' })).toEqual(before);
      }),
      run,
    );
  });

  test('goes back, by one undo, to how the sheet opened', () => {
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 12 }), (edits) => {
        const opened = fieldState(fieldAt(shockLength, { value: 571.5, unit: 'mm' }), {
          kind: 'open',
          last: { unit: 'mm' },
        });
        expect(fieldState(after(opened, edits), { kind: 'undo' })).toEqual(opened);
      }),
      run,
    );
  });

  test('stays when the job brings another figure meanwhile', () => {
    const typed = after(fieldAt(shockLength, null), [
      { kind: 'open', last: { unit: 'mm' } },
      { kind: 'type', text: '57' },
      { kind: 'arrived', quantity: { value: 580, unit: 'mm' } },
    ]);
    expect(typed.entry?.text).toBe('57');
    expect(typed.committed).toEqual({ value: 580, unit: 'mm' });
  });

  test('keeps a ± from the last use in its own unit, while one of its own is read in the new unit with it', () => {
    const last = { unit: 'mm', plusMinus: { value: 1, unit: 'mm' } } as const;
    const fresh = after(fieldAt(shockLength, null), [
      { kind: 'open', last },
      { kind: 'unit', unit: 'in' },
    ]);
    expect(fresh.entry?.sure).toMatchObject({ value: 1, unit: 'mm' });
    const own = after(
      fieldAt(springRate, { value: 160, unit: 'N/mm', plusMinus: { value: 8, unit: 'N/mm' } }),
      [{ kind: 'open', last: inNewtons }, { kind: 'unit', unit: 'lbf/in' }, { kind: 'write' }],
    );
    expect(own.committed).toEqual({ value: 160, unit: 'lbf/in', plusMinus: { value: 8, unit: 'lbf/in' } });
  });

  test('goes through every unit and every origin and comes round', () => {
    const opened = fieldState(fieldAt(springRate, null), {
      kind: 'open',
      last: { ...inNewtons, origin: origins[0] },
    });
    expect(
      after(
        opened,
        unitsOf('rate').map(() => ({ kind: 'next unit' })),
      ),
    ).toEqual(opened);
    expect(
      after(
        opened,
        origins.map(() => ({ kind: 'next origin' })),
      ),
    ).toEqual(opened);
  });
});

describe('A step', () => {
  test.each([
    ['571.5', 'mm', 1, '572'],
    ['571.5', 'mm', -10, '566.5'],
    ['0.1', 'mm', 1, '0.6'],
    ['22 1/2', 'in', 1, '22 33/64'],
    ['22.5', 'in', 1, '22.515625'],
    ['1,234', 'mm', 1, '1,234'],
    ['', 'mm', 1, ''],
  ] as const)('from "%s" %s by %d gives "%s"', (text, unit, times, stepped) => {
    const state = after(fieldAt(shockLength, null), [
      { kind: 'open', last: { unit } },
      { kind: 'type', text },
      { kind: 'step', times },
    ]);
    expect(state.entry?.text).toBe(stepped);
  });

  test('on the closed field is written at once, and is taken back by undo in the sheet', () => {
    const first: Quantity = { value: 229.2, unit: 'mm', origin: 'own tape' };
    const nudged = fieldState(fieldAt(shockLength, first), { kind: 'nudge', times: 1 });
    expect(nudged.committed).toEqual({ ...first, value: 229.7 });
    const undone = after(nudged, [{ kind: 'open', last: { unit: 'mm' } }, { kind: 'undo' }]);
    expect(undone.committed).toEqual(first);
  });

  test('on the closed field does not leave the bound', () => {
    const edge = fieldAt(shockLength, { value: 800, unit: 'mm' });
    expect(fieldState(edge, { kind: 'nudge', times: 1 })).toBe(edge);
  });
});

describe('The fraction key', () => {
  test('adds sixteenths in inches, reduced as on a rule, and carries', () => {
    let state = after(fieldAt(shockLength, null), [
      { kind: 'open', last: { unit: 'in' } },
      { kind: 'type', text: '2' },
    ]);
    const texts = Array.from({ length: 16 }, () => {
      state = fieldState(state, { kind: 'fraction' });
      return state.entry?.text;
    });
    expect(texts.slice(0, 4)).toEqual(['2 1/16', '2 1/8', '2 3/16', '2 1/4']);
    expect(texts.slice(14)).toEqual(['2 15/16', '3']);
  });

  test.each([
    ['', 'mm', '1/2'],
    ['27', 'mm', '27 1/2'],
    ['', 'in', '1/16'],
    ['-2', 'in', '-2 1/16'],
    ['1,234', 'in', '1,234'],
  ] as const)('makes of "%s" %s "%s"', (text, unit, result) => {
    const state = after(fieldAt(shockLength, null), [
      { kind: 'open', last: { unit } },
      { kind: 'type', text },
      { kind: 'fraction' },
    ]);
    expect(state.entry?.text).toBe(result);
  });
});

describe('Undo of a writing', () => {
  test('gives back what it replaced, none too, and only once', () => {
    const written = after(fieldAt(shockLength, null), [
      { kind: 'open', last: { unit: 'mm' } },
      { kind: 'type', text: '571.5' },
      { kind: 'write' },
      { kind: 'open', last: { unit: 'mm' } },
    ]);
    const undone = fieldState(written, { kind: 'undo' });
    expect(undone.committed).toBeNull();
    expect(fieldState(undone, { kind: 'undo' })).toBe(undone);
  });

  test('is no longer offered once the job brought another figure', () => {
    const state = after(fieldAt(shockLength, { value: 570, unit: 'mm' }), [
      { kind: 'nudge', times: 1 },
      { kind: 'arrived', quantity: { value: 580, unit: 'mm' } },
    ]);
    expect(state.before).toBeUndefined();
  });
});

function after(state: FieldState, actions: readonly FieldAction[]): FieldState {
  return actions.reduce(fieldState, state);
}
