/** Day and time as this device writes them, without the seconds. */
export function momentHere(iso: string): string {
  return new Date(iso).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
}
