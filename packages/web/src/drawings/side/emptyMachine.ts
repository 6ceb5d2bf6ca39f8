import { at } from '../hatch.ts';
import type { Shape } from './shapes.ts';
import type { WheelMark } from './wheelShapes.ts';

/** Proportions of no machine in particular, for the dashed outline: mm. */
const WHEELBASE = 1600;
const RADIUS = 310;
const HEIGHT = 1300;

/** Two wheels and one line over them, all dashed: a picture that says it is not true yet. */
export function emptyShapes(
  width: number,
  groundY: number,
): {
  readonly pxPerMm: number;
  readonly rearWheel: WheelMark;
  readonly frontWheel: WheelMark;
  readonly shapes: readonly Shape[];
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
  const spot = (x: number, height: number) => `${at(left + x * pxPerMm)} ${at(groundY - height * pxPerMm)}`;
  const outline = `M${spot(-180, 800)}Q${spot(200, 700)} ${spot(620, 760)}Q${spot(800, 990)} ${spot(1040, 960)}L${spot(1220, 1240)}L${spot(1340, 900)}L${spot(1380, 660)}L${spot(1120, 260)}Q${spot(1100, 180)} ${spot(1000, 180)}L${spot(640, 180)}Q${spot(540, 180)} ${spot(520, 300)}L${spot(420, 600)}Z`;
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
    shapes: [
      ring(rearWheel),
      ring(frontWheel),
      dashed(outline),
      dashed(`M${spot(0, RADIUS)}L${spot(530, 340)}`),
      dashed(`M${spot(WHEELBASE, RADIUS)}L${spot(1320, 830)}`),
    ],
  };
}
