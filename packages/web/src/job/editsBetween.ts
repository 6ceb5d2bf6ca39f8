import type { Edit } from './edits.ts';

/**
 * The edits that make one document of another: leaves and whole quantities where both have the group around them, else what is there or
 * gone as a whole. Made in their order they give `after`; taken back, `before`.
 */
export function editsBetween(before: unknown, after: unknown, path: readonly string[] = []): readonly Edit[] {
  if (!isGroup(before) || !isGroup(after) || isQuantity(before) || isQuantity(after)) {
    return JSON.stringify(before) === JSON.stringify(after) ? [] : [{ path, before, after }];
  }
  const names = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...names].flatMap((name) => editsBetween(before[name], after[name], [...path, name]));
}

type Group = Readonly<Record<string, unknown>>;

function isGroup(value: unknown): value is Group {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isQuantity(value: Group): boolean {
  return 'value' in value && 'unit' in value;
}
