import type { TargetSet } from '@sagwright/records/schema/targets';
import { expect, test } from 'vitest';
import { tourerWith } from '../testing/tourerJob.ts';
import { rowOfLoad } from './rowOfLoad.ts';
import { shippedTargets } from './shipped.ts';

const set: TargetSet = shippedTargets['touring-short-travel']!;

/** The row that a load of these things takes. */
function rowFor(end: 'rear' | 'front', ...aboard: readonly ('person' | 'item')[]): string | undefined {
  const things = Object.fromEntries(
    aboard.map((kind, i) => [
      `t${i}`,
      { name: kind, order: i, kind, mass: { value: 80, unit: 'kg' as const } },
    ]),
  );
  const job = { ...tourerWith(), things };
  const loads = Object.fromEntries(Object.keys(things).map((thing) => [thing, { thing, place: 'seat' }]));
  return rowOfLoad(job, end, { name: 'any', order: 1, share: 100, aboard: loads }, set)?.id;
}

test('a load takes the first row of its end that fits its people and its luggage', () => {
  expect(rowFor('rear', 'person')).toBe('rear-light');
  expect(rowFor('rear', 'person', 'item', 'item')).toBe('rear-alone');
  expect(rowFor('rear', 'person', 'person')).toBe('rear-more');
  expect(rowFor('rear', 'person', 'person', 'item')).toBe('rear-more');
  expect(rowFor('front', 'person', 'item')).toBe('front');
});

test('nobody aboard, or a load weighed whole, takes none where none is for it', () => {
  expect(rowFor('rear', 'item')).toBeUndefined();
  const scale = { value: 200, unit: 'kg' as const };
  const weighed = { name: 'w', order: 1, share: 100, scales: { front: scale, rear: scale } };
  expect(rowOfLoad(tourerWith(), 'rear', weighed, set)).toBeUndefined();
});
