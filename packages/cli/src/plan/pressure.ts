import { formatNumber, unitOf } from '@sagwright/workbench/format/format';
import type { PressureDocument } from '@sagwright/workbench/shock/document';
import {
  pressureBandWords,
  pressureNotes,
  pressureReachWords,
  wantedPressureWords,
} from '@sagwright/workbench/shock/words';
import { shock as say } from '@sagwright/workbench/words/english/shock';
import { springName } from '@sagwright/workbench/words/names';
import { type Column, table } from '../terminal/table.ts';
import { wrap } from '../terminal/text.ts';
import { heading, inView, nameOf, type Page, plannedCell } from './page.ts';

interface Row {
  readonly id: string;
  readonly pressure: PressureDocument;
}

/** The pressure of an air-assisted shock for each load, as it is read in the states in which one reads it. */
export function pressureLines(page: Page): readonly string[] {
  const spring = inView(page, 'rear');
  const rows = page.result.loadCases.flatMap(({ id }): Row[] => {
    const pressure = plannedCell(spring, id)?.pressure ?? null;
    return pressure === null ? [] : [{ id, pressure }];
  });
  if (rows.length === 0) return [];
  const isPlanned = rows.some(({ pressure }) => pressure.isPlanned);
  const beside = isPlanned
    ? say.pressure.planned
    : say.pressure.instead(springName(page.planned.job, spring!.id));
  return [
    ...heading(page, say.pressure.title, beside),
    ...table(columns(page, isPlanned, rows), rows, page.width, page.paint),
    ...pressureNotes(page.planned, page.units).flatMap((note) => wrap(note, page.width, '  ', '  ')),
  ];
}

function columns(page: Page, isPlanned: boolean, rows: readonly Row[]): readonly Column<Row>[] {
  const { units } = page;
  const unit = unitOf('pressure', units);
  const { head } = say.pressure;
  const reachWords = ({ pressure }: Row): string => pressureReachWords(pressure, units);
  const number = (value: number | null): string =>
    value === null ? '?' : formatNumber(value, 'pressure', units);
  const right = (top: string, below: string, cell: (pressure: PressureDocument) => string): Column<Row> => ({
    head: [top, below],
    align: 'right',
    cell: ({ pressure }) => cell(pressure),
  });
  return [
    { head: ['', ''], align: 'left', cell: ({ id }) => nameOf(page, id) },
    right(`${head.wanted},`, unit, ({ aim }) => wantedPressureWords(aim, units)),
    right(head.band, head.bandBelow, (pressure) => pressureBandWords(pressure, units)),
    right('set,', head.fullyOut, ({ set }) => number(set.fullyOut)),
    ...(isPlanned
      ? [
          right('or', head.alone, ({ set }) => number(set.alone)),
          right('or', head.laden, ({ set }) => number(set.laden)),
        ]
      : []),
    ...(rows.some((row) => reachWords(row) !== '')
      ? [{ head: ['', say.pressure.reach], align: 'left', cell: reachWords } as const]
      : []),
  ];
}
