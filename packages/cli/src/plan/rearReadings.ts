import { format, formatFigureNumber, formatNumber, unitOf } from '@sagwright/workbench/format/format';
import type {
  EarlierRowDocument,
  TapedLengthDocument,
  TapedPartDocument,
} from '@sagwright/workbench/result/rearMotionDocument';
import { words } from '@sagwright/workbench/words/catalogue';
import { readingName } from '@sagwright/workbench/words/names';
import { type Column, right, table } from '../terminal/table.ts';
import type { Page } from './page.ts';

/** What the hard points came of, and what was known before them: each reading against the points. */
export function readingLines(page: Page): readonly string[] {
  const { tape, earlierSurvey } = page.result.rearMotion;
  return [
    ...(tape === null ? [] : ['', ...partLines(page, tape.points), '', ...lengthLines(page, tape.lengths)]),
    ...(earlierSurvey === null ? [] : ['', ...surveyLines(page, earlierSurvey.rows)]),
  ];
}

/** Hard points with their ±. */
export function partLines(
  { units, width, paint }: Pick<Page, 'units' | 'width' | 'paint'>,
  points: readonly TapedPartDocument[],
): readonly string[] {
  const length = unitOf('length', units);
  const columns: readonly Column<TapedPartDocument>[] = [
    { head: ['', 'found by tape'], align: 'left', cell: ({ part }) => part },
    right(['forward', length], ({ x }) => formatFigureNumber(x, 'length', units)),
    right(['high', length], ({ height }) => formatFigureNumber(height, 'length', units)),
    right(['looked for', 'away'], ({ away }) => format(away, 'length', units)),
  ];
  return table(columns, points, width, paint);
}

/** Each length against the points. */
export function lengthLines(
  { planned, units, width, paint }: Pick<Page, 'planned' | 'units' | 'width' | 'paint'>,
  lengths: readonly TapedLengthDocument[],
): readonly string[] {
  const length = unitOf('length', units);
  const columns: readonly Column<TapedLengthDocument>[] = [
    { head: ['', 'length'], align: 'left', cell: ({ path }) => readingName(planned.job, path) },
    right(['taped', length], ({ taped }) => formatFigureNumber(taped, 'length', units)),
    right(['off points', length], ({ misfit, verdict }) =>
      verdict === 'not checked' ? '' : formatFigureNumber(misfit, 'length', units),
    ),
    { head: ['', ''], align: 'left', cell: ({ verdict }) => words.rearMotion.verdicts[verdict] },
  ];
  return table(columns, lengths, width, paint);
}

function surveyLines({ units, width, paint }: Page, rows: readonly EarlierRowDocument[]): readonly string[] {
  const length = unitOf('length', units);
  const columns: readonly Column<EarlierRowDocument>[] = [
    right(['wheel', length], ({ wheel }) => formatNumber(wheel, 'length', units)),
    right(['shock before', length], ({ shock }) => formatFigureNumber(shock, 'length', units)),
    right(['by points', length], ({ byPoints }) => formatFigureNumber(byPoints, 'length', units)),
    right(['off', length], ({ difference }) => formatFigureNumber(difference, 'length', units)),
    { head: ['', ''], align: 'left', cell: ({ verdict }) => words.rearMotion.verdicts[verdict] },
  ];
  return table(columns, rows, width, paint);
}
