import { formatUsed } from '@sagwright/workbench/format/format';
import { type Units, unitsFor } from '@sagwright/workbench/format/units';
import type { JobPlan } from '@sagwright/workbench/path';
import type { AssumptionDocument } from '@sagwright/workbench/result/document';
import { resultJson } from '@sagwright/workbench/result/result';
import { assumptionWords, effectWords } from '@sagwright/workbench/words/assumed';
import { limitsNotChecked } from '@sagwright/workbench/words/limits';
import { noteWords } from '@sagwright/workbench/words/notes';
import { type ExitCode, exitCodes } from '../exit.ts';
import { plannedOrReport } from '../readOrReport.ts';
import type { Output } from '../terminal/output.ts';
import { table } from '../terminal/table.ts';
import { harmless, wrap } from '../terminal/text.ts';
import { argumentsOf, fileAndUnits, isMisused, type Misused } from '../usage.ts';

/** `sagwright check FILE`: what is wrong with a job; or that it can be planned, and what is missing or assumed. */
export async function check(
  args: readonly string[],
  out: Output,
  errors: Output,
): Promise<ExitCode | Misused> {
  const read = argumentsOf(args, { units: { type: 'string' }, full: { type: 'boolean' } });
  if (isMisused(read)) return read;
  const asked = fileAndUnits(read);
  if (isMisused(asked)) return asked;
  const { name, choice } = asked;
  const planned = await plannedOrReport(name, errors);
  if (planned === null) return exitCodes.problems;
  const lines = checkLines(name, planned, unitsFor(choice, planned.job, '.'), read.values.full === true, out);
  out.write(`${lines.join('\n')}\n`);
  return exitCodes.planned;
}

function checkLines(
  name: string,
  planned: JobPlan,
  units: Units,
  full: boolean,
  out: Output,
): readonly string[] {
  const { paint, width } = out;
  const { assumptions, notes } = resultJson(planned);
  const values = assumptions.filter(({ assumed }) => assumed === 'value');
  const widths = assumptions.filter(({ assumed }) => assumed === 'plusMinus');
  const notChecked = limitsNotChecked(planned);
  const section = (title: string, lines: readonly string[]): readonly string[] =>
    lines.length === 0 ? [] : ['', paint(title, 'strong'), ...lines];
  return [
    paint(`${harmless(name)}: a whole job, ready to be planned.`, 'wanted'),
    ...section('LIMITS', notChecked === null ? [] : wrap(notChecked, width, '  ')),
    ...section(
      `ASSUMED, since nobody gave it: ${values.length}`,
      values.flatMap((each) => assumedLines(planned, each, units, out)),
    ),
    ...section(
      `TYPED WITHOUT A ±, a usual one stands in: ${widths.length}`,
      widths.length === 0 ? [] : widthLines(planned, widths, units, full, out),
    ),
    ...section(
      'NOTES',
      [planned.job.note ?? [], notes.map((note) => noteWords(planned, note, units))]
        .flat()
        .flatMap((text) => wrap(text, width, '  ', '  ')),
    ),
  ];
}

/** Where it would stand in the file, then what stands in and what that does to either adjuster. */
function assumedLines(
  planned: JobPlan,
  assumption: AssumptionDocument,
  units: Units,
  { paint, width }: Output,
): readonly string[] {
  const effects = (['rear', 'front'] as const).flatMap(
    (end) => effectWords(planned, assumption, end, units) ?? [],
  );
  const said = [assumptionWords(planned, assumption, units), ...effects].join('; ');
  return [`  ${paint(assumption.path, 'quiet')}`, ...wrap(said, width, '    ', '  ')];
}

const SHORT = 12;

/** Figures whose ± nobody typed, those that move the adjusters most first. */
function widthLines(
  planned: JobPlan,
  widths: readonly AssumptionDocument[],
  units: Units,
  full: boolean,
  { paint, width }: Output,
): readonly string[] {
  const shown = full ? widths : widths.slice(0, SHORT);
  const left = widths.length - shown.length;
  return [
    ...table(
      [
        { head: ['', ''], align: 'left', cell: ({ path }) => path },
        {
          head: ['', ''],
          align: 'right',
          cell: ({ path }) => formatUsed(planned.inputs.figures.get(path)!, units),
        },
      ],
      shown,
      width,
      paint,
    ),
    ...(left === 0 ? [] : wrap(`and ${left} more, with less effect: --full`, width, '  ', '  ')),
  ];
}
