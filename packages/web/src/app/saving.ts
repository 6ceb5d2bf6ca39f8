/**
 * Whether the job on the table is kept.
 * 'example': the demo job as it comes, not kept. 'may be cleared': kept, without a promise of the browser.
 * 'no room', 'refused': what was done last is not kept. 'changed elsewhere': another page kept this job since, and nothing was done
 * here yet. 'went on as a copy': something was, and both live on.
 */
export type Saving =
  | 'example'
  | 'keeping'
  | 'kept'
  | 'may be cleared'
  | 'no room'
  | 'refused'
  | 'changed elsewhere'
  | 'went on as a copy';

/** What was done last would be gone with the page. */
export function isAtRisk(saving: Saving): boolean {
  return saving === 'keeping' || saving === 'no room' || saving === 'refused';
}
