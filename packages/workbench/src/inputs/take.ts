import { deviationOf, halfWidthOf } from '@sagwright/model/uncertainty/spread';
import type { Origin, Quantity } from '@sagwright/records/schema/quantity';
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
  /** Why it is assumed, and as what. */
  readonly assumed: { readonly unit: Unit; readonly why: string } | null;
}

/**
 * Takes figures out of a job: units come off here, once. Every figure is noted with its ±; while a shift is under way, the
 * one it names comes out moved by it (SI), so that what an input moves is found by taking everything again.
 */
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

export interface Shift {
  readonly path: string;
  readonly by: number;
}

export function takeFrom(shift: Shift | null): Take {
  const figures = new Map<string, UsedFigure>();
  const note = (figure: UsedFigure): number => {
    figures.set(figure.path, figure);
    return shift?.path === figure.path ? figure.value + shift.by : figure.value;
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

function typedFigure(path: string, typed: Quantity, kind: ReadingKind): UsedFigure {
  const value = toSI(typed.value, typed.unit);
  const base = {
    path,
    value,
    dimension: dimensionOf(typed.unit),
    typed,
    origin: typed.origin ?? 'not said',
    assumed: null,
  } as const;
  if (typed.plusMinus !== undefined) {
    const halfWidth = widthInSI(typed.plusMinus, value);
    const law = typed.origin === 'plate' ? 'rectangular' : 'normal';
    return { ...base, halfWidth, deviation: deviationOf(halfWidth, law), width: 'typed' };
  }
  const usual = defaultWidth(kind, typed.origin);
  const deviation = deviationOf(widthInSI(usual, value), usual.law);
  return { ...base, halfWidth: halfWidthOf(deviation), deviation, width: 'default' };
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

function widthInSI(width: { readonly value: number; readonly unit: Unit | '%' }, value: number): number {
  return width.unit === '%' ? (Math.abs(value) * width.value) / 100 : differenceToSI(width.value, width.unit);
}
