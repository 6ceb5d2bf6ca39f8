import { unitsFor } from '@sagwright/workbench/format/units';
import type { PlanDocument } from '@sagwright/workbench/result/document';
import { resultJson } from '@sagwright/workbench/result/result';
import { type ExitCode, exitCodes } from '../exit.ts';
import { plannedOrReport } from '../readOrReport.ts';
import type { Output } from '../terminal/output.ts';
import { argumentsOf, fileAndUnits, isMisused, type Misused } from '../usage.ts';
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
  const asked = fileAndUnits(read);
  if (isMisused(asked)) return asked;
  const { name, choice } = asked;
  const planned = await plannedOrReport(name, errors, read.values.json);
  if (planned === null) return exitCodes.problems;
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
