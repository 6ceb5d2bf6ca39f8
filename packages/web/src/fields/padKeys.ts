/**
 * Keys of the pad act on the line that a hardware keyboard would type into, at its caret, and tell it so: what is
 * selected is replaced, and a caret in the middle stays there.
 */
export function insert(line: HTMLInputElement, sign: string): void {
  const [start, end] = selection(line);
  change(line, sign, start, end);
}

/** Deletes what is selected, or the sign before the caret. */
export function deleteBack(line: HTMLInputElement): void {
  const [start, end] = selection(line);
  change(line, '', start === end ? Math.max(0, start - 1) : start, end);
}

export function clear(line: HTMLInputElement): void {
  change(line, '', 0, line.value.length);
}

/** Puts a minus before the number, or takes it away; over a whole selected line it begins a new number. */
export function toggleMinus(line: HTMLInputElement): void {
  const [start, end] = selection(line);
  if (end - start === line.value.length) change(line, '-', 0, end);
  else if (/^[-−]/.test(line.value)) change(line, '', 0, 1);
  else {
    change(line, '-', 0, 0);
    line.setSelectionRange(start + 1, end + 1);
  }
}

function change(line: HTMLInputElement, text: string, start: number, end: number): void {
  line.setRangeText(text, start, end, 'end');
  line.dispatchEvent(new Event('input', { bubbles: true }));
}

function selection(line: HTMLInputElement): [number, number] {
  return [line.selectionStart ?? line.value.length, line.selectionEnd ?? line.value.length];
}
