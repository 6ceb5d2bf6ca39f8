import type { Origin } from '@sagwright/records/schema/quantity';
import type { Unit } from '@sagwright/records/units';

/** A ± that stands in where nobody typed one: 90 % half-width, and the law it follows. */
export interface Width {
  readonly value: number;
  readonly unit: Unit | '%';
  readonly law: 'normal' | 'rectangular';
}

/** What kind of reading a figure is: it tells how far it can be off. */
export type ReadingKind = keyof typeof widths;

const mm = (value: number): Width => ({ value, unit: 'mm', law: 'normal' });
const kg = (value: number): Width => ({ value, unit: 'kg', law: 'normal' });
const percent = (value: number): Width => ({ value, unit: '%', law: 'normal' });

interface Widths {
  readonly usual: Width;
  readonly by?: Readonly<Partial<Record<Origin, Width>>>;
  readonly why: string;
}

/**
 * Default ± by kind of reading and by where it comes from. Common practice, no source, but where `why` says otherwise.
 * A plate gives rounded figures, so its law is rectangular.
 */
export const widths = {
  scale: {
    usual: kg(2),
    by: {
      'own scale': kg(1),
      plate: { value: 3, unit: 'kg', law: 'rectangular' },
      told: kg(5),
      memory: kg(6),
    },
    why: 'a platform scale repeats to about a kilogram; what is told or remembered is not this machine today',
  },
  person: {
    usual: kg(3),
    by: { 'own scale': kg(1), memory: kg(5) },
    why: 'people tell their weight without boots, helmet and jacket',
  },
  item: {
    usual: kg(1),
    by: { 'own scale': kg(0.5), memory: kg(2) },
    why: 'luggage is guessed by lifting it',
  },
  fuel: { usual: { value: 1, unit: 'l', law: 'normal' }, why: 'a gauge or a look into the tank' },
  geometry: {
    usual: mm(8),
    by: { 'own tape': mm(5), manual: mm(4), catalogue: mm(6), memory: mm(20) },
    why: 'a tape along a whole machine, or a rounded sheet',
  },
  angle: { usual: { value: 0.5, unit: 'deg', law: 'normal' }, why: 'sheets round to half a degree or less' },
  offset: { usual: mm(3), why: 'read off a drawing or a triple clamp' },
  riderPlace: { usual: mm(40), why: 'people sit differently' },
  passengerPlace: { usual: mm(50), why: 'people sit differently, passengers more so' },
  luggagePlace: { usual: mm(30), why: 'where the weight lies in a case' },
  placeHeight: { usual: mm(50), why: 'the middle of a person or a packed case is guessed' },
  massCentre: { usual: mm(50), why: 'seldom measured; from an axle raise about ± 20 mm' },
  stated: { usual: percent(0), why: 'what is asked about is taken as it stands' },
  beam: { usual: mm(30), why: 'the edge of a beam on a wall is soft' },
  beamDistance: { usual: percent(1), why: 'a tape laid along the ground' },
  tyrePressure: {
    usual: { value: 0.1, unit: 'bar', law: 'normal' },
    why: 'gauges of a workshop differ by about a tenth of a bar',
  },
  unsprung: {
    usual: percent(15),
    by: { 'own scale': percent(4) },
    why: 'wheel, tyre, brake and half the arm, added up',
  },
  tyreRadius: { usual: mm(5), by: { 'own tape': mm(3) }, why: 'follows tyre, wear and pressure' },
  tyreRate: { usual: percent(15), why: 'follows tyre and pressure' },
  ratio: {
    usual: percent(3),
    by: { 'own tape': percent(4), memory: percent(8) },
    why: 'two tapes over one travel',
  },
  tape: { usual: mm(1), why: 'a tape read by one person' },
  forkTape: { usual: mm(2), why: 'the dust seal smears the edge that is read' },
  hardPoint: {
    usual: mm(2),
    by: { manual: mm(1), catalogue: mm(1), memory: mm(10) },
    why: 'a place comes of two or three lengths pin to pin, each taped to about a millimetre',
  },
  stroke: {
    usual: mm(1.5),
    by: { catalogue: mm(1), memory: mm(5) },
    why: 'measured on the bench, or a sheet',
  },
  springRate: {
    usual: percent(5),
    by: { 'own scale': percent(2), 'own log': percent(2), memory: percent(10), told: percent(8) },
    why: 'marked, not tested: springs marked 400 lbf/in were found at 376 to 425',
  },
  springPoint: { usual: percent(2), why: 'a spring tester, ends avoided' },
  springLength: {
    usual: mm(1),
    by: { catalogue: mm(2), memory: mm(5) },
    why: 'calipers on a free spring; sheets round',
  },
  collar: { usual: mm(0.5), by: { memory: mm(3), told: mm(2) }, why: 'calipers between two faces' },
  lead: { usual: percent(0.5), by: { memory: percent(5) }, why: 'counted over ten turns' },
  threadEngaged: { usual: mm(1), why: 'what shows of a thread, and what its nut hides' },
  threadDiameter: { usual: { value: 0.1, unit: 'mm', law: 'normal' }, why: 'calipers over the crests' },
  caliper: {
    usual: mm(0.1),
    by: { catalogue: mm(0.2), told: mm(0.5), memory: mm(1) },
    why: 'calipers on a bolt, in an eye or over a sleeve',
  },
  gasPressure: { usual: percent(10), why: 'a gauge takes some of a small charge with it, and it warms' },
  airPressure: {
    usual: { value: 0.05, unit: 'bar', law: 'normal' },
    by: {
      memory: { value: 0.5, unit: 'bar', law: 'normal' },
      told: { value: 0.3, unit: 'bar', law: 'normal' },
    },
    why: 'a gauge of small range; what it loses is told apart',
  },
  airVolume: { usual: percent(10), why: 'filled with oil and measured, or from a sheet' },
  gasVolume: { usual: percent(20), why: 'seldom on a sheet' },
  shaft: { usual: { value: 0.1, unit: 'mm', law: 'normal' }, why: 'calipers' },
  tube: { usual: { value: 0.2, unit: 'mm', law: 'normal' }, why: 'calipers' },
  oil: { usual: { value: 5, unit: 'ml', law: 'normal' }, why: 'a measuring cup, and what stays in the leg' },
  displaced: { usual: percent(15), why: 'by weight, or by what it raises in a measuring cup' },
  temperature: { usual: { value: 3, unit: 'C', law: 'normal' }, why: 'a thermometer in the workshop' },
  airGap: { usual: mm(3), why: 'oil level in a tube' },
  rubberRate: { usual: percent(25), why: 'rubber, seldom on a sheet' },
  rubberStart: { usual: mm(2), why: 'where rubber begins to bear' },
  topOut: { usual: percent(15), why: 'a short spring inside, seldom on a sheet' },
  friction: { usual: percent(40), why: 'follows temperature, side load and wear' },
  wire: { usual: { value: 0.05, unit: 'mm', law: 'normal' }, why: 'calipers over paint' },
  pitch: { usual: mm(0.3), why: 'calipers from coil to coil of a free spring, the mean of a few' },
  coilDiameter: { usual: { value: 0.3, unit: 'mm', law: 'normal' }, why: 'calipers over two coils' },
} as const satisfies Readonly<Record<string, Widths>>;

/** The ± of a reading of this kind that came without one. */
export function defaultWidth(kind: ReadingKind, origin: Origin | undefined): Width {
  const { usual, by } = widths[kind] as Widths;
  return (origin === undefined ? undefined : by?.[origin]) ?? usual;
}
