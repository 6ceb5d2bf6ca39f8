import { files as words } from '../words/files.ts';

/**
 * A job with nothing read yet: its frame only. It has no figures at all, so the page lists what it needs and leads to each
 * field; nothing is put in for the technician.
 */
export function emptyJob(): unknown {
  return {
    format: 'sagwright-job',
    version: 1,
    name: words.newName,
    machine: {
      name: words.machineName,
      kind: 'solo',
      weighing: { attitude: 'own sag' },
      rear: { travel: { kind: 'leverage' }, shock: { count: 2, adjuster: { kind: 'none' } } },
      front: {},
      places: { rider: { name: "rider's seat", order: 1, kind: 'rider seat' } },
    },
    springs: { fitted: { name: 'as found', order: 1, end: 'rear', rate: { kind: 'linear' } } },
    things: {},
    loadCases: {},
    targetSets: {},
    setups: { asFound: { rear: { both: { spring: 'fitted', at: {} } } } },
  };
}
