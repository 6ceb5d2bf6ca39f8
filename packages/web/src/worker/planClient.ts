import type { Answer, Ask } from './messages.ts';

/** Sends jobs to the worker, latest wins: while one is worked on, only the newest that came meanwhile is kept. */
export interface PlanClient {
  /** Returns the number under which the answer will come. */
  readonly ask: (question: Omit<Ask, 'seq'>) => number;
  readonly close: () => void;
}

/** The part of a Worker that is used here. */
export interface Post {
  readonly postMessage: (message: Ask) => void;
  onmessage: ((event: MessageEvent<Answer>) => void) | null;
  readonly terminate: () => void;
}

export function createPlanClient(worker: Post, onAnswer: (answer: Answer) => void): PlanClient {
  let seq = 0;
  let working = false;
  let waiting: Ask | null = null;
  const send = (question: Ask): void => {
    working = true;
    worker.postMessage(question);
  };
  worker.onmessage = ({ data }) => {
    working = false;
    const next = waiting;
    waiting = null;
    if (next !== null) send(next);
    onAnswer(data);
  };
  return {
    ask: (question) => {
      seq += 1;
      const numbered = { ...question, seq };
      if (working) waiting = numbered;
      else send(numbered);
      return seq;
    },
    close: () => worker.terminate(),
  };
}
