import { unitsFor } from '@sagwright/workbench/format/units';
import { planJob } from '@sagwright/workbench/path';
import { type FigureName, figureNames } from '@sagwright/workbench/why/figures';
import { why as openFigure } from '@sagwright/workbench/why/why';
import { words } from '@sagwright/workbench/words/catalogue';
import { notToBeHadWords, type WhyWords, whyWords } from '@sagwright/workbench/words/why';
import { type ExitCode, exitCodes } from '../exit.ts';
import { harmlessJob } from '../harmlessJob.ts';
import { readOrReport, report } from '../readOrReport.ts';
import type { Output } from '../terminal/output.ts';
import { table } from '../terminal/table.ts';
import { columnsOf, padTo, wrap } from '../terminal/text.ts';
import { argumentsOf, isMisused, type Misused, oneFile, unitsChoice } from '../usage.ts';

/** `sagwright why FIGURE FILE`: a number of the plan with its equation, its source and what its ± is made of. */
export async function why(args: readonly string[], out: Output, errors: Output): Promise<ExitCode | Misused> {
  const read = argumentsOf(args, {
    list: { type: 'boolean' },
    load: { type: 'string' },
    spring: { type: 'string' },
    end: { type: 'string' },
    full: { type: 'boolean' },
    units: { type: 'string' },
  });
  if (isMisused(read)) return read;
  if (read.values.list) {
    out.write(`${listLines(out).join('\n')}\n`);
    return exitCodes.planned;
  }
  const [figureText, ...files] = read.positionals;
  const figure = figureNames.find((name) => name === figureText);
  if (figure === undefined) return { misused: noFigure(figureText) };
  const name = oneFile(files);
  if (isMisused(name)) return name;
  const choice = unitsChoice(read.values.units);
  if (isMisused(choice)) return choice;
  const end = endOf(read.values.end);
  if (isMisused(end)) return end;
  const job = await readOrReport(name, errors);
  if (job === null) return exitCodes.problems;
  const planned = planJob(harmlessJob(job));
  if (!planned.ok) {
    report(name, planned.problems, errors);
    return exitCodes.problems;
  }
  const { load = null, spring = null } = read.values;
  const opened = openFigure(planned, { figure, end, spring, loadCase: load });
  if (opened.kind !== 'opened') {
    errors.write(`${wrap(notToBeHadWords(figure, opened), errors.width).join('\n')}\n`);
    return exitCodes.nothingFits;
  }
  const units = unitsFor(choice, planned.job, '.');
  out.write(
    `${whyLines(figure, whyWords(planned, opened, units), read.values.full === true, out).join('\n')}\n`,
  );
  return exitCodes.planned;
}

function noFigure(found: string | undefined): string {
  const what = found === undefined ? 'A figure is needed' : `No figure "${found}"`;
  return `${what}; there are ${words.list(figureNames)}`;
}

function endOf(text: string | undefined): 'rear' | 'front' | Misused {
  if (text === undefined || text === 'rear') return 'rear';
  return text === 'front' ? 'front' : { misused: `--end is rear or front; found ${text}` };
}

function listLines({ width, paint }: Output): readonly string[] {
  const columns = Math.max(...figureNames.map(columnsOf)) + 2;
  return figureNames.flatMap((name) =>
    wrap(`${padTo(name, columns, 'left')}${words.why[name].title}`, width, '', ' '.repeat(columns)).map(
      (line, i) => (i === 0 ? line.replace(name, paint(name, 'strong')) : line),
    ),
  );
}

function whyLines(
  figure: FigureName,
  opened: WhyWords,
  full: boolean,
  { width, paint }: Output,
): readonly string[] {
  const { title, place, value, equation, where, source, inputs } = opened;
  const symbols = Math.max(0, ...where.map(([symbol]) => columnsOf(symbol)));
  return [
    `${paint(figure, 'strong')}  ${title}`,
    ...wrap(place, width, '  '),
    '',
    `  ${paint(value, 'wanted')}`,
    '',
    `  ${equation}`,
    ...where.flatMap(([symbol, meaning]) =>
      wrap(`${padTo(symbol, symbols, 'left')}  ${meaning}`, width, '    ', ' '.repeat(symbols + 2)),
    ),
    '',
    ...wrap(source, width, '  '),
    '',
    ...(inputs.length === 0
      ? ['  Nothing that is uncertain moves it there.']
      : inputLines(inputs, full, width, paint)),
  ];
}

/** Every input that matters; what is left of them in one line, unless all are wanted. */
function inputLines(
  inputs: WhyWords['inputs'],
  full: boolean,
  width: number,
  paint: Output['paint'],
): readonly string[] {
  const shown = full ? inputs : inputs.filter(({ share }) => share >= 0.005);
  const left = inputs.length - shown.length;
  const rest = inputs.slice(shown.length).reduce((sum, { share }) => sum + share, 0);
  return [
    ...table(
      [
        { head: ['', 'its ± is made of'], align: 'left', cell: ({ name }) => name },
        { head: ['', 'with its own ±'], align: 'right', cell: ({ figure }) => figure },
        { head: ['', 'from'], align: 'left', cell: ({ origin }) => origin },
        { head: ['', 'adds ±'], align: 'right', cell: ({ adds }) => adds },
        { head: ['', 'share'], align: 'right', cell: ({ share }) => shareWords(share) },
      ],
      shown,
      width,
      paint,
    ),
    ...(left === 0 ? [] : [`  and ${left} more, together ${shareWords(rest)}: --full`]),
  ];
}

function shareWords(share: number): string {
  return share < 0.005 ? '<1 %' : `${Math.round(share * 100)} %`;
}
