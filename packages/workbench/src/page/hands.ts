import type { AdjusterSetting } from '@sagwright/model/plan/adjuster';
import type { PlanCell, SpringPlan } from '@sagwright/model/plan/answer';
import { format, formatFigureNumber, formatNumber } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import type { End } from '../result/inView.ts';
import { adjusterOf, settingAt, settingDocument } from '../result/setting.ts';
import { words } from '../words/catalogue.ts';
import { settingNumber, turnsWords } from '../words/settings.ts';
import type { HandsView } from './shapes.ts';

/** What hands set for one load with this spring, and what the machine does there. */
export function handsView(
  planned: JobPlan,
  end: End,
  spring: SpringPlan,
  { loadCase, cell: { setting, set } }: Extract<PlanCell, { kind: 'planned' }>,
  units: Units,
): HandsView {
  const { rest, springLength, rideFrequency, frequencyWithoutTyre } = set;
  const hertz = (value: number | null): string | null =>
    value === null ? null : formatNumber(value, 'frequency', units);
  return {
    setting: setting === null ? null : settingNumber(settingAt(adjusterOf(planned, end)!, setting), units),
    springLength:
      setting === null || springLength === null ? null : formatNumber(springLength, 'length', units),
    turns: setting === null ? [] : turnsFromFound(planned, end, spring, loadCase, setting),
    rests: rest === null ? null : formatFigureNumber(set.travel, 'length', units),
    share: rest === null ? null : format(rest[end].travel / rest[end].travelMax, 'share', units),
    bounces: hertz(rideFrequency),
    bouncesWithoutTyre: hertz(frequencyWithoutTyre),
  };
}

/** Turns from where a side was found, on the spring that it was found with: a new spring is set by its length. */
function turnsFromFound(
  planned: JobPlan,
  end: End,
  spring: SpringPlan,
  loadCase: string,
  setting: AdjusterSetting,
): readonly string[] {
  if (!spring.fitted) return [];
  const found = settingDocument(planned, end, spring, loadCase, setting)?.turnsFromFound ?? [];
  return found.map(({ strut, turns }) =>
    strut === 'single' || strut === 'both'
      ? turnsWords(turns)
      : words.page.turnsOf(words.settings.strut[strut], turnsWords(turns)),
  );
}
