import type { Spot } from './pen.ts';
import type { BodyPoint, MachineFigures } from './sideViewInput.ts';

/** A figure that was not known and had to be assumed to draw the machine; its part is dashed. */
export type Guess = 'rake' | 'fork offset' | 'swingarm pivot' | 'seat' | 'rear tyre' | 'front tyre';

/** A machine with every figure that a drawing needs, and which of them are guesses. */
export interface Build {
  readonly wheelbaseMm: number;
  readonly rake: number;
  readonly forkOffsetMm: number;
  readonly pivot: BodyPoint;
  readonly seat: BodyPoint;
  readonly rearRadiusMm: number;
  readonly frontRadiusMm: number;
  readonly shocks: 1 | 2;
  readonly guesses: readonly Guess[];
}

/** Middling figures, for the eye only (common practice, no source): nothing is worked out from them. */
const TYRE_RADIUS_MM = 310;
const RAKE = (28 / 180) * Math.PI;
const FORK_OFFSET_MM = 40;
const SEAT_HEIGHT_MM = 740;
const ALONG_WHEELBASE = 0.33;

/** Fills what is not known with a guess that is named. */
export function buildOf(machine: MachineFigures): Build {
  const { wheelbaseMm, rear, front } = machine;
  const rearRadiusMm = rear.tyreRadiusMm ?? TYRE_RADIUS_MM;
  const known: readonly (readonly [Guess, unknown])[] = [
    ['rake', machine.rake],
    ['fork offset', machine.forkOffsetMm],
    ['swingarm pivot', machine.pivot],
    ['seat', machine.seat],
    ['rear tyre', rear.tyreRadiusMm],
    ['front tyre', front.tyreRadiusMm],
  ];
  return {
    wheelbaseMm,
    rake: machine.rake ?? RAKE,
    forkOffsetMm: machine.forkOffsetMm ?? FORK_OFFSET_MM,
    pivot: machine.pivot ?? { xMm: wheelbaseMm * ALONG_WHEELBASE, heightMm: rearRadiusMm + 30 },
    seat: machine.seat ?? { xMm: wheelbaseMm * ALONG_WHEELBASE, heightMm: SEAT_HEIGHT_MM },
    rearRadiusMm,
    frontRadiusMm: front.tyreRadiusMm ?? TYRE_RADIUS_MM,
    shocks: rear.shocks,
    guesses: known.flatMap(([guess, figure]) => (figure === null ? [guess] : [])),
  };
}

export function isGuess(build: Build, guess: Guess): boolean {
  return build.guesses.includes(guess);
}

/** A point of the fork leg's line at a height of the body, in the reference attitude. */
export function legAt(build: Build, heightMm: number): Spot {
  return [build.wheelbaseMm - (heightMm - build.frontRadiusMm) * Math.tan(build.rake), heightMm];
}

/** A point of the steering axis at a height: the leg's line, set back by the fork offset square to it. */
export function steeringAt(build: Build, heightMm: number): Spot {
  const [x] = legAt(build, heightMm);
  return [x - build.forkOffsetMm / Math.cos(build.rake), heightMm];
}
