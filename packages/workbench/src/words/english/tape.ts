/** A length of the tape, by what it goes from and to. */
export const lengthNames = {
  between: (from: string, to: string) => `from ${from} to ${to}`,
  'above axle': (of: string) => `from the axle's height up to the ${of}`,
  'ahead of axle': (of: string) => `from the axle forward to the ${of}`,
} as const;

/** The two figures of a place that was typed. */
export const placeNames = {
  x: (of: string) => `how far forward the ${of} is`,
  height: (of: string) => `how high above the axle the ${of} is`,
} as const;
