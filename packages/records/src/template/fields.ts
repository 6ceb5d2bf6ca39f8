/** A group of fields of a document, as plain data. */
export type Fields = Readonly<Record<string, unknown>>;

export function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Where a pattern's fields stand in a document, those only that are there; `*` in it is any member. */
export function pathsOf(value: unknown, pattern: readonly string[]): string[][] {
  const [step, ...rest] = pattern;
  if (step === undefined) return [[]];
  if (!isFields(value)) return [];
  const names = step === '*' ? Object.keys(value) : Object.hasOwn(value, step) ? [step] : [];
  return names.flatMap((name) => pathsOf(value[name], rest).map((path) => [name, ...path]));
}

/** The document without one of its fields. */
export function without<T>(value: T, [name, ...rest]: readonly string[]): T {
  if (name === undefined || !isFields(value) || !Object.hasOwn(value, name)) return value;
  const { [name]: inner, ...kept } = value as Fields;
  return (rest.length === 0 ? kept : { ...value, [name]: without(inner, rest) }) as T;
}
