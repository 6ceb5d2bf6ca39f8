import { expect, test } from 'vitest';
import type { Answer, Ask } from './messages.ts';
import { createPlanClient, type Post } from './planClient.ts';

function desk(): {
  posted: Ask[];
  answered: number[];
  answer: () => void;
  client: ReturnType<typeof createPlanClient>;
} {
  const posted: Ask[] = [];
  const answered: number[] = [];
  const worker: Post = {
    postMessage: (message) => void posted.push(message),
    onmessage: null,
    terminate: () => undefined,
  };
  const client = createPlanClient(worker, ({ seq }) => void answered.push(seq));
  const answer = (): void => {
    const { seq } = posted.at(-1)!;
    const data: Answer = { seq, kind: 'problems', problems: [] };
    worker.onmessage?.({ data } as MessageEvent<Answer>);
  };
  return { posted, answered, answer, client };
}

test('one question is worked on at a time, and the newest that came meanwhile is next', () => {
  const { posted, answered, answer, client } = desk();
  for (let i = 0; i < 5; i += 1) client.ask({ document: i, units: 'typed' });
  expect(posted.map((ask) => ask.document)).toEqual([0]);
  answer();
  expect(posted.map((ask) => ask.document)).toEqual([0, 4]);
  answer();
  expect(posted).toHaveLength(2);
  expect(answered).toEqual([1, 5]);
});
