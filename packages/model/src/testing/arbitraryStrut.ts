import fc from 'fast-check';
import { forkAir, type GasSI } from '../dampers/gas.ts';
import type { StrutSI } from '../dampers/strut.ts';
import type { SpringSI } from '../springs/spring.ts';
import { ATMOSPHERE } from '../statics/machine.ts';

/** A number from a range, both ends included; never NaN. */
export function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}

/** What a strut is made for: its stroke [m], and the force along it that it bears with nobody aboard [N]. */
export interface StrutSize {
  readonly stroke: number;
  readonly force: number;
}

/** A spring of about this rate [N/m], of every kind. */
export function arbitrarySpring(rate: number): fc.Arbitrary<SpringSI> {
  const softer = between(0.5, 1).map((share) => share * rate);
  const stiffer = between(1, 3).map((share) => share * rate);
  const closing = between(0.005, 0.08);
  return fc.oneof(
    fc.record({ kind: fc.constant('linear' as const), rate: softer }),
    fc.record({ kind: fc.constant('series' as const), soft: stiffer, stiff: stiffer, softStroke: closing }),
    fc.record({ kind: fc.constant('parallel' as const), rate: softer, second: softer, gap: closing }),
    fc.array(fc.tuple(closing, stiffer), { minLength: 1, maxLength: 6 }).map(springByTable),
  );
}

/** The spring by table whose pieces are so wide [m] and so steep [N/m]. */
export function springByTable(pieces: readonly (readonly [number, number])[]): SpringSI {
  const compression = [0];
  const force = [0];
  for (const [width, slope] of pieces) {
    compression.push(compression.at(-1)! + width);
    force.push(force.at(-1)! + slope * width);
  }
  return { kind: 'table', compression, force };
}

/** A shock: its spring bears the force somewhere between barely and deep in its stroke. */
export function arbitraryShock(size: StrutSize): fc.Arbitrary<StrutSI> {
  return arbitraryStrut(size, fc.option(arbitraryRodGas(size.stroke)));
}

/** A fork leg, most with the air above its oil. */
export function arbitraryLeg(size: StrutSize): fc.Arbitrary<StrutSI> {
  return arbitraryStrut(size, fc.option(arbitraryForkAir(size.stroke)));
}

function arbitraryStrut(size: StrutSize, gas: fc.Arbitrary<GasSI | null>): fc.Arbitrary<StrutSI> {
  const { stroke, force } = size;
  return between(0.3, 3).chain((strokes) =>
    fc.record({
      spring: arbitrarySpring(force / (strokes * 0.35 * stroke)),
      preload: between(-0.01, 0.04),
      gas,
      rubber: fc.option(
        fc.record({
          start: between(0.4 * stroke, 0.95 * stroke),
          rate: between(2_000, 200_000),
          hardening: between(0, 2e9),
        }),
      ),
      topOut: fc.option(fc.record({ rate: between(5_000, 100_000), length: between(0.002, 0.3 * stroke) })),
      friction: between(0, 150),
    }),
  );
}

function arbitraryRodGas(stroke: number): fc.Arbitrary<GasSI> {
  return fc
    .record({ rod: between(0.008, 0.018), pressure: between(3e5, 2.5e6), room: between(1.3, 6), exponent })
    .map(({ rod, pressure, room, exponent: n }) => {
      const area = circle(rod);
      return { area, pressure: ATMOSPHERE + pressure, volume: room * area * stroke, exponent: n };
    });
}

function arbitraryForkAir(stroke: number): fc.Arbitrary<GasSI> {
  return fc
    .record({ bore: between(0.035, 0.05), seal: between(0.033, 0.05), gap: between(0.07, 0.2), exponent })
    .map(({ bore, seal, gap, exponent: n }) =>
      forkAir(circle(bore), circle(seal), gap, stroke, ATMOSPHERE, n),
    );
}

const exponent = fc.constantFrom(1, 1.25, 1.4);

function circle(diameter: number): number {
  return (Math.PI / 4) * diameter * diameter;
}
