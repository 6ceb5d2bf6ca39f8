import type { Planned, SpringPlan } from '@sagwright/model/plan/answer';
import type { SpringChoiceSI } from '@sagwright/model/plan/question';
import { settingInputs } from '@sagwright/model/plan/settingDoubt';
import type { JobPlan } from '../path.ts';
import type { End } from '../result/inView.ts';
import type { Opened } from './question.ts';
import { summed } from './standing.ts';

/** Installed length at the planned setting [m]: free length − (preload at the loosest end + position); the free length where loose. */
export function springLength(planned: JobPlan, end: End, spring: SpringPlan, cell: Planned): Opened {
  const { set } = cell;
  if (set.springLength === null) return 'lengths not known';
  return sumOfLengths(planned, end, spring, cell, set.springLength, {
    free: 1,
    solid: 0,
    stroke: 0,
    preload: set.preload < 0 ? 0 : -1,
  });
}

/** Spring stroke left at full bump [m]: free length − solid length − (stroke + preload). */
export function coilBind(planned: JobPlan, end: End, spring: SpringPlan, cell: Planned): Opened {
  const { set } = cell;
  if (set.strokeToCoilBind === null) return 'lengths not known';
  return sumOfLengths(planned, end, spring, cell, set.strokeToCoilBind, {
    free: 1,
    solid: -1,
    stroke: -1,
    preload: -1,
  });
}

/** A sum of lengths and the preload, each with what the inputs of the job do to it; a reading is where hands set it: exact. */
function sumOfLengths(
  planned: JobPlan,
  end: End,
  { spring }: SpringPlan,
  { setting }: Planned,
  value: number,
  times: { readonly free: number; readonly solid: number; readonly stroke: number; readonly preload: number },
): Opened {
  const { question, figures } = planned.inputs;
  const choice: SpringChoiceSI = question[end].choices.find(({ id }) => id === spring)!;
  const slopes = new Map<string, number>();
  const add = (input: string, slope: number): void => {
    if (slope !== 0 && figures.has(input)) slopes.set(input, (slopes.get(input) ?? 0) + slope);
  };
  add(`springs.${spring}.freeLength`, times.free);
  add(`springs.${spring}.solidLength`, times.solid);
  for (const { name, moves } of question.inputs) {
    for (const { parameter, by } of moves) if (parameter === `${end}.strokeMax`) add(name, times.stroke * by);
  }
  const counted = setting === null ? [] : settingInputs(question[end].doubt, end, setting, 1);
  for (const { name, moves } of [...choice.inputs, ...counted]) {
    for (const { parameter, by } of moves)
      if (parameter === `${end}.struts.0.preload`) add(name, times.preload * by);
  }
  return summed(value, slopes, (input) => figures.get(input)!.deviation);
}
