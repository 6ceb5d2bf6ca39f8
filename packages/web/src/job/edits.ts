/**
 * One field of a job document written: its path of names and ids (never positions), what stood there and what stands there now; `undefined`
 * where there is nothing. Only leaves and whole quantities are written, so that two people's edits can be merged later.
 */
export interface Edit {
  readonly path: readonly string[];
  readonly before: unknown;
  readonly after: unknown;
}

/** What one act of a person did: edits that belong together, in words, in the order of the job's history. */
export interface Change {
  readonly id: number;
  /** What was done, for the undo key: "after a push", "put on: bed roll". */
  readonly words: string;
  readonly edits: readonly Edit[];
  /** The change that this one took back; undo writes a new line, it never takes one out. */
  readonly undoes: number | null;
}

/** What stands at a path of a document; `undefined` where the way there ends. */
export function at(document: unknown, path: readonly string[]): unknown {
  let here = document;
  for (const name of path) {
    if (!isRecord(here) || !Object.hasOwn(here, name)) return undefined;
    here = here[name];
  }
  return here;
}

/** An edit that writes `after` at a path of a document; the way there is made where it is missing. */
export function write(document: unknown, path: readonly string[], after: unknown): Edit {
  return { path, before: at(document, path), after };
}

/** The document with edits made, in their order. What they do not touch is the same object as before. */
export function withEdits(document: unknown, edits: readonly Edit[]): unknown {
  return edits.reduce<unknown>((made, edit) => withValue(made, edit.path, edit.after), document);
}

/** The edits that take a change back. */
export function takenBack(change: Change): readonly Edit[] {
  return [...change.edits]
    .reverse()
    .map(({ path, before, after }) => ({ path, before: after, after: before }));
}

/** The change that "undo" would take back: the last that still stands and is no undo itself; null where there is none. */
export function nextUndo(changes: readonly Change[]): Change | null {
  const undone = new Set(changes.map((change) => change.undoes));
  return changes.findLast((change) => change.undoes === null && !undone.has(change.id)) ?? null;
}

function withValue(here: unknown, path: readonly string[], value: unknown): unknown {
  const [name, ...rest] = path;
  if (name === undefined) return value;
  const record = isRecord(here) ? here : {};
  const inner = rest.length === 0 ? value : withValue(record[name], rest, value);
  if (inner !== undefined) return { ...record, [name]: inner };
  const { [name]: _gone, ...kept } = record;
  return kept;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
