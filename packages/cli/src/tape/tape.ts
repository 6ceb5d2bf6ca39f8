import type { JobDocument } from '@sagwright/records/schema';
import type { Points } from '@sagwright/records/schema/machine';
import type { PointLength } from '@sagwright/records/schema/pointTape';
import { formatQuantity } from '@sagwright/workbench/format/format';
import { type Units, unitsFor } from '@sagwright/workbench/format/units';
import { pointTapeOf } from '@sagwright/workbench/result/pointTape';
import { tapeList } from '@sagwright/workbench/result/tapeList';
import { words } from '@sagwright/workbench/words/catalogue';
import { lengthName } from '@sagwright/workbench/words/names';
import { type ExitCode, exitCodes } from '../exit.ts';
import { harmlessJob } from '../harmlessJob.ts';
import { lengthLines, partLines } from '../plan/rearReadings.ts';
import { planOrReport, readOrReport } from '../readOrReport.ts';
import type { Output } from '../terminal/output.ts';
import { table } from '../terminal/table.ts';
import { wrap } from '../terminal/text.ts';
import { argumentsOf, fileAndUnits, isMisused, type Misused } from '../usage.ts';

type Kind = Points['kind'];

/** `sagwright tape direct`, `linkage` or FILE: which lengths give the hard points, how to take them, and what those of a job give. */
export async function tape(
  args: readonly string[],
  out: Output,
  errors: Output,
): Promise<ExitCode | Misused> {
  const read = argumentsOf(args, { units: { type: 'string' } });
  if (isMisused(read)) return read;
  const told = fileAndUnits(read);
  if (isMisused(told)) return told;
  const { name: asked, choice } = told;
  if (asked === 'direct' || asked === 'linkage') {
    out.write(`${guideLines(asked, null, out).join('\n')}\n`);
    return exitCodes.planned;
  }
  const job = await readOrReport(asked, errors);
  if (job === null) return exitCodes.problems;
  const { travel } = job.machine.rear;
  if (travel.kind !== 'direct' && travel.kind !== 'linkage') {
    const said = words.tape.guide.otherwise(words.rearMotion.source[travel.kind]);
    errors.write(`${wrap(said, errors.width).join('\n')}\n`);
    return exitCodes.nothingFits;
  }
  const units = unitsFor(choice, job, '.');
  out.write(`${guideLines(travel.kind, { travel, units }, out).join('\n')}\n`);
  return foundLines(asked, job, units, out, errors);
}

/** What the job's lengths give, below the guide; or why they give nothing. */
function foundLines(name: string, job: JobDocument, units: Units, out: Output, errors: Output): ExitCode {
  const planned = planOrReport(name, harmlessJob(job), errors);
  if (planned === null) return exitCodes.problems;
  const found = pointTapeOf(planned);
  if (found === null) return exitCodes.planned;
  const page = { planned, units, width: out.width, paint: out.paint };
  const lines = ['', ...partLines(page, found.points), '', ...lengthLines(page, found.lengths)];
  out.write(`${lines.join('\n')}\n`);
  return exitCodes.planned;
}

interface OfJob {
  readonly travel: Points;
  readonly units: Units;
}

interface Row {
  readonly number: string;
  readonly name: string;
  readonly taken: string;
}

function guideLines(kind: Kind, job: OfJob | null, { width, paint }: Output): readonly string[] {
  const { title, steps, why } = words.tape.guide;
  const name = job === null ? '' : words.tape.guide.taken;
  return [
    ...wrap(title[kind], width).map((line) => paint(line, 'strong')),
    ...steps.flatMap((step) => wrap(`- ${step}`, width, '  ', '  ')),
    '',
    ...table<Row>(
      [
        { head: ['', ''], align: 'right', cell: ({ number }) => number },
        { head: ['', 'length'], align: 'left', cell: (row) => row.name },
        { head: ['', name], align: 'right', cell: ({ taken }) => taken },
      ],
      rowsOf(kind, job),
      width,
      paint,
    ),
    ...wrap(why, width, '  '),
  ];
}

/** The lengths of the list, then those that a job has beside them. */
function rowsOf(kind: Kind, job: OfJob | null): readonly Row[] {
  const { listed, beside } = tapeList(job?.travel ?? { kind });
  const tape: Readonly<Record<string, PointLength>> = job?.travel.tape ?? {};
  const figure = (id: string): string => formatQuantity(tape[id]!.length, job!.units);
  const none = job === null ? '' : words.tape.guide.notTaken;
  return [
    ...listed.map(
      ({ wanted, taken }, i): Row => ({
        number: String(i + 1),
        name: lengthName(wanted),
        taken: taken.map(figure).join(', ') || none,
      }),
    ),
    ...beside.map((id): Row => ({ number: '+', name: lengthName(tape[id]!), taken: figure(id) })),
  ];
}
