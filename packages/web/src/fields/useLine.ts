import { useState } from 'react';

/** What a line of text says, or why it cannot be taken. */
export type LineRead<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly why: string };

/**
 * A line that is typed with the system's keyboard: the text as typed is kept apart from the value that counts, which
 * changes when the line is left or Enter is pressed. Escape goes back to it; what cannot be read stays, with its reason.
 */
export function useLine<T>(
  value: T,
  textOf: (value: T) => string,
  read: (text: string) => LineRead<T>,
  onCommit: (value: T) => void,
) {
  const [typed, setTyped] = useState<string | null>(null);
  const now = typed === null ? null : read(typed);
  return {
    text: typed ?? textOf(value),
    why: now === null || now.ok ? null : now.why,
    type: setTyped,
    cancel: () => setTyped(null),
    commit: () => {
      if (now === null || !now.ok) return;
      setTyped(null);
      if (now.value !== value) onCommit(now.value);
    },
  };
}
