import type { Problem } from './problem.ts';
import { readJob } from './read.ts';
import { readTemplate } from './readTemplate.ts';
import type { Template } from './schema/template.ts';
import type { JobDocument } from './schema.ts';

/** A file of ours, whichever it is. */
export type EitherResult =
  | { readonly kind: 'job'; readonly job: JobDocument }
  | { readonly kind: 'template'; readonly template: Template }
  | { readonly kind: 'neither'; readonly problems: readonly Problem[] };

/** Reads a job or a template. What is neither is told as no job, since that is what is mostly meant. */
export function readEither(text: string): EitherResult {
  const asJob = readJob(text);
  if (asJob.ok) return { kind: 'job', job: asJob.job };
  const isStranger = asJob.problems.some(({ code }) => code === 'notAJob');
  const asTemplate = isStranger ? readTemplate(text) : null;
  if (asTemplate?.ok) return { kind: 'template', template: asTemplate.template };
  const isTemplate = asTemplate?.problems.every(({ code }) => code !== 'notATemplate');
  return { kind: 'neither', problems: isTemplate ? asTemplate!.problems : asJob.problems };
}
