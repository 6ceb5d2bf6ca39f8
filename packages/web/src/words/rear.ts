import type { PartView, RatioView, RearView } from '@sagwright/workbench/page/rearView';

/** Words of the drawings of how the rear moves. English; figures go in as text. */
export const rear = {
  title: 'How the rear moves its shock',
  note: (source: string) =>
    `Motion ratio, shock per wheel, over the wheel travel: ${source}. Shaded: ±. At the right its inverse, the leverage. Marked: where the loads rest, as planned.`,
  /** Over the curve where no load has a letter. */
  alone: 'alone',
  restName: (letter: string, name: string) => `${letter}, ${name}`,
  aloneName: 'nothing aboard, as found',
  step: (percent: number) => (percent === 0 ? 'fully out' : percent === 100 ? 'full bump' : `${percent} %`),
  columns: { place: 'Place', travel: 'Wheel travel', ratio: 'Motion ratio', leverage: 'Leverage' },
  /** "Motion ratio 0.62 ± 0.03 fully out, 0.70 ± 0.03 at full bump, 105.3 mm up." */
  spokenCurve: ({ steps, lengthUnit }: RearView) => {
    const [first, last] = [steps[0]!.words, steps.at(-1)!.words];
    return `Motion ratio ${first.ratio} fully out, ${last.ratio} at full bump, ${last.travel} ${lengthUnit} up.`;
  },
  spokenRest: (name: string, { words }: RatioView, lengthUnit: string) =>
    `${name}: rests at ${words.travel} ${lengthUnit} of wheel travel, motion ratio ${words.ratio}, leverage ${words.leverage}.`,
  partsTitle: 'Where its parts stand',
  partsNote:
    'Seen from the right, the body held still and the front of the machine to the right. Squares: bolted to the frame.',
  stands: {
    rest: (name: string) => `at rest: ${name}`,
    fullyOut: 'fully out',
    fullBump: 'full bump',
  },
  noRest: (name: string) => `${name}: no rest, so the parts are numbered fully out.`,
  parts: {
    axle: 'rear axle',
    pivot: 'pivot of the swingarm',
    'arm eye': "shock's eye on the swingarm",
    'frame eye': "shock's eye on the frame",
    'rocker pivot': 'pivot of the rocker',
    'link pin': 'pin of rocker and link',
    'link end': 'other end of the link',
    'rocker eye': "shock's eye on the rocker",
    'far eye': "shock's other eye",
  } satisfies { readonly [K in PartView['part']]: string },
  readings: {
    parts: 'Hard points by tape',
    partColumns: (unit: string) => [
      `forward of the axle, ${unit}`,
      `high, ${unit}`,
      `from where it was looked for, ${unit}`,
    ],
    lengths: 'Each length against the points',
    survey: 'Rows known before, against the points',
    columns: (unit: string) => [`read, ${unit}`, `by the points, ${unit}`, `off, ${unit}`, 'says'],
    length: 'Length',
    wheel: (unit: string) => `Wheel, ${unit}`,
  },
  partsCaption: (unit: string) => `Forward of the rear axle and above the ground as measured, ${unit}.`,
  partColumns: { part: 'Part', x: 'forward', height: 'high' },
  partsSpoken: (count: number, name: string, stands: number) =>
    `Side view of ${count} points at ${name}, with ${stands - 1} other heights of the wheel; the table holds their places.`,
} as const;
