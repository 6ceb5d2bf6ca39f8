const collars = { left: 'left ', right: 'right ', both: '', single: '' } as const;

const figures = {
  reading: (side: string) => `${side}collar as it was turned for a reading`,
  spacer: (side: string) => `${side}spacer in a reading`,
  preload: (side: string) => `${side}preload in a reading`,
} as const;

/** What figures of readings are called: where adjusters stood for them. */
export const readingFields: Readonly<Record<string, (name: string) => string>> = Object.fromEntries(
  Object.entries(collars).flatMap(([side, said]) =>
    Object.entries(figures).map(([figure, say]) => [
      `readings.*.adjusters.${side}.${figure}`,
      () => say(said),
    ]),
  ),
);
