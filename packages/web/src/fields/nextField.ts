/** Moves the focus to the field after the one of this path, as the page stands, once the sheet is gone. */
export function focusNextField(path: string): void {
  requestAnimationFrame(() => {
    const faces = [...document.querySelectorAll<HTMLElement>('[data-field-face]')];
    const here = faces.findIndex((face) => face.closest(`[id="${CSS.escape(path)}"]`) !== null);
    faces[here + 1]?.focus();
  });
}
