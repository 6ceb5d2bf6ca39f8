import type { JobDocument } from '@sagwright/records/schema';
import { setTab as words } from '../words/page.ts';

/** What the Set tab says of itself: that something is to be fitted; nothing where nothing is. */
export function setSays({ fitting }: JobDocument): string {
  return fitting?.rear === undefined ? '' : words.toFit;
}
