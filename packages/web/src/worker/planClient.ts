import { worker as words } from '../words/page.ts';
import type { Answer, Ask, AskFork, FigureQuestion, ForkAnswer, Open, Opened } from './messages.ts';

/** Sends jobs to the worker, which lets a newer one overtake those before it: latest wins. */
export interface PlanClient {
  /** Returns the number under which the answers will come. */
  readonly ask: (question: Omit<Ask, 'kind' | 'seq'>) => number;
  /** Opens a figure of the last plan that was answered. Every question gets its answer. */
  readonly open: (question: FigureQuestion) => Promise<Opened['figure']>;
  /** What works in the fork of the last plan that was answered. */
  readonly fork: () => Promise<ForkAnswer['fork']>;
}

/** The part of a Worker that is used here. */
export interface Post {
  readonly postMessage: (message: Ask | Open | AskFork) => void;
  onmessage: ((event: MessageEvent<Answer | Opened | ForkAnswer>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/** `onFault` hears of a fault of the program, after which no answer may come any more: a worker that threw, or did not load. */
export function createPlanClient(
  worker: Post,
  onAnswer: (answer: Answer) => void,
  onFault: (fault: Error) => void,
): PlanClient {
  let seq = 0;
  let opening = 0;
  const openings = new Map<number, (figure: Opened['figure']) => void>();
  const forks = new Map<number, (fork: ForkAnswer['fork']) => void>();
  worker.onmessage = ({ data }) => {
    if (data.kind === 'fork') {
      forks.get(data.id)?.(data.fork);
      forks.delete(data.id);
      return;
    }
    if (data.kind !== 'opened') return onAnswer(data);
    openings.get(data.id)?.(data.figure);
    openings.delete(data.id);
  };
  worker.onerror = (event) => onFault(new Error(event.message || words.notLoaded));
  return {
    ask: (question) => {
      seq += 1;
      worker.postMessage({ kind: 'plan', seq, ...question });
      return seq;
    },
    open: (question) => {
      opening += 1;
      const id = opening;
      worker.postMessage({ kind: 'open', id, question });
      return new Promise((resolve) => openings.set(id, resolve));
    },
    fork: () => {
      opening += 1;
      const id = opening;
      worker.postMessage({ kind: 'fork', id });
      return new Promise((resolve) => forks.set(id, resolve));
    },
  };
}
