import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { planJob } from '../path.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';
import type { PageView, PictureView } from './shapes.ts';
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

test('the picture names what it is drawn to that nobody read, and nothing that was read', () => {
  const assumedWith = (...changes: readonly Change[]): PictureView['assumed'] =>
    viewWith(...changes).picture.assumed;
  const radius = { value: 312, unit: 'mm', origin: 'own tape' };
  // The tourer comes with all but the radius of its front tyre.
  expect(assumedWith()).toEqual(['front tyre']);
  expect(assumedWith(['machine.front.tyre.radius', radius])).toEqual([]);
  expect(
    assumedWith(
      ['machine.front.tyre.radius', radius],
      ['machine.wheelbase', undefined],
      ['machine.rake', undefined],
      ['machine.rear.tyre.radius', undefined],
    ),
  ).toEqual(['wheelbase', 'rake', 'rear tyre']);
});

test('the shock is drawn by its length fully out, and the stroke that the leverage makes of the wheel’s travel', () => {
  const length = { value: 340, unit: 'mm', origin: 'own tape' };
  const { picture, loads } = viewWith(['machine.rear.shock.length', length]);
  expect(picture.shockLength).toBeCloseTo(0.34, 9);
  expect(viewWith().picture.shockLength).toBe(null);
  for (const { asFound } of loads) {
    // The tourer's leverage ratio is 1.12 mm of wheel travel for each of the shock.
    expect(asFound.shockStroke! * 1.12).toBeCloseTo(asFound.state![2], 9);
  }
});

function viewWith(...changes: readonly Change[]): PageView {
  const planned = planJob(tourerWith(...changes));
  if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
  return pageView(planned, unitsFor('metric', planned.job, '.'));
}

test('on longer shocks the wheel is drawn where it then is in the body: further out by their leverage', () => {
  const { loads } = viewWith(['choice', { shockLength: { value: 8, unit: 'mm' } }]);
  const { planned, asFound } = loads.find(({ id }) => id === 'both')!;
  // 8 mm of shock, 1.12 mm of wheel for each: 8.96 mm between the travel from its own stop and that of the drawing.
  expect(planned!.rear!.restMm - 1000 * planned!.state![2]).toBeCloseTo(8.96, 9);
  expect(asFound.rear!.restMm - 1000 * asFound.state![2]).toBeCloseTo(0, 9);
});
