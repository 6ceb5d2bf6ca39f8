import type { ForkDocument, ForkStepDocument } from '@sagwright/workbench/fork/document';
import { format, formatFigureNumber, formatNumber, unitOf } from '@sagwright/workbench/format/format';
import { rubberSentences } from '@sagwright/workbench/rubber/words';
import { words } from '@sagwright/workbench/words/catalogue';
import { forkSentences } from '@sagwright/workbench/words/fork';
import { type Column, right, table } from '../terminal/table.ts';
import { wrap } from '../terminal/text.ts';
import { heading, type Page } from './page.ts';

/** What works in the fork along its travel, what more oil would change, and how its legs rest on their top-out springs. */
export function forkLines(page: Page): readonly string[] {
  const { result, width, paint } = page;
  const { fork } = result;
  if (fork === null) return [];
  return [
    ...heading(page, 'FORK', words.fork.title),
    ...table(columnsOf(page, fork), fork.along, width, paint),
    ...[...forkSentences(page.planned, fork, page.units), ...rubberLines(page)].flatMap((sentence) =>
      wrap(sentence, width, '  ', '  '),
    ),
  ];
}

function rubberLines({ planned, result, units }: Page): readonly string[] {
  const { rubber } = result.front;
  return rubber === null ? [] : rubberSentences(planned, rubber, units);
}

function columnsOf({ units }: Page, fork: ForkDocument): readonly Column<ForkStepDocument>[] {
  const [length, force] = [unitOf('length', units), unitOf('force', units)];
  const plain = (value: number): string => formatNumber(value, 'force', units);
  const step = format(fork.oilStep, 'length', units);
  const columns: readonly Column<ForkStepDocument>[] = [
    right(['wheel', length], ({ travel }) => formatNumber(travel, 'length', units)),
    right(['stroke', length], ({ stroke }) => formatNumber(stroke, 'length', units)),
    right(['springs', force], ({ springs }) => formatFigureNumber(springs, 'force', units)),
    right(['air', force], ({ air }) => formatFigureNumber(air, 'force', units)),
    right(['air, quick', force], ({ airQuick }) =>
      airQuick === null ? '' : formatFigureNumber(airQuick, 'force', units),
    ),
    right([`oil +${step}`, force], ({ airMoreOil }) => (airMoreOil === null ? '' : plain(airMoreOil))),
    right(['rubber', force], ({ rubber }) => (rubber === 0 ? '' : plain(rubber))),
    right(['top-out', force], ({ topOut }) => (topOut === 0 ? '' : plain(-topOut))),
    right(['in all', force], ({ whole }) => formatFigureNumber(whole, 'force', units)),
  ];
  return columns.filter(({ cell }) => fork.along.some((row) => cell(row) !== ''));
}
