import fc from 'fast-check';
import type { Carrier, HardPoint, HardPointsSI } from '../rear/hardPoints.ts';
import type { HardPointRear } from '../rear/riseAtStroke.ts';
import { type RearMoves, surveyRear } from '../rear/survey.ts';
import type { WheelMotionSI } from '../rear/wheelMotion.ts';
import { between } from './arbitraryStrut.ts';

/** A rear with hard points that moves through its damper's stroke [m], and what the survey said of it. */
export interface MovingRear {
  readonly rear: HardPointRear;
  readonly stroke: number;
  readonly survey: RearMoves;
}

/** The same as an end of a machine moves. */
export function motionOf({ rear, survey }: MovingRear): WheelMotionSI {
  return {
    kinematics: rear.points,
    axlePath: rear.arm,
    tyre: { radius: rear.axleHeight },
    referenceTravel: survey.referenceTravel,
  };
}

/** Rears as they may stand in a workshop, of every arrangement, surveyed anywhere in the first two thirds of the stroke. */
export function arbitraryHardPoints(stroke: number): fc.Arbitrary<MovingRear> {
  return fc
    .record({
      axleHeight: between(0.27, 0.36),
      pivotX: between(0.42, 0.65),
      pivotRise: between(-0.03, 0.12),
      share: between(0, 0.65),
      sideways: fc.oneof(fc.constant(0), between(0.005, 0.06)),
      points: fc.oneof(direct, rockerOnFrame, rockerOnArm),
    })
    .map(({ axleHeight, pivotX, pivotRise, share, sideways, points }) => {
      const arm = { kind: 'circle' as const, pivotX, pivotHeight: axleHeight + pivotRise };
      const placed = points({ x: pivotX, height: arm.pivotHeight });
      const damper = { extendedLength: surveyed(placed, sideways) + share * stroke, sideways };
      const rear: HardPointRear = { points: { ...placed, damper }, arm, axleHeight };
      return { rear, stroke, survey: surveyRear(rear, stroke) };
    })
    .filter(isUsual);
}

/** Its wheel travels by an amount that some machine has. */
function isUsual(found: { survey: ReturnType<typeof surveyRear>; stroke: number }): found is MovingRear {
  const { survey, stroke } = found;
  return survey.kind === 'moves' && survey.travelMax > 0.9 * stroke && survey.travelMax < 4 * stroke;
}

function surveyed(points: HardPointsSI, sideways: number): number {
  const [one, other] =
    points.kind === 'direct' ? [points.armEye, points.frameEye] : [points.rockerEye, points.farEye];
  return Math.hypot(one.x - other.x, one.height - other.height, sideways);
}

type FromPivot = (pivot: HardPoint) => HardPointsSI;

const undecided = { extendedLength: 1, sideways: 0 };

/** A place about so far from another: each coordinate within 30 mm of it. */
function about(x: number, height: number): fc.Arbitrary<HardPoint> {
  return fc.record({ x: between(x - 0.03, x + 0.03), height: between(height - 0.03, height + 0.03) });
}

function from(base: HardPoint, step: HardPoint): HardPoint {
  return { x: base.x + step.x, height: base.height + step.height };
}

const direct: fc.Arbitrary<FromPivot> = fc
  .record({
    eye: fc.record({ x: between(-0.6, -0.28), height: between(-0.1, 0.06) }),
    damper: fc.record({ x: between(-0.02, 0.22), height: between(0.24, 0.36) }),
  })
  .map(({ eye, damper }) => (pivot) => {
    const armEye = from(pivot, eye);
    return { kind: 'direct', damper: undecided, armEye, frameEye: from(armEye, damper) };
  });

/** A rocker by the steps from the pivot to its own, from there to pin and eye, from the pin to the link's end. */
interface RockerSteps {
  readonly rocker: fc.Arbitrary<HardPoint>;
  readonly pin: fc.Arbitrary<HardPoint>;
  readonly link: fc.Arbitrary<HardPoint>;
  readonly eye: fc.Arbitrary<HardPoint>;
  /** From the swingarm's pivot. */
  readonly far: fc.Arbitrary<HardPoint>;
}

function linkage(on: Carrier, farOn: Carrier, steps: RockerSteps): fc.Arbitrary<FromPivot> {
  return fc.record({ ...steps }).map(({ rocker, pin, link, eye, far }) => (pivot) => {
    const at = from(pivot, rocker);
    const linked = from(at, pin);
    return {
      kind: 'linkage',
      damper: undecided,
      rocker: { on, pivot: at, pin: linked },
      linkEnd: from(linked, link),
      rockerEye: from(at, eye),
      farEye: { on: farOn, ...from(pivot, far) },
    };
  });
}

const below: Omit<RockerSteps, 'far'> = {
  rocker: about(-0.03, -0.11),
  pin: about(-0.1, -0.05),
  link: about(-0.06, 0.1),
  eye: about(-0.15, -0.06),
};
const above: Omit<RockerSteps, 'far'> = {
  rocker: about(-0.06, 0.22),
  pin: about(-0.1, 0.02),
  link: about(0, -0.2),
  eye: about(0.1, 0),
};
const underArm: Omit<RockerSteps, 'far' | 'eye'> = {
  rocker: about(-0.17, -0.04),
  pin: about(0, -0.08),
  link: about(0.15, -0.02),
};

const rockerOnFrame: fc.Arbitrary<FromPivot> = fc.oneof(
  linkage('frame', 'frame', { ...below, far: about(-0.05, 0.14) }),
  linkage('frame', 'arm', { ...below, far: about(-0.16, 0.12) }),
  linkage('frame', 'frame', { ...above, far: about(0.04, -0.12) }),
  linkage('frame', 'arm', { ...above, far: about(-0.08, -0.1) }),
);

const rockerOnArm: fc.Arbitrary<FromPivot> = fc.oneof(
  linkage('arm', 'frame', { ...underArm, eye: about(-0.07, -0.02), far: about(-0.12, 0.22) }),
  linkage('arm', 'arm', { ...underArm, eye: about(0.08, -0.03), far: about(-0.1, 0.24) }),
);
