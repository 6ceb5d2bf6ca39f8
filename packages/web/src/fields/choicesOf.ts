/** Words to choose from, in their order. */
export function choicesOf<T extends string>(
  words: Readonly<Record<T, string>>,
): readonly { readonly value: T; readonly word: string }[] {
  return (Object.keys(words) as T[]).map((value) => ({ value, word: words[value] }));
}
