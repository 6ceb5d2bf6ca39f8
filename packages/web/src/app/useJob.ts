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

/** What came back from the worker last, and of which state of which job. */
interface Answered {
  readonly of: JobState | null;
  readonly view: PageView | null;
  readonly problems: readonly PageProblem[];
}

const NOTHING_YET: Answered = { of: null, view: null, problems: [] };

/** Plans the job of a store whenever it changes, in a worker, latest wins. Another job's plan is never shown with it. */
export function usePlannedJob(store: JobStore, units: UnitsChoice, makeWorker: () => Post): Table {
  const state = useSyncExternalStore(store.subscribe, store.state);
  const [answer, setAnswer] = useState(NOTHING_YET);
  const asked = useRef(new Map<number, JobState>());
  const client = useMemo(() => {
    const take = (next: Answer): void => {
      const of = asked.current.get(next.seq) ?? null;
      for (const seq of asked.current.keys()) if (seq <= next.seq) asked.current.delete(seq);
      // Not urgent: what is typed or pressed meanwhile goes first, and painting is done in slices.
      startTransition(() =>
        setAnswer((last) => {
          if (next.kind === 'view') return { of, view: next.view, problems: [] };
          return { of, view: last.of?.id === of?.id ? last.view : null, problems: next.problems };
        }),
      );
    };
    return createPlanClient(makeWorker(), take);
  }, [makeWorker]);
  useEffect(() => {
    asked.current.set(client.ask({ document: state.document, units }), state);
  }, [client, state, units]);
  const { of, view, problems } = answer.of?.id === state.id ? answer : NOTHING_YET;
  return { store, state, view, problems, behind: of?.document !== state.document, open: client.open };
}

/** The document on the table as a job. What lies there was read as one, or is laid beside its list of problems. */
export function jobOf(state: JobState): JobDocument {
  return state.document as JobDocument;
}
