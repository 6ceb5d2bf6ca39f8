import { useEffect, useState } from 'react';
import type { LadderInput, LadderLane } from '../drawings/ladder/ladderInput.ts';
import { useMedia } from './useMedia.ts';

/** How long the old place of a band stays in sight [ms]. */
const STAYS = 2000;
/** Less than this is no move [mm]. */
const STILL = 0.05;

type Band = NonNullable<LadderLane['ghost']>;

const NONE: ReadonlyMap<string, Band> = new Map();

/**
 * Ladders with the place of each band of a moment ago, so that a change is seen as a move. Several steps in a row are told
 * from where they began. None where motion is not wanted.
 */
export function useGhosts(inputs: readonly LadderInput[]): readonly LadderInput[] {
  const still = useMedia('(prefers-reduced-motion: reduce)');
  const bands = bandsOf(inputs);
  const [seen, setSeen] = useState({ bands, ghosts: NONE });
  const moved = movedFrom(seen.bands, bands);
  // While painting, not after it: the ghost stands there with the band that it is of.
  if (moved.length > 0 || seen.bands.size !== bands.size) {
    setSeen({ bands, ghosts: still ? NONE : new Map([...moved, ...seen.ghosts]) });
  }
  const { ghosts } = seen;
  useEffect(() => {
    if (ghosts.size === 0) return;
    const timer = setTimeout(() => setSeen((now) => ({ ...now, ghosts: NONE })), STAYS);
    return () => clearTimeout(timer);
  }, [ghosts]);
  return inputs.map((input) => ({
    ...input,
    lanes: input.lanes.map((lane) => ({ ...lane, ghost: ghosts.get(keyOf(input, lane)) ?? null })),
  }));
}

function keyOf({ end }: LadderInput, { id }: LadderLane): string {
  return `${end} ${id}`;
}

function bandsOf(inputs: readonly LadderInput[]): ReadonlyMap<string, Band> {
  return new Map(
    inputs.flatMap((input) =>
      input.lanes.flatMap((lane): [string, Band][] => {
        if (lane.rest === null) return [];
        const { fromMm, toMm } = lane.rest;
        return [[keyOf(input, lane), { fromMm, toMm }]];
      }),
    ),
  );
}

function movedFrom(
  before: ReadonlyMap<string, Band>,
  now: ReadonlyMap<string, Band>,
): readonly (readonly [string, Band])[] {
  return [...before].filter(([key, band]) => {
    const here = now.get(key);
    return here !== undefined && Math.abs(here.fromMm - band.fromMm) > STILL;
  });
}
