import type { LimitOf } from '@sagwright/model/limits/limits';

/** Loads against what the machine, its tyres and its places may carry. */
export const limits = {
  of: {
    gross: () => 'gross rating',
    'rear axle': () => 'rear axle rating',
    'front axle': () => 'front axle rating',
    'rear tyre': () => 'rear tyre',
    'front tyre': () => 'front tyre',
    place: (place: string) => place,
  } satisfies { readonly [K in LimitOf['kind']]: (place: string) => string },
  /** What has to be read where a limit is not known, by what it is of. */
  needed: {
    'gross rating': (of: string) => of,
    'axle rating': (of: string) => of,
    'tyre capacity': (of: string) => `load index of the ${of}`,
    'capacity at pressure': (of: string) => `what the ${of} bears with the air it has`,
    pressure: (of: string) => `pressure of the ${of}`,
    'placard pressure': (of: string) => `placard pressure of the ${of}`,
    'place limit': (of: string) => `limit of ${of}`,
  },
  fuel: { full: 'at a full tank', asWeighed: 'with the fuel of the weighing' },
  overBy: (over: string, limit: string) => `${over} over the limit of the ${limit}`,
  overRating: (over: string, rating: string) => `${over} over the ${rating}`,
  refused: (load: string, over: string, fuel: string) =>
    `Not planned: ${load} is ${over} ${fuel}. Set-up cannot cure this: less on board.`,
  tips: (load: string, wheel: 'rear' | 'front') =>
    `Not planned: ${load} tips the machine over its ${wheel} wheel. Set-up cannot cure this: move or leave some of it.`,
  noRest: (load: string) =>
    `Not planned: no rest was found with ${load} aboard. Check its masses and places.`,
  atBest: (against: string, notChecked: string) => `${against} at its best. ${notChecked}`,
  against: (limit: string, figure: string, allowed: string) => `${limit}: ${figure} of ${allowed}`,
  inLoad: (load: string, against: string) => `${load}, ${against}`,
  nearest: (fuel: string, nearest: string) =>
    `Within every limit that is known, ${fuel}. Nearest: ${nearest}.`,
  withinItsDoubt: (found: string, left: string) => `${found}: ${left} left, less than its ±. Weigh it.`,
  exactlyFull: (found: string) => `${found}: nothing left.`,
  notChecked: (needed: string) => `Not checked, figure needed: ${needed}.`,
} as const;
