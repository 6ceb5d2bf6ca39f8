/** Times of the same work, one run after the other [ms]. */
export interface Times {
  /** The very first run: code not yet compiled, as on a page just opened. */
  readonly first: number;
  readonly median: number;
  readonly p95: number;
}

/** Times `work`: its first run, then, after `warmUp` runs, `runs` runs. */
export function timesOf(work: () => void, warmUp: number, runs: number): Times {
  const first = milliseconds(work);
  for (let i = 1; i < warmUp; i += 1) work();
  const times = Array.from({ length: runs }, () => milliseconds(work)).sort((a, b) => a - b);
  return { first, median: times[Math.ceil(0.5 * runs) - 1]!, p95: times[Math.ceil(0.95 * runs) - 1]! };
}

function milliseconds(work: () => void): number {
  const began = performance.now();
  work();
  return performance.now() - began;
}
