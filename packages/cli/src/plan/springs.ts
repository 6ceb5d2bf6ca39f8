import { unitOf } from '@sagwright/workbench/format/format';
import type { SpringDocument } from '@sagwright/workbench/result/document';
import { shortPressureWords } from '@sagwright/workbench/shock/words';
import { words } from '@sagwright/workbench/words/catalogue';
import { shock } from '@sagwright/workbench/words/english/shock';
import { shortReachWords } from '@sagwright/workbench/words/reach';
import { reasonLines } from '@sagwright/workbench/words/reasons';
import { adjusterName, settingNumber, settingUnit } from '@sagwright/workbench/words/settings';
import { rateWords } from '@sagwright/workbench/words/suggestion';
import { verdictOf, verdictWords } from '@sagwright/workbench/words/verdict';
import { type Column, table } from '../terminal/table.ts';
import { wrap } from '../terminal/text.ts';
import { type End, heading, inView, letterOf, lookOfReach, type Page, plannedCell } from './page.ts';

/** Every spring of an end with every load at a glance; then what speaks for and against each. */
export function springLines(page: Page, end: End): readonly string[] {
  const { springs, adjuster } = page.result[end];
  if (springs.length === 0) return [];
  const { planned, units } = page;
  const isAir = springs.some(({ cells }) =>
    cells.some((cell) => cell.kind === 'planned' && cell.pressure?.isPlanned),
  );
  const what =
    adjuster === null
      ? isAir
        ? shock.pressure.column(unitOf('pressure', units))
        : ''
      : `; ${adjusterName(planned, end)}, ${settingUnit(planned, end, units)}; edge, past: see below`;
  return [
    ...heading(page, `${end.toUpperCase()} SPRINGS`, `softest first${what}`),
    ...table([nameColumn(page, end), ...loadColumns(page)], springs, page.width, page.paint),
    ...springs.flatMap((spring) => saidLines(page, end, spring)),
    ...(page.full || springs.length < 2
      ? []
      : wrap('What else speaks for and against each: --full', page.width, '  ', '  ')),
  ];
}

function nameColumn(page: Page, end: End): Column<SpringDocument> {
  const view = inView(page, end);
  return {
    head: ['', ''],
    align: 'left',
    cell: ({ id, name }) => `${id === view?.id ? '>' : ' '} ${name}`,
    look: ({ id }) => (id === view?.id ? 'strong' : null),
  };
}

function loadColumns(page: Page): readonly Column<SpringDocument>[] {
  const { units, result } = page;
  return result.loadCases.map(({ id }) => ({
    head: ['', letterOf(page, id)],
    align: 'right',
    cell: (spring) => {
      const cell = plannedCell(spring, id);
      if (cell === null) return '-';
      if (cell.pressure?.isPlanned) return shortPressureWords(cell.pressure, units);
      const { setting } = cell.set;
      return cell.reach.kind === 'reached' && setting !== null
        ? settingNumber(setting.at, units)
        : shortReachWords(cell.reach, units);
    },
    look: (spring) => lookOfReach(plannedCell(spring, id)),
  }));
}

function saidLines(page: Page, end: End, { id }: SpringDocument): readonly string[] {
  const { planned, units, width, paint, full } = page;
  const spring = planned.plan[end].springs.find((each) => each.spring === id)!;
  const said = reasonLines(planned, end, spring, units);
  const verdict = verdictWords(planned, spring);
  const look = verdictOf(planned, spring).startsWith('fits') ? 'wanted' : 'attention';
  const part = (label: string, sentences: readonly string[]): readonly string[] =>
    sentences.flatMap((sentence) => wrap(`${label} ${sentence}`, width, '    ', '  '));
  const { name, where, hand } = planned.job.springs[id]!;
  const about = [
    rateWords(planned, spring, units),
    ...(where === undefined ? [] : [where]),
    ...(hand === false ? [words.suggestion.notAtHandShort()] : []),
  ].join(', ');
  const plain = wrap(`${name}, ${about}: ${verdict}`, width, '  ', '  ');
  const all = full || id === inView(page, end)?.id;
  const isWeighed = all || spring.fits;
  return [
    ...(plain.length > 1 ? plain : [`  ${paint(name, 'strong')}, ${about}: ${paint(verdict, look)}`]),
    ...(all ? part('for:', said.for) : []),
    ...part('against:', isWeighed ? said.against : said.rulesOut),
    ...part('not checked:', said.notChecked),
  ];
}
