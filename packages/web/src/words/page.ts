/** Every word of the page around the drawings. English; figures go in as text. */
export const tabWords = {
  machine: { name: 'Machine', asks: 'what is going on?' },
  choose: { name: 'Choose', asks: 'what would be better?' },
  set: { name: 'Set', asks: 'what do my hands do?' },
} as const;

export const setTab = {
  toFit: 'shocks to fit',
} as const;

export const strip = {
  jobs: 'Jobs',
  undo: 'Undo',
  undoOf: (what: string) => `Undo: ${what}`,
  nothingToUndo: 'Nothing to undo',
  kept: 'Kept on this device',
  keeping: 'Keeping …',
  example: 'Invented example',
  noRoom: 'Not kept: no room',
  refused: 'Not kept by this browser',
  mayBeCleared: 'Kept, may be cleared',
  changedElsewhere: 'Changed in another window',
  wentOnAsCopy: 'Kept, as a copy',
  working: 'working it out …',
  theme: { sun: 'Truck colours', truck: 'Sun colours' },
} as const;

export const problems = {
  title: 'This job has no plan yet',
  titleOld: 'Needed for a new plan',
  goTo: 'Go to the field',
  old: 'What is shown below is the last plan that could be worked out. Undo takes the job back to it.',
  needed: (what: 'figure' | 'rows' | 'words') =>
    ({ figure: 'figure needed.', rows: 'readings needed.', words: 'to be filled in.' })[what],
  oneOf: (labels: readonly string[]) => `one figure of these is needed: ${labels.join('; ')}.`,
  allOf: (labels: readonly string[]) => `needed: ${labels.join('; ')}.`,
} as const;

export const worker = {
  notLoaded: 'The part of the page that works plans out (its worker) did not load.',
} as const;
