import type { JobState } from '../job/jobStore.ts';
import type { Keeping } from '../storage/shelf.ts';

/** Jobs that wait to be kept. */
export interface KeepLine {
  readonly add: (job: JobState) => void;
  /** Goes on where a job could not be kept. */
  readonly again: () => void;
  readonly isIdle: () => boolean;
}

/** What the line needs around it. */
export interface KeepLineDesk {
  readonly keep: (job: JobState) => Promise<Keeping>;
  /** A job that somebody else kept since leaves the line, in its newest state. */
  readonly onChangedElsewhere: (job: JobState) => void;
  /** The line rests: all of it is kept, or why it stands still. */
  readonly onRest: (outcome: 'kept' | 'no room' | 'refused') => void;
}

/**
 * Keeps jobs one at a time, in the order in which they came; of each, only its newest state waits. A job that could not be kept
 * stays first in line, and the line stands still until another comes, or `again`.
 */
export function createKeepLine({ keep, onChangedElsewhere, onRest }: KeepLineDesk): KeepLine {
  const waiting = new Map<string, JobState>();
  let working = false;
  const work = async (): Promise<'kept' | 'no room' | 'refused'> => {
    for (let [job] = waiting.values(); job !== undefined; [job] = waiting.values()) {
      const outcome = await keep(job);
      if (outcome === 'no room' || outcome === 'refused') return outcome;
      const newest = waiting.get(job.id) ?? job;
      if (outcome === 'changed elsewhere' || newest === job) waiting.delete(job.id);
      if (outcome === 'changed elsewhere') onChangedElsewhere(newest);
    }
    return 'kept';
  };
  const start = async (): Promise<void> => {
    if (working || waiting.size === 0) return;
    working = true;
    let outcome: 'kept' | 'no room' | 'refused' = 'refused';
    try {
      outcome = await work();
    } finally {
      working = false;
      onRest(outcome);
    }
  };
  return {
    add: (job) => {
      waiting.set(job.id, job);
      void start();
    },
    again: () => void start(),
    isIdle: () => !working && waiting.size === 0,
  };
}
