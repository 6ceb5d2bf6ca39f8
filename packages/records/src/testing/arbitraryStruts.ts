import fc from 'fast-check';
import type { Adjuster, Setting } from '../schema/adjusters.ts';
import type { Fork, SpringStack } from '../schema/fork.ts';
import type { FrontTravel } from '../schema/frontTravel.ts';
import type { Travel } from '../schema/machine.ts';
import type { Quantity } from '../schema/quantity.ts';
import {
  assumedRubbers,
  type LengthAdjuster,
  type Rubber,
  type Shock,
  type ShockAir,
} from '../schema/struts.ts';
import { arbitraryQuantity as quantity, written } from './arbitraryQuantity.ts';

/** What the parts of one strut have in common, in SI, so that they fit each other. */
export interface StrutSize {
  readonly stroke: number;
  /** Eye to eye, fully out. */
  readonly length: number;
  /** Free length of every spring that may be fitted. */
  readonly freeLength: number;
}

export const arbitraryShockSize: fc.Arbitrary<StrutSize> = fc.record({
  stroke: fc.double({ min: 0.045, max: 0.085, noNaN: true }),
  length: fc.double({ min: 0.3, max: 0.38, noNaN: true }),
  freeLength: fc.double({ min: 0.19, max: 0.23, noNaN: true }),
});

export const arbitraryForkSize: fc.Arbitrary<StrutSize> = fc.record({
  stroke: fc.double({ min: 0.11, max: 0.19, noNaN: true }),
  length: fc.double({ min: 0.7, max: 0.8, noNaN: true }),
  freeLength: fc.double({ min: 0.3, max: 0.45, noNaN: true }),
});

/** A shock or a fork leg without its adjuster. */
export function arbitraryShock({
  stroke,
  length,
}: StrutSize): fc.Arbitrary<Omit<Shock, 'adjuster' | 'count'>> {
  return fc.record(
    {
      stroke: fc.constant(mm(stroke)),
      length: fc.constant(mm(length)),
      gas: orNone(
        fc.record(
          {
            shaft: quantity('length', 0.01, 0.016),
            pressure: quantity('pressure', 2e5, 1.6e6),
            volume: quantity('volume', 5e-5, 1.5e-4),
            temperature: quantity('temperature', 275, 310),
          },
          { requiredKeys: ['shaft', 'pressure'] },
        ),
      ),
      build: fc.constantFrom('mono-tube', 'mono-tube with reservoir', 'twin-tube'),
      air: arbitraryAir(stroke),
      rubber: orNone(arbitraryRubber(stroke)),
      topOut: orNone(arbitraryTopOut),
      friction: quantity('force', 0, 120),
      springOver: quantity('length', 0.042, 0.05),
      lengthAdjuster: arbitraryLengthAdjuster,
    },
    { requiredKeys: ['stroke'] },
  );
}

const arbitraryLegAir = orNone(
  fc.record(
    {
      bore: quantity('length', 0.034, 0.042),
      seal: quantity('length', 0.043, 0.05),
      gap: quantity('length', 0.11, 0.16),
      readWith: fc.constantFrom('nothing', 'spring', 'spacer', 'spring and spacer'),
      springVolume: quantity('volume', 3e-5, 5e-5),
      spacerVolume: quantity('volume', 5e-6, 2e-5),
      oil: fc.record({
        filled: quantity('volume', 4.5e-4, 4.6e-4),
        gapIsFor: quantity('volume', 4.5e-4, 4.6e-4),
      }),
      temperature: quantity('temperature', 275, 310),
      pressure: quantity('pressure', 0, 5e4),
    },
    { requiredKeys: ['gap'] },
  ),
);

export function arbitraryFork({ stroke }: StrutSize): fc.Arbitrary<Omit<Fork, 'adjuster'>> {
  return fc.record(
    {
      tubes: fc.constantFrom('conventional', 'inverted'),
      damping: fc.constantFrom<NonNullable<Fork['damping']>>('damping rod', 'cartridge', {
        left: 'cartridge',
        right: 'none',
      }),
      stroke: fc.constant(mm(stroke)),
      air: fc.oneof(
        { arbitrary: arbitraryLegAir, weight: 3 },
        { arbitrary: fc.record({ left: arbitraryLegAir, right: arbitraryLegAir }), weight: 1 },
      ),
      rubber: orNone(arbitraryRubber(stroke)),
      topOut: orNone(arbitraryTopOut),
      friction: quantity('force', 0, 150),
      clampHeight: fc.record(
        { now: quantity('length', 0, 0.03), whenMeasured: quantity('length', 0, 0.03) },
        { requiredKeys: ['now'] },
      ),
    },
    { requiredKeys: ['stroke'] },
  );
}

/** A spacer of 30 mm, a washer or none, and so much room that the spring is 5 mm shorter than free. */
export function arbitraryStack({ freeLength }: StrutSize): fc.Arbitrary<SpringStack> {
  return fc.record(
    {
      room: fc.constant(mm(freeLength + 0.025)),
      readAt: fc.constantFrom('fully out' as const, 'relaxed' as const),
      washers: fc.array(quantity('length', 0.001, 0.003), { minLength: 1, maxLength: 3 }),
      spacer: fc.constant(mm(0.03)),
    },
    { requiredKeys: ['room'] },
  );
}

/** Air of 25 to 40 mm across, with three times the room that it needs. */
function arbitraryAir(stroke: number): fc.Arbitrary<ShockAir> {
  return fc.record(
    {
      diameter: quantity('length', 0.025, 0.04),
      volume: quantity('volume', 0.0025 * stroke, 0.004 * stroke),
      pressure: quantity('pressure', 0, 4e5),
      readAt: quantity('length', 0, 0.4 * stroke),
      least: quantity('pressure', 0, 1e5),
      most: quantity('pressure', 3e5, 8e5),
      gauge: quantity('volume', 0, 3e-6),
    },
    { requiredKeys: ['diameter', 'volume', 'pressure', 'least', 'most'] },
  );
}

const arbitraryLengthAdjuster: fc.Arbitrary<LengthAdjuster> = fc.record(
  {
    change: quantity('length', 0, 0.005),
    least: fc.constant(mm(-0.002)),
    most: fc.constant(mm(0.008)),
    lead: quantity('length', 0.001, 0.002),
    thread: fc.record(
      {
        diameter: quantity('length', 0.01, 0.016),
        engaged: quantity('length', 0.008, 0.03),
        atLeast: fc.constantFrom(1, 1.5),
      },
      { requiredKeys: ['diameter', 'engaged'] },
    ),
    mark: fc.record({ name: fc.constant('ring'), left: quantity('length', -0.002, 0.01) }),
  },
  { requiredKeys: ['change'] },
);

function orNone<T>(part: fc.Arbitrary<T>): fc.Arbitrary<T | 'none'> {
  return fc.oneof(part, fc.constant('none' as const));
}

function arbitraryRubber(stroke: number): fc.Arbitrary<Rubber> {
  const start = quantity('length', 0.6 * stroke, 0.9 * stroke);
  return fc.oneof(
    fc.record(
      { start, rate: quantity('rate', 3e4, 2e5), hardening: quantity('hardening', 0, 4e9) },
      { requiredKeys: ['start', 'rate'] },
    ),
    fc.record({ start, rows: fc.double({ min: 3e4, max: 2e5, noNaN: true }).map(rubberRows) }),
    fc.record({ start, assumed: fc.constantFrom(...assumedRubbers) }, { requiredKeys: ['assumed'] }),
  );
}

/** Four times as hard 9 mm deep as at first touch. */
function rubberRows(rate: number): NonNullable<Rubber['rows']> {
  return [0, 0.003, 0.006, 0.009].map((depth) => ({
    compression: written<'length'>(depth, 'mm'),
    force: written<'force'>(rate * depth * (1 + (depth / 0.009) ** 2), 'N'),
  }));
}

const arbitraryTopOut = fc.record({
  length: quantity('length', 0.005, 0.02),
  rate: quantity('rate', 8e3, 4e4),
});

/** How a wheel moves a shock of this size: one ratio, a table of a bent curve, or the same taped with its misreading. */
export function arbitraryTravel({ stroke, length }: StrutSize): fc.Arbitrary<Travel> {
  const leverage = fc.double({ min: 1, max: 2.8, noNaN: true });
  const bend = fc.double({ min: -0.2, max: 0.2, noNaN: true });
  /** Shock length where `share` of the travel is used: monotone, since its slope is 1 + bend · (2 share − 1). */
  const shockAt = (share: number, bent: number) => length - stroke * (share + bent * share * (share - 1));
  return fc.oneof(
    quantity('leverage', 1, 2.8).map((ratio) => ({ kind: 'leverage' as const, ratio })),
    quantity('motion', 0.36, 1).map((ratio) => ({ kind: 'motion' as const, ratio })),
    fc.tuple(leverage, bend, fc.integer({ min: 3, max: 9 })).map(([ratio, bent, count]) => ({
      kind: 'table' as const,
      rows: sharesOf(count).map((share) => ({
        wheel: mm(share * stroke * ratio),
        shock: mm(shockAt(share, bent)),
      })),
    })),
    fc
      .tuple(
        leverage,
        bend,
        fc.array(fc.double({ min: -5e-4, max: 5e-4, noNaN: true }), { minLength: 4, maxLength: 8 }),
      )
      .map(([ratio, bent, misread]) => ({
        kind: 'taped' as const,
        points: Object.fromEntries(
          sharesOf(misread.length).map((share, i) => [
            `point-${i + 1}`,
            { order: i, wheel: mm(share * stroke * ratio), shock: mm(shockAt(share, bent) + misread[i]!) },
          ]),
        ),
      })),
  );
}

/** A front that is no telescopic fork, with springs of this size. */
export function arbitraryFrontTravel({ stroke, length }: StrutSize): fc.Arbitrary<FrontTravel> {
  const ratio = fc.double({ min: 0.7, max: 1.2, noNaN: true });
  return fc.oneof(
    quantity('motion', 0.6, 1.2).map((each) => ({ kind: 'motion' as const, ratio: each })),
    quantity('leverage', 0.8, 1.6).map((each) => ({ kind: 'leverage' as const, ratio: each })),
    fc.tuple(ratio, fc.integer({ min: 3, max: 7 })).map(([each, count]) => ({
      kind: 'table' as const,
      rows: sharesOf(count).map((share) => ({
        wheel: mm((share * stroke) / each),
        shock: mm(length - share * stroke),
      })),
    })),
  );
}

function sharesOf(count: number): number[] {
  return Array.from({ length: count }, (_, i) => i / (count - 1));
}

/** An adjuster and where it stands: 2 to some 35 mm of preload on a spring of the given free length. */
export function arbitraryAdjuster({ freeLength }: StrutSize): fc.Arbitrary<Adjusted> {
  return fc
    .record({
      kind: fc.constantFrom(...(Object.keys(adjusters) as (keyof typeof adjusters)[])),
      firstPreload: fc.double({ min: 0.002, max: 0.01, noNaN: true }),
      share: fc.double({ min: 0, max: 1, noNaN: true }),
      shrinks: fc.boolean(),
      isKnown: fc.boolean(),
    })
    .map(({ kind, firstPreload, ...draw }) =>
      adjusters[kind]({
        ...draw,
        installed: mm(freeLength - firstPreload),
        preload: draw.isKnown ? {} : { preload: mm(firstPreload + draw.share * 0.015) },
      }),
    );
}

interface Adjusted {
  readonly adjuster: Adjuster;
  readonly at: Setting;
}

interface Draw {
  /** How far up its range the adjuster stands, 0 to 1. */
  readonly share: number;
  readonly shrinks: boolean;
  /** Whether the installed spring length is known; if not, the preload stands beside the setting. */
  readonly isKnown: boolean;
  readonly installed: Quantity<'length'>;
  readonly preload: { readonly preload?: Quantity<'length'> };
}

const adjusters: { readonly [K in Adjuster['kind']]: (draw: Draw) => Adjusted } = {
  collar: ({ share, shrinks, isKnown, installed, preload }) => {
    const [least, most] = [mm(0.01), mm(0.034)];
    return {
      adjuster: {
        kind: 'collar',
        lead: mm(0.0015),
        between: 'upper face of the collar',
        and: 'lower face of the body',
        reading: shrinks ? 'shrinks with preload' : 'grows with preload',
        least,
        most,
        ...(isKnown ? { springLength: { at: shrinks ? most : least, length: installed } } : {}),
      },
      at: { reading: mm(0.01 + share * 0.024), ...preload },
    };
  },
  cap: ({ share, isKnown, installed, preload }) => ({
    adjuster: { kind: 'cap', lead: mm(0.001), turns: 12, ...(isKnown ? { springLength: installed } : {}) },
    at: { turns: Math.round(share * 48) / 4, ...preload },
  }),
  cam: ({ share, isKnown, installed, preload }) => ({
    adjuster: {
      kind: 'cam',
      steps: [0, 0.003, 0.006, 0.009, 0.012].map(mm),
      ...(isKnown ? { springLength: installed } : {}),
    },
    at: { step: 1 + Math.round(share * 4), ...preload },
  }),
  clicks: ({ share, isKnown, installed, preload }) => ({
    adjuster: {
      kind: 'clicks',
      perClick: mm(0.0004),
      count: 30,
      dead: 2,
      ...(isKnown ? { springLength: installed } : {}),
    },
    at: { click: Math.round(share * 30), ...preload },
  }),
  spacer: ({ share, isKnown, installed, preload }) => ({
    adjuster: {
      kind: 'spacer',
      least: mm(0.02),
      most: mm(0.05),
      cut: mm(0.001),
      ...(isKnown ? { springLength: { at: mm(0.02), length: installed } } : {}),
    },
    at: { spacer: mm(0.02 + share * 0.03), ...preload },
  }),
  none: ({ share }) => ({ adjuster: { kind: 'none' }, at: { preload: mm(0.002 + share * 0.02) } }),
};

function mm(si: number): Quantity<'length'> {
  return written<'length'>(si, 'mm');
}
