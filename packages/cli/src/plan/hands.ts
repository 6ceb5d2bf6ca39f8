import { formatFigure, formatNumber } from '@sagwright/workbench/format/format';
import { formatTurns } from '@sagwright/workbench/format/turns';
import type { PlannedDocument, SettingDocument } from '@sagwright/workbench/result/document';
import { why } from '@sagwright/workbench/why/why';
import { words } from '@sagwright/workbench/words/catalogue';
import { shortReachWords } from '@sagwright/workbench/words/reach';
import {
  adjusterName,
  howReadWords,
  settingNumber,
  settingUnit,
  stepsWords,
  turnsWords,
} from '@sagwright/workbench/words/settings';
import { suggestionWords } from '@sagwright/workbench/words/suggestion';
import { type Column, table } from '../terminal/table.ts';
import { wrap } from '../terminal/text.ts';
import {
  type End,
  heading,
  inView,
  letterOf,
  lookOfReach,
  mainLoad,
  nameOf,
  type Page,
  plannedCell,
} from './page.ts';

/** What is suggested for an end and why, then what hands do for each load. */
export function endLines(page: Page, end: End): readonly string[] {
  const { planned, units, width } = page;
  const { headline, sentences, remedies } = suggestionWords(planned, end, units);
  const { kind } = page.result[end].suggestion;
  const look = kind === 'spring' ? 'wanted' : kind === 'none' ? 'attention' : 'quiet';
  return [
    ...heading(page, end.toUpperCase(), headline, look),
    ...(remedies.length === 0 ? [] : [`  ${words.suggestion.whatWould()}`]),
    ...remedies.flatMap((remedy, i) => wrap(`${i + 1}. ${remedy}`, width, '    ', '   ')),
    ...settingLines(page, end),
    ...(sentences.length === 0 ? [] : ['']),
    ...sentences.flatMap((sentence) => wrap(sentence, width, '  ', '  ')),
  ];
}

interface Row {
  readonly id: string;
  readonly cell: PlannedDocument | null;
  readonly setting: SettingDocument | null;
}

function settingLines(page: Page, end: End): readonly string[] {
  const { planned, width, paint, result } = page;
  const spring = inView(page, end);
  const how = spring === null ? null : howReadWords(planned, end, spring.id, page.units);
  const rows = result.loadCases.map(({ id }): Row => {
    const cell = plannedCell(spring, id);
    return { id, cell, setting: cell?.set.setting ?? null };
  });
  if (spring === null || how === null || rows.every(({ setting }) => setting === null)) return [];
  const columns = [
    loadColumn(page),
    ...adjusterColumns(page, end),
    ...turnColumns(page, end, rows),
    roomColumn(page, end),
  ];
  return [
    ...wrap(how, width, '  '),
    ...table(columns, rows, width, paint),
    ...perTurnLines(page, end, spring.id),
  ];
}

/** What one turn does, with its ±, worked out for this machine. */
function perTurnLines({ planned, units, width }: Page, end: End, spring: string): readonly string[] {
  const opened = why(planned, { figure: 'kg-per-turn', end, spring, loadCase: null });
  if (opened.kind !== 'opened') return [];
  const sides = planned.inputs.question.machine[end].struts.length;
  const kilograms = formatFigure(opened.value, 'mass', units);
  return wrap(words.settings.perTurn(kilograms, end, sides), width, '  ');
}

function loadColumn(page: Page): Column<Row> {
  return { head: ['', ''], align: 'left', cell: ({ id }) => nameOf(page, id) };
}

function adjusterColumns(page: Page, end: End): readonly Column<Row>[] {
  const { planned, units } = page;
  return [
    {
      head: [adjusterName(planned, end), settingUnit(planned, end, units)],
      align: 'right',
      cell: ({ setting }) => (setting === null ? '' : settingNumber(setting.at, units)),
      look: () => 'strong',
    },
    {
      head: ['spring', 'length'],
      align: 'right',
      cell: ({ cell, setting }) => {
        const length = setting === null ? null : cell!.set.springLength;
        return length === null ? '' : formatNumber(length, 'length', units);
      },
      look: () => 'strong',
    },
  ];
}

/** The way there: from as found where the spring stays, from the loosest end where another is fitted; and from the main load. */
function turnColumns(page: Page, end: End, rows: readonly Row[]): readonly Column<Row>[] {
  const columns: Column<Row>[] = [];
  const sample = rows.find(({ setting }) => setting !== null)!.setting!;
  if (inView(page, end)!.fitted && sample.turnsFromFound !== null) {
    for (const [i, { strut }] of sample.turnsFromFound.entries()) {
      const side =
        strut === 'left' || strut === 'right' ? `${words.settings.strut[strut]}, from` : 'turns from';
      columns.push({
        head: [side, 'as found'],
        align: 'right',
        cell: ({ setting }) => (setting === null ? '' : turnsWords(setting.turnsFromFound![i]!.turns)),
      });
    }
  } else if (sample.turnsFromLoosest !== null && !('turns' in sample.at)) {
    columns.push({
      head: ['turns from', 'its loosest'],
      align: 'right',
      cell: ({ setting }) => (setting === null ? '' : formatTurns(setting.turnsFromLoosest!)),
    });
  }
  const main = mainLoad(page);
  if (columns.length > 1) return columns; // left and right apart leave no room, and tell enough
  if (main === null || rows.filter(({ setting }) => setting !== null).length < 2) return columns;
  columns.push({
    head: ['from', letterOf(page, main)],
    align: 'right',
    cell: ({ id, setting }) => (setting === null || id === main ? '' : fromWords(setting, main)),
  });
  return columns;
}

function fromWords({ fromLoads }: SettingDocument, main: string): string {
  const from = fromLoads.find(({ loadCase }) => loadCase === main);
  if (from === undefined) return '';
  if (from.turns !== null) return turnsWords(from.turns);
  return from.steps === null ? '' : stepsWords(from.steps);
}

/** What is left to tighten; or how far past its end the adjuster would have to go; or why nothing is set. */
function roomColumn(page: Page, end: End): Column<Row> {
  const { units } = page;
  return {
    head: ['left to', 'tighten'],
    align: 'right',
    cell: ({ id, cell, setting }) => {
      if (cell === null) return emptyWords(page, end, id);
      const { reach } = cell;
      if (reach.kind === 'reached')
        return setting === null ? '' : formatNumber(setting.left, 'length', units);
      return shortReachWords(reach, units);
    },
    look: ({ cell }) => lookOfReach(cell),
  };
}

function emptyWords(page: Page, end: End, loadCase: string): string {
  const kind = inView(page, end)?.cells.find((each) => each.loadCase === loadCase)?.kind;
  return kind === undefined || kind === 'planned' ? '' : words.emptyCellsShort[kind];
}
