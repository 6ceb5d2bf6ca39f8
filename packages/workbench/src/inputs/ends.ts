import type { SpringSI } from '@sagwright/model/springs/spring';
import type { Adjuster } from '@sagwright/records/schema/adjusters';
import type { EndSetting, Side } from '@sagwright/records/schema/setups';
import { adjusterPath, lengthAtZero, positionOf, touchPosition } from './adjusters.ts';
import { type Desk, note } from './desk.ts';
import { type OfStrut, sidesOf } from './sides.ts';
import { stackedLength } from './springStack.ts';
import { freeLengthOf, solidLengthOf, springOf } from './springs.ts';

/** A spring that could be fitted, as the sum sees it. */
export interface ChoiceFigures {
  readonly spring: SpringSI;
  /** Preload with the adjuster at its loosest end [m]. */
  readonly preloadAtZero: number;
  readonly freeLength: number | null;
  readonly solidLength: number | null;
}

/** What stands on each strut of one end as found. */
export interface FoundEnd {
  readonly fitted: string | null;
  readonly struts: readonly { readonly spring: SpringSI; readonly preload: number }[];
  /** Position of each strut's adjuster as found [m]; null where it was not read. */
  readonly found: readonly number[] | null;
}

/** What stands on each strut as found: its spring and preload, and where its adjuster is. */
export function foundEnd(
  desk: Desk,
  end: 'rear' | 'front',
  count: number,
  adjuster: Adjuster | undefined,
  setting: EndSetting,
): FoundEnd {
  const sides = sidesOf(setting, count);
  const { positions, preloads, atZero } = asFound(desk, end, sides, adjuster);
  if (differ(sides, positions, preloads)) note(desk, 'sides differ', `setups.asFound.${end}`);
  const known = positions.every((position) => position !== null);
  if (!known && adjuster !== undefined && adjuster.kind !== 'none') {
    note(desk, 'position not known', `setups.asFound.${end}`);
  }
  return {
    fitted: sides[0]!.side.spring,
    struts: sides.map(({ side }, i) => ({
      spring: springOf(desk, side.spring, desk.job.springs[side.spring]!),
      preload: preloads[i] ?? atZero(side.spring) + (positions[i] ?? 0),
    })),
    found: known ? (positions as number[]) : null,
  };
}

/** One spring that could be fitted to an end that was found with settings in the job. */
export function choiceFigures(
  desk: Desk,
  end: 'rear' | 'front',
  count: number,
  adjuster: Adjuster | undefined,
  setting: EndSetting,
  id: string,
): ChoiceFigures {
  const { atZero } = asFound(desk, end, sidesOf(setting, count), adjuster);
  const spring = desk.job.springs[id]!;
  return {
    spring: springOf(desk, id, spring),
    preloadAtZero: atZero(id),
    freeLength: freeLengthOf(desk, id),
    solidLength: solidLengthOf(desk, id, spring),
  };
}

/** Positions and preloads of each strut as read, and the preload of any spring with the adjuster at its loosest end. */
function asFound(
  desk: Desk,
  end: 'rear' | 'front',
  sides: readonly OfStrut<Side>[],
  adjuster: Adjuster | undefined,
): {
  readonly positions: readonly (number | null)[];
  readonly preloads: readonly (number | null)[];
  readonly atZero: (id: string) => number;
} {
  const at = (path: string): string => `setups.asFound.${end}.${path}.at`;
  const positions = sides.map(({ side, path }) => positionOf(desk, end, at(path), adjuster, side.at));
  const preloads = sides.map(({ side, path }) => typedPreload(desk, at(path), side));
  const fitted = sides[0]!.side.spring;
  const found = { spring: fitted, position: positions[0]!, preload: preloads[0]! };
  const atZero = preloadAtZeroOf(desk, end, adjuster, found);
  return { positions, preloads, atZero };
}

function typedPreload(desk: Desk, path: string, side: Side): number | null {
  const { preload } = side.at;
  return preload === undefined ? null : desk.take.known(`${path}.preload`, preload, 'collar');
}

function differ(
  sides: readonly { readonly side: Side }[],
  positions: readonly (number | null)[],
  preloads: readonly (number | null)[],
): boolean {
  return sides.some(
    ({ side }, i) =>
      side.spring !== sides[0]!.side.spring || positions[i] !== positions[0] || preloads[i] !== preloads[0],
  );
}

/**
 * Preload of each spring with the adjuster at its loosest end. From the installed length where one was read, or a fork's stack
 * measured; else from what the fitted spring tells (its preload as read, or where the collar touches it) and the difference of
 * free lengths; else assumed.
 */
function preloadAtZeroOf(
  desk: Desk,
  end: 'rear' | 'front',
  adjuster: Adjuster | undefined,
  { spring: fitted, position, preload }: FoundSpring,
): (id: string) => number {
  const { take } = desk;
  const path = adjusterPath(end);
  const free = freeLengthOf(desk, fitted);
  const stacked = end === 'front' ? stackedLength(desk, adjuster) : null;
  const length = stacked ?? lengthAtZero(desk, path, adjuster);
  const touches = touchPosition(desk, path, adjuster);
  const ofFitted = (): number => {
    if (preload !== null) return preload - (position ?? 0);
    if (touches !== null) return -touches;
    if (length !== null && free !== null) return free - length;
    return take.orAssumed(`${path}.preloadAtLoosest`, undefined, 'collar', 'preloadAtZero');
  };
  const atFitted = ofFitted();
  const spacer = spacerOf(desk, fitted);
  return (id) => {
    if (id === fitted) return atFitted;
    const own = freeLengthOf(desk, id);
    // What was read of the fitted spring was read on its own spacer.
    const higher = spacerOf(desk, id) - spacer;
    if (length !== null && own !== null) return own - length + higher;
    if (own !== null && free !== null) return atFitted + own - free + higher;
    return (
      atFitted +
      higher +
      take.orAssumed(`springs.${id}.freeLength`, undefined, 'springLength', 'freeLengthDifference')
    );
  };
}

/** Height of what a spring stands on [m]; 0 where nobody tells of any. */
export function spacerOf({ job, take }: Desk, id: string): number {
  const spacer = job.springs[id]?.spacer;
  return spacer === undefined ? 0 : take.known(`springs.${id}.spacer`, spacer, 'shaft');
}

/** The spring found on the first strut: where its adjuster stood, and its preload as read [m]. */
interface FoundSpring {
  readonly spring: string;
  readonly position: number | null;
  readonly preload: number | null;
}
