import {
  formatFigureNumber,
  formatNumber,
  formatPlainNumber,
  unitOf,
} from '@sagwright/workbench/format/format';
import type { LoadDocument } from '@sagwright/workbench/result/document';
import {
  closeLimitWords,
  limitsNotChecked,
  nearestLimitWords,
  refusalWords,
} from '@sagwright/workbench/words/limits';
import type { Look } from '../terminal/paint.ts';
import { type Column, table } from '../terminal/table.ts';
import { wrap } from '../terminal/text.ts';
import { heading, nameOf, type Page } from './page.ts';

/** Overload first, and everything else that keeps a load from being planned. */
export function refusalLines(page: Page): readonly string[] {
  const refusals = page.planned.plan.loadCases.flatMap(
    (load) => refusalWords(page.planned, load, page.units) ?? [],
  );
  return refusals.flatMap((refusal) => [
    ...wrap(refusal, page.width).map((line) => page.paint(line, 'attention')),
    '',
  ]);
}

/** Every load on its axles against what they may carry; then what is close, and what could not be checked. */
export function loadLines(page: Page): readonly string[] {
  const { planned, units, width, paint } = page;
  const close = planned.plan.loadCases.flatMap((load) => closeLimitWords(planned, load, units));
  const nearest = nearestLimitWords(planned, units);
  const notChecked = limitsNotChecked(planned);
  const said = [
    ...close,
    ...(close.length === 0 && nearest !== null && !anyRefused(page) ? [nearest] : []),
    ...(notChecked === null ? [] : [notChecked]),
  ];
  return [
    ...heading(page, 'LOADS', `on the scales, ${unitOf('mass', units)}`),
    ...table(columns(page), page.result.loadCases, width, paint),
    ...said.flatMap((sentence) => wrap(sentence, width, '  ')),
  ];
}

function anyRefused(page: Page): boolean {
  return page.result.loadCases.some(({ refused }) => refused);
}

/** Where the tank is not known nothing can be filled up: the loads are then those of the weighing's fuel, and it says so. */
function fuelHead(page: Page): string {
  const unknown = page.result.notes.some(({ code }) => code === 'fuel not known');
  return unknown ? 'fuel as weighed' : 'with a full tank';
}

function columns(page: Page): readonly Column<LoadDocument>[] {
  const { units } = page;
  const axle = (
    name: 'rear' | 'front' | 'total',
    head: string,
    kind: 'rear axle' | 'front axle' | 'gross',
  ): Column<LoadDocument> => ({
    head: [head, allowedOf(page, kind)],
    align: 'right',
    cell: ({ axleLoadsFullTank: loads }) => {
      if (loads === null) return '-';
      const figure = { value: loads[name], plusMinus: loads[`${name}PlusMinus`] };
      return formatFigureNumber(figure, 'mass', units);
    },
    look: ({ limits }) => lookOf(limits, kind),
  });
  return [
    {
      head: ['', fuelHead(page)],
      align: 'left',
      cell: ({ id }) => nameOf(page, id),
      look: () => 'strong',
    },
    {
      head: ['', 'of riding'],
      align: 'right',
      cell: ({ share }) => `${formatNumber(share, 'share', units)} %`,
    },
    axle('rear', 'rear wheel', 'rear axle'),
    axle('front', 'front wheel', 'front axle'),
    axle('total', 'all', 'gross'),
  ];
}

function allowedOf({ result, units }: Page, kind: 'rear axle' | 'front axle' | 'gross'): string {
  const allowed = result.loadCases
    .flatMap(({ limits }) => limits)
    .find(({ of }) => of.kind === kind)?.allowed;
  return allowed === undefined || allowed === null
    ? 'limit ?'
    : `of ${formatPlainNumber(allowed, 'mass', units)}`;
}

function lookOf(limits: LoadDocument['limits'], kind: string): Look | null {
  const verdict = limits.find(({ of }) => of.kind === kind)?.verdict;
  return verdict === 'over' || verdict === 'within its ±' ? 'attention' : null;
}
