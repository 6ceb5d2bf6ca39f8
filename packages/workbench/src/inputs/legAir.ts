import { airLeft, bareGap, gapWithOil, immersedVolume } from '@sagwright/model/dampers/airGap';
import { forkAir, type GasSI } from '@sagwright/model/dampers/gas';
import { ATMOSPHERE } from '@sagwright/model/statics/machine';
import { airOfLegs, type Fork, type Leg, type LegAir, type TrappedAir } from '@sagwright/records/schema/fork';
import { type Desk, impossible, note } from './desk.ts';
import { sidesOf } from './sides.ts';
import { type ColumnInLeg, columnInLeg } from './springStack.ts';
import { wireVolume } from './springs.ts';
import { circle, SETTLED } from './struts.ts';

const PATH = 'machine.front.fork.air';

/** The air of a leg fully in must be so much of what its stroke sweeps at least: below it no sum is worth anything. */
const LEAST_SHARE = 0.05;

/** The air of each fork leg, told once where both are alike: assumed where nobody said, null where there is none. */
export function legAirs(desk: Desk, fork: Fork | undefined, stroke: number): readonly (GasSI | null)[] {
  return legLevels(desk, fork, stroke).map(({ path, level }) => {
    if (level === null) return null;
    const { bore, seal, gap, solid, pressure } = level;
    const air = airLeft(bore, gap, solid);
    if (air > LEAST_SHARE * seal * stroke) return forkAir(bore, seal, air / bore, stroke, pressure, 1);
    impossible(
      desk,
      `${path}.gap`,
      `Air gap: with what stands in the leg ${(air * 1e6).toFixed(0)} ml of air are left fully in, of ${((air + seal * stroke) * 1e6).toFixed(0)} ml fully out; the oil would lock the leg before it is in. Check the gap, what was in the leg when it was read, and the volumes.`,
    );
    return null;
  });
}

/** How a leg is filled: its sections [m²], the air gap with nothing in it [m], what stands in it [m³], and its air's pressure fully out [Pa]. */
export interface LegLevel {
  readonly bore: number;
  readonly seal: number;
  readonly gap: number;
  readonly solid: number;
  readonly pressure: number;
}

/** The level of each leg as it is now, however its gap was read; told once where both are alike, null where there is no air. */
export function legLevels(
  desk: Desk,
  fork: Fork | undefined,
  stroke: number,
): readonly { readonly leg: Leg; readonly path: string; readonly level: LegLevel | null }[] {
  return airOfLegs(fork?.air).map(({ leg, air, step }) => {
    const path = [PATH, ...step].join('.');
    return { leg, path, level: air === 'none' ? null : levelOf(desk, fork, { leg, air, path, stroke }) };
  });
}

/** One leg, or both alike, as the job tells it. */
interface LegTold {
  readonly leg: Leg;
  readonly air: Exclude<LegAir, 'none'>;
  readonly path: string;
  readonly stroke: number;
}

function levelOf(desk: Desk, fork: Fork | undefined, told: LegTold): LegLevel {
  const { take } = desk;
  const { leg, air, path, stroke } = told;
  const sections = { ...sectionsOf(desk, fork, told), pressure: pressureOf(desk, told) };
  const { bore } = sections;
  const read = take.orAssumed(`${path}.gap`, air?.gap, 'airGap', 'airGap');
  if (fork === undefined || air === undefined) return { ...sections, gap: read, solid: 0 };
  const { spring, spacer } = volumesOf(desk, air, told);
  const under = immersedOf(
    desk,
    { air, path, column: columnInLeg(desk, fork, leg) },
    { spring, spacer, gap: read, stroke },
  );
  const bare = bareGap(read, bore, under);
  const { oil } = air;
  const more =
    oil === undefined
      ? 0
      : take.known(`${path}.oil.filled`, oil.filled, 'oil') -
        take.known(`${path}.oil.gapIsFor`, oil.gapIsFor, 'oil');
  return { ...sections, gap: gapWithOil(bare, bore, more), solid: spring + spacer };
}

/**
 * What spring and spacer displace [m³]: as typed, a spring also by its wire. Where the gap was read with them in the leg they are
 * assumed if nobody said; read with neither they are left out, which is said: the air then counts as more than it is.
 */
function volumesOf(
  desk: Desk,
  air: TrappedAir,
  { leg, path }: LegTold,
): { readonly spring: number; readonly spacer: number } {
  const { take } = desk;
  const stood = air.readWith !== undefined && air.readWith !== 'nothing';
  const of = (name: 'springVolume' | 'spacerVolume'): number => {
    const typed = air[name];
    if (typed === undefined && !stood) return 0;
    return take.orAssumed(`${path}.${name}`, typed, 'displaced', name);
  };
  const byWire = air.springVolume === undefined ? fittedWireVolume(desk, leg) : null;
  if (!stood && air.springVolume === undefined && byWire === null) {
    note(desk, 'spring volume not known', PATH);
  }
  return { spring: byWire ?? of('springVolume'), spacer: of('spacerVolume') };
}

/**
 * What the spring fitted in a leg displaces, where it was measured as a coil [m³]. A fork with one spring does not say in which of
 * its legs that is.
 */
function fittedWireVolume(desk: Desk, leg: Leg): number | null {
  const setting = desk.job.setups.asFound.front;
  if (setting === undefined || (leg !== 'both' && 'single' in setting)) return null;
  const { spring } = sidesOf(setting, 2)[leg === 'right' ? 1 : 0]!.side;
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
  {
    air: { readWith },
    path,
    column,
  }: { readonly air: TrappedAir; readonly path: string; readonly column: ColumnInLeg | null },
  { spring, spacer, gap, stroke }: InLeg,
): number {
  if (readWith === undefined || readWith === 'nothing') return 0;
  const stood = {
    spring: readWith === 'spacer' ? 0 : spring,
    spacer: readWith === 'spring' ? 0 : spacer,
  };
  if (column !== null) {
    const parts = [
      { volume: stood.spring, length: column.spring },
      ...(column.spacer > 0 ? [{ volume: stood.spacer, length: column.spacer }] : []),
    ];
    return immersedVolume(parts, column.room - stroke - gap);
  }
  const why = 'of what stood in the leg when the gap was read, 90 % are taken to have been under oil';
  const under = desk.take.workedOut(`${path}.under`, 0.9, 0.1, 'share', '%', why);
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
function sectionsOf(
  desk: Desk,
  fork: Fork | undefined,
  { air, path }: LegTold,
): { readonly bore: number; readonly seal: number } {
  const { take } = desk;
  const bore = air?.bore === undefined ? null : take.known(`${path}.bore`, air.bore, 'tube');
  const seal = air?.seal === undefined ? null : take.known(`${path}.seal`, air.seal, 'tube');
  if (bore !== null && seal !== null) return { bore: circle(bore), seal: circle(seal) };
  if (fork?.tubes === undefined) {
    note(desk, 'one diameter for bore and seal', PATH);
    const one = bore ?? seal ?? take.orAssumed(`${path}.bore`, undefined, 'tube', 'forkBore');
    return { bore: circle(one), seal: circle(one) };
  }
  const { bore: wider, plusMinus, why } = walls[fork.tubes];
  const other = (name: 'bore' | 'seal', value: number): number =>
    take.workedOut(`${path}.${name}`, value, plusMinus, 'length', 'mm', why);
  if (bore !== null) return { bore: circle(bore), seal: circle(other('seal', bore - wider)) };
  const known = seal ?? take.orAssumed(`${path}.seal`, undefined, 'tube', 'forkBore');
  return { bore: circle(other('bore', known + wider)), seal: circle(known) };
}

/** Pressure of the air fully out as the machine stands [Pa, absolute]: closed at another temperature it is another. */
function pressureOf({ take }: Desk, { air, path }: LegTold): number {
  const gauge = air?.pressure === undefined ? 0 : take.known(`${path}.pressure`, air.pressure, 'gasPressure');
  const closed =
    air?.temperature === undefined
      ? SETTLED
      : take.known(`${path}.temperature`, air.temperature, 'temperature');
  return (gauge + ATMOSPHERE) * (SETTLED / closed);
}
