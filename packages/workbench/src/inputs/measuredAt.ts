import { type Desk, impossible } from './desk.ts';

/** By how much the travel at which the machine was measured may lie past what the wheel has: both are taped or rounded [m]. */
const PAST_TRAVEL = 0.005;

/** Wheel travel [m] at which heights and places were read; 0, fully out, where nothing is said. */
export function measuredAtOf(desk: Desk, end: 'rear' | 'front', travelMax: number): number {
  const typed = desk.job.machine[end].measuredAt;
  const measuredAt = typed === undefined ? 0 : desk.take.known(`machine.${end}.measuredAt`, typed, 'tape');
  if (measuredAt > travelMax + PAST_TRAVEL) {
    impossible(
      desk,
      `machine.${end}.measuredAt`,
      `Measured at ${(measuredAt * 1000).toFixed(0)} mm of ${end} wheel travel, but by its stroke, typed or assumed, the wheel has ${(travelMax * 1000).toFixed(0)} mm. Check both.`,
    );
  }
  return measuredAt;
}
