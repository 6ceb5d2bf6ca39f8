import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { planJob } from '../path.ts';
import { pageView } from './view.ts';

test('what the page shows of any plan survives the way to the page unchanged, in any units', () => {
  fc.assert(
    fc.property(arbitraryJob, fc.constantFrom('typed', 'metric', 'imperial'), (job, units) => {
      const planned = planJob(job);
      if (!planned.ok) return;
      const view = pageView(planned, unitsFor(units, job, '.'));
      expect(structuredClone(view)).toEqual(view);
      expect(view.loads).toHaveLength(1 + Object.keys(job.loadCases).length);
      expect(JSON.stringify(view)).not.toMatch(/NaN|undefined|Infinity/);
    }),
    { seed: 11, numRuns: 60 },
  );
});
