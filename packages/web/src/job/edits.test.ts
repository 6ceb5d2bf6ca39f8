import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { at, type Change, nextUndo, takenBack, withEdits, write } from './edits.ts';

const names = fc.constantFrom('machine', 'springs', 'a', 'b', 'mass');
const leaf = fc.oneof(fc.integer(), fc.constantFrom('kg', 'lb'), fc.boolean());
const document = fc.dictionary(names, fc.dictionary(names, fc.dictionary(names, leaf)));
const path = fc.tuple(names, names, names);

describe('edits', () => {
  test('what was written stands there, and nothing else moves', () => {
    fc.assert(
      fc.property(document, path, path, leaf, (before, target, other, value) => {
        const after = withEdits(before, [write(before, target, value)]);
        expect(at(after, target)).toEqual(value);
        if (other.join() !== target.join()) expect(at(after, other)).toEqual(at(before, other));
      }),
      { seed: 3 },
    );
  });

  test('a change taken back leaves what stood there before', () => {
    fc.assert(
      fc.property(
        document,
        fc.array(fc.tuple(path, fc.option(leaf, { nil: undefined })), { minLength: 1, maxLength: 4 }),
        (before, steps) => {
          let made: unknown = before;
          const edits = steps.map(([target, value]) => {
            const edit = write(made, target, value);
            made = withEdits(made, [edit]);
            return edit;
          });
          const back = withEdits(made, takenBack({ id: 1, words: '', edits, undoes: null }));
          for (const { path: target } of edits) expect(at(back, target)).toEqual(at(before, target));
        },
      ),
      { seed: 4 },
    );
  });

  test('undo goes back one standing change at a time and skips what was taken back', () => {
    const change = (id: number, undoes: number | null = null): Change => ({
      id,
      words: `${id}`,
      edits: [],
      undoes,
    });
    expect(nextUndo([])).toBeNull();
    expect(nextUndo([change(1), change(2)])?.id).toBe(2);
    expect(nextUndo([change(1), change(2), change(3, 2)])?.id).toBe(1);
    expect(nextUndo([change(1), change(2), change(3, 2), change(4)])?.id).toBe(4);
    expect(nextUndo([change(1), change(2, 1)])).toBeNull();
  });

  test('a path through something that is no record leads to nothing', () => {
    expect(at({ machine: 3 }, ['machine', 'mass'])).toBeUndefined();
    expect(at({ machine: { toString: 3 } }, ['machine', 'constructor'])).toBeUndefined();
  });
});
