import type { Planned, SpringPlan } from '@sagwright/model/plan/answer';
import type { SpringChoiceSI } from '@sagwright/model/plan/question';
import { settingInputs } from '@sagwright/model/plan/settingDoubt';
import { deskAgain } from '../inputs/deskAgain.ts';
import { freeLengthOf, solidLengthOf } from '../inputs/springs.ts';
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
  for (const [input, { free, solid }] of movedLengths(planned, spring)) {
    add(input, times.free * free + times.solid * solid);
  }
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

/** How free and solid length move with each figure of the spring: with themselves as typed, else with the wire and its pitches. */
function movedLengths(
  planned: JobPlan,
  id: string,
): ReadonlyMap<string, { readonly free: number; readonly solid: number }> {
  const spring = planned.job.springs[id]!;
  const lengthsAt = (path: string, by: number): { readonly free: number; readonly solid: number } => {
    const desk = deskAgain(planned, path, by);
    return { free: freeLengthOf(desk, id) ?? 0, solid: solidLengthOf(desk, id, spring) ?? 0 };
  };
  const own = [...planned.inputs.figures.values()].filter(
    ({ path, deviation }) => path.startsWith(`springs.${id}.`) && deviation > 0,
  );
  return new Map(
    own.map(({ path, deviation }) => {
      const step = STEP * deviation;
      const [above, below] = [lengthsAt(path, step), lengthsAt(path, -step)];
      const slope = (of: 'free' | 'solid'): number => (above[of] - below[of]) / (2 * step);
      return [path, { free: slope('free'), solid: slope('solid') }];
    }),
  );
}

/** Share of a figure's deviation by which it is moved; lengths are sums, so the size hardly matters. */
const STEP = 1e-3;
