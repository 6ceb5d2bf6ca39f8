import { expect, test } from 'vitest';
import type { Answer, Ask, Open, Opened } from './messages.ts';
import { createPlanClient, type Post } from './planClient.ts';

function desk() {
  const posted: (Ask | Open)[] = [];
  const answered: number[] = [];
  const worker: Post = {
    postMessage: (message) => void posted.push(message),
    onmessage: null,
    terminate: () => undefined,
  };
  const client = createPlanClient(worker, ({ seq }) => void answered.push(seq));
  const say = (data: Answer | Opened): void => worker.onmessage?.({ data } as MessageEvent<Answer | Opened>);
  const asks = (): readonly Ask[] => posted.filter((message) => message.kind === 'plan');
  const answer = (): void => say({ seq: asks().at(-1)!.seq, kind: 'problems', problems: [] });
  return { posted, asks, answered, say, answer, client };
}

test('one question is worked on at a time, and the newest that came meanwhile is next', () => {
  const { asks, answered, answer, client } = desk();
  for (let i = 0; i < 5; i += 1) client.ask({ document: i, units: 'typed' });
  expect(asks().map((ask) => ask.document)).toEqual([0]);
  answer();
  expect(asks().map((ask) => ask.document)).toEqual([0, 4]);
  answer();
  expect(asks()).toHaveLength(2);
  expect(answered).toEqual([1, 5]);
});

test('a figure is opened beside the plans, and each answer finds its question', async () => {
  const { posted, asks, answer, say, client } = desk();
  client.ask({ document: 1, units: 'typed' });
  const question = (load: string) =>
    ({ of: 'stand', asked: { figure: 'pitch', load, setUp: 'asFound' } }) as const;
  const first = client.open(question('a'));
  const second = client.open(question('b'));
  const ids = posted.flatMap((message) => (message.kind === 'open' ? [message.id] : []));
  client.ask({ document: 2, units: 'typed' });
  answer();
  say({ kind: 'opened', id: ids[1]!, figure: 'of b' });
  say({ kind: 'opened', id: ids[0]!, figure: 'of a' });
  expect(await first).toBe('of a');
  expect(await second).toBe('of b');
  expect(asks().map((ask) => ask.document)).toEqual([1, 2]);
});
