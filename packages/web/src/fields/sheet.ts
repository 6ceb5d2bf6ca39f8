import { type Entry, type FieldState, sameEntry } from './draft.ts';
import type { FieldAction } from './fieldState.ts';
import { type EntryRead, readEntry } from './readEntry.ts';

/** An open sheet, as its parts need it. */
export interface Sheet {
  readonly state: FieldState;
  readonly entry: Entry;
  readonly read: EntryRead;
  /** Something differs from how the sheet opened. */
  readonly changed: boolean;
  readonly canWrite: boolean;
  readonly act: (action: FieldAction) => void;
}

export function sheetOf(state: FieldState, entry: Entry, act: Sheet['act']): Sheet {
  const read = readEntry(entry, state.rules);
  const canWrite = read.kind === 'figure' || (read.kind === 'empty' && state.committed !== null);
  return { state, entry, read, changed: !sameEntry(entry, state.opened), canWrite, act };
}
