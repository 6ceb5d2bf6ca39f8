/** Words of the three-minute way in that only the page says; what is asked is in the workbench. English. */
export const first = {
  title: 'A first plan, three minutes',
  note: 'Eight entries. The rest is assumed, with a wide ±, and said.',
  job: 'First plan',
  numbered: (n: number, asked: string) => `${n}  ${asked}`,
  counts: { 1: 'one', 2: 'two' },
  make: 'Make the plan',
  usual: (figures: readonly string[]) => `Until somebody reads them: ${figures.join('; ')}.`,
  missing: (names: readonly string[]) => `Still needed: ${names.join(', ')}.`,
} as const;
