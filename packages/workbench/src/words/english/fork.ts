/** What works in the fork, in sentences; figures arrive formatted. */
export const fork = {
  title: 'both legs together, along the tubes, settled',
  bareGap: (gap: string) => `Air gap with neither spring nor spacer in the leg: ${gap}.`,
  moreOil: (step: string, more: string, whole: string) =>
    `An oil level ${step} higher in both legs adds ${more} at full travel, to ${whole} in all.`,
  locks: (step: string) =>
    `An oil level ${step} higher leaves no air: the oil would lock the legs before they are in.`,
  growth: (leg: string, relaxed: string, pressed: string, preload: string) =>
    `Top-out spring, ${leg}: ${relaxed} short of the hard stop with no spring in the leg, ${pressed} with it; the spring is then pressed by ${preload}.`,
  leg: { left: 'left leg', right: 'right leg', both: 'each leg', single: 'the leg with the spring' },
} as const;
