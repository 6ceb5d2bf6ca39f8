/** Storage that is forbidden or full throws a DOMException, even when it is only looked at. Then there is nothing. */
export function unlessForbidden<T>(use: () => T): T | null {
  try {
    return use();
  } catch (error) {
    if (error instanceof DOMException) return null;
    throw error;
  }
}
