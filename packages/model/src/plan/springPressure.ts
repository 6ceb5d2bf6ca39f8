import { parameter, setParameter } from '../statics/parameters.ts';
import type { EndName } from '../statics/prepared.ts';
import { type Direction, directionsOf, type Move, type UncertainInput } from '../uncertainty/inputs.ts';
import { mergeInputs } from '../uncertainty/merge.ts';
import type { AtSetting, PlannedPressure } from './answer.ts';
import { plannedPressure } from './pressure.ts';
import { withPressureSet } from './pressureInputs.ts';
import type { EndQuestion, PlanQuestion } from './question.ts';
import type { Fitted } from './setting.ts';
import type { WantedLoad } from './wantedLoad.ts';

/** The pressure that answers a load with one spring fitted. */
export type PressureOf = (want: Extract<WantedLoad, { kind: 'wanted' }>) => PlannedPressure;

/**
 * How the pressure is found that answers a load with this spring fitted, its adjuster where it was found; null where no air is set.
 * inputs  of the machine, without what hangs on the springs found
 */
export function springPressure(
  fitted: Fitted,
  question: PlanQuestion,
  inputs: readonly UncertainInput[],
): PressureOf | null {
  const { choice, parameters, prepared, name, preloads } = fitted;
  const { pressure: range, adjuster, found } = question[name];
  if (range === undefined) return null;
  const own = mergeInputs(inputs, choice.inputs, foundPosition(question, name));
  const directions = directionsOf(parameters, own);
  return (want) => {
    for (const [i, index] of preloads.entries())
      setParameter(parameters, index, choice.preloadAtZero + (found?.[i] ?? 0));
    return plannedPressure(parameters, prepared, name, range, want, directions, adjuster === null);
  };
}

/**
 * What is uncertain about where the adjuster stands as found: the preload found less that of the same spring at the loosest end.
 * A preload that was read by itself knows nothing of the reading: there both cancel.
 */
function foundPosition(question: PlanQuestion, name: EndName): readonly UncertainInput[] {
  const preload = new RegExp(`^${name}\\.struts\\.\\d+\\.preload$`);
  const fitted = question[name].choices.find((choice) => choice.fitted);
  if (fitted === undefined) return [];
  const times = (inputs: readonly UncertainInput[], factor: number): readonly UncertainInput[] =>
    inputs.flatMap((input) => {
      const moves = input.moves.flatMap((move): readonly Move[] =>
        preload.test(move.parameter) ? [{ ...move, by: factor * move.by }] : [],
      );
      return moves.length === 0 ? [] : [{ ...input, moves }];
    });
  return mergeInputs(times(question.inputs, 1), times(fitted.inputs, -1));
}

/** What the machine does at a setting, as `settle` finds it with these inputs acting: with the load, and with nothing aboard. */
type Settle = (directions: readonly Direction[], alone: readonly Direction[]) => AtSetting;

/** The same with the planned pressure in every strut, set by hands; the struts are then as before. */
export function atPressure(
  { parameters, name, preloads }: Fitted,
  { pressure: range }: EndQuestion,
  pressure: PlannedPressure,
  directions: readonly Direction[],
  alone: readonly Direction[],
  settle: Settle,
): AtSetting {
  const set = (acting: readonly Direction[]): readonly Direction[] =>
    directionsOf(
      parameters,
      withPressureSet(
        name,
        acting.map(({ input }) => input),
        range!,
        pressure.set,
        preloads.length,
      ),
    );
  const valves = preloads.map((_, i) => parameters.indexOf.get(`${name}.struts.${i}.air.pressure`)!);
  const found = valves.map((index) => parameter(parameters, index));
  for (const index of valves) setParameter(parameters, index, pressure.set);
  const settled = settle(set(directions), set(alone));
  for (const [i, index] of valves.entries()) setParameter(parameters, index, found[i]!);
  return settled;
}
