import type { JobDocument } from '@sagwright/records/schema';
import type { UnitsChoice } from '@sagwright/workbench/format/units';
import type { PageView } from '@sagwright/workbench/page/shapes';
import {
  createContext,
  startTransition,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
  useSyncExternalStore,
} from 'react';
import type { JobState, JobStore } from '../job/jobStore.ts';
import type { Answer, FigureQuestion, Opened, PageProblem } from '../worker/messages.ts';
import { createPlanClient, type Post } from '../worker/planClient.ts';

/** The job on the table, with what was worked out of it last. */
export interface Table {
  readonly store: JobStore;
  readonly state: JobState;
  /** The last plan that could be worked out; it stays on the page while a newer one is under way or impossible. */
  readonly view: PageView | null;
  /** Why the job as it stands has no plan; empty where it has one. */
  readonly problems: readonly PageProblem[];
  /** The view is of an older state of the job. */
  readonly behind: boolean;
  /** Opens a figure of the view up. */
  readonly open: (question: FigureQuestion) => Promise<Opened['figure']>;
}

const TableContext = createContext<Table | null>(null);

export const TableProvider = TableContext.Provider;

export function useTable(): Table {
  const table = useContext(TableContext);
  if (table === null) throw new Error('useTable: no job is on the table here; wrap it in a TableProvider');
  return table;
}

/** What came back from the worker last, and of which job. */
interface Answered {
  readonly job: string | null;
  readonly view: PageView | null;
  readonly problems: readonly PageProblem[];
}

const NOTHING_YET: Answered = { job: null, view: null, problems: [] };

/** Plans the job of a store whenever it changes, in a worker, latest wins. Another job's plan is never shown with it. */
export function usePlannedJob(store: JobStore, units: UnitsChoice, makeWorker: () => Post): Table {
  const state = useSyncExternalStore(store.subscribe, store.state);
  const [answer, setAnswer] = useState(NOTHING_YET);
  const [answered, setAnswered] = useState<unknown>(null);
  const asked = useRef<{ readonly seq: number | null; readonly jobs: Map<number, string> }>({
    seq: null,
    jobs: new Map(),
  });
  const client = useMemo(() => {
    const take = (next: Answer): void => {
      const job = asked.current.jobs.get(next.seq) ?? null;
      for (const seq of asked.current.jobs.keys()) if (seq <= next.seq) asked.current.jobs.delete(seq);
      // Not urgent: what is typed or pressed meanwhile goes first, and painting is done in slices.
      startTransition(() => {
        setAnswered(next.seq);
        setAnswer((last) => {
          if (next.kind === 'view') return { job, view: next.view, problems: [] };
          return { job, view: last.job === job ? last.view : null, problems: next.problems };
        });
      });
    };
    return createPlanClient(makeWorker(), take);
  }, [makeWorker]);
  useEffect(() => {
    const seq = client.ask({ document: state.document, units });
    const { jobs } = asked.current;
    asked.current = { seq, jobs: jobs.set(seq, state.id) };
  }, [client, state.document, state.id, units]);
  const { view, problems } = answer.job === state.id ? answer : NOTHING_YET;
  return { store, state, view, problems, behind: answered !== asked.current.seq, open: client.open };
}

/** The document on the table as a job. What lies there was read as one, or is laid beside its list of problems. */
export function jobOf(state: JobState): JobDocument {
  return state.document as JobDocument;
}
