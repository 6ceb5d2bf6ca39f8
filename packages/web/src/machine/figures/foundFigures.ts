import type { JobDocument } from '@sagwright/records/schema';
import type { Adjuster } from '@sagwright/records/schema/adjusters';
import type { EndSetting, Side } from '@sagwright/records/schema/setups';
import { at, type Edit, write } from '../../job/edits.ts';
import { groups, found as words } from '../../words/figures.ts';
import { type Figure, type FigureGroup, type FigurePart, quantity } from './figure.ts';

/** Springs and settings as they were found, before anything was turned. */
export function foundGroup(job: JobDocument): FigureGroup {
  const { rear, front } = job.setups.asFound;
  const { machine } = job;
  return {
    id: 'found',
    title: groups.found,
    parts: [
      ...endParts(job, 'rear', rear, machine.rear.shock.adjuster),
      ...(front === undefined ? [] : endParts(job, 'front', front, machine.front.fork?.adjuster)),
    ],
  };
}

/** One shock or two: what was found follows, so that both speak of the same shocks. */
export function changeCount(document: unknown, count: 1 | 2): readonly Edit[] {
  const path = ['setups', 'asFound', 'rear'];
  const sides = sidesOf(at(document, path) as EndSetting | undefined);
  const first = sides[0]?.[1];
  const own = write(document, ['machine', 'rear', 'shock', 'count'], count);
  if (first === undefined) return [own];
  return [own, write(document, path, count === 1 ? { single: first } : { both: first })];
}

function endParts(
  job: JobDocument,
  end: 'rear' | 'front',
  setting: EndSetting,
  adjuster: Adjuster | undefined,
): readonly FigurePart[] {
  const path = `setups.asFound.${end}`;
  const sides = sidesOf(setting);
  const oneShock = end === 'rear' && 'single' in setting;
  const differ: readonly Figure[] = oneShock ? [] : [sidesChoice(path, setting, end)];
  return sides.map(([name], i) => ({
    title: [words[end], words.side[name]].filter((part) => part !== '').join(': '),
    figures: [
      ...(i === 0 ? differ : []),
      springChoice(job, end, `${path}.${name}`),
      ...settingFigures(`${path}.${name}.at`, adjuster),
    ],
  }));
}

type SideName = 'single' | 'both' | 'left' | 'right';

function sidesOf(setting: EndSetting | undefined): readonly (readonly [SideName, Side])[] {
  if (setting === undefined) return [];
  if ('single' in setting) return [['single', setting.single]];
  if ('both' in setting) return [['both', setting.both]];
  return [
    ['left', setting.left],
    ['right', setting.right],
  ];
}

type Sides = 'alike' | 'differ' | 'single';

/** How the sides are told; a fork may have a spring in one leg only, two shocks have one each. */
function sidesChoice(path: string, setting: EndSetting, end: 'rear' | 'front'): Figure {
  const steps = path.split('.');
  const now: Sides = 'both' in setting ? 'alike' : 'single' in setting ? 'single' : 'differ';
  const ways: readonly Sides[] = end === 'front' ? ['alike', 'differ', 'single'] : ['alike', 'differ'];
  return {
    kind: 'choice',
    path,
    label: words.sides,
    value: now,
    choices: ways.map((value) => ({ value, word: words[value] })),
    change: (document, value) => {
      const there = at(document, steps) as EndSetting | undefined;
      const first = sidesOf(there)[0]?.[1];
      if (first === undefined || value === now) return [];
      return [write(document, steps, withSides(value as Sides, first))];
    },
  };
}

function withSides(sides: Sides, side: Side): EndSetting {
  switch (sides) {
    case 'alike':
      return { both: side };
    case 'single':
      return { single: side };
    case 'differ':
      return { left: side, right: side };
  }
}

function springChoice(job: JobDocument, end: 'rear' | 'front', path: string): Figure {
  const springs = Object.entries(job.springs)
    .filter(([, spring]) => spring.end === end)
    .sort(([, x], [, y]) => x.order - y.order);
  return {
    kind: 'choice',
    path: `${path}.spring`,
    label: words.spring,
    value: '',
    choices: springs.map(([value, { name }]) => ({ value, word: name })),
    change: (document, value) => [write(document, [...path.split('.'), 'spring'], value)],
  };
}

function settingFigures(path: string, adjuster: Adjuster | undefined): readonly Figure[] {
  const preload = quantity(`${path}.preload`, words.preload, 'preload', 'collar');
  switch (adjuster?.kind) {
    case 'collar':
      return [quantity(`${path}.reading`, words.reading, 'collarReading', 'collar'), preload];
    case 'spacer':
      return [quantity(`${path}.spacer`, words.spacer, 'spacer', 'collar'), preload];
    case 'cap':
      return [counted(`${path}.turns`, words.turns, 0, 100, false), preload];
    case 'cam':
      return [counted(`${path}.step`, words.step, 1, 40, true), preload];
    case 'clicks':
      return [counted(`${path}.click`, words.click, 0, 400, true), preload];
    default:
      return [preload];
  }
}

function counted(path: string, label: string, least: number, most: number, whole: boolean): Figure {
  return { kind: 'number', path, label, unit: '', least, most, whole };
}
