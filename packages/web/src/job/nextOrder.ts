/** The place of one that comes after all that are there. */
export function nextOrder(members: Readonly<Record<string, { readonly order: number }>>): number {
  return Math.max(0, ...Object.values(members).map(({ order }) => order)) + 1;
}
