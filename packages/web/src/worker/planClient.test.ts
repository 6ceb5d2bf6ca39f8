import { expect, test } from 'vitest';
import type { FromWorker, ToWorker } from './messages.ts';
import { createPlanClient, type Post } from './planClient.ts';

function desk() {
  const posted: ToWorker[] = [];
  const answered: string[] = [];
  const worker: Post = {
    postMessage: (message) => void posted.push(message),
    onmessage: null,
    onerror: null,
  };
  const faults: string[] = [];
  const client = createPlanClient(
    worker,
    ({ kind, seq }) => void answered.push(`${kind} ${seq}`),
    ({ message }) => void faults.push(message),
  );
  const fail = (message: string): void => worker.onerror?.({ message } as ErrorEvent);
  const say = (data: FromWorker): void => worker.onmessage?.({ data } as MessageEvent<FromWorker>);
  const ask = (document: number): number => client.ask({ document, units: 'typed', inSight: null });
  return { posted, answered, faults, say, fail, ask, client };
}

test('every state of the job is asked about under a number of its own, and each answer is handed on', () => {
  const { posted, answered, say, ask } = desk();
  expect([ask(10), ask(20)]).toEqual([1, 2]);
  expect(posted).toMatchObject([
    { kind: 'plan', seq: 1, document: 10 },
    { kind: 'plan', seq: 2, document: 20 },
  ]);
  say({ kind: 'problems', seq: 2, problems: [] });
  expect(answered).toEqual(['problems 2']);
});

test('a figure is opened beside the plans, and each answer finds its question', async () => {
  const { posted, answered, say, ask, client } = desk();
  ask(1);
  const question = (load: string) =>
    ({ of: 'stand', asked: { figure: 'pitch', load, setUp: 'asFound' } }) as const;
  const first = client.open(question('a'));
  const second = client.open(question('b'));
  const ids = posted.flatMap((message) => (message.kind === 'open' ? [message.id] : []));
  say({ kind: 'opened', id: ids[1]!, figure: 'of b' });
  say({ kind: 'opened', id: ids[0]!, figure: 'of a' });
  expect(await first).toBe('of a');
  expect(await second).toBe('of b');
  expect(answered).toEqual([]);
});

test('the fork is told beside figures that are opened up, each to who asked', async () => {
  const { posted, say, client } = desk();
  const figure = client.open({ of: 'stand', asked: { figure: 'pitch', load: 'a', setUp: 'asFound' } });
  const fork = client.fork();
  const ids = posted.flatMap((message) => (message.kind === 'plan' ? [] : [message.id]));
  say({ kind: 'fork', id: ids[1]!, fork: null });
  say({ kind: 'opened', id: ids[0]!, figure: 'of a' });
  expect(await fork).toBeNull();
  expect(await figure).toBe('of a');
});

test('how the rear moves is told of the load that was asked about', async () => {
  const { posted, say, client } = desk();
  const rear = client.rear('a');
  expect(posted).toMatchObject([{ kind: 'rear', load: 'a' }]);
  const ids = posted.flatMap((message) => (message.kind === 'plan' ? [] : [message.id]));
  say({ kind: 'rear', id: ids[0]!, rear: null });
  expect(await rear).toBeNull();
});

test('a worker that throws is told with its words, one that does not load is told too', () => {
  const { faults, fail } = desk();
  fail('wheelAt: travel 0.2 m is beyond 0.1 m');
  fail('');
  expect(faults).toEqual(['wheelAt: travel 0.2 m is beyond 0.1 m', expect.stringMatching(/worker/)]);
});
