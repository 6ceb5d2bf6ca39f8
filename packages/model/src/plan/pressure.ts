import type { GasSI } from '../dampers/gas.ts';
import type { StrutSI } from '../dampers/strut.ts';
import { springAt } from '../springs/spring.ts';
import { ATMOSPHERE } from '../statics/machine.ts';
import type { Parameters } from '../statics/parameters.ts';
import type { EndName, Prepared } from '../statics/prepared.ts';
import { type Direction, figuresOf, moveFrom, restore } from '../uncertainty/inputs.ts';
import { type SpreadPart, spreadOf } from '../uncertainty/spread.ts';
import { type AdjusterSI, settingNear } from './adjuster.ts';
import type { PlannedPressure } from './answer.ts';
import type { Demand } from './demand.ts';
import type { DemandSlope } from './positionSpread.ts';
import { gaugeDoubts } from './pressureInputs.ts';
import type { PressureRangeSI } from './question.ts';
import { reachOf } from './reach.ts';

/**
 * Absolute pressure [Pa], struts fully out, at which pressure springs and the coils beside them answer a demand; all struts of the
 * end hold the same air.
 *   F = A (P V0/(V0 − A s) − P_atm),   P = ((F_spring − F_coil + F_air)/A + P_atm) (V0 − A s)/V0
 * springForce  what each coil would have to bear with the air as it is [N];  s  stroke there [m];  F_coil  mean of the struts' [N]
 * Below the air outside no unit holds it: that is an answer, and out of its range.
 * Throws RangeError for a strut without air. Settled: n = 1. Source: p V = const, solved for the pressure.
 */
export function pressureFor(struts: readonly StrutSI[], springForce: number, stroke: number): number {
  const air = struts[0]?.air;
  if (air === undefined) throw new RangeError('pressureFor: a strut without air; it must have some');
  let wanting = 0;
  for (const { spring, preload } of struts) {
    springAt(spring, stroke + preload, coil);
    wanting += springForce - coil.force;
  }
  return air.pressure + wanting / (struts.length * air.area * squeezed(air, stroke));
}

const coil = { force: 0, rate: 0, energy: 0 };

/** V0/(V0 − A s): how much more its pressure is at a stroke than fully out [-], absolute. */
export function squeezed({ area, volume }: GasSI, stroke: number): number {
  return volume / (volume - area * stroke);
}

/** Gauge pressure [Pa] at a stroke of air that has `pressure` [Pa], absolute, fully out. */
export function gaugeAt(air: GasSI, pressure: number, stroke: number): number {
  return pressure * squeezed(air, stroke) - ATMOSPHERE;
}

/** The wanted sags of a load as demands on the springs of an end, and how the aim's moves with each input. */
interface WantedDemands {
  readonly low: Demand;
  readonly aim: Demand;
  readonly high: Demand;
  readonly slopes: readonly DemandSlope[];
}

/**
 * The pressure that answers a load: aim with ±, band, and what the unit's range and hands make of it. The machine that
 * `parameters` hold has the coil and its preload on.
 * directions  all inputs of that machine but the load's, ready for `parameters`
 */
export function plannedPressure(
  parameters: Parameters,
  prepared: Prepared,
  name: EndName,
  range: PressureRangeSI,
  want: WantedDemands,
  directions: readonly Direction[],
  isPlanned: boolean,
): PlannedPressure {
  const { struts } = prepared.machine[name];
  const at = ({ springForce, stroke }: Demand): number => pressureFor(struts, springForce, stroke);
  const [least, value, most] = [at(want.high), at(want.aim), at(want.low)];
  const valve: AdjusterSI = {
    kind: 'continuous',
    most: range.most - range.least,
    quantum: range.step,
    lead: null,
    readingAtZero: range.least,
    sense: 1,
  };
  const along = (pressure: number): number => pressure - range.least;
  const parts = [
    ...partsOf(parameters, prepared, name, want.aim, want.slopes, directions),
    ...gaugeDoubts(range, value - ATMOSPHERE).map(
      ({ doubt, by }): SpreadPart => ({ input: { ...doubt, moves: [] }, slope: by }),
    ),
  ];
  const { plusMinus, contributions } = spreadOf(parts);
  return {
    aim: { value, plusMinus },
    least,
    most,
    reach: reachOf(valve, along(least), along(value), along(most), 0),
    set: range.least + settingNear(valve, along(value), 0).position,
    isPlanned,
    contributions,
  };
}

/**
 * How the aim moves with each input: dP/dq = ∂P/∂F·dF/dq + ∂P/∂s·ds/dq + ∂P/∂q, the last by the struts' own figures; by
 * differences, since the pressure is closed arithmetic. The pressure found moves it through the weighing only: what it
 * bears in the demand, it has in the strut.
 */
function partsOf(
  parameters: Parameters,
  prepared: Prepared,
  name: EndName,
  { springForce, stroke }: Demand,
  slopes: readonly DemandSlope[],
  directions: readonly Direction[],
): readonly SpreadPart[] {
  const { struts } = prepared.machine[name];
  const pressure = (force: number, s: number): number => pressureFor(struts, force, s);
  const byForce = pressure(springForce + 1, stroke) - pressure(springForce, stroke);
  const byStroke = (pressure(springForce, stroke + STEP) - pressure(springForce, stroke - STEP)) / (2 * STEP);
  const parts = new Map<string, SpreadPart>(
    slopes.map(({ input, force, stroke: s }) => [
      input.name,
      { input, slope: byForce * force + byStroke * s },
    ]),
  );
  const figures = figuresOf(parameters);
  for (const direction of directions) {
    if (!(direction.step > 0)) continue;
    const moved = (by: number): number => {
      moveFrom(parameters, prepared, direction, figures, by);
      return pressureFor(prepared.machine[name].struts, springForce, stroke);
    };
    const own = (moved(direction.step) - moved(-direction.step)) / (2 * direction.step);
    restore(parameters, prepared, direction, figures);
    const { input } = direction;
    parts.set(input.name, { input, slope: (parts.get(input.name)?.slope ?? 0) + own });
  }
  return [...parts.values()];
}

const STEP = 1e-6;
