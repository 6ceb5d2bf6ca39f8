import { worker as words } from '../words/page.ts';
import type {
  Answer,
  Ask,
  AskCompare,
  Compared,
  FigureQuestion,
  ForkAnswer,
  FromWorker,
  LimitsTold,
  Opened,
  RearAnswer,
  StanceTold,
  ToWorker,
} from './messages.ts';

/** Sends jobs to the worker, which lets a newer one overtake those before it: latest wins. */
export interface PlanClient {
  /** Returns the number under which the answers will come. */
  readonly ask: (question: Omit<Ask, 'kind' | 'seq'>) => number;
  /** Opens a figure of the last plan that was answered. Every question gets its answer. */
  readonly open: (question: FigureQuestion) => Promise<Opened['figure']>;
  /** What works in the fork of the last plan that was answered. */
  readonly fork: () => Promise<ForkAnswer['fork']>;
  /** How its rear moves, with the parts where a load rests. */
  readonly rear: (load: string | null) => Promise<RearAnswer['rear']>;
  /** How a load of it stands and steers. */
  readonly stance: (load: string | null) => Promise<StanceTold['stance']>;
  /** Every limit of its job, and the room that a load leaves. */
  readonly limits: (load: string | null) => Promise<LimitsTold['limits']>;
  /** Two jobs or templates field by field, whatever was planned. */
  readonly compare: (question: AskCompare['question']) => Promise<Compared['comparison']>;
}

/** The part of a Worker that is used here. */
export interface Post {
  readonly postMessage: (message: ToWorker) => void;
  onmessage: ((event: MessageEvent<FromWorker>) => void) | null;
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
  const rears = new Map<number, (rear: RearAnswer['rear']) => void>();
  const stances = new Map<number, (stance: StanceTold['stance']) => void>();
  const limits = new Map<number, (limits: LimitsTold['limits']) => void>();
  const comparisons = new Map<number, (comparison: Compared['comparison']) => void>();
  worker.onmessage = ({ data }) => {
    switch (data.kind) {
      case 'opened':
        return answerTo(openings, data.id, data.figure);
      case 'fork':
        return answerTo(forks, data.id, data.fork);
      case 'rear':
        return answerTo(rears, data.id, data.rear);
      case 'stance told':
        return answerTo(stances, data.id, data.stance);
      case 'limits told':
        return answerTo(limits, data.id, data.limits);
      case 'compared':
        return answerTo(comparisons, data.id, data.comparison);
      default:
        return onAnswer(data);
    }
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
    rear: (load) => {
      opening += 1;
      const id = opening;
      worker.postMessage({ kind: 'rear', id, load });
      return new Promise((resolve) => rears.set(id, resolve));
    },
    stance: (load) => {
      opening += 1;
      const id = opening;
      worker.postMessage({ kind: 'ask stance', id, load });
      return new Promise((resolve) => stances.set(id, resolve));
    },
    limits: (load) => {
      opening += 1;
      const id = opening;
      worker.postMessage({ kind: 'ask limits', id, load });
      return new Promise((resolve) => limits.set(id, resolve));
    },
    compare: (question) => {
      opening += 1;
      const id = opening;
      worker.postMessage({ kind: 'ask compare', id, question });
      return new Promise((resolve) => comparisons.set(id, resolve));
    },
  };
}

/** Hands an answer to whoever waits for it, once. */
function answerTo<T>(waiting: Map<number, (answer: T) => void>, id: number, answer: T): void {
  waiting.get(id)?.(answer);
  waiting.delete(id);
}
