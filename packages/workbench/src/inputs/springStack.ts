import type { Adjuster } from '@sagwright/records/schema/adjusters';
import type { Fork, Leg, SpringStack } from '@sagwright/records/schema/fork';
import { siOf } from '@sagwright/records/schema/quantity';
import { type Desk, note } from './desk.ts';
import { sidesOf } from './sides.ts';

const PATH = 'machine.front.fork.stack';

/**
 * Installed length of a fork spring [m], leg at its hard stop, adjuster at its loosest end: the room between cap and seat less what
 * stands beside the spring in it. Null where nobody measured the stack.
 *   preload = free length + spacer + washers − room
 */
export function stackedLength(desk: Desk, adjuster: Adjuster | undefined): number | null {
  const { fork } = desk.job.machine.front;
  if (fork?.stack === undefined) return null;
  const { stack } = fork;
  const spacer = adjuster?.kind === 'spacer' ? siOf(adjuster.least) : fixedSpacer(desk, stack);
  return roomOf(desk, fork, stack) - washersOf(desk, stack) - spacer;
}

/** Spring and spacer as they stand in a leg [m], and the room that they stand in, at the hard stop. */
export interface ColumnInLeg {
  readonly room: number;
  readonly spring: number;
  readonly spacer: number;
}

/** Null where a length of them is not known; `both`: as in the first leg with a spring. */
export function columnInLeg(desk: Desk, fork: Fork, leg: Leg): ColumnInLeg | null {
  const { stack } = fork;
  const setting = desk.job.setups.asFound.front;
  if (stack === undefined || setting === undefined) return null;
  if (leg !== 'both' && 'single' in setting) return null;
  const { spring, at } = sidesOf(setting, 2)[leg === 'right' ? 1 : 0]!.side;
  const freeLength = desk.job.springs[spring]?.freeLength;
  if (freeLength === undefined) return null;
  return {
    room: roomOf(desk, fork, stack),
    spring: desk.take.known(`springs.${spring}.freeLength`, freeLength, 'springLength'),
    spacer: 'spacer' in at ? siOf(at.spacer) : fixedSpacer(desk, stack),
  };
}

/**
 * Room at the hard stop [m]. Read in a leg that no spring pressed out it is longer by the top-out spring's own length: so far
 * the main spring's preload counts on from the stop.
 */
function roomOf(desk: Desk, { topOut }: Fork, { room, readAt }: SpringStack): number {
  const read = desk.take.known(`${PATH}.room`, room, 'tape');
  if (readAt !== 'relaxed' || topOut === 'none') return read;
  if (topOut === undefined) {
    note(desk, 'stack read relaxed', PATH);
    return read;
  }
  return read + desk.take.known('machine.front.fork.topOut.length', topOut.length, 'tape');
}

function washersOf({ take }: Desk, { washers }: SpringStack): number {
  return (washers ?? []).reduce(
    (sum, thickness, i) => sum + take.known(`${PATH}.washers.${i}`, thickness, 'shaft'),
    0,
  );
}

function fixedSpacer({ take }: Desk, { spacer }: SpringStack): number {
  return spacer === undefined ? 0 : take.known(`${PATH}.spacer`, spacer, 'collar');
}
