import { type ForkFigure, forkFigureNames, forkFigures, whyFork } from '@sagwright/workbench/fork/whyFork';
import { unitsFor } from '@sagwright/workbench/format/units';
import { limitFigureNames, limitFigures, openLimit } from '@sagwright/workbench/limits/whyLimit';
import { openStance, stanceNames } from '@sagwright/workbench/stance/whyStance';
import { figureNames } from '@sagwright/workbench/why/figures';
import { why as openFigure } from '@sagwright/workbench/why/why';
import { words } from '@sagwright/workbench/words/catalogue';
import { forkWhy } from '@sagwright/workbench/words/english/fork';
import { stanceWhy } from '@sagwright/workbench/words/english/stance';
import { notToBeHadWords, type WhyWords, whyWords } from '@sagwright/workbench/words/why';
import { type ExitCode, exitCodes } from '../exit.ts';
import { plannedOrReport } from '../readOrReport.ts';
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
    point: { type: 'string' },
    at: { type: 'string' },
    of: { type: 'string' },
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
  const stance = stanceNames.find((name) => name === figureText);
  const fork = forkFigureNames.find((name) => name === figureText);
  const limit = limitFigureNames.find((name) => name === figureText);
  if (figure === undefined && stance === undefined && fork === undefined && limit === undefined) {
    return { misused: noFigure(figureText) };
  }
  const name = oneFile(files);
  if (isMisused(name)) return name;
  const choice = unitsChoice(read.values.units);
  if (isMisused(choice)) return choice;
  const end = endOf(read.values.end);
  if (isMisused(end)) return end;
  const share = shareOf(read.values.at);
  if (isMisused(share)) return share;
  const planned = await plannedOrReport(name, errors);
  if (planned === null) return exitCodes.problems;
  const { load = null, spring = null, point = null, of = null } = read.values;
  const units = unitsFor(choice, planned.job, '.');
  const full = read.values.full === true;
  if (figure === undefined) {
    const told =
      limit !== undefined
        ? openLimit(planned, { figure: limit, of, load }, units)
        : fork === undefined
          ? openStance(planned, { figure: stance!, point, load }, units)
          : whyFork(planned, { force: forkFigures[fork], share }, units);
    if (typeof told === 'string') {
      errors.write(`${wrap(told, errors.width).join('\n')}\n`);
      return exitCodes.nothingFits;
    }
    out.write(`${whyLines(limit ?? fork ?? stance!, told, full, out).join('\n')}\n`);
    return exitCodes.planned;
  }
  const opened = openFigure(planned, { figure, end, spring, loadCase: load });
  if (opened.kind !== 'opened') {
    errors.write(`${wrap(notToBeHadWords(figure, opened), errors.width).join('\n')}\n`);
    return exitCodes.nothingFits;
  }
  out.write(`${whyLines(figure, whyWords(planned, opened, units), full, out).join('\n')}\n`);
  return exitCodes.planned;
}

function noFigure(found: string | undefined): string {
  const what = found === undefined ? 'A figure is needed' : `No figure "${found}"`;
  return `${what}; there are ${words.list([...figureNames, ...stanceNames, ...forkFigureNames, ...limitFigureNames])}`;
}

function endOf(text: string | undefined): 'rear' | 'front' | Misused {
  if (text === undefined || text === 'rear') return 'rear';
  return text === 'front' ? 'front' : { misused: `--end is rear or front; found ${text}` };
}

/** How far into its stroke a force of the fork is asked for, from 0 to 1; full travel where nobody said. */
function shareOf(text: string | undefined): number | Misused {
  if (text === undefined) return 1;
  const percent = /^\d+(?:\.\d+)?%?$/.test(text) ? Number(text.replace('%', '')) : Number.NaN;
  return percent <= 100
    ? percent / 100
    : { misused: `--at is a share of the stroke from 0 to 100 %; found ${text}` };
}

function listLines({ width, paint }: Output): readonly string[] {
  const titles: readonly (readonly [string, string])[] = [
    ...figureNames.map((name) => [name, words.why[name].title] as const),
    ...stanceNames.map((name) => [name, stanceWhy[name].title] as const),
    ...forkFigureNames.map((name: ForkFigure) => [name, forkWhy[forkFigures[name]].title] as const),
    ...limitFigureNames.map((name) => [name, limitFigures[name]] as const),
  ];
  const columns = Math.max(...titles.map(([name]) => columnsOf(name))) + 2;
  return titles.flatMap(([name, title]) =>
    wrap(`${padTo(name, columns, 'left')}${title}`, width, '', ' '.repeat(columns)).map((line, i) =>
      i === 0 ? line.replace(name, paint(name, 'strong')) : line,
    ),
  );
}

function whyLines(
  figure: string,
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
