import type { SpringSI } from '@sagwright/model/springs/spring';
import type { Adjuster } from '@sagwright/records/schema/adjusters';
import type { EndSetting, Side } from '@sagwright/records/schema/setups';
import { lengthAtZero, positionOf, touchPosition } from './adjusters.ts';
import { type Desk, inOrder, note } from './desk.ts';
import { solidLengthOf, springOf } from './springs.ts';

/** A spring that could be fitted, as the sum sees it. */
export interface ChoiceFigures {
  readonly spring: SpringSI;
  /** Preload with the adjuster at its loosest end [m]. */
  readonly preloadAtZero: number;
  readonly freeLength: number | null;
  readonly solidLength: number | null;
}

/** Springs and adjusters of one end: what stands on each strut as found, and every spring of that end. */
export interface EndFigures {
  readonly fitted: string | null;
  readonly struts: readonly { readonly spring: SpringSI; readonly preload: number }[];
  /** Position of each strut's adjuster as found [m]; null where it was not read. */
  readonly found: readonly number[] | null;
  readonly choices: Readonly<Record<string, ChoiceFigures>>;
}

/** The sides of an end setting, one for each strut. */
export function sidesOf(
  setting: EndSetting,
  count: number,
): readonly { readonly side: Side; readonly path: string }[] {
  if ('single' in setting) return [{ side: setting.single, path: 'single' }];
  if ('both' in setting) return Array.from({ length: count }, () => ({ side: setting.both, path: 'both' }));
  return [
    { side: setting.left, path: 'left' },
    { side: setting.right, path: 'right' },
  ];
}

/** Everything about the springs of one end that was found with springs and settings in the job. */
export function endFigures(
  desk: Desk,
  end: 'rear' | 'front',
  count: number,
  adjuster: Adjuster | undefined,
  setting: EndSetting,
): EndFigures {
  const sides = sidesOf(setting, count);
  const fitted = sides[0]!.side.spring;
  const adjusterPath = end === 'rear' ? 'machine.rear.shock.adjuster' : 'machine.front.fork.adjuster';
  const positions = sides.map(({ side, path }) =>
    positionOf(desk, `setups.asFound.${end}.${path}.at`, adjuster, side.at),
  );
  const preloads = sides.map(({ side, path }) =>
    typedPreload(desk, `setups.asFound.${end}.${path}.at`, side),
  );
  if (differ(sides, positions, preloads)) note(desk, 'sides differ', `setups.asFound.${end}`);
  const atZero = preloadAtZeroOf(desk, adjusterPath, adjuster, fitted, positions[0]!, preloads[0]!);
  const choices: Record<string, ChoiceFigures> = {};
  for (const [id, spring] of inOrder(desk.job.springs)) {
    if (spring.end !== end) continue;
    choices[id] = {
      spring: springOf(desk, id, spring),
      preloadAtZero: atZero(id),
      freeLength: freeLengthOf(desk, id),
      solidLength: solidLengthOf(desk, id, spring),
    };
  }
  const known = positions.every((position) => position !== null);
  if (!known && adjuster !== undefined && adjuster.kind !== 'none') {
    note(desk, 'position not known', `setups.asFound.${end}`);
  }
  return {
    fitted,
    struts: sides.map(({ side }, i) => ({
      spring: choices[side.spring]!.spring,
      preload: preloads[i] ?? choices[side.spring]!.preloadAtZero + (positions[i] ?? 0),
    })),
    found: known ? (positions as number[]) : null,
    choices,
  };
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

function freeLengthOf(desk: Desk, id: string): number | null {
  const length = desk.job.springs[id]?.freeLength;
  return length === undefined ? null : desk.take.known(`springs.${id}.freeLength`, length, 'springLength');
}

/**
 * Preload of each spring with the adjuster at its loosest end. From the installed length where one was read; else from what
 * the fitted spring tells (its preload as read, or where the collar touches it) and the difference of free lengths; else assumed.
 */
function preloadAtZeroOf(
  desk: Desk,
  path: string,
  adjuster: Adjuster | undefined,
  fitted: string,
  position: number | null,
  preload: number | null,
): (id: string) => number {
  const { take } = desk;
  const free = freeLengthOf(desk, fitted);
  const length = lengthAtZero(desk, path, adjuster);
  const touches = touchPosition(desk, path, adjuster);
  const ofFitted = (): number => {
    if (preload !== null) return preload - (position ?? 0);
    if (touches !== null) return -touches;
    if (length !== null && free !== null) return free - length;
    return take.orAssumed(`${path}.preloadAtLoosest`, undefined, 'collar', 'preloadAtZero');
  };
  const atFitted = ofFitted();
  return (id) => {
    if (id === fitted) return atFitted;
    const own = freeLengthOf(desk, id);
    if (length !== null && own !== null) return own - length;
    if (own !== null && free !== null) return atFitted + own - free;
    return (
      atFitted + take.orAssumed(`springs.${id}.freeLength`, undefined, 'springLength', 'freeLengthDifference')
    );
  };
}
