/** A length of the tape, by what it goes from and to. */
export const lengthNames = {
  between: (from: string, to: string) => `from ${from} to ${to}`,
  'above axle': (of: string) => `from axle up to ${of}`,
  'ahead of axle': (of: string) => `from axle forward to ${of}`,
} as const;

/** The two figures of a place that was typed. */
export const placeNames = {
  x: (of: string) => `how far forward the ${of} is`,
  height: (of: string) => `how high above the axle the ${of} is`,
} as const;

/** How the lengths are taken. Common practice, no source. */
export const tapeGuide = {
  title: {
    direct: 'Lengths that give the hard points of a shock between arm and frame',
    linkage: 'Lengths that give the hard points of a rear with rocker and link',
  },
  steps: [
    'Machine upright, body level, rear wheel blocked where it stands: nothing may move until the last length is taken. The shock may be off.',
    'From the middle of one bolt to the middle of the other, along the wheel and not across it. Between bolts of one size: from edge to the same edge.',
    'Where a part stands further out than the other, hold a square against it and read beside the machine; or give how much further out.',
    'Heights by a level, or a hose with water in it, from the middle of the axle.',
    'Each length twice, the mean of both. A ± that nobody gives is 1 mm.',
    "Give the place of each part by eye too, to a hand's breadth: it only tells a part from its mirrored place.",
  ],
  why: 'Each part by two lengths from parts before it, by a third where the three may lie in one line; lengths more than needed check the others.',
  taken: 'taken',
  notTaken: 'to be taken',
  /** Where a job's rear is known in another way. */
  otherwise: (source: string) =>
    `The rear of this job is known by ${source}; lengths are asked for where it is known by hard points. Say which: sagwright tape direct, or sagwright tape linkage.`,
} as const;
