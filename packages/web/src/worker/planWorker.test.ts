import { tourerData, tourerWith } from '@sagwright/workbench/testing/tourerJob';
import { expect, test } from 'vitest';
import type { Ask, FigureQuestion, FromWorker, ToWorker } from './messages.ts';
import { createDesk } from './planWorker.ts';

const pitch: FigureQuestion = {
  of: 'stand',
  asked: { figure: 'pitch', load: 'both', setUp: 'planned' },
};
const ask = (seq: number, document: unknown, inSight: string | null = null): Ask => ({
  kind: 'plan',
  seq,
  document,
  units: 'typed',
  inSight,
});

/** A desk, with what it said since it was last asked. */
function deskHeard(pause = async (): Promise<void> => undefined) {
  const heard: FromWorker[] = [];
  const answer = createDesk((said) => void heard.push(said), pause);
  const to = async (message: ToWorker): Promise<readonly FromWorker[]> => {
    await answer(message);
    return heard.splice(0);
  };
  return { answer, to, heard };
}

const heavier = (): unknown => tourerWith(['things.owner.mass.value', 97]);

test('before anything is planned, a figure cannot be opened, and that is said', async () => {
  const [answer] = await deskHeard().to({ kind: 'open', id: 7, question: pitch });
  expect(answer).toMatchObject({ kind: 'opened', id: 7, figure: expect.stringContaining('no plan') });
});

test('a figure of the plan opens, also while a newer job has none', async () => {
  const { to } = deskHeard();
  expect(await to(ask(1, tourerData()))).toMatchObject([{ kind: 'view', seq: 1 }]);
  const [first] = await to({ kind: 'open', id: 1, question: pitch });
  expect(first).toMatchObject({ figure: { value: expect.stringMatching(/±/) } });
  expect(await to(ask(2, { not: 'a job' }))).toMatchObject([{ kind: 'problems', seq: 2 }]);
  expect(await to({ kind: 'open', id: 1, question: pitch })).toEqual([first]);
});

test('the fork is told of the last plan, and of none while there is none', async () => {
  const { to } = deskHeard();
  expect(await to({ kind: 'fork', id: 1 })).toEqual([{ kind: 'fork', id: 1, fork: null }]);
  await to(ask(1, tourerData()));
  const [answer] = await to({ kind: 'fork', id: 2 });
  expect(answer).toMatchObject({ kind: 'fork', id: 2, fork: { lengthUnit: 'mm', forceUnit: 'N' } });
  expect(answer).toMatchObject({ fork: { steps: { length: 11 } } });
});

test('how the rear moves is told of the last plan, and of none while there is none', async () => {
  const { to } = deskHeard();
  expect(await to({ kind: 'rear', id: 1, load: null })).toEqual([{ kind: 'rear', id: 1, rear: null }]);
  await to(ask(1, tourerData()));
  const [answer] = await to({ kind: 'rear', id: 2, load: 'both' });
  expect(answer).toMatchObject({ kind: 'rear', id: 2, rear: { lengthUnit: 'mm', steps: { length: 11 } } });
});

test('a figure of a spring with a load opens, or says why not', async () => {
  const { to } = deskHeard();
  await to(ask(1, tourerData()));
  const of = (spring: string): FigureQuestion => ({
    of: 'plan',
    asked: { figure: 'collar', end: 'rear', spring, loadCase: 'both' },
  });
  expect(await to({ kind: 'open', id: 2, question: of('c2') })).toMatchObject([
    { figure: { title: expect.any(String) } },
  ]);
  expect(await to({ kind: 'open', id: 3, question: of('none') })).toMatchObject([
    { figure: expect.any(String) },
  ]);
});

test.each(['both', null])(
  'the load in sight (%s) is told first, and as the whole plan tells it',
  async (load) => {
    const { to } = deskHeard();
    await to(ask(1, tourerData()));
    const [first, whole] = await to(ask(2, heavier(), load));
    if (first?.kind !== 'in sight' || whole?.kind !== 'view') throw new Error('not in this order');
    expect(first.load.id).toBe(load);
    expect(whole.view.loads).toContainEqual(first.load);
  },
);

test('a job that a newer one overtakes gets no plan of its own', async () => {
  const { answer, heard } = deskHeard(() => new Promise((done) => setTimeout(done)));
  await answer(ask(1, tourerData()));
  await Promise.all([answer(ask(2, heavier())), answer(ask(3, tourerData()))]);
  expect(heard.filter(({ kind }) => kind === 'view')).toMatchObject([{ seq: 1 }, { seq: 3 }]);
});

test('how a load stands and steers is told in words, and its figures open up; before a plan it is said that there is none', async () => {
  const { to } = deskHeard();
  expect(await to({ kind: 'ask stance', id: 1, load: 'both' })).toMatchObject([
    { kind: 'stance told', id: 1, stance: expect.stringContaining('no plan') },
  ]);
  await to(ask(1, tourerData()));
  const [told] = await to({ kind: 'ask stance', id: 2, load: 'both' });
  if (told?.kind !== 'stance told' || typeof told.stance === 'string') throw new Error('not told');
  const { figure, point } = told.stance.rows[0]!;
  expect(told.stance.rows[0]).toMatchObject({ figure: 'seat-height', change: expect.stringMatching(/±/) });
  const asked = { figure, point, load: 'both', of: 'change' } as const;
  expect(await to({ kind: 'open', id: 3, question: { of: 'stance', asked } })).toMatchObject([
    { figure: { value: expect.stringMatching(/±/), inputs: expect.any(Array) } },
  ]);
});
