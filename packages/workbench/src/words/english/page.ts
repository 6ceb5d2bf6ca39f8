/** Words that only the page has room for: tags, axis ends, short labels beside bars. */
export const page = {
  ofAllowed: (load: string, allowed: string) => `${load} of ${allowed}`,
  offset: (distance: string, behind: boolean) => `${distance} ${behind ? 'behind' : 'ahead'}`,
  pastBy: (short: string) => `past by ${short}`,
  shortBy: (short: string) => `too tight by ${short}`,
  sag: (standing: string, load: string) => `${load}: ${standing}`,
  springLength: (length: string) => `spring ${length} long, shock fully out`,
  turnsFromFound: (strut: string, turns: string) => `${strut}: ${turns} than as found`,
  turnsAsFound: (strut: string) => `${strut}: as found`,
  rests: (travel: string, share: string) => `rests at ${travel}, ${share}`,
  frequency: (withTyre: string, without: string) => `${withTyre} with the tyre, ${without} without`,
} as const;
