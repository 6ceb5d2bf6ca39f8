import fc from 'fast-check';
import { bounds } from '../schema/bounds.ts';
import type { Points, Rear } from '../schema/machine.ts';
import { type Quantity, siOf } from '../schema/quantity.ts';
import { written } from './arbitraryQuantity.ts';

/** A rear known by its hard points: the figures that hang together. The shock's length follows from where it was read. */
export interface PointedRear {
  readonly travel: Points;
  readonly pivot: NonNullable<Rear['pivot']>;
  readonly radius: Quantity<'length'>;
  readonly length: Quantity<'length'>;
}

/** Rears of every arrangement, read anywhere in the first two thirds of the stroke [m]. Most of them move through all of it. */
export function arbitraryPoints(stroke: number): fc.Arbitrary<PointedRear> {
  return fc
    .record({
      radius: between(0.28, 0.35),
      pivot: fc.record({ x: between(0.46, 0.62), rise: between(0, 0.1) }),
      share: between(0, 0.6),
      sideways: fc.oneof(fc.constant(null), between(0, 0.05)),
      earlier: fc.oneof(fc.constant(null), between(0.9, 3)),
      survey: fc.oneof(fc.constant(null), fc.array(between(-0.004, 0.004), { minLength: 1, maxLength: 4 })),
      isTaped: fc.boolean(),
      steps: fc.constantFrom(...arrangements),
      jitter: fc.array(between(-0.01, 0.01), { minLength: 10, maxLength: 10 }),
    })
    .map(({ radius, pivot, share, sideways, earlier, survey, isTaped, steps, jitter }) => {
      const at = { x: pivot.x, height: radius + pivot.rise };
      const lean = sideways === null ? {} : { sideways: mm(sideways) };
      const before: Pick<Points, 'earlierLeverage'> =
        earlier === null ? {} : { earlierLeverage: { value: earlier, unit: 'wheel/shock' } };
      const { travel, eyes } = placed(steps, at, jitter);
      const length = Math.hypot(eyes.x, eyes.height, sideways ?? 0) + share * stroke;
      const kept = survey === null ? {} : { earlierSurvey: surveyOf(survey, length) };
      const whole: Points = { ...travel, ...lean, ...before, ...kept };
      return {
        travel: isTaped ? taped(whole, at, radius) : whole,
        pivot: typed(at),
        radius: mm(radius),
        length: mm(length),
      };
    });
}

interface Place {
  readonly x: number;
  readonly height: number;
}

/** A rear by steps [m]: from the swingarm's pivot to its own first part, and on from part to part. */
type Steps =
  | { readonly kind: 'direct'; readonly eye: Step; readonly frame: Step }
  | {
      readonly kind: 'linkage';
      readonly on: 'frame' | 'arm';
      readonly farOn: 'frame' | 'arm';
      readonly rocker: Step;
      /** From the rocker's pivot. */
      readonly pin: Step;
      readonly eye: Step;
      /** From the pin, and from the swingarm's pivot. */
      readonly link: Step;
      readonly far: Step;
    };
type Step = readonly [x: number, height: number];

const below = {
  rocker: [-0.03, -0.11],
  pin: [-0.1, -0.05],
  link: [-0.06, 0.1],
  eye: [-0.15, -0.06],
} as const;
const above = { rocker: [-0.06, 0.22], pin: [-0.1, 0.02], link: [0, -0.2], eye: [0.1, 0] } as const;
const underArm = { rocker: [-0.17, -0.04], pin: [0, -0.08], link: [0.15, -0.02] } as const;
const backArm = { rocker: [-0.202, -0.046], pin: [0.024, -0.088], link: [0.135, 0.006] } as const;

const arrangements: readonly Steps[] = [
  { kind: 'direct', eye: [-0.5, 0], frame: [0.09, 0.3] },
  { kind: 'direct', eye: [-0.33, 0.05], frame: [0.15, 0.27] },
  { kind: 'linkage', on: 'frame', farOn: 'frame', ...below, far: [-0.05, 0.14] },
  { kind: 'linkage', on: 'frame', farOn: 'arm', ...below, far: [-0.16, 0.12] },
  { kind: 'linkage', on: 'frame', farOn: 'frame', ...above, far: [0.04, -0.12] },
  { kind: 'linkage', on: 'arm', farOn: 'frame', ...backArm, eye: [0.035, -0.076], far: [-0.094, 0.234] },
  { kind: 'linkage', on: 'arm', farOn: 'arm', ...underArm, eye: [0.08, -0.03], far: [-0.1, 0.24] },
];

function placed(
  steps: Steps,
  pivot: Place,
  jitter: readonly number[],
): { readonly travel: Points; readonly eyes: Place } {
  let used = 0;
  const from = (base: Place, [x, height]: Step): Place => {
    used += 2;
    return { x: base.x + x + jitter[used - 2]!, height: base.height + height + jitter[used - 1]! };
  };
  if (steps.kind === 'direct') {
    const armEye = from(pivot, steps.eye);
    const frameEye = from(armEye, steps.frame);
    return {
      travel: { kind: 'direct', armEye: typed(armEye), frameEye: typed(frameEye) },
      eyes: apart(armEye, frameEye),
    };
  }
  const rocker = from(pivot, steps.rocker);
  const pin = from(rocker, steps.pin);
  const linkEnd = from(pin, steps.link);
  const rockerEye = from(rocker, steps.eye);
  const far = from(pivot, steps.far);
  return {
    travel: {
      kind: 'linkage',
      rocker: { on: steps.on, pivot: typed(rocker), pin: typed(pin) },
      linkEnd: typed(linkEnd),
      rockerEye: typed(rockerEye),
      farEye: { on: steps.farOn, ...typed(far) },
    },
    eyes: apart(rockerEye, far),
  };
}

/** Every 12 mm of wheel, give or take what a tape may be off; the shock shortens by half of it. */
function surveyOf(off: readonly number[], length: number): NonNullable<Points['earlierSurvey']> {
  return Object.fromEntries(
    off.map((each, i) => [`s${i}`, { order: i, wheel: mm(0.012 * i), shock: mm(length - 0.006 * i + each) }]),
  );
}

/** The same rear with a tape laid to its parts. */
function taped(travel: Points, pivot: Place, radius: number): Points {
  const si = ({ x, height }: NonNullable<Rear['pivot']>): Place => ({ x: siOf(x), height: siOf(height) });
  if (travel.kind === 'direct') {
    const { armEye, frameEye } = travel;
    return { ...travel, tape: tapeOf({ 'arm eye': si(armEye), 'frame eye': si(frameEye) }, pivot, radius) };
  }
  const { rocker, linkEnd, rockerEye, farEye } = travel;
  const places = {
    'rocker pivot': si(rocker.pivot),
    'link pin': si(rocker.pin),
    'link end': si(linkEnd),
    'rocker eye': si(rockerEye),
    'far eye': si(farEye),
  };
  return { ...travel, tape: tapeOf(places, pivot, radius) };
}

/** Each part from the axle and from the swingarm's pivot, and how high it stands above the axle. */
function tapeOf<P extends string>(places: Readonly<Record<P, Place>>, pivot: Place, radius: number) {
  const axle = { x: 0, height: radius };
  const between = <F extends string, T extends string>(
    from: F,
    one: Place,
    to: T,
    other: Place,
    order: number,
  ) => ({
    kind: 'between' as const,
    order,
    from,
    to,
    length: mm(Math.hypot(one.x - other.x, one.height - other.height)),
  });
  const above = <O extends string>(of: O, { height }: Place, order: number) => ({
    kind: 'above axle' as const,
    order,
    of,
    length: mm(height - radius),
  });
  const parts = Object.entries(places) as [P, Place][];
  const all = [
    between('axle', axle, 'pivot', pivot, 0),
    above('pivot', pivot, 1),
    ...parts.flatMap(([part, place], i) => [
      between('axle', axle, part, place, 3 * i + 2),
      between('pivot', pivot, part, place, 3 * i + 3),
      above(part, place, 3 * i + 4),
    ]),
  ];
  const longEnough = all.filter(
    ({ kind, length }) => kind !== 'between' || siOf(length) > bounds.tapedLength.least,
  );
  return Object.fromEntries(longEnough.map((each) => [`l${each.order}`, each]));
}

function apart(a: Place, b: Place): Place {
  return { x: a.x - b.x, height: a.height - b.height };
}

function typed({ x, height }: Place): { x: Quantity<'length'>; height: Quantity<'length'> } {
  return { x: mm(x), height: mm(height) };
}

function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}

function mm(si: number): Quantity<'length'> {
  return written<'length'>(si, 'mm');
}
