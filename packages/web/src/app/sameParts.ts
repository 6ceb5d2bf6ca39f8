/**
 * `after` with every part of it that equals the one in its place in `before` being that very part: what did not change stays the
 * same object, so that what shows it is not painted anew. Plain data only: arrays, plain objects, and what is equal by `===`.
 */
export function sameParts<T>(before: unknown, after: T): T {
  if (before === after) return after;
  if (Array.isArray(after)) return Array.isArray(before) ? (sameItems(before, after) as T) : after;
  if (!isRecord(after) || !isRecord(before)) return after;
  const keys = Object.keys(after);
  let equal = keys.length === Object.keys(before).length;
  const merged: Record<string, unknown> = {};
  for (const key of keys) {
    const part = sameParts(before[key], after[key]);
    merged[key] = part;
    if (part !== before[key] || !(key in before)) equal = false;
  }
  return (equal ? before : merged) as T;
}

function sameItems(before: readonly unknown[], after: readonly unknown[]): readonly unknown[] {
  const merged = after.map((item, i) => sameParts(before[i], item));
  return merged.length === before.length && merged.every((item, i) => item === before[i]) ? before : merged;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
