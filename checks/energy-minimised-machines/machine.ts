import { readFileSync } from 'node:fs';
import { forkAir } from '@sagwright/model/dampers/gas';
import type { StrutSI } from '@sagwright/model/dampers/strut';
import type { Carrier, HardPoint, HardPointsSI } from '@sagwright/model/rear/hardPoints';
import { surveyRear } from '@sagwright/model/rear/survey';
import type { SpringSI } from '@sagwright/model/springs/spring';
import type { EndSI, MachineSI } from '@sagwright/model/statics/machine';
import { type UnweighedSI, weigh } from '@sagwright/model/statics/weighing';

/** The shape of a fixture, as far as it is read here. Conventions stand inside each file. */
export interface Fixture {
  readonly case: {
    readonly chassis: {
      readonly wheelbase: number;
      readonly rake: number;
      readonly fork_offset: number;
      readonly seat_point: readonly [number, number];
    };
    readonly machine: {
      readonly front_scale: number;
      readonly rear_scale: number;
      readonly cg_height: number;
      readonly weighed_in: string;
      readonly unsprung_rear: number;
      readonly unsprung_front: number;
    };
    readonly tyres: Readonly<Record<'rear' | 'front', { readonly radius: number; readonly rate: number }>>;
    readonly rear: FixtureMotion & {
      readonly stroke_max: number;
      readonly dampers: number;
      readonly spring: FixtureSpring;
      readonly preload: number;
      readonly friction: number;
      readonly gas?: {
        readonly area: number;
        readonly pressure_abs: number;
        readonly volume: number;
        readonly n: number;
      };
      readonly bump?: FixtureBump;
    };
    readonly front: {
      readonly stroke_max: number;
      readonly reference_travel: number;
      readonly friction: number;
      readonly air: {
        readonly area: number;
        readonly gap_full_compression: number;
        readonly pressure_abs: number;
        readonly n: number;
      };
      readonly legs: readonly { readonly spring: FixtureSpring; readonly preload: number }[];
      readonly bump?: FixtureBump;
    };
    readonly load_cases: readonly {
      readonly name: string;
      readonly items: readonly { readonly mass: number; readonly x: number; readonly height: number }[];
    }[];
    readonly plan?: {
      readonly targets: Readonly<Record<string, { readonly percent: number }>>;
      readonly collar: {
        readonly min: number;
        readonly max: number;
        readonly preload_at_zero: number;
        readonly thread_pitch: number;
      };
      readonly springs: readonly {
        readonly name: string;
        readonly spring: FixtureSpring;
        readonly free_length: number;
        readonly solid_length: number;
      }[];
    };
  };
  readonly expected: {
    readonly statics: {
      readonly sprung_body: { readonly mass: number; readonly x: number; readonly height: number };
      readonly rear_travel_max: number;
      readonly front_travel_max: number;
      readonly reference_travels: Readonly<Record<'rear' | 'front', number>>;
      readonly load_cases: Readonly<Record<string, ExpectedRest>>;
    };
    readonly rear_kinematics: readonly Readonly<
      Record<'travel' | 'stroke' | 'motion_ratio' | 'dmotion_ratio_dz' | 'axle_x' | 'axle_z', number>
    >[];
    readonly plan?: readonly {
      readonly spring: string;
      readonly load_cases: Readonly<Record<string, Readonly<Record<string, number | boolean | null>>>>;
      readonly feasible: boolean;
    }[];
  };
}

export interface ExpectedRest extends Readonly<Record<string, unknown>> {
  readonly pitch: number;
  readonly rake: number;
  readonly trail_ground: number;
  readonly trail_normal: number;
  readonly wheelbase: number;
  readonly seat_height: number;
  readonly energy: number;
  readonly rear: ExpectedEnd;
  readonly front: ExpectedEnd;
  readonly friction_band: Readonly<Record<'rear' | 'front', ExpectedBand>>;
}

export interface ExpectedBand {
  readonly travel_after_lifting: number;
  readonly travel_after_pressing: number;
}

export type ExpectedEnd = Readonly<
  Record<
    | 'wheel_load'
    | 'travel'
    | 'damper_stroke'
    | 'motion_ratio'
    | 'hanging_travel'
    | 'wheel_rate'
    | 'ride_rate'
    | 'tyre_deflection'
    | 'frequency_ride'
    | 'frequency_body_on_wheel'
    | 'stop_force_at_wheel',
    number
  >
>;

type FixturePlace = readonly [number, number];
type FixtureMotion =
  | {
      readonly type: 'constant';
      readonly motion_ratio: number;
      readonly pivot?: FixturePlace;
      readonly reference_travel: number;
    }
  | {
      readonly type: 'hardpoints';
      readonly pivot: FixturePlace;
      readonly damper_a: { readonly on: string; readonly at: FixturePlace };
      readonly damper_b: { readonly on: 'chassis' | 'swingarm'; readonly at: FixturePlace };
      readonly damper_length_extended: number;
      readonly rocker?: {
        readonly pivot: { readonly on: 'chassis' | 'swingarm'; readonly at: FixturePlace };
        readonly link_pin: FixturePlace;
      };
      readonly link?: { readonly on: string; readonly at: FixturePlace };
    };
type FixtureSpring =
  | { readonly type: 'linear'; readonly rate: number }
  | {
      readonly type: 'dual';
      readonly rate_soft: number;
      readonly rate_stiff: number;
      readonly soft_stroke: number;
    };
type FixtureBump = { readonly start: number; readonly k1: number; readonly k3: number };

export function fixture(name: string): Fixture {
  return JSON.parse(readFileSync(new URL(`./${name}.json`, import.meta.url), 'utf8')) as Fixture;
}

export function springOf(spring: FixtureSpring): SpringSI {
  return spring.type === 'linear'
    ? { kind: 'linear', rate: spring.rate }
    : { kind: 'series', soft: spring.rate_soft, stiff: spring.rate_stiff, softStroke: spring.soft_stroke };
}

/** The fixture's machine in the model's own shape, its body from the scales as they were read. */
export function machineOf(fixture: Fixture): MachineSI {
  const { front_scale, rear_scale, cg_height, weighed_in } = fixture.case.machine;
  const machine = unweighed(fixture);
  const answer = weigh(machine, {
    front: front_scale,
    rear: rear_scale,
    wholeHeight: cg_height,
    attitude: weighed_in === 'own_sag' ? 'own sag' : 'level',
  });
  if (answer.kind !== 'body') throw new Error(`${weighed_in}: no rest on the scales`);
  return { ...machine, sprung: answer.sprung };
}

function unweighed(fixture: Fixture): UnweighedSI {
  const { chassis, machine, tyres, rear, front } = fixture.case;
  const rearStrut: StrutSI = {
    spring: springOf(rear.spring),
    preload: rear.preload,
    gas:
      rear.gas === undefined
        ? null
        : {
            area: rear.gas.area,
            pressure: rear.gas.pressure_abs,
            volume: rear.gas.volume,
            exponent: rear.gas.n,
          },
    rubber: rubberOf(rear.bump),
    topOut: null,
    friction: rear.friction,
  };
  const { air } = front;
  return {
    geometry: {
      wheelbase: chassis.wheelbase,
      rake: chassis.rake,
      forkOffset: chassis.fork_offset,
      seat: { x: chassis.seat_point[0], height: chassis.seat_point[1] },
    },
    load: { mass: 0, momentX: 0, momentHeight: 0 },
    rear: {
      unsprung: machine.unsprung_rear,
      tyre: tyres.rear,
      strokeMax: rear.stroke_max,
      ...motionOf(rear, tyres.rear.radius),
      struts: Array.from({ length: rear.dampers }, () => rearStrut),
    },
    front: {
      unsprung: machine.unsprung_front,
      tyre: tyres.front,
      referenceTravel: front.reference_travel,
      strokeMax: front.stroke_max,
      kinematics: { kind: 'fork' },
      axlePath: { kind: 'fork' },
      struts: front.legs.map((leg) => ({
        spring: springOf(leg.spring),
        preload: leg.preload,
        gas: forkAir(air.area, air.area, air.gap_full_compression, front.stroke_max, air.pressure_abs, air.n),
        rubber: rubberOf(front.bump),
        topOut: null,
        friction: front.friction / front.legs.length,
      })),
    },
  };
}

/** How its rear wheel and dampers move. */
function motionOf(
  rear: Fixture['case']['rear'],
  radius: number,
): Pick<EndSI, 'referenceTravel' | 'kinematics' | 'axlePath'> {
  if (rear.type === 'constant') {
    return {
      referenceTravel: rear.reference_travel,
      kinematics: { kind: 'ratio', motionRatio: rear.motion_ratio },
      axlePath: rear.pivot === undefined ? { kind: 'straight' } : armAbout(rear.pivot),
    };
  }
  const points = hardPointsOf(rear);
  const arm = armAbout(rear.pivot);
  const survey = surveyRear({ points, arm, axleHeight: radius }, rear.stroke_max);
  if (survey.kind !== 'moves') throw new Error(JSON.stringify(survey));
  return { referenceTravel: survey.referenceTravel, kinematics: points, axlePath: arm };
}

function armAbout([pivotX, pivotHeight]: FixturePlace) {
  return { kind: 'circle' as const, pivotX, pivotHeight };
}

/** Chassis is the frame here, swingarm the arm; the link's other end is on whichever does not carry the rocker. */
function hardPointsOf(rear: Extract<FixtureMotion, { type: 'hardpoints' }>): HardPointsSI {
  const damper = { extendedLength: rear.damper_length_extended, sideways: 0 };
  const { rocker, link, damper_a, damper_b } = rear;
  if (rocker === undefined || link === undefined)
    return { kind: 'direct', damper, armEye: pointAt(damper_a.at), frameEye: pointAt(damper_b.at) };
  return {
    kind: 'linkage',
    damper,
    rocker: {
      on: carrierOf(rocker.pivot.on),
      pivot: pointAt(rocker.pivot.at),
      pin: pointAt(rocker.link_pin),
    },
    linkEnd: pointAt(link.at),
    rockerEye: pointAt(damper_a.at),
    farEye: { on: carrierOf(damper_b.on), ...pointAt(damper_b.at) },
  };
}

function carrierOf(on: 'chassis' | 'swingarm'): Carrier {
  return on === 'chassis' ? 'frame' : 'arm';
}

function pointAt([x, height]: FixturePlace): HardPoint {
  return { x, height };
}

function rubberOf(bump: FixtureBump | undefined): StrutSI['rubber'] {
  return bump === undefined ? null : { start: bump.start, rate: bump.k1, hardening: bump.k3 };
}
