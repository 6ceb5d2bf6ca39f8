import { type Build, steeringAt } from './build.ts';
import type { Spot } from './pen.ts';

/** Where the machine's own parts put the people's hands and feet, and where its outline ends. */
export interface Landmarks {
  readonly grip: Spot;
  /** Middle of the rider's foot board, its upper face. */
  readonly board: Spot;
  readonly tail: Spot;
  readonly passengerSeatMm: number;
}

/** Landmarks of a machine; a passenger lifts the rear seat under them and lengthens the tail. */
export function landmarksOf(
  build: Build,
  passengerSeatMm: number | null,
  tailAtMm: number | null,
): Landmarks {
  const { seat } = build;
  const bar = steeringAt(build, seat.heightMm + 200);
  const passengerMm = passengerSeatMm ?? seat.heightMm + 70;
  return {
    grip: [Math.min(bar[0] - 120, seat.xMm + 590), seat.heightMm + 305],
    board: [seat.xMm + 390, Math.max(265, seat.heightMm - 465)],
    tail: [Math.min(-120, tailAtMm ?? 0), passengerMm - 10],
    passengerSeatMm: passengerMm,
  };
}
