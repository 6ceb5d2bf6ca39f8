import { deviationOf } from '@sagwright/model/uncertainty/spread';
import { type Origin, type Quantity, siOf } from '@sagwright/records/schema/quantity';
import { type Dimension, differenceToSI, dimensionOf, toSI, type Unit } from '@sagwright/records/units';
import { type AssumptionName, asQuantity, assumptions } from './assumptions.ts';
import { defaultWidth, type ReadingKind } from './widths.ts';

/** A figure that went into the sum: typed or assumed, with its ± in SI, and why the ± is what it is. */
export interface UsedFigure {
  readonly path: string;
  /** SI. */
  readonly value: number;
  readonly halfWidth: number;
  readonly deviation: number;
  readonly dimension: Dimension;
  /** As it stands in the job; null where it is assumed. */
  readonly typed: Quantity | null;
  readonly origin: Origin | 'assumed' | 'not said';
  /** Where the ± comes from: typed, the default of that kind of reading, or the assumption. */
  readonly width: 'typed' | 'default' | 'assumed';
  /** Why it is assumed, and as what; also of a usual figure that stands in the job. */
  readonly assumed: { readonly unit: Unit; readonly why: string } | null;
}

/** Takes figures out of a job: units come off here, once, and every figure is noted with its ±. */
export interface Take {
  /** A typed figure. */
  readonly known: (path: string, typed: Quantity, kind: ReadingKind) => number;
  /** A typed figure, or the assumption that stands in for it. */
  readonly orAssumed: (
    path: string,
    typed: Quantity | undefined,
    kind: ReadingKind,
    assumption: AssumptionName,
  ) => number;
  /** A figure worked out by us, with its own ± in SI: an assumption that hangs on others, a fit, a material. */
  readonly workedOut: (
    path: string,
    value: number,
    halfWidth: number,
    dimension: Dimension,
    unit: Unit,
    why: string,
  ) => number;
  readonly figures: ReadonlyMap<string, UsedFigure>;
}

export function takeFrom(): Take {
  const figures = new Map<string, UsedFigure>();
  const note = (figure: UsedFigure): number => {
    figures.set(figure.path, figure);
    return figure.value;
  };
  return {
    figures,
    known: (path, typed, kind) => note(typedFigure(path, typed, kind)),
    orAssumed: (path, typed, kind, assumption) =>
      note(typed === undefined ? assumedFigure(path, assumption) : typedFigure(path, typed, kind)),
    workedOut: (path, value, halfWidth, dimension, unit, why) =>
      note({
        path,
        value,
        halfWidth,
        deviation: deviationOf(halfWidth, 'normal'),
        dimension,
        typed: null,
        origin: 'assumed',
        width: 'assumed',
        assumed: { unit, why },
      }),
  };
}

/**
 * Takes the figures that were taken before once more, with the one at `moved` off by `by` (SI): so that what a figure moves
 * is found by taking everything again; none is off where none is named. Nothing is noted.
 */
export function takeAgain(figures: ReadonlyMap<string, UsedFigure>, moved = '', by = 0): Take {
  const again = (path: string): number => figures.get(path)!.value + (path === moved ? by : 0);
  return {
    figures,
    known: again,
    orAssumed: again,
    workedOut: (path, value) => (path === moved ? value + by : value),
  };
}

/** Takes as `take` does, and writes down the path of each figure that was taken. */
export function noting(take: Take, taken: Set<string>): Take {
  return {
    figures: take.figures,
    known: (path, ...rest) => {
      taken.add(path);
      return take.known(path, ...rest);
    },
    orAssumed: (path, ...rest) => {
      taken.add(path);
      return take.orAssumed(path, ...rest);
    },
    workedOut: (path, ...rest) => {
      taken.add(path);
      return take.workedOut(path, ...rest);
    },
  };
}

/** Why a figure of the job counts as assumed that stands in it: the schema asks for it, and nobody has read it. */
const USUAL = "a usual figure, not read on this machine; the job's note tells where it comes from";

/** The ± that was typed with a figure, in SI; null where none was. */
export function halfWidthTyped(typed: Quantity): number | null {
  return typed.plusMinus === undefined ? null : widthInSI(typed.plusMinus, siOf(typed));
}

function typedFigure(path: string, typed: Quantity, kind: ReadingKind): UsedFigure {
  const value = toSI(typed.value, typed.unit);
  const usual = defaultWidth(kind, typed.origin);
  const width = widthInSI(typed.plusMinus ?? usual, value);
  const typedLaw = typed.origin === 'plate' ? 'rectangular' : 'normal';
  const deviation = deviationOf(width, typed.plusMinus === undefined ? usual.law : typedLaw);
  return {
    path,
    value,
    halfWidth: width,
    deviation,
    dimension: dimensionOf(typed.unit),
    typed,
    origin: typed.origin ?? 'not said',
    width: typed.plusMinus === undefined ? 'default' : 'typed',
    assumed: typed.origin === 'usual' ? { unit: typed.unit, why: USUAL } : null,
  };
}

function assumedFigure(path: string, name: AssumptionName): UsedFigure {
  const { unit, why } = assumptions[name];
  const quantity = asQuantity(assumptions[name]);
  const value = toSI(quantity.value, quantity.unit);
  const halfWidth = widthInSI(assumptions[name].plusMinus, value);
  return {
    path,
    value,
    halfWidth,
    deviation: deviationOf(halfWidth, 'normal'),
    dimension: dimensionOf(unit),
    typed: null,
    origin: 'assumed',
    width: 'assumed',
    assumed: { unit, why },
  };
}

/** A ± beside its value (SI), in SI. */
export function widthInSI(
  width: { readonly value: number; readonly unit: Unit | '%' },
  value: number,
): number {
  return width.unit === '%' ? (Math.abs(value) * width.value) / 100 : differenceToSI(width.value, width.unit);
}
