import { dimensionOf } from '@sagwright/records/units';
import { type ReadingKind, widths } from '@sagwright/workbench/inputs/widths';
import { expect, test } from 'vitest';
import { sureChoices } from './sureChoices.ts';

test('every kind of reading offers ± above 0 to choose from, also one that is taken as it stands', () => {
  for (const kind of Object.keys(widths) as ReadingKind[]) {
    const { unit } = widths[kind].usual;
    const typed = unit === '%' ? 'bar' : unit;
    const choices = sureChoices(dimensionOf(typed), typed, kind, undefined);
    expect(choices.length, kind).toBeGreaterThan(0);
    for (const { value } of choices) expect(value, kind).toBeGreaterThan(0);
  }
});
