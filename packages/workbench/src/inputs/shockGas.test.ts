import { expect, test } from 'vitest';
import { planJob } from '../path.ts';
import { type Change, q, tourerWith } from '../testing/tourerJob.ts';

function gasOf(...changes: readonly Change[]) {
  const planned = planJob(tourerWith(...changes));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join(' '));
  return planned.inputs.shock.gas;
}

const gas: Change = [
  'machine.rear.shock.gas',
  { shaft: q(14, 'mm'), pressure: q(14, 'bar'), volume: q(60, 'ml') },
];

test('a 14 mm shaft at 14 bar is pushed out with about 215 N', () => {
  // Derived: π/4 · (14 mm)² · 1.4 MPa = 215.5 N.
  expect(gasOf(gas)!.fullyOut.value).toBeCloseTo((Math.PI / 4) * 0.014 ** 2 * 1.4e6, 6);
});

test('the deeper it is in, the harder its gas pushes; and its ± holds that of shaft and pressure', () => {
  const { fullyOut, fullStroke } = gasOf(gas)!;
  expect(fullStroke.value).toBeGreaterThan(fullyOut.value);
  // Derived: pressure 10 %, twice 0.1 mm of 14 mm on the area; as squares.
  expect(fullyOut.plusMinus! / fullyOut.value).toBeCloseTo(Math.hypot(0.1, 2 * (0.1 / 14)), 3);
});

test('a twin-tube pushes with little where nobody read it, a damper known to have no gas with nothing', () => {
  const unread: Change = ['machine.rear.shock.gas', undefined];
  const twin = gasOf(unread, ['machine.rear.shock.build', 'twin-tube'])!;
  const mono = gasOf(unread, ['machine.rear.shock.build', 'mono-tube'])!;
  expect(twin.fullyOut.value).toBeLessThan(mono.fullyOut.value / 3);
  // It may well hold none: that lies within its ±.
  expect(twin.fullyOut.plusMinus!).toBeGreaterThan(0.99 * twin.fullyOut.value);
  expect(gasOf(['machine.rear.shock.gas', 'none'])).toBeNull();
});
