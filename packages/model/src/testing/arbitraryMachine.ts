import fc from 'fast-check';
import type { StrutSI } from '../dampers/strut.ts';
import { momentsOf, type PointMass } from '../masses/pointMass.ts';
import { monotoneCubic } from '../numerics/monotoneCubic.ts';
import type { AxlePathSI } from '../rear/axlePath.ts';
import { type RatioSI, travelAtStroke } from '../rear/kinematics.ts';
import { type EndSI, GRAVITY, type MachineSI } from '../statics/machine.ts';
import { arbitraryHardPoints } from './arbitraryHardPoints.ts';
import { arbitraryLeg, arbitraryShock, between, type StrutSize } from './arbitraryStrut.ts';

/** A thing that is carried, anywhere from a tank bag to a box far behind the axle. */
export const arbitraryThing: fc.Arbitrary<PointMass> = fc.record({
  mass: between(1, 110),
  x: between(-1.2, 1.6),
  height: between(0.3, 1.3),
});

/**
 * A machine as it may stand in a workshop, with springs that suit its weight more or less: free, topped out, on its
 * rubbers or bottomed, with anything aboard or nothing; some tip over with their load.
 */
export const arbitraryMachine: fc.Arbitrary<MachineSI> = fc
  .record({
    wheelbase: between(1.2, 1.9),
    rake: between(0.38, 0.6),
    share: between(0.35, 0.62),
    mass: between(90, 380),
    height: between(0.4, 0.75),
    things: fc.array(arbitraryThing, { maxLength: 4 }),
  })
  .chain(({ wheelbase, rake, share, mass, height, things }) =>
    fc.record({
      geometry: arbitraryGeometry(wheelbase, rake),
      sprung: fc.constant({ mass, x: share * wheelbase, height }),
      load: fc.constant(momentsOf(things)),
      rear: arbitraryRear(GRAVITY * mass * (1 - share), rake),
      front: arbitraryFront(GRAVITY * mass * share, rake),
    }),
  );

function arbitraryGeometry(wheelbase: number, rake: number): fc.Arbitrary<MachineSI['geometry']> {
  return fc.record({
    wheelbase: fc.constant(wheelbase),
    rake: fc.constant(rake),
    forkOffset: fc.option(between(0.02, 0.08)),
    seat: fc.option(fc.record({ x: between(0.2, 0.7), height: between(0.65, 0.9) })),
  });
}

/** A rear end that bears `force` [N] with nobody aboard. */
function arbitraryRear(force: number, rake: number): fc.Arbitrary<EndSI> {
  return fc.oneof(
    { weight: 3, arbitrary: ratioRear(force, rake) },
    { weight: 2, arbitrary: hardPointRear(force, rake) },
  );
}

function ratioRear(force: number, rake: number): fc.Arbitrary<EndSI> {
  return fc
    .record({ stroke: between(0.045, 0.12), kinematics: arbitraryRatios })
    .chain(({ stroke, kinematics }) =>
      arbitraryEnd(
        { stroke, force: force / 0.6 },
        rake,
        kinematics(stroke),
        fc.oneof(fc.constant<AxlePathSI>({ kind: 'straight' }), arbitraryPivot),
        arbitraryShock,
      ),
    );
}

function hardPointRear(force: number, rake: number): fc.Arbitrary<EndSI> {
  return between(0.045, 0.12)
    .chain(arbitraryHardPoints)
    .chain(({ rear, stroke, survey }) => {
      const ratio = stroke / survey.travelMax;
      const size = { stroke, force: force / ratio };
      const path = fc.constant(rear.arm);
      return arbitraryEnd(size, rake, { kind: 'ratio', motionRatio: ratio }, path, arbitraryShock).map(
        (end) => ({
          ...end,
          kinematics: rear.points,
          referenceTravel: survey.referenceTravel,
          tyre: { ...end.tyre, radius: rear.axleHeight },
        }),
      );
    });
}

/** Most a telescopic fork, some a front that is none: its ratio is told, its axle taken to run straight. */
function arbitraryFront(force: number, rake: number): fc.Arbitrary<EndSI> {
  const fork = between(0.1, 0.22).chain((stroke) =>
    arbitraryEnd({ stroke, force }, rake, { kind: 'fork' }, fc.constant({ kind: 'fork' }), arbitraryLeg),
  );
  const other = ratioRear(force, rake).map((end): EndSI => ({ ...end, axlePath: { kind: 'straight' } }));
  return fc.oneof({ weight: 4, arbitrary: fork }, { weight: 1, arbitrary: other });
}

function arbitraryEnd(
  size: StrutSize,
  rake: number,
  kinematics: RatioSI,
  axlePath: fc.Arbitrary<AxlePathSI>,
  strut: (size: StrutSize) => fc.Arbitrary<StrutSI>,
): fc.Arbitrary<EndSI> {
  const travelMax = travelAtStroke(kinematics, rake, size.stroke);
  return fc.constantFrom(1, 2).chain((count) => {
    const each = strut({ stroke: size.stroke, force: size.force / count });
    return fc.record({
      unsprung: between(10, 35),
      tyre: fc.record({ radius: between(0.27, 0.36), rate: between(120_000, 300_000) }),
      referenceTravel: fc.oneof(fc.constant(0), between(0, 0.5 * travelMax)),
      strokeMax: fc.constant(size.stroke),
      kinematics: fc.constant(kinematics),
      axlePath,
      struts: fc.array(each, { minLength: count, maxLength: count }),
    });
  });
}

/** How a wheel moves a shock of a given stroke: evenly, or with a ratio that rises or falls along the travel. */
const arbitraryRatios: fc.Arbitrary<(stroke: number) => RatioSI> = fc
  .record({
    kind: fc.constantFrom('ratio' as const, 'table' as const, 'quadratic' as const),
    start: between(0.4, 1),
    end: between(0.4, 1),
    rows: fc.integer({ min: 3, max: 15 }),
    /** Where a table ends, as a share of the stroke: drawn a little short of the stop, or past it. */
    reach: between(0.9, 1.1),
  })
  .map(({ kind, start, end, rows, reach }) => (stroke: number): RatioSI => {
    if (kind === 'ratio') return { kind, motionRatio: start };
    const whole = (reach * stroke) / (0.5 * (start + end));
    const bend = (end - start) / (2 * whole);
    if (kind === 'quadratic') return { kind, slope: start, bend: bend * reach };
    const z = Array.from({ length: rows }, (_, i) => (whole * i) / (rows - 1));
    return {
      kind,
      curve: monotoneCubic(
        z,
        z.map((each) => (start + bend * each) * each),
      ),
      scale: 1,
    };
  });

/** A swingarm whose pivot lies about as high as the axle. */
const arbitraryPivot: fc.Arbitrary<AxlePathSI> = fc.record({
  kind: fc.constant('circle' as const),
  pivotX: between(0.42, 0.65),
  pivotHeight: between(0.28, 0.5),
});
