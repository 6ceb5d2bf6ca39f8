/** Words to choose from, in their order. */
export function choicesOf<T extends string>(
  words: Readonly<Record<T, string>>,
): readonly { readonly value: T; readonly word: string }[] {
  return (Object.keys(words) as T[]).map((value) => ({ value, word: words[value] }));
}

/** The place of one that is added after all that are there. */
export function nextOrder(members: Readonly<Record<string, { readonly order: number }>>): number {
  return Math.max(0, ...Object.values(members).map(({ order }) => order)) + 1;
}
