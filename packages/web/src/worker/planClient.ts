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
  let lastId = 0;
  const openings: Waiting<Opened['figure']> = new Map();
  const forks: Waiting<ForkAnswer['fork']> = new Map();
  const rears: Waiting<RearAnswer['rear']> = new Map();
  const stances: Waiting<StanceTold['stance']> = new Map();
  const limits: Waiting<LimitsTold['limits']> = new Map();
  const comparisons: Waiting<Compared['comparison']> = new Map();
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
  /** Puts a question to the worker under a number that no other has. */
  const put = <T>(waiting: Waiting<T>, question: (id: number) => ToWorker): Promise<T> => {
    lastId += 1;
    const id = lastId;
    worker.postMessage(question(id));
    return new Promise((resolve) => waiting.set(id, resolve));
  };
  worker.onerror = (event) => onFault(new Error(event.message || words.notLoaded));
  return {
    ask: (question) => {
      seq += 1;
      worker.postMessage({ kind: 'plan', seq, ...question });
      return seq;
    },
    open: (question) => put(openings, (id) => ({ kind: 'open', id, question })),
    fork: () => put(forks, (id) => ({ kind: 'fork', id })),
    rear: (load) => put(rears, (id) => ({ kind: 'rear', id, load })),
    stance: (load) => put(stances, (id) => ({ kind: 'ask stance', id, load })),
    limits: (load) => put(limits, (id) => ({ kind: 'ask limits', id, load })),
    compare: (question) => put(comparisons, (id) => ({ kind: 'ask compare', id, question })),
  };
}

/** Who waits for answers of one kind, each by the number of the question. */
type Waiting<T> = Map<number, (answer: T) => void>;

/** Hands an answer to whoever waits for it, once. */
function answerTo<T>(waiting: Waiting<T>, id: number, answer: T): void {
  waiting.get(id)?.(answer);
  waiting.delete(id);
}
