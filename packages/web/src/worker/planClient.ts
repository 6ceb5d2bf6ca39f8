import type { Answer, Ask, FigureQuestion, Open, Opened } from './messages.ts';

/** Sends jobs to the worker, latest wins: while one is worked on, only the newest that came meanwhile is kept. */
export interface PlanClient {
  /** Returns the number under which the answer will come. */
  readonly ask: (question: Pick<Ask, 'document' | 'units'>) => number;
  /** Opens a figure of the last plan that was answered. Every question gets its answer. */
  readonly open: (question: FigureQuestion) => Promise<Opened['figure']>;
  readonly close: () => void;
}

/** The part of a Worker that is used here. */
export interface Post {
  readonly postMessage: (message: Ask | Open) => void;
  onmessage: ((event: MessageEvent<Answer | Opened>) => void) | null;
  readonly terminate: () => void;
}

export function createPlanClient(worker: Post, onAnswer: (answer: Answer) => void): PlanClient {
  let seq = 0;
  let opening = 0;
  let working = false;
  let waiting: Ask | null = null;
  const openings = new Map<number, (figure: Opened['figure']) => void>();
  const send = (question: Ask): void => {
    working = true;
    worker.postMessage(question);
  };
  const planned = (answer: Answer): void => {
    working = false;
    const next = waiting;
    waiting = null;
    if (next !== null) send(next);
    onAnswer(answer);
  };
  worker.onmessage = ({ data }) => {
    if (data.kind !== 'opened') return planned(data);
    openings.get(data.id)?.(data.figure);
    openings.delete(data.id);
  };
  return {
    ask: ({ document, units }) => {
      seq += 1;
      const numbered: Ask = { kind: 'plan', seq, document, units };
      if (working) waiting = numbered;
      else send(numbered);
      return seq;
    },
    open: (question) => {
      opening += 1;
      const id = opening;
      worker.postMessage({ kind: 'open', id, question });
      return new Promise((resolve) => openings.set(id, resolve));
    },
    close: () => worker.terminate(),
  };
}
