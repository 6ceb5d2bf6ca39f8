import type { AdjusterSetting } from '@sagwright/model/plan/adjuster';
import { format } from '../format/format.ts';
import { formatTurns } from '../format/turns.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import type { SettingAt } from '../result/document.ts';
import type { End } from '../result/inView.ts';
import { adjusterOf, settingAt } from '../result/setting.ts';
import { words } from './catalogue.ts';

/** "collar", "cap", "knob": what sets the preload at an end. */
export function adjusterName(planned: JobPlan, end: End): string {
  return words.settings.adjuster[adjusterOf(planned, end)?.kind ?? 'none'];
}

/** Where an adjuster is set, inside a sentence: "collar at 15.3 mm". */
export function settingWords(planned: JobPlan, end: End, setting: AdjusterSetting, units: Units): string {
  const typed = adjusterOf(planned, end);
  return typed === undefined ? '' : atWords(settingAt(typed, setting), units, words.settings.at);
}

/** The same in a table under its heading: "15.3 mm", "step 3". */
export function shortSettingWords(at: SettingAt, units: Units): string {
  return atWords(at, units, words.settings.short);
}

function atWords(
  at: SettingAt,
  units: Units,
  say: { readonly [K in 'reading' | 'turns' | 'step' | 'click' | 'spacer']: (figure: string) => string },
): string {
  if ('reading' in at) return say.reading(format(at.reading, 'length', units));
  if ('spacer' in at) return say.spacer(format(at.spacer, 'length', units));
  if ('turns' in at) return say.turns(formatTurns(at.turns));
  return 'step' in at ? say.step(String(at.step)) : say.click(String(at.click));
}

/** "2 1/4 tighter", "1 looser", "as it is". */
export function turnsWords(turns: number): string {
  const say = words.settings.turns;
  if (turns === 0) return say.same();
  return (turns > 0 ? say.tighter : say.looser)(formatTurns(turns));
}

/** "2 up", "3 down", "as it is": steps of a cam or clicks. */
export function stepsWords(steps: number): string {
  const say = words.settings.steps;
  if (steps === 0) return say.same();
  return (steps > 0 ? say.tighter : say.looser)(String(Math.abs(steps)));
}
