import type { JobState } from '../job/jobStore.ts';
import { unlessForbidden } from './unlessForbidden.ts';

/**
 * The job that a window was left with before it could be kept: loaded again in the moment of an act, or where the shelf has no
 * room or is forbidden. It belongs to that window, which finds it again when it is loaded; a window that is closed takes it along.
 */
const KEY = 'sagwright-left-behind';

/** Whether it could be left there. */
export function leaveBehind({ id, document, changes }: JobState): boolean {
  const left = unlessForbidden(() => {
    sessionStorage.setItem(KEY, JSON.stringify({ id, document, changes }));
    return true;
  });
  return left === true;
}

export function leftBehind(): JobState | null {
  const text = unlessForbidden(() => sessionStorage.getItem(KEY));
  return text === null ? null : (JSON.parse(text) as JobState);
}

export function clearLeftBehind(): void {
  unlessForbidden(() => sessionStorage.removeItem(KEY));
}
