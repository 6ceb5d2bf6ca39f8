import { nearest } from '@sagwright/records/wording/nearest';
import type { WorkListDocument } from '@sagwright/workbench/fitting/document';
import { doesNotFit, workListOf } from '@sagwright/workbench/fitting/workList';
import { unitsFor } from '@sagwright/workbench/format/units';
import { fitting as say } from '@sagwright/workbench/words/english/fitting';
import { type ExitCode, exitCodes } from '../exit.ts';
import { harmlessJob } from '../harmlessJob.ts';
import { readOrReport } from '../readOrReport.ts';
import type { Output } from '../terminal/output.ts';
import { wrap } from '../terminal/text.ts';
import { argumentsOf, fileAndUnits, isMisused, type Misused } from '../usage.ts';
import { workListPage } from './workListPage.ts';

/** `sagwright worklist FILE`: what hands do to fit what the job tells of, in which order, and what is left of it. */
export async function worklist(
  args: readonly string[],
  out: Output,
  errors: Output,
): Promise<ExitCode | Misused> {
  const read = argumentsOf(args, {
    json: { type: 'boolean' },
    done: { type: 'string', multiple: true },
    units: { type: 'string' },
  });
  if (isMisused(read)) return read;
  const asked = fileAndUnits(read);
  if (isMisused(asked)) return asked;
  const { name, choice } = asked;
  const file = await readOrReport(name, errors);
  if (file === null) return exitCodes.problems;
  const job = read.values.json ? file : harmlessJob(file);
  const done = (read.values.done ?? []).flatMap((ids) => ids.split(',')).filter((id) => id !== '');
  const unknown = unknownStep(workListOf(job), done);
  if (unknown !== null) return unknown;
  const list = workListOf(job, done);
  if (read.values.json) {
    out.write(`${JSON.stringify(list, null, 2)}\n`);
  } else if (list.rear === null) {
    out.write(`${wrap(say.nothing, out.width).join('\n')}\n`);
  } else {
    out.write(workListPage(list.job, list.rear, unitsFor(choice, job, '.'), out));
  }
  return list.rear === null || doesNotFit(list.rear) ? exitCodes.nothingFits : exitCodes.planned;
}

function unknownStep({ rear }: WorkListDocument, done: readonly string[]): Misused | null {
  const steps = rear?.steps.map(({ id }) => id) ?? [];
  const stranger = done.find((id) => !steps.includes(id));
  if (stranger === undefined) return null;
  const meant = nearest(stranger, steps);
  const hint =
    steps.length === 0
      ? 'nothing is being fitted'
      : meant === undefined
        ? 'steps go by the names in brackets on the list'
        : `the nearest is "${meant}"`;
  return { misused: `--done: no step "${stranger}"; ${hint}` };
}
