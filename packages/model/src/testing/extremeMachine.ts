import fc from 'fast-check';
import { forkAir, type GasSI } from '../dampers/gas.ts';
import type { StrutSI } from '../dampers/strut.ts';
import { momentsOf } from '../masses/pointMass.ts';
import { sprungFromScales } from '../masses/scales.ts';
import { monotoneCubic } from '../numerics/monotoneCubic.ts';
import type { AxlePathSI } from '../rear/axlePath.ts';
import { type RatioSI, travelAtStroke } from '../rear/kinematics.ts';
import type { SpringSI } from '../springs/spring.ts';
import { ATMOSPHERE, type EndSI, type MachineSI } from '../statics/machine.ts';
import { between, springByTable } from './arbitraryStrut.ts';

/**
 * A machine of figures that no workshop will see together but that a job file may hold: each anywhere between the hard
 * bounds of the job document (packages/records/src/schema/bounds.ts), the small ones as likely as the great.
 */
export const extremeMachine: fc.Arbitrary<MachineSI> = fc
  .record({
    wheelbase: between(0.8, 2.6),
    rake: between(0, Math.PI / 3),
    wholeHeight: between(0, 2.5),
    scales: fc.record({ rear: across(0.1, 1800), front: across(0.1, 1800) }),
    unsprung: fc.record({ rear: across(1, 200), front: across(1, 200) }),
    things: fc.array(fc.record({ mass: across(0.01, 2000), x: between(-2, 3), height: between(0, 2.5) }), {
      maxLength: 4,
    }),
  })
  .chain(({ wheelbase, rake, wholeHeight, scales, unsprung, things }) =>
    fc
      .record({ rear: extremeRear(unsprung.rear, rake), front: extremeFront(unsprung.front, rake) })
      .map(({ rear, front }) => ({
        geometry: { wheelbase, rake, forkOffset: 0.05, seat: { x: 0.4, height: 0.8 } },
        sprung: sprungFromScales({
          front: scales.front + unsprung.front,
          rear: scales.rear + unsprung.rear,
          wholeHeight,
          wheelbase,
          rearUnsprung: unsprung.rear,
          frontUnsprung: unsprung.front,
          rearRadius: rear.tyre.radius,
          frontRadius: front.tyre.radius,
        }),
        load: momentsOf(things),
        rear,
        front,
      })),
  );

/** A number above 0 between two, any order of magnitude as likely as any other. */
function across(least: number, most: number): fc.Arbitrary<number> {
  return between(Math.log(least), Math.log(most)).map((exponent) =>
    Math.min(most, Math.max(least, Math.exp(exponent))),
  );
}

function extremeRear(unsprung: number, rake: number): fc.Arbitrary<EndSI> {
  return extremeKinematics.chain(({ kinematics, stroke }) =>
    extremeEnd(unsprung, rake, stroke, kinematics, fc.boolean(), gasOf),
  );
}

function extremeFront(unsprung: number, rake: number): fc.Arbitrary<EndSI> {
  return across(0.01, 0.4).chain((stroke) =>
    extremeEnd(unsprung, rake, stroke, { kind: 'fork' }, fc.constant(null), airOf),
  );
}

function extremeEnd(
  unsprung: number,
  rake: number,
  stroke: number,
  kinematics: RatioSI,
  onCircle: fc.Arbitrary<boolean | null>,
  gas: (stroke: number) => fc.Arbitrary<GasSI>,
): fc.Arbitrary<EndSI> {
  const travelMax = travelAtStroke(kinematics, rake, stroke);
  return fc
    .record({
      tyre: fc.record({ radius: between(0.1, 0.5), rate: across(2e4, 2e6) }),
      reference: between(0, 1),
      circle: onCircle,
      arm: between(1.05, 3),
      struts: fc.array(extremeStrut(stroke, gas), { minLength: 1, maxLength: 2 }),
    })
    .map(({ tyre, reference, circle, arm, struts }) => ({
      unsprung,
      tyre,
      referenceTravel: reference * travelMax,
      strokeMax: stroke,
      kinematics,
      axlePath: pathOf(circle, arm * travelMax, tyre.radius),
      struts,
    }));
}

/** An arm at least as long as the whole travel, its pivot at the axle's height, reaches it from any reference travel. */
function pathOf(circle: boolean | null, arm: number, radius: number): AxlePathSI {
  if (circle === null) return { kind: 'fork' };
  return circle ? { kind: 'circle', pivotX: arm, pivotHeight: radius } : { kind: 'straight' };
}

const extremeKinematics: fc.Arbitrary<{ kinematics: RatioSI; stroke: number }> = fc.oneof(
  fc.record({ motionRatio: between(1 / 6, 2), share: across(0.02, 1) }).map(({ motionRatio, share }) => ({
    kinematics: { kind: 'ratio' as const, motionRatio },
    stroke: Math.max(0.01, share * Math.min(0.4, 0.5 * motionRatio)),
  })),
  fc
    .array(fc.tuple(across(0.002, 1), across(0.002, 1)), { minLength: 2, maxLength: 12 })
    .chain((steps) =>
      fc.record({ steps: fc.constant(steps), travel: across(0.03, 0.5), stroke: across(0.01, 0.4) }),
    )
    .map(({ steps, travel, stroke }) => ({ kinematics: drawn(steps, travel, stroke), stroke })),
  fc
    .record({ start: across(0.1, 2), end: across(0.1, 2), travel: across(0.03, 0.5) })
    .map(({ start, end, travel }) => ({
      kinematics: { kind: 'quadratic' as const, slope: start, bend: (end - start) / (2 * travel) },
      stroke: Math.min(0.4, 0.5 * (start + end) * travel),
    })),
);

/** A drawn table through rising points, its steps as shares of a whole travel and a whole stroke. */
function drawn(steps: readonly (readonly [number, number])[], travel: number, stroke: number): RatioSI {
  const wholeX = steps.reduce((sum, [dx]) => sum + dx, 0);
  const wholeY = steps.reduce((sum, [, dy]) => sum + dy, 0);
  let [x, y] = [0, 0];
  const points = steps.map(([dx, dy]) => {
    x += dx;
    y += dy;
    return { z: (travel * x) / wholeX, s: (stroke * y) / wholeY };
  });
  const curve = monotoneCubic([0, ...points.map(({ z }) => z)], [0, ...points.map(({ s }) => s)]);
  return { kind: 'table', curve, scale: 1 };
}

const extremeRate = across(500, 1e6);

const extremeSpring: fc.Arbitrary<SpringSI> = fc.oneof(
  fc.record({ kind: fc.constant('linear' as const), rate: extremeRate }),
  fc
    .record({ rate: extremeRate, more: across(1, 100), softStroke: across(0.0005, 0.4) })
    .map(({ rate, more, softStroke }) => ({
      kind: 'series' as const,
      soft: rate,
      stiff: more * rate,
      softStroke,
    })),
  fc.record({
    kind: fc.constant('parallel' as const),
    rate: extremeRate,
    second: extremeRate,
    gap: across(0.0005, 0.4),
  }),
  fc.array(fc.tuple(across(1e-4, 0.1), across(10, 1e7)), { minLength: 1, maxLength: 8 }).map(springByTable),
);

function extremeStrut(stroke: number, gas: (stroke: number) => fc.Arbitrary<GasSI>): fc.Arbitrary<StrutSI> {
  return fc.record({
    spring: extremeSpring,
    preload: between(-0.05, 0.2),
    gas: fc.option(gas(stroke), { freq: 2 }),
    rubber: fc.option(
      fc.record({ start: between(0, 0.999 * stroke), rate: across(1, 5e6), hardening: across(1, 1e12) }),
      { freq: 2 },
    ),
    topOut: fc.option(
      fc.record({ length: between(0.0005, 0.999 * stroke).filter((l) => l <= 0.2), rate: across(500, 5e6) }),
      { freq: 2 },
    ),
    friction: between(0, 2000),
  });
}

function gasOf(stroke: number): fc.Arbitrary<GasSI> {
  return fc
    .record({ rod: across(0.004, 0.04), pressure: between(0, 5e6), room: across(1.0001, 1000), exponent })
    .map(({ rod, pressure, room, exponent: n }) => {
      const area = circle(rod);
      return { area, pressure: pressure + ATMOSPHERE, volume: room * area * stroke, exponent: n };
    });
}

function airOf(stroke: number): fc.Arbitrary<GasSI> {
  return fc
    .record({ bore: across(0.01, 0.1), seal: across(0.01, 0.1), gap: across(0.01, 0.5), exponent })
    .map(({ bore, seal, gap, exponent: n }) =>
      forkAir(circle(bore), circle(seal), gap, stroke, ATMOSPHERE, n),
    );
}

const exponent = fc.constantFrom(1, 1.4);

function circle(diameter: number): number {
  return (Math.PI / 4) * diameter * diameter;
}
