import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sessionOf } from './session.ts';

test('a session comes back as it was left', () => {
  for (const tab of ['machine', 'choose', 'set'] as const) {
    const session = { tab, load: 'fortnight', shown: 'planned' } as const;
    expect(sessionOf(JSON.stringify(session))).toEqual(session);
  }
});

test('whatever stands in its place is a session at the start', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
      const { tab, shown } = sessionOf(text);
      expect(['machine', 'choose', 'set']).toContain(tab);
      expect(['asFound', 'planned']).toContain(shown);
    }),
    { seed: 2 },
  );
  expect(sessionOf(null)).toEqual({ tab: 'machine', load: null, shown: 'asFound' });
});
