import type { LadderLane } from './ladderInput.ts';

/** The lanes that are shown, and how many loads lie out of sight on either side. */
export interface LaneWindow {
  readonly lanes: readonly LadderLane[];
  readonly before: number;
  readonly after: number;
}

/**
 * Which lanes are shown where only `room` of them fit. The machine alone (first) and the chosen lane are always among
 * them; a chosen load outside the window stands at the edge that it lies beyond.
 */
export function laneWindow(
  lanes: readonly LadderLane[],
  chosenId: string,
  firstLoad: number,
  room: number,
): LaneWindow {
  if (lanes.length <= room) return { lanes, before: 0, after: 0 };
  const [alone, ...loads] = lanes;
  const seats = Math.max(1, room - 1);
  const first = Math.min(Math.max(0, firstLoad), loads.length - seats);
  const chosen = loads.findIndex((lane) => lane.id === chosenId);
  const end = first + seats;
  const shown =
    chosen < 0 || (chosen >= first && chosen < end)
      ? loads.slice(first, end)
      : chosen < first
        ? [loads[chosen]!, ...loads.slice(first, end - 1)]
        : [...loads.slice(first, end - 1), loads[chosen]!];
  return { lanes: [alone!, ...shown], before: first, after: loads.length - end };
}
