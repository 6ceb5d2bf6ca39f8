import type { AdjusterSetting } from '@sagwright/model/plan/adjuster';
import { format, formatNumber, unitOf } from '../format/format.ts';
import { formatTurns } from '../format/turns.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import type { SettingAt } from '../result/document.ts';
import type { End } from '../result/inView.ts';
import { adjusterOf, settingAt } from '../result/setting.ts';
import { words } from './catalogue.ts';
import { springName } from './names.ts';

/** "collar", "cap", "knob": what sets the preload at an end. */
export function adjusterName(planned: JobPlan, end: End): string {
  return words.settings.adjuster[adjusterOf(planned, end)?.kind ?? 'none'];
}

/** Where an adjuster is set, inside a sentence: "collar at 15.3 mm". */
export function settingWords(planned: JobPlan, end: End, setting: AdjusterSetting, units: Units): string {
  const typed = adjusterOf(planned, end);
  return typed === undefined ? '' : atWords(settingAt(typed, setting), units, words.settings.at);
}

/** The bare figure under a heading that names adjuster and unit: "15.3", "6 1/4", "3". */
export function settingNumber(at: SettingAt, units: Units): string {
  if ('reading' in at) return formatNumber(at.reading, 'length', units);
  if ('spacer' in at) return formatNumber(at.spacer, 'length', units);
  if ('turns' in at) return formatTurns(at.turns);
  return String('step' in at ? at.step : at.click);
}

/** What such a heading says below the adjuster's name: its unit, or how it is counted. */
export function settingUnit(planned: JobPlan, end: End, units: Units): string {
  const kind = adjusterOf(planned, end)?.kind ?? 'none';
  return kind === 'collar' || kind === 'spacer' ? unitOf('length', units) : words.settings.counted[kind];
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

/** "2 tighter", "3 looser", "as it is": steps of a cam or clicks. */
export function stepsWords(steps: number): string {
  const say = words.settings.steps;
  if (steps === 0) return say.same();
  return (steps > 0 ? say.tighter : say.looser)(String(Math.abs(steps)));
}

/** For which spring, in what state and between which faces an adjuster is read; null where there is none. */
export function howReadWords(planned: JobPlan, end: End, spring: string, units: Units): string | null {
  const typed = adjusterOf(planned, end);
  const say = words.settings;
  if (typed === undefined || typed.kind === 'none') return null;
  const struts = planned.inputs.question.machine[end].struts.length;
  const state = say.state[end](struts > 1 ? say.sides.two() : say.sides.one());
  const name = springName(planned.job, spring);
  const unit = unitOf('length', units);
  return typed.kind === 'collar'
    ? say.howRead.collar(name, state, unit, typed.between, typed.and)
    : say.howRead[typed.kind](name, state, unit);
}
