import { tapeGuide } from '@sagwright/workbench/words/english/tape';

/** Words of the guide to a tape. English; figures go in as text. */
export const tape = {
  title: 'By tape: which lengths give these places',
  how: 'How to take them',
  steps: [...tapeGuide.steps, tapeGuide.why],
  numbered: (number: number, of: number, name: string) => `${number} of ${of}: ${name}`,
  left: (left: number, of: number) =>
    left === of
      ? 'None taken yet. With the first one the places above only tell where each part is looked for.'
      : left === 0
        ? 'All are taken.'
        : `${left} of ${of} still to be taken.`,
  toTake: 'to be taken',
  before: 'Back',
  after: 'Next',
  spoken: (name: string) => `Side view of the rear with one length shown: ${name}.`,
} as const;
