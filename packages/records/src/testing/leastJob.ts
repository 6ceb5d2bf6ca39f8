import type { FieldPath } from '../problem.ts';

/** The least that a job holds, as plain data that a test may spoil. An invented machine. */
export function leastJob(): Record<string, unknown> {
  return {
    format: 'sagwright-job',
    version: 1,
    name: 'The least job',
    machine: {
      name: 'an invented tourer',
      kind: 'solo',
      weighing: {
        front: { value: 180, unit: 'kg' },
        rear: { value: 200, unit: 'kg' },
        attitude: 'own sag',
      },
      rear: {
        travel: { kind: 'leverage', ratio: { value: 1.1, unit: 'wheel/shock' } },
        shock: { count: 1, adjuster: { kind: 'none' } },
      },
      front: {},
      places: {},
    },
    springs: {
      a: {
        name: 'as found',
        order: 1,
        end: 'rear',
        rate: { kind: 'linear', rate: { value: 60, unit: 'N/mm' } },
      },
    },
    things: {},
    loadCases: {},
    targetSets: {},
    setups: { asFound: { rear: { single: { spring: 'a', at: { preload: { value: 10, unit: 'mm' } } } } } },
  };
}

/** The least job with one field set, or taken out where the value is undefined. */
export function leastJobWith(
  ...changes: (readonly [path: string, value: unknown])[]
): Record<string, unknown> {
  const job = leastJob();
  for (const [path, value] of changes) setField(job, path.split('.'), value);
  return job;
}

function setField(job: Record<string, unknown>, path: FieldPath, value: unknown): void {
  let group = job;
  for (const name of path.slice(0, -1)) {
    group[name] ??= {};
    group = group[name] as Record<string, unknown>;
  }
  const last = path.at(-1)!;
  if (value === undefined) delete group[last];
  else group[last] = value;
}
