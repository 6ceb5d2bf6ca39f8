import { airLeft, bareGap, gapWithOil, immersedVolume } from '@sagwright/model/dampers/airGap';
import { forkAir, type GasSI } from '@sagwright/model/dampers/gas';
import { ATMOSPHERE } from '@sagwright/model/statics/machine';
import type { Fork, TrappedAir } from '@sagwright/records/schema/fork';
import { type Desk, impossible, note } from './desk.ts';
import { sidesOf } from './sides.ts';
import { columnInLeg } from './springStack.ts';
import { wireVolume } from './springs.ts';
import { circle, SETTLED } from './struts.ts';

const PATH = 'machine.front.fork.air';

/** The air of a leg fully in must be so much of what its stroke sweeps at least: below it no sum is worth anything. */
const LEAST_SHARE = 0.05;

/** Air of each fork leg; assumed where nobody said, null where there is none. */
export function legAir(desk: Desk, fork: Fork | undefined, stroke: number): GasSI | null {
  if (fork?.air === 'none') return null;
  const { bore, seal, gap, solid } = legLevel(desk, fork, stroke);
  const air = airLeft(bore, gap, solid);
  if (!(air > LEAST_SHARE * seal * stroke)) {
    impossible(
      desk,
      `${PATH}.gap`,
      `Air gap: with what stands in the leg ${(air * 1e6).toFixed(0)} ml of air are left fully in, of ${((air + seal * stroke) * 1e6).toFixed(0)} ml fully out; the oil would lock the leg before it is in. Check the gap, what was in the leg when it was read, and the volumes.`,
    );
    return null;
  }
  return forkAir(bore, seal, air / bore, stroke, pressureOf(desk, fork?.air), 1);
}

/** How a leg is filled: its sections [m²], the air gap with nothing in it [m], and what stands in it [m³]. */
export interface LegLevel {
  readonly bore: number;
  readonly seal: number;
  readonly gap: number;
  readonly solid: number;
}

/** The level of each leg as it is now, however its gap was read. */
export function legLevel(desk: Desk, fork: Fork | undefined, stroke: number): LegLevel {
  const { take } = desk;
  const typed = fork?.air === 'none' ? undefined : fork?.air;
  const sections = sectionsOf(desk, fork);
  const { bore } = sections;
  const read = take.orAssumed(`${PATH}.gap`, typed?.gap, 'airGap', 'airGap');
  if (fork === undefined || typed === undefined) return { ...sections, gap: read, solid: 0 };
  const { spring, spacer } = volumesOf(desk, typed);
  const bare = bareGap(read, bore, immersedOf(desk, fork, typed, { spring, spacer, gap: read, stroke }));
  const { oil } = typed;
  const more =
    oil === undefined
      ? 0
      : take.known(`${PATH}.oil.filled`, oil.filled, 'oil') -
        take.known(`${PATH}.oil.gapIsFor`, oil.gapIsFor, 'oil');
  return { ...sections, gap: gapWithOil(bare, bore, more), solid: spring + spacer };
}

/**
 * What spring and spacer displace [m³]: as typed, a spring also by its wire. Where the gap was read with them in the leg they are
 * assumed if nobody said; read with neither they are left out, which is said: the air then counts as more than it is.
 */
function volumesOf(desk: Desk, air: TrappedAir): { readonly spring: number; readonly spacer: number } {
  const { take } = desk;
  const stood = air.readWith !== undefined && air.readWith !== 'nothing';
  const of = (name: 'springVolume' | 'spacerVolume'): number => {
    const typed = air[name];
    if (typed === undefined && !stood) return 0;
    return take.orAssumed(`${PATH}.${name}`, typed, 'displaced', name);
  };
  const byWire = air.springVolume === undefined ? fittedWireVolume(desk) : null;
  if (!stood && air.springVolume === undefined && byWire === null) {
    note(desk, 'spring volume not known', PATH);
  }
  return { spring: byWire ?? of('springVolume'), spacer: of('spacerVolume') };
}

/** What the first fitted spring displaces, where it was measured as a coil [m³]. */
function fittedWireVolume(desk: Desk): number | null {
  const setting = desk.job.setups.asFound.front;
  if (setting === undefined) return null;
  const { spring } = sidesOf(setting, 2)[0]!.side;
  return wireVolume(desk, spring, desk.job.springs[spring]!);
}

interface InLeg {
  readonly spring: number;
  readonly spacer: number;
  readonly gap: number;
  readonly stroke: number;
}

/** How much of what stood in the leg was under oil when the gap was read [m³]; from the stack where that is known. */
function immersedOf(
  desk: Desk,
  fork: Fork,
  { readWith }: TrappedAir,
  { spring, spacer, gap, stroke }: InLeg,
): number {
  if (readWith === undefined || readWith === 'nothing') return 0;
  const stood = {
    spring: readWith === 'spacer' ? 0 : spring,
    spacer: readWith === 'spring' ? 0 : spacer,
  };
  const column = columnInLeg(desk, fork);
  if (column !== null) {
    const parts = [
      { volume: stood.spring, length: column.spring },
      ...(column.spacer > 0 ? [{ volume: stood.spacer, length: column.spacer }] : []),
    ];
    return immersedVolume(parts, column.room - stroke - gap);
  }
  const why = 'of what stood in the leg when the gap was read, 90 % are taken to have been under oil';
  const under = desk.take.workedOut(`${PATH}.under`, 0.9, 0.1, 'share', '%', why);
  return under * (stood.spring + stood.spacer);
}

/** How much thinner a tube is inside than outside, twice its wall [m]; and how much wider the thick tube's bore than the thin tube in it. */
const walls = {
  conventional: { bore: -0.004, plusMinus: 0.0015, why: "a tube's walls are 1.5 to 2.5 mm thick" },
  inverted: {
    bore: 0.003,
    plusMinus: 0.002,
    why: 'the thick tube runs 1 to 2 mm clear of the thin one all round',
  },
} as const;

/**
 * Sections of the bore that the oil stands in and of the seal that the leg sweeps [m²]. In both builds the seal runs on the outside
 * of the thin tube; the level is read in its bore where the clamps hold it, in the thick tube's bore where they hold that. Known one
 * of the two, the build tells the other; else one stands for both, which is said.
 */
function sectionsOf(desk: Desk, fork: Fork | undefined): { readonly bore: number; readonly seal: number } {
  const { take } = desk;
  const typed = fork?.air === 'none' ? undefined : fork?.air;
  const bore = typed?.bore === undefined ? null : take.known(`${PATH}.bore`, typed.bore, 'tube');
  const seal = typed?.seal === undefined ? null : take.known(`${PATH}.seal`, typed.seal, 'tube');
  if (bore !== null && seal !== null) return { bore: circle(bore), seal: circle(seal) };
  if (fork?.tubes === undefined) {
    note(desk, 'one diameter for bore and seal', PATH);
    const one = bore ?? seal ?? take.orAssumed(`${PATH}.bore`, undefined, 'tube', 'forkBore');
    return { bore: circle(one), seal: circle(one) };
  }
  const { bore: wider, plusMinus, why } = walls[fork.tubes];
  const other = (name: 'bore' | 'seal', value: number): number =>
    take.workedOut(`${PATH}.${name}`, value, plusMinus, 'length', 'mm', why);
  if (bore !== null) return { bore: circle(bore), seal: circle(other('seal', bore - wider)) };
  const known = seal ?? take.orAssumed(`${PATH}.seal`, undefined, 'tube', 'forkBore');
  return { bore: circle(other('bore', known + wider)), seal: circle(known) };
}

/** Pressure of the air fully out as the machine stands [Pa, absolute]: closed at another temperature it is another. */
function pressureOf({ take }: Desk, air: Exclude<Fork['air'], 'none'>): number {
  const gauge = air?.pressure === undefined ? 0 : take.known(`${PATH}.pressure`, air.pressure, 'gasPressure');
  const closed =
    air?.temperature === undefined
      ? SETTLED
      : take.known(`${PATH}.temperature`, air.temperature, 'temperature');
  return (gauge + ATMOSPHERE) * (SETTLED / closed);
}
