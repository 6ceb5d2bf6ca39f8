import { type Change, type Edit, nextUndo, takenBack, withEdits } from './edits.ts';

/** The job on the table: the document as it stands and everything that was done to it. */
export interface JobState {
  readonly id: string;
  readonly document: unknown;
  readonly changes: readonly Change[];
}

/** Holds the job on the table. Components read `state` and hear of changes through `subscribe`. */
export interface JobStore {
  readonly state: () => JobState;
  readonly subscribe: (listener: () => void) => () => void;
  /** One act of a person: `edits` are made from the document as it stands; an act that changes nothing is none. */
  readonly act: (words: string, edits: (document: unknown) => readonly Edit[]) => void;
  /** Takes the last standing change back, as a new change. */
  readonly undo: () => void;
  /** Puts another job on the table. */
  readonly lay: (state: JobState) => void;
}

export function createJobStore(start: JobState): JobStore {
  let state = start;
  const listeners = new Set<() => void>();
  const set = (next: JobState): void => {
    state = next;
    for (const listener of listeners) listener();
  };
  const add = (words: string, edits: readonly Edit[], undoes: number | null): void => {
    const id = (state.changes.at(-1)?.id ?? 0) + 1;
    const changes = [...state.changes, { id, words, edits, undoes }];
    set({ ...state, document: withEdits(state.document, edits), changes });
  };
  return {
    state: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    act: (words, build) => {
      const edits = build(state.document).filter(({ before, after }) => !same(before, after));
      if (edits.length > 0) add(words, edits, null);
    },
    undo: () => {
      const last = nextUndo(state.changes);
      if (last !== null) add(last.words, takenBack(last), last.id);
    },
    lay: set,
  };
}

function same(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}
