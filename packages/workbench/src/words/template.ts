import type { JobDocument } from '@sagwright/records/schema';
import type { KeptTemplate } from '@sagwright/records/template/keep';
import type { LeftOutBecause } from '@sagwright/records/template/leftOut';
import type { Put } from '../template/put.ts';
import { words } from './catalogue.ts';
import { templateWords } from './english/template.ts';
import { partName } from './partName.ts';

/** What a template does not take along, by the reason, and what it takes along as told only. */
export function keptWords(job: JobDocument, kept: Extract<KeptTemplate, { ok: true }>): readonly string[] {
  const { leftOut, told } = kept;
  const reasons = Object.keys(templateWords.leftOut) as LeftOutBecause[];
  const lines = reasons.flatMap((reason) => {
    const paths = leftOut.filter(({ because }) => because === reason).map(({ path }) => path);
    return paths.length === 0 ? [] : [templateWords.leftOut[reason](listed(job, paths))];
  });
  return told.length === 0 ? lines : [...lines, templateWords.told(listed(job, told))];
}

/** What became of a job by the part that was put into it; `job` is the one before. */
export function putWords(job: JobDocument, there: Extract<Put, { ok: true }>): readonly string[] {
  if (there.same) return [templateWords.same];
  const { dropped, readAgain, count } = there;
  return [
    ...(count === null ? [] : [templateWords.count(count)]),
    ...(dropped.length === 0 ? [] : [templateWords.dropped(listed(job, dropped))]),
    ...(readAgain.length === 0 ? [] : [templateWords.readAgain(listed(there.job, readAgain))]),
  ];
}

function listed(job: JobDocument, paths: readonly string[]): string {
  return words.listed([...new Set(paths.map((path) => partName(job, path)))]);
}
