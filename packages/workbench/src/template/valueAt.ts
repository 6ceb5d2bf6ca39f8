/** What stands at a path of a document; `undefined` where the way there ends. */
export function valueAt(document: unknown, path: string): unknown {
  return path.split('.').reduce<unknown>((here, name) => {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, name)) return undefined;
    return (here as Readonly<Record<string, unknown>>)[name];
  }, document);
}
