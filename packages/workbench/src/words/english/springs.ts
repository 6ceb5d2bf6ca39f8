/** What a spring is by itself, in sentences; figures arrive formatted. */
export const springs = {
  mark: { coil: 'by its coil', winding: 'by its winding' },
  worked: (rate: string, mark: string) => `${rate} ${mark}`,
  coil: (rate: string) =>
    `Its rate, ${rate}, is worked out from wire, diameter and coils: the ± is mostly wire, material and where the coils begin to give.`,
  stages: (stages: string) =>
    `Wound with several pitches, worked out from its winding: ${stages}. Real coils close more gently than that.`,
  stage: (rate: string, to: string, force: string) => `${rate} until ${to}, ${force}`,
  lastStage: (rate: string, to: string, force: string) => `${rate} until all coils touch at ${to}, ${force}`,
  inTurn: (parts: readonly string[]) => parts.join('; then '),
  agrees: (marked: string, coil: string, difference: string) =>
    `Marked ${marked}, by its coil ${coil}: they agree, ${difference} apart.`,
  differs: (marked: string, coil: string, difference: string) =>
    `Marked ${marked}, by its coil ${coil}: they disagree, ${difference} apart.`,
  trust: {
    marked: 'The marked rate has the smaller ±: trust that.',
    coil: 'The coil has the smaller ±: trust that.',
    neither: 'Trust neither: test it, force at two lengths away from both ends.',
  },
  counts: {
    marked: 'The sum takes the marked rate.',
    coil: "The sum takes the coil's rate.",
  },
} as const;
