import type { Spot } from './pen.ts';
import type { BodyPoint, MachineFigures } from './sideViewInput.ts';

/** A figure that nobody read: it has no value, and the drawing takes a middling one. */
export type Unknown = 'fork offset' | 'swingarm pivot' | 'seat' | 'what carries the front wheel';

/** A figure whose part is dashed: not known, or assumed. */
export type Guess = Unknown | MachineFigures['assumed'][number];

/** A machine with every figure that a drawing needs, and which of them are guesses. */
export interface Build {
  readonly wheelbaseMm: number;
  readonly rake: number;
  readonly forkOffsetMm: number;
  readonly pivot: BodyPoint;
  readonly seat: BodyPoint;
  /** Heights of the axles in the reference attitude. */
  readonly rearRadiusMm: number;
  readonly frontRadiusMm: number;
  /** Of the tyres that it stands on. */
  readonly tyresMm: { readonly rear: number; readonly front: number };
  readonly isFork: boolean;
  readonly shocks: 1 | 2;
  readonly shockLengthMm: number | null;
  readonly guesses: readonly Guess[];
}

/** Middling figures, for the eye only (common practice, no source): nothing is worked out from them. */
const FORK_OFFSET_MM = 40;
const SEAT_HEIGHT_MM = 740;
const ALONG_WHEELBASE = 0.33;

/** Fills what is not known with a guess that is named. */
export function buildOf(machine: MachineFigures): Build {
  const { wheelbaseMm, rake, rear, front } = machine;
  const rearRadiusMm = rear.axleHeightMm;
  return {
    wheelbaseMm,
    rake,
    forkOffsetMm: machine.forkOffsetMm ?? FORK_OFFSET_MM,
    pivot: machine.pivot ?? { xMm: wheelbaseMm * ALONG_WHEELBASE, heightMm: rearRadiusMm + 30 },
    seat: machine.seat ?? { xMm: wheelbaseMm * ALONG_WHEELBASE, heightMm: SEAT_HEIGHT_MM },
    rearRadiusMm,
    frontRadiusMm: front.axleHeightMm,
    tyresMm: { rear: rear.tyreRadiusMm, front: front.tyreRadiusMm },
    isFork: front.isFork,
    shocks: rear.shocks,
    shockLengthMm: rear.shockLengthMm,
    guesses: [...machine.assumed, ...unknownOf(machine)],
  };
}

/** What nobody read and nothing is assumed for. */
export function unknownOf({ forkOffsetMm, pivot, seat, front }: MachineFigures): readonly Unknown[] {
  const figures: readonly (readonly [Unknown, unknown])[] = [
    ['fork offset', forkOffsetMm],
    ['swingarm pivot', pivot],
    ['seat', seat],
    ['what carries the front wheel', front.isFork ? true : null],
  ];
  return figures.flatMap(([name, figure]) => (figure === null ? [name] : []));
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
