import { expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { planJob } from '../path.ts';
import { type Change, q, tourerWith } from '../testing/tourerJob.ts';
import { pageView } from './view.ts';

const air = {
  diameter: q(30, 'mm'),
  volume: q(160, 'ml'),
  pressure: q(1, 'bar'),
  least: q(0, 'bar'),
  most: q(9, 'bar'),
};

const noCollar: readonly Change[] = [
  ['machine.rear.shock.adjuster', { kind: 'none' }],
  ['setups.asFound.rear', { both: { spring: 'c3', at: { preload: q(6, 'mm') } } }],
];

function viewOf(...changes: readonly Change[]) {
  const planned = planJob(tourerWith(...changes));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join(' '));
  return pageView(planned, unitsFor('metric', planned.job, '.'));
}

test('where a pressure sets the rear, each load has its interval along the range that the unit may hold', () => {
  const { rear } = viewOf(['machine.rear.shock.air', air], ...noCollar);
  expect(rear.adjuster).toMatchObject({ sets: 'pressure', unit: 'bar', fromWords: '0.0', toWords: '9.0' });
  // Derived: 9 bar at a tenth of a bar for each millimetre.
  expect(rear.adjuster!.mostMm).toBeCloseTo(90, 6);
  for (const { fromMm, toMm, kind, hands, words } of rear.springs.flatMap(({ lanes }) => lanes)) {
    expect(fromMm).toBeLessThan(toMm);
    if (kind !== 'in reach') continue;
    // What is set lies in the interval, in bar as in tenths.
    expect(Number(words)).toBeCloseTo(Number(hands!.setting), 9);
    expect(10 * Number(words)).toBeGreaterThan(fromMm - 0.5);
    expect(10 * Number(words)).toBeLessThan(toMm + 0.5);
    expect(Number(hands!.pressure!.laden)).toBeGreaterThan(Number(words));
  }
});

test('beside a collar the lanes are of preload, and the pressure that would do instead is told with them', () => {
  const { rear, shock } = viewOf(['machine.rear.shock.air', air]);
  expect(rear.adjuster!.sets).toBe('preload');
  expect(shock.air!.unit).toBe('bar');
  for (const { hands } of rear.springs.flatMap(({ lanes }) => lanes)) {
    expect(hands!.pressure!.wanted).toMatch(/^(?:none|[\d.]+ ± [\d.]+)$/);
    expect(hands!.pressure!.laden).toBeNull();
  }
});

test('what is left of a length adjuster opens up, each way; without one nothing is told of it', () => {
  const { shock } = viewOf([
    'machine.rear.shock.lengthAdjuster',
    { change: q(2, 'mm'), least: q(-4, 'mm'), most: q(9, 'mm'), lead: q(1.5, 'mm') },
  ]);
  expect(shock.length.map(({ figure }) => figure)).toEqual(['longer-left', 'shorter-left']);
  expect(viewOf().shock).toEqual({ length: [], air: null });
});
