/** The key of the page that was pressed, in lower case; null while something is typed or a modifier is held. */
export function pageKey(event: KeyboardEvent): string | null {
  if (event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) return null;
  return isTyping(event.target) ? null : event.key.toLowerCase();
}

/** Whether keys go into a line of text or a list now. */
export function isTyping(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('input, select, textarea, dialog') !== null;
}
