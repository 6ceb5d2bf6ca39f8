import { setField } from './setField.ts';

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
