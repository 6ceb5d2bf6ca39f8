import type { Quantity } from '@sagwright/records/schema/quantity';
import type { Unit } from '@sagwright/records/units';

/** A figure that nobody gave: named, with a wide ± and the reason for it. It is shown wherever it matters. */
export interface Assumption {
  readonly value: number;
  readonly unit: Unit;
  readonly plusMinus: { readonly value: number; readonly unit: Unit | '%' };
  readonly why: string;
}

export type AssumptionName = keyof typeof assumptions;

const assume = <U extends Unit>(
  value: number,
  unit: U,
  plusMinus: number,
  of: U | '%',
  why: string,
): Assumption => ({ value, unit, plusMinus: { value: plusMinus, unit: of }, why });

/** Figures for a heavy two-seated machine on conventional suspension. Common practice, no source, unless `why` names one. */
export const assumptions = {
  wheelbase: assume(1600, 'mm', 90, 'mm', 'tourers measure 1500 to 1700 mm between the axles'),
  rake: assume(28, 'deg', 3, 'deg', 'road machines have 24 to 32 degrees'),
  massCentreHeight: assume(510, 'mm', 60, 'mm', 'the mass centre of a machine alone lies 450 to 570 mm high'),
  tyreRadiusRear: assume(318, 'mm', 20, 'mm', 'road tyres measure 300 to 335 mm to the axle'),
  tyreRadiusFront: assume(312, 'mm', 20, 'mm', 'road tyres measure 295 to 330 mm to the axle'),
  tyreRateRear: assume(185, 'N/mm', 30, 'N/mm', 'touring tyres at their pressure give 150 to 220 N/mm'),
  tyreRateFront: assume(170, 'N/mm', 30, 'N/mm', 'touring tyres at their pressure give 140 to 200 N/mm'),
  rearStroke: assume(70, 'mm', 12, 'mm', 'shocks of tourers stroke 55 to 85 mm'),
  gasPressure: assume(10, 'bar', 6, 'bar', 'charged dampers hold 4 to 16 bar'),
  gasShaft: assume(12.5, 'mm', 1.5, 'mm', 'shafts measure 10 to 14 mm'),
  gasVolume: assume(60, 'ml', 25, 'ml', 'gas spaces of road shocks hold 35 to 90 ml'),
  twinTubePressure: assume(1.5, 'bar', 1.5, 'bar', 'twin-tube dampers hold 0 to 3 bar, if any (from memory)'),
  reservoirVolume: assume(
    110,
    'ml',
    40,
    'ml',
    'dampers with a reservoir have room for 70 to 150 ml of gas (from memory)',
  ),
  rearFriction: assume(30, 'N', 20, 'N', 'a sound shock moves at 10 to 50 N'),
  forkStroke: assume(117, 'mm', 12, 'mm', 'tourer forks stroke 105 to 130 mm'),
  forkSpringRate: assume(10, 'N/mm', 1.5, 'N/mm', 'tourer fork springs give 8.5 to 12 N/mm each'),
  forkPreload: assume(20, 'mm', 10, 'mm', 'fork springs are fitted 10 to 35 mm shorter than free'),
  forkBore: assume(41, 'mm', 2, 'mm', 'fork tubes of heavy machines measure 39 to 43 mm'),
  brakesMass: assume(3, 'kg', 1.5, 'kg', 'two calipers with brackets weigh 1 to 2.5 kg each'),
  tubesMass: assume(6.5, 'kg', 2.5, 'kg', 'lower tubes with what moves in them weigh 2 to 4.5 kg a leg'),
  thickTubesMass: assume(
    7.5,
    'kg',
    2,
    'kg',
    'thick lower tubes of a conventional fork, with damper, oil and half of the spring, weigh 3 to 4.5 kg a leg',
  ),
  thinTubesMass: assume(
    5.5,
    'kg',
    2,
    'kg',
    'thin lower tubes of an inverted fork, with axle clamp and half of the spring, weigh 2 to 3.5 kg a leg',
  ),
  guardMass: assume(1.2, 'kg', 0.8, 'kg', 'front mudguards weigh 0.5 to 2 kg and mostly move with the wheel'),
  airGap: assume(125, 'mm', 25, 'mm', 'fork air gaps lie between 90 and 160 mm'),
  springVolume: assume(60, 'ml', 20, 'ml', 'the steel of a fork spring displaces 40 to 80 ml'),
  spacerVolume: assume(15, 'ml', 10, 'ml', 'spacers displace 5 to 25 ml'),
  forkFriction: assume(70, 'N', 40, 'N', 'a sound fork moves at 30 to 110 N, both legs'),
  preloadAtZero: assume(0, 'mm', 5, 'mm', 'the adjuster just touches the spring at its loosest end'),
  freeLengthDifference: assume(0, 'mm', 5, 'mm', 'as long as the fitted spring'),
  fuelDensity: assume(
    0.745,
    'kg',
    0.02,
    'kg',
    'petrol weighs 0.72 to 0.775 kg a litre (EN 228, from memory)',
  ),
  tankX: assume(950, 'mm', 80, 'mm', 'tanks lie a little ahead of the middle'),
  tankHeight: assume(830, 'mm', 60, 'mm', 'tanks lie above the engine'),
  addedHeight: assume(950, 'mm', 120, 'mm', 'people and luggage together lie 800 to 1100 mm high'),
} as const satisfies Readonly<Record<string, Assumption>>;

/** Unsprung mass as a share of what the scales read, where nobody gave it: wheel, tyre, brake and what moves with them. */
export const unsprungShare = {
  rear: { share: 0.09, why: 'about 9 % of a machine moves with its rear wheel (7 to 11 %)' },
  front: { share: 0.07, why: 'about 7 % of a machine moves with its front wheel (5.5 to 9 %)' },
  conventional: {
    share: 0.07,
    why: 'about 7 % of a machine moves with its front wheel (5.5 to 9 %): wheel, brake and the thick tubes, oil and half of the springs in them',
  },
  inverted: {
    share: 0.065,
    why: 'about 6.5 % of a machine moves with its front wheel (5 to 8.5 %): wheel, brake and the thin tubes with half of the springs; the thick tubes stand still',
  },
  plusMinus: { value: 25, unit: '%' },
} as const;

/** Where the mass centre of what sits or lies at a place is, as a share of the wheelbase from the rear axle, and its height. */
export const placeAt = {
  'rider seat': {
    share: 0.34,
    height: 970,
    width: 60,
    why: 'riders of tourers sit about a third of the wheelbase ahead of the rear axle',
  },
  'passenger seat': {
    share: 0.1,
    height: 1070,
    width: 70,
    why: 'passengers sit a little ahead of the rear axle',
  },
  'rear box': { share: -0.2, height: 930, width: 70, why: 'rear boxes lie behind the rear axle' },
  'side cases': { share: -0.03, height: 620, width: 60, why: 'side cases hang about the rear axle' },
  rack: { share: -0.2, height: 850, width: 80, why: 'racks lie behind the rear axle' },
  'tank bag': { share: 0.56, height: 1050, width: 60, why: 'tank bags lie on the tank' },
  other: {
    share: 0,
    height: 800,
    width: 300,
    why: 'nobody said where it is: above the rear axle, give or take',
  },
} as const;

/** An assumption as a quantity, so that it goes the same way as a typed one. */
export function asQuantity(assumption: Assumption): Quantity {
  return { value: assumption.value, unit: assumption.unit, plusMinus: assumption.plusMinus } as Quantity;
}
