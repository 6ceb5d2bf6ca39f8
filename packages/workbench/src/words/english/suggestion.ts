/** Which spring, why it and not the next, what would change the answer; or what would help where none fits. */
export const suggestion = {
  fit: (spring: string, rate: string, where: string | null) =>
    `Fit ${spring}, ${rate}${where === null ? '' : `, ${where}`}`,
  keep: (spring: string, rate: string) => `Keep ${spring}, ${rate}`,
  picked: (spring: string, rate: string) => `Picked by hand: ${spring}, ${rate}`,
  suggestedInstead: (spring: string, rate: string) => `Suggested would be ${spring}, ${rate}.`,
  notAtHandShort: () => 'not at hand today',
  notAtHand: (spring: string) => `${spring} is not at hand today.`,
  without: (loads: string) => `Chosen without ${loads}, which is not planned.`,
  softest: () => 'The softest of those listed that reaches every load.',
  onlyOne: () => 'The only one listed, and it reaches every load.',
  close: (left: string, load: string, plusMinus: string) =>
    `It leaves ${left} to tighten with ${load}, less than its ± of ${plusMinus}.`,
  stifferLeaves: (spring: string, left: string) => `${spring}, the next stiffer, leaves ${left}.`,
  softerFails: (spring: string, reason: string) => `${spring}, the next softer, does not: ${reason}.`,
  stifferToo: (spring: string) => `None softer does; ${spring}, the next stiffer, would too.`,
  runnerUpWould: (kilograms: string, end: 'rear' | 'front', load: string, spring: string) =>
    `With ${kilograms} less on the ${end} wheel in ${load}, ${spring} would do.`,
  wouldFail: (kilograms: string, end: 'rear' | 'front', load: string, spring: string) =>
    `With ${kilograms} more on the ${end} wheel in ${load}, ${spring} would no longer reach.`,
  none: (end: 'rear' | 'front') => `None of the ${end} springs listed reaches every load.`,
  whatWould: () => 'What would:',
  lessInLoad: (kilograms: string, end: 'rear' | 'front', load: string) =>
    `${kilograms} less on the ${end} wheel in ${load}`,
  lessLoad: (less: string, spring: string) => `less on board: ${less}, and ${spring} reaches`,
  otherRate: (range: string, against: string | null, length: string | null) =>
    `another rate: ${range}${against === null ? '' : `, ${against}`}${length === null ? '' : `, ${length} long when free`}`,
  stiffer: (least: string, most: string) => `${least} to ${most} % stiffer than the fitted one`,
  softer: (least: string, most: string) => `${least} to ${most} % softer than the fitted one`,
  otherDamper: (range: string, spring: string) =>
    `another damper: one with ${range} more preload range, with ${spring}`,
  noRemedy: () => 'no load left at home, other rate or longer adjuster alone would cure it',
  nothing: {
    'no springs': (end: 'rear' | 'front') => `No ${end} springs are listed: nothing to choose there.`,
    'no loads': () => 'No load is listed: nothing to plan. Add one with who and what is aboard.',
    refused: (end: 'rear' | 'front') => `Every load that is ridden is refused: no ${end} spring is planned.`,
    'no target': (end: 'rear' | 'front') =>
      `No load that is ridden wants a sag at the ${end}: nothing to choose there.`,
  },
} as const;
