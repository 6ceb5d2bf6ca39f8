import type { JobDocument } from '@sagwright/records/schema';
import type { UnitsChoice } from '@sagwright/workbench/format/units';
import type { LoadView, PageView } from '@sagwright/workbench/page/shapes';
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
import { flushSync } from 'react-dom';
import type { JobState, JobStore } from '../job/jobStore.ts';
import type { Answer, FigureQuestion, Opened, PageProblem } from '../worker/messages.ts';
import { createPlanClient, type PlanClient, type Post } from '../worker/planClient.ts';
import { sameParts } from './sameParts.ts';

/** The job on the table, with what was worked out of it last. */
export interface Table {
  readonly store: JobStore;
  readonly state: JobState;
  /** The last plan that could be worked out; it stays on the page while a newer one is under way or impossible. */
  readonly view: PageView | null;
  /** Why the job as it stands has no plan; empty where it has one. */
  readonly problems: readonly PageProblem[];
  /** What of the view is of an older state of the job: the load in sight comes anew before the others. */
  readonly behind: Behind;
  /** Opens a figure of the view up. */
  readonly open: (question: FigureQuestion) => Promise<Opened['figure']>;
  /** What works in the fork of the last plan, how its rear moves, and how a load of it stands and steers. */
  readonly fork: PlanClient['fork'];
  readonly rear: PlanClient['rear'];
  readonly stance: PlanClient['stance'];
  /** Every limit of the job, and the room that a load leaves. */
  readonly limits: PlanClient['limits'];
  /** Two jobs or templates field by field. */
  readonly compare: PlanClient['compare'];
}

export type Behind = 'nothing' | 'others' | 'all';

const TableContext = createContext<Table | null>(null);

export const TableProvider = TableContext.Provider;

const StoreContext = createContext<JobStore | null>(null);

export const StoreProvider = StoreContext.Provider;

/** The job's store alone, for what acts on the job but does not show it: it is not painted anew at each act. */
export function useStore(): JobStore {
  const store = useContext(StoreContext);
  if (store === null) throw new Error('useStore: no job is on the table here; wrap it in a StoreProvider');
  return store;
}

export function useTable(): Table {
  const table = useContext(TableContext);
  if (table === null) throw new Error('useTable: no job is on the table here; wrap it in a TableProvider');
  return table;
}

/** What came back from the worker last, and of which state of which job; `whole` once all of it is of that state. */
interface Answered {
  readonly of: JobState | null;
  readonly whole: boolean;
  readonly view: PageView | null;
  readonly problems: readonly PageProblem[];
}

const NOTHING_YET: Answered = { of: null, whole: false, view: null, problems: [] };

/**
 * Plans the job of a store whenever it changes, in a worker, latest wins; `inSight` is the load that is looked at. Another job's
 * plan is never shown with it.
 */
export function usePlannedJob(
  store: JobStore,
  units: UnitsChoice,
  inSight: string | null,
  makeWorker: () => Post,
): Table {
  const state = useSyncExternalStore(store.subscribe, store.state);
  const [answer, setAnswer] = useState(NOTHING_YET);
  const [fault, setFault] = useState<Error | null>(null);
  const asked = useRef(new Map<number, JobState>());
  const looked = useRef(inSight);
  useEffect(() => {
    looked.current = inSight;
  }, [inSight]);
  const client = useMemo(() => {
    const take = (next: Answer): void => {
      const of = asked.current.get(next.seq) ?? null;
      if (next.kind === 'in sight') {
        // At once, in the task in which it came: the finger waits for this one.
        flushSync(() => setAnswer((last) => withLoad(last, of, next.load)));
        return;
      }
      for (const seq of asked.current.keys()) if (seq <= next.seq) asked.current.delete(seq);
      // Not urgent: what is typed or pressed meanwhile goes first, and painting is done in slices.
      startTransition(() => setAnswer((last) => answeredBy(last, of, next)));
    };
    return createPlanClient(makeWorker(), take, setFault);
  }, [makeWorker]);
  useEffect(() => {
    // Asked from the store itself: the worker is at it while the page paints what was pressed.
    const ask = (): void => {
      const now = store.state();
      asked.current.set(client.ask({ document: now.document, units, inSight: looked.current }), now);
    };
    ask();
    return store.subscribe(ask);
  }, [client, store, units]);
  // To whoever shows a page that broke: a plan that never comes is no plan under way.
  if (fault !== null) throw fault;
  const { of, whole, view, problems } = answer.of?.id === state.id ? answer : NOTHING_YET;
  const behind = of?.document !== state.document ? 'all' : whole ? 'nothing' : 'others';
  return useMemo(() => {
    const { open, fork, rear, stance, limits, compare } = client;
    return { store, state, view, problems, behind, open, fork, rear, stance, limits, compare };
  }, [store, state, view, problems, behind, client]);
}

/** The view with one of its loads as it is now; the load may be gone from it meanwhile. */
function withLoad(last: Answered, of: JobState | null, load: LoadView): Answered {
  if (last.view === null || of === null || last.of?.id !== of.id) return last;
  const there = last.view.loads.some(({ id }) => id === load.id);
  if (!there) return last;
  const loads = last.view.loads.map((each) => (each.id === load.id ? load : each));
  return { of, whole: false, view: sameParts(last.view, { ...last.view, loads }), problems: [] };
}

function answeredBy(
  last: Answered,
  of: JobState | null,
  next: Exclude<Answer, { readonly kind: 'in sight' }>,
): Answered {
  const before = last.of?.id === of?.id ? last.view : null;
  if (next.kind === 'view') return { of, whole: true, view: sameParts(before, next.view), problems: [] };
  return { of, whole: true, view: before, problems: next.problems };
}

/** The document on the table as a job. What lies there was read as one, or is laid beside its list of problems. */
export function jobOf(state: JobState): JobDocument {
  return state.document as JobDocument;
}
