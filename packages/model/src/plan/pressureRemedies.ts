import { gasAt } from '../dampers/gas.ts';
import { ATMOSPHERE, type MachineSI } from '../statics/machine.ts';
import type { EndName } from '../statics/prepared.ts';
import type { Reason, Remedy, SpringPlan } from './answer.ts';
import type { Demand } from './demand.ts';
import { squeezed } from './pressure.ts';
import { kilogramsAbove } from './pressureReach.ts';
import type { EndQuestion, PressureRangeSI } from './question.ts';
import { type Excess, excessBy, failuresOf, ratesForAll, riddenCells } from './ridden.ts';
import type { WantedLoad } from './wantedLoad.ts';

/** What more or less pressure than the unit may hold would cure. */
const ENDS_OF_PRESSURE: ReadonlySet<Reason['code']> = new Set([
  'pressure only at the edge',
  'pressure past its most',
  'pressure past its least',
]);

/**
 * The loads that are too much for a spring at the most pressure, and by how much; null where something else rules it out too, or
 * where it is too little that is aboard.
 */
export function excessOfPressure(
  spring: SpringPlan,
  range: PressureRangeSI,
  ridden: ReadonlySet<string>,
  name: EndName,
  machine: MachineSI,
  wanted: ReadonlyMap<string, WantedLoad>,
): readonly Excess[] | null {
  return excessBy(spring, ridden, wanted, ENDS_OF_PRESSURE, ({ pressure }, aim) =>
    pressure?.isPlanned && pressure.aim.value > range.most
      ? kilogramsAbove(machine, name, aim, pressure.aim.value, range.most)
      : null,
  );
}

/** What would help besides less load where a pressure sets the end: a coil of another rate, or a unit that holds other pressures. */
export function pressureRemedies(
  springs: readonly SpringPlan[],
  end: EndQuestion,
  ridden: ReadonlySet<string>,
  name: EndName,
  machine: MachineSI,
  wanted: ReadonlyMap<string, WantedLoad>,
): readonly Remedy[] {
  const range = end.pressure;
  if (range === undefined) return [];
  return [...otherCoil(end, range, ridden, name, machine, wanted), ...otherPressures(springs, range, ridden)];
}

/**
 * Rates [N/m] of a linear coil, as long as the fitted one, that would bring every load into the unit's range:
 *   F − A (P_most·V0/(V0 − A s) − P_atm) <= k (s + p) <= F − A (P_least·V0/(V0 − A s) − P_atm)
 * F what coil and air must bear together. None where the shock has no coil, or where a load asks for what no coil can do.
 */
function otherCoil(
  end: EndQuestion,
  range: PressureRangeSI,
  ridden: ReadonlySet<string>,
  name: EndName,
  machine: MachineSI,
  wanted: ReadonlyMap<string, WantedLoad>,
): readonly Remedy[] {
  const fitted = end.choices.find((choice) => choice.fitted);
  if (fitted === undefined || fitted.spring.kind === 'none') return [];
  const rates = ratesForAll(ridden, wanted, (aim) => {
    const compression = aim.stroke + fitted.preloadAtZero;
    if (compression <= 0) return null;
    const left = (pressure: number): number => leftForCoil(machine, name, aim, pressure) / compression;
    return { least: left(range.most), most: left(range.least) };
  });
  return rates === null ? [] : [{ kind: 'other coil', ...rates }];
}

/** Force that is left for each coil at a demand [N] with the air at a pressure. */
function leftForCoil(machine: MachineSI, name: EndName, demand: Demand, pressure: number): number {
  const air = machine[name].struts[0]!.air!;
  const found = { force: 0, rate: 0 };
  gasAt(air, demand.stroke, ATMOSPHERE, found);
  const held = air.area * (pressure * squeezed(air, demand.stroke) - ATMOSPHERE);
  return demand.springForce + found.force - held;
}

/** The pressures that a unit would have to hold with the spring that asks least beyond this one's range, where nothing else rules it out. */
function otherPressures(
  springs: readonly SpringPlan[],
  range: PressureRangeSI,
  ridden: ReadonlySet<string>,
): readonly Remedy[] {
  let best: { readonly beyond: number; readonly remedy: Remedy } | null = null;
  for (const spring of springs) {
    if (!failuresOf(spring, ridden).every(({ code }) => ENDS_OF_PRESSURE.has(code))) continue;
    const aims = riddenCells(spring, ridden).flatMap(({ cell: { pressure } }) =>
      pressure?.isPlanned ? [pressure.aim.value] : [],
    );
    // Below the air outside no unit holds it.
    if (aims.length === 0 || Math.min(...aims) < ATMOSPHERE) continue;
    const [least, most] = [Math.min(...aims, range.least), Math.max(...aims, range.most)];
    const beyond = range.least - least + most - range.most;
    if (beyond <= 0 || (best !== null && best.beyond <= beyond)) continue;
    const remedy: Remedy = {
      kind: 'other pressures',
      least: Math.max(0, least - ATMOSPHERE),
      most: most - ATMOSPHERE,
      spring: spring.spring,
    };
    best = { beyond, remedy };
  }
  return best === null ? [] : [best.remedy];
}
