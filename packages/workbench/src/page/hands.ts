import type { AdjusterSetting } from '@sagwright/model/plan/adjuster';
import type { PlanCell, SpringPlan } from '@sagwright/model/plan/answer';
import { format, formatFigureNumber, formatNumber } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import type { End } from '../result/inView.ts';
import { adjusterOf, settingAt, settingDocument } from '../result/setting.ts';
import type { PressureDocument } from '../shock/document.ts';
import { pressureOf } from '../shock/pressure.ts';
import { words } from '../words/catalogue.ts';
import { settingNumber, turnsWords } from '../words/settings.ts';
import type { HandsView } from './shapes.ts';
import { pressureView } from './shock.ts';

/** What hands set for one load with this spring, and what the machine does there. */
export function handsView(
  planned: JobPlan,
  end: End,
  spring: SpringPlan,
  { loadCase, cell }: Extract<PlanCell, { kind: 'planned' }>,
  units: Units,
): HandsView {
  const { setting, set } = cell;
  const pressure = pressureOf(planned, cell);
  const { rest, springLength, rideFrequency, frequencyWithoutTyre } = set;
  const hertz = (value: number | null): string | null =>
    value === null ? null : formatNumber(value, 'frequency', units);
  return {
    setting: settingWords(planned, end, setting, pressure, units),
    pressure: pressure === null ? null : pressureView(pressure, units),
    springLength:
      setting === null || springLength === null ? null : formatNumber(springLength, 'length', units),
    turns: setting === null ? [] : turnsFromFound(planned, end, spring, loadCase, setting),
    rests: rest === null ? null : formatFigureNumber(set.travel, 'length', units),
    share: rest === null ? null : format(rest[end].travel / rest[end].travelMax, 'share', units),
    bounces: hertz(rideFrequency),
    bouncesWithoutTyre: hertz(frequencyWithoutTyre),
  };
}

/** What is set, alone: of the adjuster, or the pressure where that sets the end. */
function settingWords(
  planned: JobPlan,
  end: End,
  setting: AdjusterSetting | null,
  pressure: PressureDocument | null,
  units: Units,
): string | null {
  if (pressure?.isPlanned) return formatNumber(pressure.set.fullyOut, 'pressure', units);
  return setting === null ? null : settingNumber(settingAt(adjusterOf(planned, end)!, setting), units);
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
