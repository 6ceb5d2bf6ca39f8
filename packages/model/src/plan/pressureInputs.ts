import { ATMOSPHERE } from '../statics/machine.ts';
import type { EndName } from '../statics/prepared.ts';
import type { UncertainInput } from '../uncertainty/inputs.ts';
import type { PressureRangeSI } from './question.ts';

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
  return [...others, ...settingInputs(range, pressure - ATMOSPHERE, valves)];
}

function settingInputs(
  { reading, loss }: PressureRangeSI,
  gauge: number,
  valves: readonly string[],
): readonly UncertainInput[] {
  const moving = (by: number): UncertainInput['moves'] => valves.map((parameter) => ({ parameter, by }));
  return [
    { ...reading, moves: moving(1) },
    ...(loss === null ? [] : [{ ...loss, moves: moving(gauge) }]),
  ].filter(({ deviation }) => deviation > 0);
}
