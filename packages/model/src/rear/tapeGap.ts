import type { TapedSI } from './tape.ts';

/** A length that does not reach: by its place in the list, what it should meet, what both should span, and what is missing [m]. */
export interface TapeGap {
  readonly taped: number;
  /** Null where a height or a level distance alone is more than the whole length. */
  readonly beside: number | null;
  readonly across: number;
  readonly by: number;
}

type Between = Extract<TapedSI, { kind: 'between' }>;

/**
 * A gap of this many of its own standard deviations is none of the tape. Bolts in a row give flat triangles, which the tape
 * opens by one or two every other time: those close again by the lengths that are spare.
 */
const BEYOND_TAPE = 6;

/**
 * The widest gap among lengths that should close: a triangle whose longest side is more than the two others together, or a
 * point that stands further above (ahead of) the axle than it is away from it. Null where all of them reach.
 * Of the two short sides the one that was taped later is named: the points are built up one on another.
 */
export function tapeGap(taped: readonly TapedSI[]): TapeGap | null {
  const all = taped.flatMap((each, at) => (each.kind === 'between' ? [{ at, ...each }] : []));
  const gaps = [...triangles(all), ...offsets(taped, all)];
  return gaps.reduce<TapeGap | null>(
    (most, each) => (most === null || each.by > most.by ? each : most),
    null,
  );
}

type Placed = Between & { readonly at: number };

function* triangles(all: readonly Placed[]): Generator<TapeGap> {
  for (const [i, a] of all.entries()) {
    for (const [j, b] of all.slice(i + 1).entries()) {
      const corner = sharedEnd(a, b);
      if (corner === null) continue;
      const ends = [otherEnd(a, corner), otherEnd(b, corner)];
      for (const c of all.slice(i + j + 2)) {
        if (ends[0] === ends[1] || !ends.includes(c.from) || !ends.includes(c.to)) continue;
        const [longest, ...short] = [a, b, c].sort((x, y) => inPlane(y) - inPlane(x));
        const by = inPlane(longest!) - inPlane(short[0]!) - inPlane(short[1]!);
        if (by <= BEYOND_TAPE * Math.hypot(a.deviation, b.deviation, c.deviation)) continue;
        const [beside, last] = short.map(({ at }) => at).sort((x, y) => x - y);
        yield { taped: last!, beside: beside!, across: longest!.at, by };
      }
    }
  }
}

function* offsets(taped: readonly TapedSI[], all: readonly Placed[]): Generator<TapeGap> {
  for (const [across, each] of taped.entries()) {
    if (each.kind === 'between') continue;
    for (const length of all) {
      if (!isOf(length, 'axle') || !isOf(length, each.of)) continue;
      const by = Math.abs(each.length) - inPlane(length);
      if (by > BEYOND_TAPE * Math.hypot(each.deviation, length.deviation)) {
        yield { taped: length.at, beside: null, across, by };
      }
    }
  }
}

/** Length in the side view: √(l² − sideways²). */
function inPlane({ length, sideways }: Between): number {
  return Math.sqrt(Math.max(0, length * length - sideways * sideways));
}

function isOf({ from, to }: Between, part: string): boolean {
  return from === part || to === part;
}

function sharedEnd(a: Between, b: Between): Between['from'] | null {
  if (a.from === b.from || a.from === b.to) return a.from;
  return a.to === b.from || a.to === b.to ? a.to : null;
}

function otherEnd({ from, to }: Between, one: Between['from']): Between['from'] {
  return from === one ? to : from;
}
