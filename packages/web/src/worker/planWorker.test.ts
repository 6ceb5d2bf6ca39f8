import { tourerData } from '@sagwright/workbench/testing/tourerJob';
import { expect, test } from 'vitest';
import type { FigureQuestion } from './messages.ts';
import { createDesk } from './planWorker.ts';

const pitch: FigureQuestion = {
  of: 'stand',
  asked: { figure: 'pitch', load: 'both', setUp: 'planned' },
};
const ask = (document: unknown) => ({ kind: 'plan', seq: 1, document, units: 'typed' }) as const;

test('before anything is planned, a figure cannot be opened, and that is said', () => {
  const answer = createDesk()({ kind: 'open', id: 7, question: pitch });
  expect(answer).toMatchObject({ kind: 'opened', id: 7, figure: expect.stringContaining('no plan') });
});

test('a figure of the plan opens, also while a newer job has none', () => {
  const desk = createDesk();
  expect(desk(ask(tourerData()))).toMatchObject({ kind: 'view', seq: 1 });
  const first = desk({ kind: 'open', id: 1, question: pitch });
  expect(first).toMatchObject({ figure: { value: expect.stringMatching(/±/) } });
  expect(desk(ask({ not: 'a job' }))).toMatchObject({ kind: 'problems' });
  expect(desk({ kind: 'open', id: 1, question: pitch })).toEqual(first);
});

test('a figure of a spring with a load opens, or says why not', () => {
  const desk = createDesk();
  desk(ask(tourerData()));
  const of = (spring: string): FigureQuestion => ({
    of: 'plan',
    asked: { figure: 'collar', end: 'rear', spring, loadCase: 'both' },
  });
  expect(desk({ kind: 'open', id: 2, question: of('c2') })).toMatchObject({
    figure: { title: expect.any(String) },
  });
  expect(desk({ kind: 'open', id: 3, question: of('none') })).toMatchObject({ figure: expect.any(String) });
});
