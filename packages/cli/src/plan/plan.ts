import { unitsFor } from '@sagwright/workbench/format/units';
import { planJob } from '@sagwright/workbench/path';
import type { PlanDocument } from '@sagwright/workbench/result/document';
import { resultJson } from '@sagwright/workbench/result/result';
import { type ExitCode, exitCodes } from '../exit.ts';
import { harmlessJob } from '../harmlessJob.ts';
import { readOrReport, report } from '../readOrReport.ts';
import type { Output } from '../terminal/output.ts';
import { argumentsOf, isMisused, type Misused, oneFile, unitsChoice } from '../usage.ts';
import { planPage } from './planPage.ts';

/** `sagwright plan FILE`: the plan of a job, for a person or (--json) for a program. */
export async function plan(
  args: readonly string[],
  out: Output,
  errors: Output,
): Promise<ExitCode | Misused> {
  const read = argumentsOf(args, {
    json: { type: 'boolean' },
    full: { type: 'boolean' },
    units: { type: 'string' },
  });
  if (isMisused(read)) return read;
  const name = oneFile(read.positionals);
  if (isMisused(name)) return name;
  const choice = unitsChoice(read.values.units);
  if (isMisused(choice)) return choice;
  const job = await readOrReport(name, errors);
  if (job === null) return exitCodes.problems;
  const planned = planJob(read.values.json ? job : harmlessJob(job));
  if (!planned.ok) {
    report(name, planned.problems, errors);
    return exitCodes.problems;
  }
  const result = resultJson(planned);
  out.write(
    read.values.json
      ? `${JSON.stringify(result, null, 2)}\n`
      : planPage({
          planned,
          result,
          units: unitsFor(choice, planned.job, '.'),
          width: out.width,
          paint: out.paint,
          full: read.values.full === true,
        }),
  );
  return exitCodeOf(result);
}

/** Refused before nothing fits: overload is no matter of springs. */
export function exitCodeOf(result: PlanDocument): ExitCode {
  const stands = result.loadCases.every(({ refused, asFound }) => !refused && asFound.kind !== 'tips');
  if (!stands) return exitCodes.refused;
  const suggestions = [result.rear.suggestion.kind, result.front.suggestion.kind];
  if (suggestions.includes('none') || !suggestions.includes('spring')) return exitCodes.nothingFits;
  return exitCodes.planned;
}
