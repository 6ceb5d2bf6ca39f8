import { useLayoutEffect, useRef } from 'react';

/**
 * Opens the dialog over the page, puts the caret into its line, and gives the focus back to the field at the end.
 * `replaced`: the next digit replaces what stands in the line as it opens, or goes on with it.
 */
export function useSheetFocus(replaced: boolean) {
  const atOpening = useRef(replaced);
  const dialog = useRef<HTMLDialogElement>(null);
  const valueLine = useRef<HTMLInputElement>(null);
  const sureLine = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => {
    const open = dialog.current!;
    const line = valueLine.current!;
    open.showModal();
    line.focus();
    line.setSelectionRange(atOpening.current ? 0 : line.value.length, line.value.length);
    return () => open.close();
  }, []);
  /** The line that the pad types into. */
  const line = (): HTMLInputElement => sureLine.current ?? valueLine.current!;
  return { dialog, valueLine, sureLine, line };
}
