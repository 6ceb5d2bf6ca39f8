/** Every word of a figure that is opened up. English; figures go in as text. */
export const nothingPlanned = 'There is no plan yet to open a figure of.';
export const noRest = 'The machine finds no rest there.';

export const opened = {
  title: 'This figure',
  working: 'Working it out …',
  because: 'What its ± is made of',
  exact: 'Nothing in it is uncertain.',
  equation: 'How it comes about',
  source: 'Source',
  adds: (plusMinus: string) => `± ${plusMinus}`,
  share: (percent: string) => `${percent} %`,
  smaller: (count: number, percent: string) =>
    count === 1 ? `1 smaller part, ${percent} %` : `${count} smaller parts, ${percent} % together`,
} as const;
