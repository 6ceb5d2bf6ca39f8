import { parseJob } from '@sagwright/records/read';
import { unitsFor } from '@sagwright/workbench/format/units';
import { pageView } from '@sagwright/workbench/page/view';
import { planJob } from '@sagwright/workbench/path';
import type { Answer, Ask } from './messages.ts';

/** The plan of a job for the page: the same path as the terminal's, in words and numbers ready to paint. */
export function answerTo({ seq, document, units }: Ask): Answer {
  const read = parseJob(document);
  if (!read.ok) return { seq, kind: 'problems', problems: read.problems };
  const planned = planJob(read.job);
  if (!planned.ok) return { seq, kind: 'problems', problems: planned.problems };
  return { seq, kind: 'view', view: pageView(planned, unitsFor(units, read.job, '.')) };
}
