import { unitsFor } from '@sagwright/workbench/format/units';
import { planJob } from '@sagwright/workbench/path';
import { resultJson } from '@sagwright/workbench/result/result';
import { type Change, q, tourerWith } from '@sagwright/workbench/testing/tourerJob';
import { expect, test } from 'vitest';
import { paintFor } from '../terminal/paint.ts';
import type { Page } from './page.ts';
import { pressureLines } from './pressure.ts';

const air: Change = [
  'machine.rear.shock.air',
  {
    diameter: q(30, 'mm'),
    volume: q(160, 'ml'),
    pressure: q(1, 'bar'),
    least: q(0, 'bar'),
    most: q(7, 'bar'),
  },
];

const noCollar: readonly Change[] = [
  ['machine.rear.shock.adjuster', { kind: 'none' }],
  ['setups.asFound.rear', { both: { spring: 'c3', at: { preload: q(6, 'mm') } } }],
];

function lines(width: number, ...changes: readonly Change[]): readonly string[] {
  const planned = planJob(tourerWith(air, ...changes));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join(' '));
  const page: Page = {
    planned,
    result: resultJson(planned),
    units: unitsFor('imperial', planned.job, '.'),
    width,
    paint: paintFor(false, {}),
    full: false,
  };
  return pressureLines(page);
}

test('is told whichever spring is in view, and named with it', () => {
  for (const rear of ['fitted', 'c1', 'c2', 'c3', 'c4']) {
    const text = lines(100, ['choice', { rear }]).join('\n');
    expect(text).toContain('AIR OF THE SHOCK');
    expect(text).toContain(rear === 'fitted' ? '"as delivered"' : `"${rear.toUpperCase()}"`);
  }
});

test('on a narrow terminal each figure has a heading of its own, and the unit is said once', () => {
  const narrow = lines(44, ...noCollar);
  const facts = narrow.filter((line) => line.startsWith('    ') && line.includes(': '));
  const heads = facts.map((line) => line.trim().split(':')[0]!);
  expect(heads.length).toBeGreaterThan(0);
  expect(heads).not.toContain('');
  expect(new Set(heads)).toContain('reach');
  expect([...new Set(heads)].filter((head) => head.includes('psi'))).toHaveLength(1);
});

test('no pressure below that of the air outside is ever told', () => {
  for (const rear of ['fitted', 'c1', 'c4'])
    expect(lines(100, ['choice', { rear }]).join('\n')).not.toMatch(/ -\d/);
});
