/** Moves the focus to the field after the one of this path, as the page stands; stays where it is the last one. */
export function focusNextField(path: string): void {
  const faces = [...document.querySelectorAll<HTMLElement>('[data-field-face]')];
  const here = faces.findIndex((face) => face.closest(`[id="${CSS.escape(path)}"]`) !== null);
  faces[here + 1]?.focus();
}
