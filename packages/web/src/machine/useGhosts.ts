import { useEffect, useRef, useState } from 'react';
import type { LadderInput, LadderLane } from '../drawings/ladder/ladderInput.ts';

/** How long the old place of a band stays in sight [ms]. */
const STAYS = 2000;
/** Less than this is no move [mm]. */
const STILL = 0.05;

type Band = NonNullable<LadderLane['ghost']>;

/**
 * Ladders with the place of each band of a moment ago, so that a change is seen as a move. Several steps in a row are told
 * from where they began. None where motion is not wanted.
 */
export function useGhosts(inputs: readonly LadderInput[]): readonly LadderInput[] {
  const [ghosts, setGhosts] = useState<ReadonlyMap<string, Band>>(new Map());
  const last = useRef<ReadonlyMap<string, Band>>(new Map());
  const now = bandsOf(inputs);
  const said = JSON.stringify([...now]);
  useEffect(() => {
    const bands = new Map(JSON.parse(said) as [string, Band][]);
    const before = last.current;
    last.current = bands;
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) return;
    setGhosts((old) => new Map([...movedFrom(before, bands), ...old]));
    const timer = setTimeout(() => setGhosts(new Map()), STAYS);
    return () => clearTimeout(timer);
  }, [said]);
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
