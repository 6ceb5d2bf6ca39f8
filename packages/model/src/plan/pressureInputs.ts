import { ATMOSPHERE } from '../statics/machine.ts';
import type { EndName } from '../statics/prepared.ts';
import type { UncertainInput } from '../uncertainty/inputs.ts';
import type { PressureRangeSI } from './question.ts';
import type { SettingDoubt } from './settingDoubt.ts';

/**
 * Inputs of an end whose pressure is set anew. The pressure found acts through the weighing only; what is set brings the doubt
 * of the gauge that it is set by:  P = P_gauge + P_atm,  ∂P/∂reading = 1,  ∂P/∂loss = P_gauge
 * pressure  absolute, strut fully out [Pa];  count  struts of the end, set by the same gauge
 */
export function withPressureSet(
  name: EndName,
  inputs: readonly UncertainInput[],
  range: PressureRangeSI,
  pressure: number,
  count: number,
): readonly UncertainInput[] {
  const valves = Array.from({ length: count }, (_, i) => `${name}.struts.${i}.air.pressure`);
  const others = inputs
    .map((input) => ({ ...input, moves: input.moves.filter(({ parameter }) => !valves.includes(parameter)) }))
    .filter(({ moves }) => moves.length > 0);
  const set = gaugeDoubts(range, pressure - ATMOSPHERE).map(({ doubt, by }) => ({
    ...doubt,
    moves: valves.map((parameter) => ({ parameter, by })),
  }));
  return [...others, ...set.filter(({ deviation }) => deviation > 0)];
}

/** What is uncertain about a pressure that is set by a gauge which shows `gauge` [Pa], and how the pressure moves with it. */
export function gaugeDoubts(
  { reading, loss }: PressureRangeSI,
  gauge: number,
): readonly { readonly doubt: SettingDoubt; readonly by: number }[] {
  return [{ doubt: reading, by: 1 }, ...(loss === null ? [] : [{ doubt: loss, by: gauge }])];
}
