import {
  formatChange,
  formatFigureNumber,
  formatNumber,
  type ShownDimension,
  unitOf,
} from '@sagwright/workbench/format/format';
import { formatSignedTurns } from '@sagwright/workbench/format/turns';
import type { PlannedDocument, SetDocument, SpringDocument } from '@sagwright/workbench/result/document';
import { fitSentences } from '@sagwright/workbench/springs/fitWords';
import { rateSentences } from '@sagwright/workbench/springs/words';
import { words } from '@sagwright/workbench/words/catalogue';
import { limitWords } from '@sagwright/workbench/words/limits';
import { shortReachWords } from '@sagwright/workbench/words/reach';
import { adjusterName, settingNumber, settingUnit } from '@sagwright/workbench/words/settings';
import { rateWords } from '@sagwright/workbench/words/suggestion';
import { type Column, right, table } from '../terminal/table.ts';
import { wrap } from '../terminal/text.ts';
import { type End, ends, heading, inView, letterOf, nameOf, type Page, plannedCell } from './page.ts';
import { bandWords, noseWords, sagWords } from './sags.ts';

/** Each load against each of its limits. */
export function limitLines(page: Page): readonly string[] {
  const { planned, units, width } = page;
  return [
    ...heading(page, 'LIMITS', 'every one, with the load that is held against it'),
    ...planned.plan.loadCases.flatMap(({ loadCase, limits }) => [
      ...wrap(nameOf(page, loadCase), width, '  ', '   '),
      ...limits.flatMap((limit) => wrap(limitWords(planned, limit, units), width, '     ', '  ')),
    ]),
  ];
}

/** Every spring with every load: preload, sag, rates and room, attitude. */
export function cellLines(page: Page): readonly (readonly string[])[] {
  return ends.flatMap((end) => page.result[end].springs.map((spring) => springCells(page, end, spring)));
}

interface Row {
  readonly id: string;
  readonly cell: PlannedDocument;
}

function springCells(page: Page, end: End, spring: SpringDocument): readonly string[] {
  const { planned, width, paint, result } = page;
  const plan = planned.plan[end].springs.find((each) => each.spring === spring.id)!;
  const rows = result.loadCases.flatMap(({ id }): Row[] => {
    const cell = plannedCell(spring, id);
    return cell === null ? [] : [{ id, cell }];
  });
  const left = result.loadCases.flatMap(({ id }) => {
    const cell = spring.cells.find((each) => each.loadCase === id);
    return cell === undefined || cell.kind === 'planned'
      ? []
      : wrap(`${nameOf(page, id)}: ${words.emptyCells[cell.kind]}`, width, '  ', '   ');
  });
  const title = heading(page, `${end.toUpperCase()}  ${spring.name}`, rateWords(planned, plan, page.units));
  const first: Column<Row> = { head: ['', ''], align: 'left', cell: ({ id }) => nameOf(page, id) };
  const tables = [preloadColumns(page, end), sagColumns(page, end), rateColumns(page), attitudeColumns(page)];
  const said = [
    ...rateSentences(planned, plan, page.units),
    ...fitSentences(planned, end, spring.id, page.units),
  ].flatMap((sentence) => wrap(sentence, width, '  ', '  '));
  if (rows.length === 0) return [...title, ...said, ...left];
  return [
    ...title,
    ...said,
    ...tables.flatMap((columns) => [...table([first, ...columns], rows, width, paint), '']),
    ...turnLines(page, end, spring, rows),
    ...left,
  ];
}

function preloadColumns(page: Page, end: End): readonly Column<Row>[] {
  const { planned, units } = page;
  const unit = unitOf('length', units);
  const length = (value: number | null | undefined): string =>
    value == null ? '?' : formatNumber(value, 'length', units);
  return [
    right(['preload', unit], ({ cell }) =>
      cell.preload === null ? '-' : formatFigureNumber(cell.preload, 'length', units),
    ),
    right(['in the', 'wanted band'], ({ cell: { preloadInterval: band } }) =>
      band === null ? '' : `${length(band.loosest)} to ${length(band.tightest)}`,
    ),
    right(['both ends', 'at target'], ({ cell }) => length(cell.preloadBothAtTarget)),
    right([adjusterName(planned, end), settingUnit(planned, end, units)], ({ cell }) =>
      cell.set.setting === null ? '' : settingNumber(cell.set.setting.at, units),
    ),
    right(['spring', 'length'], ({ cell }) => length(cell.set.springLength)),
    right(['left to', 'tighten'], ({ cell }) =>
      cell.reach.kind === 'reached' && cell.set.setting !== null
        ? length(cell.set.setting.left)
        : shortReachWords(cell.reach, units),
    ),
  ];
}

function sagColumns(page: Page, end: End): readonly Column<Row>[] {
  const { units } = page;
  const away = end === 'rear' ? 'front' : 'rear';
  return [
    right(['sag', unitOf('length', units)], ({ cell: { set } }) =>
      set.sag === null ? 'no rest' : sagWords(page, set.sag),
    ),
    right(['', '%'], ({ cell: { set } }) =>
      set.sag === null ? '' : formatNumber(set.sag.share, 'share', units),
    ),
    right(['', 'friction'], ({ cell: { set } }) => bandWords(page, set.sag)),
    right(['', 'free'], ({ cell: { set } }) => (set.free === null ? '' : sagWords(page, set.free))),
    right(['', 'friction'], ({ cell: { set } }) => bandWords(page, set.free)),
    right([away, 'as found'], ({ cell: { set } }) => (set.other === null ? '' : sagWords(page, set.other))),
    right(['', 'moves'], ({ cell: { set } }) =>
      set.otherChange === null ? '' : formatChange(set.otherChange, 'length', units),
    ),
  ];
}

function rateColumns(page: Page): readonly Column<Row>[] {
  const { units } = page;
  const of = (
    head: readonly [string, string],
    pick: (set: SetDocument) => number | null,
    dimension: ShownDimension,
  ): Column<Row> =>
    right(head, ({ cell: { set } }) => {
      const value = pick(set);
      return value === null ? '?' : formatNumber(value, dimension, units);
    });
  const rate = unitOf('rate', units);
  return [
    of(['wheel', rate], (set) => set.wheelRate, 'rate'),
    of(['with', 'tyre'], (set) => set.rideRate, 'rate'),
    of(['ride', 'Hz'], (set) => set.frequency, 'frequency'),
    of(['without', 'tyre'], (set) => set.frequencyWithoutTyre, 'frequency'),
    of(['left to', 'rubber'], (set) => set.travelToRubber, 'length'),
    of(['', 'metal'], (set) => set.travelToMetal, 'length'),
    of(['', 'coils'], (set) => set.strokeToCoilBind, 'length'),
    of(['preload', 'fully out'], (set) => set.preloadAtExtension, 'length'),
  ];
}

function attitudeColumns(page: Page): readonly Column<Row>[] {
  const { units } = page;
  const now = (
    head: readonly [string, string],
    part: keyof NonNullable<SetDocument['attitude']>,
    dimension: ShownDimension,
  ): Column<Row> =>
    right(head, ({ cell: { set } }) => {
      const value = set.attitude?.[part] ?? null;
      return value === null ? '?' : formatNumber(value, dimension, units);
    });
  const change = (part: keyof NonNullable<SetDocument['attitudeChange']>): Column<Row> =>
    right(['', 'change'], ({ cell: { set } }) => {
      const value = set.attitudeChange?.[part] ?? null;
      return value === null ? '?' : formatChange(value, 'length', units);
    });
  return [
    right(['nose', unitOf('angle', units)], ({ cell: { set } }) =>
      set.attitudeChange?.pitch == null ? '?' : noseWords(page, set.attitudeChange.pitch),
    ),
    now(['rake', unitOf('angle', units)], 'rake', 'angle'),
    now(['trail', unitOf('length', units)], 'groundTrail', 'length'),
    change('groundTrail'),
    now(['wheelbase', unitOf('length', units)], 'wheelbase', 'length'),
    now(['seat', unitOf('length', units)], 'seatHeight', 'length'),
    change('seatHeight'),
  ];
}

/** Turns from each load's setting (the row) to each other's (the column), for the spring in view. */
function turnLines(page: Page, end: End, spring: SpringDocument, rows: readonly Row[]): readonly string[] {
  const isTurned = rows.some(({ cell }) => cell.set.setting?.fromLoads.some(({ turns }) => turns !== null));
  if (spring.id !== inView(page, end)?.id || !isTurned) return [];
  const first: Column<Row> = {
    head: ['turns:', '+ tighter'],
    align: 'left',
    cell: ({ id }) => `from ${letterOf(page, id)}`,
  };
  const to = rows.map((target) =>
    right<Row>(['to', letterOf(page, target.id)], ({ id }) => {
      const turns = target.cell.set.setting?.fromLoads.find(({ loadCase }) => loadCase === id)?.turns;
      return turns == null ? '' : formatSignedTurns(turns);
    }),
  );
  return [...table([first, ...to], rows, page.width, page.paint), ''];
}
