import { keepTemplate } from '@sagwright/records/template/keep';
import { expect, test } from 'vitest';
import { type Change, tourerWith } from '../testing/tourerJob.ts';
import { compareView } from './compareView.ts';

const job = (...changes: readonly Change[]) => ({ from: 'job', document: tourerWith(...changes) }) as const;

function template(kind: 'shock' | 'fork') {
  const kept = keepTemplate(tourerWith(), kind, 'kept');
  if (!kept.ok) throw new Error(kept.problems[0]!.message);
  return { from: 'template', template: kept.template } as const;
}

test('a job is laid beside another by the part that is asked, or by the whole machine', () => {
  const other = job(['machine.rear.shock.stroke', { value: 75, unit: 'mm' }]);
  const shown = compareView({ a: job(), b: other, part: null });
  expect(shown).toMatchObject({ part: 'machine', parts: ['machine', 'shock', 'fork'] });
  expect(compareView({ a: job(), b: other, part: 'fork' })).toMatchObject({
    part: 'fork',
    lines: expect.not.arrayContaining([expect.objectContaining({ differs: true })]),
  });
  const [first] = typeof shown === 'string' ? [] : shown.lines;
  expect(first).toMatchObject({ name: 'stroke of the shock', a: '69 mm', b: '75 mm', differs: true });
});

test('what is no job yet, or has no part in common, is told', () => {
  expect(compareView({ a: { from: 'job', document: {} }, b: job(), part: null })).toBe('no job');
  expect(compareView({ a: template('shock'), b: template('fork'), part: null })).toBe('nothing in common');
});
