/** A new id for a member of one of the job's lists, as job files want them: `load-k3v9…`. Ids come in from the page. */
export function newId(list: string): string {
  const random = crypto.getRandomValues(new Uint32Array(2));
  return `${list}-${Array.from(random, (part) => part.toString(36)).join('')}`;
}
