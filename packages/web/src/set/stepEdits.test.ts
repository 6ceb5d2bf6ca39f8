import { workListOf } from '@sagwright/workbench/fitting/workList';
import { tourerWith } from '@sagwright/workbench/testing/tourerJob';
import { expect, test } from 'vitest';
import { withEdits } from '../job/edits.ts';
import { doneNow, notDone } from './stepEdits.ts';

const noted = (done: object) => tourerWith(['fitting', { rear: { reservoir: { kind: 'by hose' }, done } }]);

function after(job: ReturnType<typeof tourerWith>, id: string): unknown {
  const edits = doneNow(job, workListOf(job).rear!, id, 'Tove', '14:10');
  return (withEdits(job, edits) as typeof job).fitting!.rear!.done;
}

test('a step that is done is noted with who and when', () => {
  expect(after(noted({}), 'found')).toEqual({ found: { by: 'Tove', when: '14:10' } });
});

test('what was done too early is no longer noted once the step before it is done', () => {
  const early = noted({ found: {}, 'bracket-left': {}, sweep: {} });
  expect(after(early, 'reservoir-left')).toEqual({
    found: {},
    sweep: {},
    'reservoir-left': { by: 'Tove', when: '14:10' },
  });
});

test('a step taken back is not noted, and nothing else changes', () => {
  const job = noted({ found: {}, loosen: {} });
  const left = withEdits(job, [notDone(job, 'loosen')]) as typeof job;
  expect(left).toEqual(noted({ found: {} }));
});
