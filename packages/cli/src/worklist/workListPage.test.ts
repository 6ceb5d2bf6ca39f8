import type { JobDocument } from '@sagwright/records/schema';
import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import { workListOf } from '@sagwright/workbench/fitting/workList';
import { unitsFor } from '@sagwright/workbench/format/units';
import { q, tourerWith } from '@sagwright/workbench/testing/tourerJob';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { paintFor } from '../terminal/paint.ts';
import { columnsOf } from '../terminal/text.ts';
import { workListPage } from './workListPage.ts';

const plain = paintFor(false, {});

function page(job: JobDocument, width = 80, done: readonly string[] = []): string {
  const list = workListOf(job, done);
  return workListPage(list.job, list.rear!, unitsFor('typed', job, '.'), { width, paint: plain });
}

const fitted = tourerWith([
  'fitting',
  {
    rear: {
      name: 'long pair',
      reservoir: { kind: 'by hose' },
      top: { bore: q(12, 'mm'), bolt: q(10, 'mm') },
    },
  },
]);

describe('The work list on a terminal', () => {
  test('says in this order: what to undo, cautions, what fits what, then the steps by their numbers', () => {
    const text = page(fitted, 80, ['found', 'bracket-right']);
    const places = [
      'long pair',
      'UNDO FIRST',
      "RIGHT: Fix the reservoir's bracket: it came before",
      'BEFORE YOU BEGIN',
      'EYES AND BOLTS',
      'Needs a sleeve',
      'WORK LIST',
      '1 of ',
      'On its wheels',
      '[loosen]',
      'Rear wheel in the air',
      '[out-left]',
      '[ridden]',
      'common practice, no source',
    ].map((part) => text.indexOf(part));
    expect(places).not.toContain(-1);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  });

  test('has no torque that nobody read', () => {
    expect(page(fitted)).toContain("No figure. Read it from this machine's manual.");
    expect(page(fitted)).not.toMatch(/N·m|lbf·ft/);
  });

  test('keeps to its width, also on a phone', () => {
    const jobs = arbitraryJob.filter(({ fitting }) => fitting?.rear !== undefined);
    fc.assert(
      fc.property(jobs, fc.integer({ min: 32, max: 100 }), (job, width) => {
        const wide = page(job, width)
          .split('\n')
          .filter((line) => columnsOf(line) > width);
        // A name or a step's id is one word and is never cut: what goes beyond is told, not lost.
        expect(wide.filter((line) => line.trim().includes(' ') && line.trim().split(' ').length > 2)).toEqual(
          [],
        );
      }),
      { seed: 111, numRuns: 40 },
    );
  });

  test('says when all of it is done', () => {
    const ids = workListOf(fitted).rear!.steps.map(({ id }) => id);
    expect(page(fitted, 80, ids)).toContain('All of it is done.');
  });
});
