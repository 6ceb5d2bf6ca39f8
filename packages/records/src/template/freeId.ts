/** An id, or the first of its kind that is free: spring, spring-2, spring-3. */
export function freeId(id: string, isFree: (id: string) => boolean): string {
  if (isFree(id)) return id;
  const stem = id.slice(0, 60);
  for (let number = 2; ; number++) {
    if (isFree(`${stem}-${number}`)) return `${stem}-${number}`;
  }
}
