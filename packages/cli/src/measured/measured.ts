import { unitsFor } from '@sagwright/workbench/format/units';
import { isSound, measuredJob } from '@sagwright/workbench/measure/measured';
import { planJob } from '@sagwright/workbench/path';
import { type ExitCode, exitCodes } from '../exit.ts';
import { harmlessJob } from '../harmlessJob.ts';
import { readOrReport, report } from '../readOrReport.ts';
import type { Output } from '../terminal/output.ts';
import { argumentsOf, isMisused, type Misused, oneFile, unitsChoice } from '../usage.ts';
import { measuredPage } from './measuredPage.ts';

/** `sagwright measured FILE`: what was read, held against the sum; what is off; the machine as readings have it. */
export async function measured(
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
  const file = await readOrReport(name, errors);
  if (file === null) return exitCodes.problems;
  const planned = planJob(read.values.json ? file : harmlessJob(file));
  if (!planned.ok) {
    report(name, planned.problems, errors);
    return exitCodes.problems;
  }
  const { document } = measuredJob(planned);
  if (read.values.json) out.write(`${JSON.stringify(document, null, 2)}\n`);
  else
    out.write(
      measuredPage(planned, document, unitsFor(choice, planned.job, '.'), out, read.values.full === true),
    );
  return isSound(document) ? exitCodes.planned : exitCodes.nothingFits;
}
