/** Id of a spring's row on the page. */
export function springPlace(spring: string): string {
  return `spring.${spring}`;
}

/** Brings a spring's row to the top and the focus to its key. */
export function goToSpring(spring: string): void {
  const row = document.getElementById(springPlace(spring));
  row?.scrollIntoView({ block: 'start' });
  row?.querySelector('button')?.focus({ preventScroll: true });
}
