import { type Corner, pathThrough } from './pen.ts';
import type { Layer, Shape } from './shapes.ts';
import type { BodyPoint } from './sideViewInput.ts';
import type { WheelMark } from './wheelShapes.ts';

/** Proportions of no machine in particular, for the dashed outline: mm. */
const WHEELBASE = 1600;
const RADIUS = 310;
const HEIGHT = 1300;

const OUTLINE: readonly Corner[] = [
  [-190, 815, 30],
  [180, 815, 60],
  [260, 740, 60],
  [640, 740, 70],
  [760, 955, 110],
  [1090, 960, 60],
  [1150, 1010, 20],
  [1070, 1270, 12],
  [1110, 1270, 12],
  [1290, 1030, 40],
  [1440, 870, 60],
  [1330, 640, 50],
  [1180, 560, 60],
  [1130, 180, 70],
  [600, 180, 70],
  [520, 560, 60],
  [300, 590, 60],
  [-170, 720, 30],
];
const ARM: readonly Corner[] = [
  [0, RADIUS],
  [550, 345],
];
const FORK: readonly Corner[] = [
  [WHEELBASE, RADIUS],
  [1385, 715],
];

/** Two wheels and one line over them, all dashed: a picture that says it is not true yet. */
export function emptyLayers(
  width: number,
  groundY: number,
): {
  readonly pxPerMm: number;
  readonly rearWheel: WheelMark;
  readonly frontWheel: WheelMark;
  readonly layers: readonly Layer[];
} {
  const pxPerMm = Math.min((width - 48) / (WHEELBASE + 2 * RADIUS), (groundY - 24) / HEIGHT);
  const radius = RADIUS * pxPerMm;
  const left = (width - WHEELBASE * pxPerMm) / 2;
  const wheel = (x: number): WheelMark => ({
    axle: { x, y: groundY - radius },
    radius,
    loadedRadius: radius,
  });
  const rearWheel = wheel(left);
  const frontWheel = wheel(left + WHEELBASE * pxPerMm);
  const plot = ({ xMm, heightMm }: BodyPoint) => ({
    x: left + xMm * pxPerMm,
    y: groundY - heightMm * pxPerMm,
  });
  const dashed = (d: string): Shape => ({ kind: 'path', look: 'line', guess: true, d });
  const ring = ({ axle }: WheelMark): Shape => ({
    kind: 'circle',
    look: 'line',
    guess: true,
    centre: axle,
    radius,
  });
  return {
    pxPerMm,
    rearWheel,
    frontWheel,
    layers: [
      {
        stand: { at: { x: 0, y: 0 }, turned: 0 },
        shapes: [
          ring(rearWheel),
          ring(frontWheel),
          dashed(pathThrough(OUTLINE, plot)),
          dashed(pathThrough(ARM, plot, true)),
          dashed(pathThrough(FORK, plot, true)),
        ],
      },
    ],
  };
}
