import { decimalsFor, fixed } from '@sagwright/workbench/format/digits';
import type { CellDocument, PlanDocument, SettingAt } from '@sagwright/workbench/result/document';

/** One row of a story's tables. */
export interface StoryRow {
  readonly spring: string;
  readonly load: string;
  readonly set: string;
  readonly rests: string;
  readonly verdict: string;
}

const HEAD = '| spring | load | set to | wheel rests at, mm | verdict |\n|---|---|---|---|---|\n';

/** The rows of every table in a story that tells what the plan says. */
export function storyRows(story: string): readonly StoryRow[] {
  return story
    .split(HEAD)
    .slice(1)
    .flatMap((after) => after.split('\n\n')[0]!.trim().split('\n'))
    .map((line) => {
      const [, spring, load, set, rests, verdict] = line.split('|').map((cell) => cell.trim());
      return { spring: spring!, load: load!, set: set!, rests: rests!, verdict: verdict! };
    });
}

/** The same row as the plan has it, in the digits that its ± supports. */
export function verdictOf(plan: PlanDocument, { spring, load }: StoryRow): Omit<StoryRow, 'spring' | 'load'> {
  const cell = cellOf(plan, spring, load);
  if (cell.kind === 'refused') return { set: '–', rests: '–', verdict: 'refused' };
  if (cell.kind !== 'planned')
    throw new Error(`${spring}, ${load}: ${cell.kind}; a story tells what is planned`);
  const { sag, setting } = cell.set;
  const pressure = cell.pressure?.isPlanned ? cell.pressure : null;
  if (sag === null || (setting === null && pressure === null))
    throw new Error(`${spring}, ${load}: no rest or no adjuster`);
  const plusMinus = 1000 * sag.travel.plusMinus!;
  const decimals = decimalsFor(plusMinus);
  return {
    set: pressure === null ? settingInWords(setting!.at) : pressureInWords(pressure.set.fullyOut),
    rests: `${fixed(1000 * sag.travel.value, decimals)} ± ${fixed(plusMinus, decimals)}`,
    verdict: verdicts[(pressure ?? cell).reach.kind],
  };
}

const verdicts = {
  reached: 'in reach',
  'at the edge': 'only at the edge',
  'out of reach': 'out of reach',
  'between steps': 'between steps',
  'no spring wanted': 'no spring wanted',
  'no adjuster': 'no adjuster',
} as const;

function cellOf({ rear, front, loadCases }: PlanDocument, spring: string, load: string): CellDocument {
  const id = loadCases.find(({ name }) => name === load)?.id;
  const cell = [...rear.springs, ...front.springs]
    .find(({ name }) => name === spring)
    ?.cells.find(({ loadCase }) => loadCase === id);
  if (cell === undefined) throw new Error(`The plan has no spring "${spring}" with a load "${load}"`);
  return cell;
}

/** As a gauge reads it, fully out. */
function pressureInWords(pascal: number): string {
  return `${fixed(pascal / 1e5, 2)} bar`;
}

function settingInWords(at: SettingAt): string {
  if ('step' in at) return `step ${at.step}`;
  if ('click' in at) return `click ${at.click}`;
  if ('turns' in at) return `${Number(at.turns.toFixed(2))} turns`;
  return `${fixed(1000 * ('reading' in at ? at.reading : at.spacer), 1)} mm`;
}
