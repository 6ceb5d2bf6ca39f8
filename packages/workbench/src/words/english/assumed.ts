/** What nobody gave, and what would narrow the answer. */
export const assumed = {
  value: (field: string, figure: string, why: string) => `${field}: ${figure} (${why})`,
  short: (field: string, figure: string) => `${field}: ${figure}`,
  /** A whole table, a fit or a material: no figure of its own, only how far it may be off. */
  scale: (field: string, plusMinus: string, why: string) => `${field}: ± ${plusMinus} (${why})`,
  fit: (field: string, why: string) => `${field}: ${why}`,
  /** Figures typed without a ±, where a usual one stands in. */
  plusMinus: (count: number) =>
    count === 1
      ? '1 figure was typed without its ±; a usual one stands in.'
      : `${count} figures were typed without their ±; usual ones stand in.`,
  effect: (plusMinus: string, adjuster: string) => `± ${plusMinus} on the ${adjuster}`,
  narrows: (field: string, from: string, to: string, adjuster: string, load: string) =>
    `Worth reading first: ${field}. Were it exact, the ${adjuster} for ${load} would be known to ± ${to} instead of ± ${from}.`,
  none: () => 'Nothing had to be assumed.',
} as const;
