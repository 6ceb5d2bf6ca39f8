import { templateKinds } from '@sagwright/records/schema/template';
import { compare as compareBoth } from '@sagwright/workbench/compare/compare';
import { type Comparison, isDifference } from '@sagwright/workbench/compare/comparison';
import { type Compared, partsToCompare } from '@sagwright/workbench/compare/side';
import { comparedLines, comparedTitle, countWords } from '@sagwright/workbench/words/compare';
import { type ExitCode, exitCodes } from '../exit.ts';
import { harmlessTexts } from '../harmlessJob.ts';
import { type Either, eitherOrReport } from '../template/files.ts';
import type { Output } from '../terminal/output.ts';
import { wrap } from '../terminal/text.ts';
import { argumentsOf, isMisused, type Misused } from '../usage.ts';

/** `sagwright compare A B`: which fields of two machines, shocks or forks differ, and by how much. */
export async function compare(
  args: readonly string[],
  out: Output,
  errors: Output,
): Promise<ExitCode | Misused> {
  const read = argumentsOf(args, {
    json: { type: 'boolean' },
    full: { type: 'boolean' },
    part: { type: 'string' },
  });
  if (isMisused(read)) return read;
  const [first, second, ...more] = read.positionals;
  if (first === undefined || second === undefined || more.length > 0) {
    return { misused: 'Two files are needed, jobs or templates' };
  }
  const asked = read.values.part;
  if (asked !== undefined && !templateKinds.some((kind) => kind === asked)) {
    return { misused: `--part is ${templateKinds.join(', ')}; found ${asked}` };
  }
  const one = await eitherOrReport(first, errors);
  const other = one === null ? null : await eitherOrReport(second, errors);
  if (one === null || other === null) return exitCodes.problems;
  const [a, b] = read.values.json
    ? [compared(one), compared(other)]
    : [compared(harmlessTexts(one)), compared(harmlessTexts(other))];
  const parts = partsToCompare(a, b);
  const part = asked === undefined ? parts[0] : parts.find((each) => each === asked);
  if (part === undefined) {
    return {
      misused: `The two have no ${asked ?? 'part'} in common; in both: ${parts.join(', ') || 'nothing'}`,
    };
  }
  const comparison = compareBoth(a, b, part);
  out.write(
    read.values.json
      ? `${JSON.stringify(comparison, null, 2)}\n`
      : page(a, b, comparison, read.values.full === true, out),
  );
  return comparison.rows.some(({ verdict }) => isDifference(verdict))
    ? exitCodes.nothingFits
    : exitCodes.planned;
}

function compared(side: Either): Compared {
  return side.kind === 'job' ? { from: 'job', job: side.job } : { from: 'template', template: side.template };
}

/** Each field that differs under its name, the first above the second. */
function page(
  a: Compared,
  b: Compared,
  comparison: Comparison,
  full: boolean,
  { width, paint }: Output,
): string {
  const lines = comparedLines(a, b, comparison, '.');
  const shown = lines.filter(({ differs }) => full || differs);
  return `${[
    ...wrap(comparedTitle(comparison), width),
    paint(countWords(comparison), lines.some(({ differs }) => differs) ? 'attention' : 'wanted'),
    ...shown.flatMap(({ name, a: first, b: second, says, differs }) => [
      '',
      ...wrap(name, width, '  ').map((line) => paint(line, 'strong')),
      ...wrap(`1: ${first === '' ? '-' : first}   2: ${second === '' ? '-' : second}`, width, '    '),
      ...wrap(says, width, '    ', '  ').map((line) => (differs ? line : paint(line, 'quiet'))),
    ]),
  ].join('\n')}\n`;
}
