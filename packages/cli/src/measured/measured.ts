import { unitsFor } from '@sagwright/workbench/format/units';
import { isSound, measuredJob } from '@sagwright/workbench/measure/measured';
import { type ExitCode, exitCodes } from '../exit.ts';
import { plannedOrReport } from '../readOrReport.ts';
import type { Output } from '../terminal/output.ts';
import { argumentsOf, fileAndUnits, isMisused, type Misused } from '../usage.ts';
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
  const asked = fileAndUnits(read);
  if (isMisused(asked)) return asked;
  const { name, choice } = asked;
  const planned = await plannedOrReport(name, errors, read.values.json);
  if (planned === null) return exitCodes.problems;
  const { document } = measuredJob(planned);
  if (read.values.json) out.write(`${JSON.stringify(document, null, 2)}\n`);
  else
    out.write(
      measuredPage(planned, document, unitsFor(choice, planned.job, '.'), out, read.values.full === true),
    );
  return isSound(document) ? exitCodes.planned : exitCodes.nothingFits;
}
