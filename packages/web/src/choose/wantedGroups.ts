import type { EndView, LoadView } from '@sagwright/workbench/page/shapes';

/** Loads that want the same, in the order of the first of each: their letters, and what they want in words. */
export function wantedGroups(
  loads: readonly LoadView[],
  wanted: EndView['wanted'],
): readonly { readonly letters: readonly string[]; readonly range: string }[] {
  const groups = new Map<string, string[]>();
  for (const { id, letter } of loads) {
    const range = id === null ? undefined : wanted[id]?.words;
    if (range === undefined || letter === null) continue;
    groups.set(range, [...(groups.get(range) ?? []), letter]);
  }
  return [...groups].map(([range, letters]) => ({ letters, range }));
}
