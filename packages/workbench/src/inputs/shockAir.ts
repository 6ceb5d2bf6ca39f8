import type { GasSI } from '@sagwright/model/dampers/gas';
import type { PressureRangeSI } from '@sagwright/model/plan/question';
import type { SettingDoubt } from '@sagwright/model/plan/settingDoubt';
import { ATMOSPHERE } from '@sagwright/model/statics/machine';
import type { ShockAir } from '@sagwright/records/schema/struts';
import { differenceToSI } from '@sagwright/records/units';
import { type Desk, impossible } from './desk.ts';
import { circle } from './struts.ts';
import { widths } from './widths.ts';

const PATH = 'machine.rear.shock.air';

/** Where the ± that the gauge's own loss gives is noted. */
export const GAUGE_LOSS = `${PATH}.gaugeLoss`;

/** Where what is uncertain about setting a pressure is noted: what the gauge shows then, and what it takes with it. */
const SET_READING = `${PATH}.set`;
export const SET_LOSS = `${PATH}.setLoss`;

/** What a gauge with its hose holds where nobody measured it [m³]: 2 ml, common practice, no source. */
const USUAL_GAUGE = 2e-6;

/** A loss that no gauge shows [Pa]. */
const NO_LOSS = 1;
/** The same as a share of what it shows. */
const NO_SHARE = 1e-5;

/** To what hands set a pressure [Pa]: a twentieth of a bar, common practice, no source. */
const HANDS = 5000;

/**
 * The pressure spring of a shock; null where it has none. Read at a stroke, it was so much less fully out:
 *   P0 = P (V0 − A s)/V0
 * A gauge takes (P − P_atm) v/V of the pressure with it: what stood in the shock before may have been more by so much, which is ±.
 */
export function shockAir(desk: Desk, air: ShockAir | undefined, stroke: number): GasSI | null {
  if (air === undefined) return null;
  const { area, volume, there } = sizeOfAir(desk, air);
  const gauge = desk.take.known(`${PATH}.pressure`, air.pressure, 'airPressure');
  const before = gauge + lost(desk, air, gauge, there);
  if (!(volume > 1.02 * area * stroke)) {
    impossible(
      desk,
      `${PATH}.volume`,
      `Air of the shock: ${(volume * 1e6).toFixed(1)} ml, but its stroke, typed or assumed, takes up ${(area * stroke * 1e6).toFixed(1)} ml; some air must be left. Is it the volume with the shock fully out?`,
    );
    return null;
  }
  return { area, volume, pressure: ((before + ATMOSPHERE) * there) / volume, exponent: 1 };
}

/** Section that the stroke sweeps [m²], volume fully out [m³], and that where its pressure is read. */
function sizeOfAir(
  { take }: Desk,
  { diameter, volume: typed, readAt }: ShockAir,
): { readonly area: number; readonly volume: number; readonly there: number } {
  const area = circle(take.known(`${PATH}.diameter`, diameter, 'tube'));
  const volume = take.known(`${PATH}.volume`, typed, 'airVolume');
  const stroke = readAt === undefined ? 0 : take.known(`${PATH}.readAt`, readAt, 'tape');
  return { area, volume, there: volume - area * stroke };
}

/** 0, with what the gauge takes as its ±. */
function lost(desk: Desk, air: ShockAir, gauge: number, volume: number): number {
  const { take } = desk;
  const held = heldByGauge(desk, air);
  const why = lossWords(held);
  const loss = (gauge * held) / volume;
  return loss < NO_LOSS ? 0 : take.workedOut(GAUGE_LOSS, 0, loss, 'pressure', 'bar', why);
}

function heldByGauge({ take }: Desk, { gauge }: ShockAir): number {
  return gauge === undefined ? USUAL_GAUGE : take.known(`${PATH}.gauge`, gauge, 'gasVolume');
}

function lossWords(held: number): string {
  return `a gauge and hose of ${(held * 1e6).toFixed(1)} ml take so much with them`;
}

/** The range that its pressure may be set in, as it is fully out; null where the shock has no air that is set. */
export function pressureRange(desk: Desk): PressureRangeSI | null {
  const { air } = desk.job.machine.rear.shock;
  if (air === undefined) return null;
  const { take } = desk;
  const { volume, there } = sizeOfAir(desk, air);
  const fullyOut = (gauge: number): number => ((gauge + ATMOSPHERE) * there) / volume;
  return {
    least: fullyOut(take.known(`${PATH}.least`, air.least, 'airPressure')),
    most: fullyOut(take.known(`${PATH}.most`, air.most, 'airPressure')),
    step: HANDS,
    ...settingDoubt(desk, air, volume),
  };
}

/** What is uncertain about a pressure that hands set fully out: what the gauge shows, and the share v/V that it takes of it. */
function settingDoubt(desk: Desk, air: ShockAir, volume: number): Pick<PressureRangeSI, 'reading' | 'loss'> {
  const { take } = desk;
  const { value, unit } = widths.airPressure.usual;
  const width = differenceToSI(value, unit);
  take.workedOut(SET_READING, 0, width, 'pressure', 'bar', widths.airPressure.why);
  const held = heldByGauge(desk, air);
  const share = held / volume;
  const takesSome = share > NO_SHARE;
  if (takesSome) take.workedOut(SET_LOSS, 0, share, 'share', '%', lossWords(held));
  const doubt = (name: string): SettingDoubt => ({ name, deviation: take.figures.get(name)!.deviation });
  return { reading: doubt(SET_READING), loss: takesSome ? doubt(SET_LOSS) : null };
}
