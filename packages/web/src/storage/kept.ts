import type { Template } from '@sagwright/records/schema/template';
import type { Change } from '../job/edits.ts';

/** A whole document as it is kept in the browser, with what was done to it. */
export interface Kept {
  readonly id: string;
  readonly document: unknown;
  readonly changes: readonly Change[];
  /** When it was kept last, ISO 8601. Whoever writes next must have seen this moment. */
  readonly kept: string;
}

/** A template as it is kept in the browser. */
export interface KeptTemplate {
  readonly id: string;
  readonly template: Template;
  /** When it was kept, ISO 8601. */
  readonly kept: string;
}
