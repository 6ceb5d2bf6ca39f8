import { formatFigureNumber, formatNumber, unitOf } from '@sagwright/workbench/format/format';
import type { RearRestDocument, TravelDocument } from '@sagwright/workbench/result/rearMotionDocument';
import { words } from '@sagwright/workbench/words/catalogue';
import { rearMotionSentences } from '@sagwright/workbench/words/rearMotion';
import { type Column, fitsIn, right, table } from '../terminal/table.ts';
import { wrap } from '../terminal/text.ts';
import { heading, nameOf, type Page } from './page.ts';
import { readingLines } from './rearReadings.ts';

/** One height of the wheel: an end of the travel, or where a load rests. */
interface Row {
  readonly name: string;
  readonly at: TravelDocument | RearRestDocument;
}

/** Ratios, swingarm and squat at both ends of the travel and where each load rests; with every step between them if all is wanted. */
export function rearMotionLines(page: Page): readonly string[] {
  const { result, planned, units, width, paint, full } = page;
  const { knownBy, along, rests, earlier } = result.rearMotion;
  if (!full && knownBy !== 'direct' && knownBy !== 'linkage' && earlier?.verdict !== 'differs') return [];
  const say = words.rearMotion;
  const rows: readonly Row[] = [
    { name: say.fullyOut, at: along[0]! },
    ...rests.map((at): Row => ({ name: at.loadCase === null ? say.alone : nameOf(page, at.loadCase), at })),
    { name: say.fullBump, at: along.at(-1)! },
  ];
  return [
    ...heading(page, 'REAR TRAVEL', say.source[knownBy]),
    ...columnsThatFit(page, rows).flatMap((columns) => table(columns, rows, width, paint)),
    ...(full ? ['', ...stepLines(page, along)] : []),
    ...(full ? readingLines(page) : []),
    ...rearMotionSentences(result.rearMotion, planned, units).flatMap((sentence) =>
      wrap(sentence, width, '  ', '  '),
    ),
  ];
}

/** All in one table, or ratios and angles one below the other where the terminal leaves no room. */
function columnsThatFit(page: Page, rows: readonly Row[]): readonly (readonly Column<Row>[])[] {
  const name: Column<Row> = { head: ['', ''], align: 'left', cell: (row) => row.name };
  const ratios = ratioColumns(page);
  const angles = angleColumns(page, rows);
  const together = [name, ...ratios, ...angles];
  return fitsIn(together, rows, page.width) || angles.length === 0
    ? [together]
    : [
        [name, ...ratios],
        [name, ...angles],
      ];
}

function ratioColumns({ units }: Page): readonly Column<Row>[] {
  return [
    right(['wheel', unitOf('length', units)], ({ at }) => formatNumber(at.travel, 'length', units)),
    right(['ratio', unitOf('motion', units)], ({ at }) =>
      formatFigureNumber(at.motionRatio, 'motion', units),
    ),
    right(['leverage', unitOf('leverage', units)], ({ at }) =>
      formatFigureNumber(at.leverage, 'leverage', units),
    ),
  ];
}

/** Swingarm and squat, as far as they are known anywhere. */
function angleColumns({ units }: Page, rows: readonly Row[]): readonly Column<Row>[] {
  const angle = unitOf('angle', units);
  const all = [
    right<Row>(['arm', angle], ({ at }) =>
      at.armAngle === null ? '' : formatFigureNumber(at.armAngle, 'angle', units),
    ),
    right<Row>(['squat line', angle], ({ at }) =>
      'squatAngle' in at && at.squatAngle !== null ? formatFigureNumber(at.squatAngle, 'angle', units) : '',
    ),
    right<Row>(['squat ratio', unitOf('share', units)], ({ at }) =>
      'squatRatio' in at && at.squatRatio !== null ? formatFigureNumber(at.squatRatio, 'share', units) : '',
    ),
  ];
  return all.filter(({ cell }) => rows.some((row) => cell(row) !== ''));
}

function stepLines({ units, width, paint }: Page, along: readonly TravelDocument[]): readonly string[] {
  const length = unitOf('length', units);
  const columns: readonly Column<TravelDocument>[] = [
    right(['wheel', length], ({ travel }) => formatNumber(travel, 'length', units)),
    right(['shock', length], ({ stroke }) => formatNumber(stroke, 'length', units)),
    right(['ratio', unitOf('motion', units)], ({ motionRatio }) =>
      formatFigureNumber(motionRatio, 'motion', units),
    ),
    right(['leverage', unitOf('leverage', units)], ({ leverage }) =>
      formatFigureNumber(leverage, 'leverage', units),
    ),
    right(['arm', unitOf('angle', units)], ({ armAngle }) =>
      armAngle === null ? '' : formatFigureNumber(armAngle, 'angle', units),
    ),
    right(['axle fwd', length], ({ axleForward }) =>
      axleForward === null ? '' : formatNumber(axleForward, 'length', units),
    ),
    right(['sprocket', length], ({ centreDistance }) =>
      centreDistance === null ? '' : formatNumber(centreDistance, 'length', units),
    ),
  ];
  const known = columns.filter(({ cell }) => along.some((row) => cell(row) !== ''));
  return table(known, along, width, paint);
}
