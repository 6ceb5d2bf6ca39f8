/** What is on a shelf, or 'unreadable' where the browser lets nothing be read. */
export async function allOn<T>(shelf: {
  readonly all: () => Promise<readonly T[]>;
}): Promise<readonly T[] | 'unreadable'> {
  try {
    return await shelf.all();
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    return 'unreadable';
  }
}

/** Why the browser kept nothing; throws what is no refusal of the browser's. */
export function refusalOf(error: unknown): 'no room' | 'refused' {
  if (!(error instanceof DOMException)) throw error;
  return error.name === 'QuotaExceededError' ? 'no room' : 'refused';
}
