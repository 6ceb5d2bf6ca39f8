/** Sets one field of plain data by its path, or takes it out where the value is undefined. */
export function setField(data: Record<string, unknown>, path: readonly string[], value: unknown): void {
  let group = data;
  for (const name of path.slice(0, -1)) {
    group[name] ??= {};
    group = group[name] as Record<string, unknown>;
  }
  const last = path.at(-1)!;
  if (value === undefined) delete group[last];
  else group[last] = value;
}
