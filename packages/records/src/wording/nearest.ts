/** The known word that a mistyped one most likely means: the same but for capitals, or at most two letters off. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const same = known.find((candidate) => candidate.toLowerCase() === word.toLowerCase());
  if (same !== undefined || word.length > 40) return same;
  const allowed = word.length < 5 ? 1 : 2;
  const ranked = known
    .map((candidate) => ({ candidate, off: lettersOff(word, candidate) }))
    .filter(({ off }) => off <= allowed)
    .sort((a, b) => a.off - b.off);
  return ranked[0]?.candidate;
}

/** Levenshtein distance: letters put in, left out or changed. */
function lettersOff(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(changed, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
}
