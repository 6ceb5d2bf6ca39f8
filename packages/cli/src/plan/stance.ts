import { formatFigureNumber, unitOf } from '@sagwright/workbench/format/format';
import type { StanceFigureDocument, StanceLoadDocument } from '@sagwright/workbench/stance/document';
import {
  beamWords,
  brakeNotes,
  changeNumber,
  feltOfLoad,
  keepTwoWords,
  keepWords,
  leanNotes,
  stanceDimension,
  stanceName,
  steadyWords,
} from '@sagwright/workbench/stance/words';
import { words } from '@sagwright/workbench/words/catalogue';
import { stance as say } from '@sagwright/workbench/words/english/stance';
import { type Column, table } from '../terminal/table.ts';
import { wrap } from '../terminal/text.ts';
import { heading, mainLoad, nameOf, type Page } from './page.ts';

/**
 * How the machine stands and steers: with the load that is ridden most, and with every load if all is wanted. Short where the
 * job asks for nothing of the kind.
 */
export function stanceLines(page: Page): readonly string[] {
  const { planned, result, full } = page;
  const { machine, choice, steady } = planned.job;
  const isAsked =
    machine.points !== undefined ||
    machine.beam !== undefined ||
    steady !== undefined ||
    Object.keys(choice ?? {}).some((part) => part !== 'rear' && part !== 'front');
  if (!full && !isAsked) return [];
  const main = mainLoad(page);
  const shown = result.stance.loads.filter(({ loadCase }) => full || loadCase === main);
  return shown.flatMap((load) => [...loadLines(page, load), '']);
}

function loadLines(page: Page, load: StanceLoadDocument): readonly string[] {
  const { width, paint, planned, units } = page;
  const name = load.loadCase === null ? 'nothing aboard' : nameOf(page, load.loadCase);
  const known = load.figures.filter(({ needs, asFound }) => needs === null && asFound !== null);
  const needed = load.figures.filter(({ needs }) => needs !== null);
  const felt = feltOfLoad(planned, known);
  return [
    ...heading(page, 'STANDS AND STEERS', name),
    ...table(columns(page, known), known, width, paint),
    ...needed.flatMap((each) =>
      wrap(`${stanceName(planned, each.figure, each.point)}: ${say.needs[each.needs!]}.`, width, '  '),
    ),
    ...(felt.length === 0 ? [] : wrap(`${say.feltBy} ${words.listed(felt)}.`, width, '  ')),
    ...leanNotes(planned, known).flatMap((line) => wrap(line, width, '  ')),
    ...(load.beam === null
      ? []
      : beamWords(planned, load.beam, units).flatMap((line) => wrap(line, width, '  '))),
    ...keepLines(page, load),
    ...steadyLines(page, load),
  ];
}

function columns(page: Page, rows: readonly StanceFigureDocument[]): readonly Column<StanceFigureDocument>[] {
  const { planned, units } = page;
  const number = (figure: StanceFigureDocument['asFound'], row: StanceFigureDocument): string =>
    figure === null ? '' : formatFigureNumber(figure, stanceDimension[row.figure], units);
  const hasPlan = rows.some((row) => row.planned !== null);
  return [
    {
      head: ['', ''],
      align: 'left',
      cell: ({ figure, point }) => stanceName(planned, figure, point),
    },
    { head: ['', say.asFound], align: 'right', cell: (row) => number(row.asFound, row) },
    ...(hasPlan
      ? [
          {
            head: ['', say.planned],
            align: 'right',
            cell: (row: StanceFigureDocument) => number(row.planned, row),
          } as const,
          {
            head: ['', say.change],
            align: 'right',
            cell: (row: StanceFigureDocument) =>
              row.change === null ? '' : changeNumber(row.change, stanceDimension[row.figure], units),
          } as const,
        ]
      : []),
    { head: ['', ''], align: 'left', cell: ({ figure }) => unitOf(stanceDimension[figure], units) },
  ];
}

function keepLines(page: Page, { keep, keepTwo }: StanceLoadDocument): readonly string[] {
  const { planned, units, width } = page;
  if (keep.length === 0) return [];
  return [
    '',
    ...heading(page, say.keep.title, say.keep.note),
    ...[
      ...keep.map((each) => keepWords(planned, each, units)),
      ...keepTwo.map((each) => keepTwoWords(planned, each, units)),
    ].flatMap(({ wanted, does, verdict }) => {
      return wrap(`${wanted}: ${does}${verdict === '' ? '' : `; ${verdict}`}.`, width, '  ', '   ');
    }),
    ...wrap(say.keep.look, width, '  '),
  ];
}

function steadyLines(page: Page, { steady }: StanceLoadDocument): readonly string[] {
  const { planned, units, width } = page;
  const isAsked = planned.job.steady !== undefined;
  if (!isAsked) return [];
  return [
    '',
    ...heading(page, say.steady.title, say.steady.note),
    ...steady.flatMap((each) => wrap(`${steadyWords(planned, each, units).join('; ')}.`, width, '  ', '   ')),
    ...brakeNotes(planned).flatMap((line) => wrap(line, width, '  ')),
  ];
}
