import type { Fixture } from './machine.ts';

/**
 * A fixture's machine with hard points as a job document, every figure typed in SI-like units to all its digits: the same
 * machine by the way that a technician takes.
 */
export function documentOf(given: Fixture): object {
  const { chassis, machine, tyres, rear, front, load_cases } = given.case;
  const items = load_cases.flatMap((load) =>
    load.items.map((item, i) => ({ ...item, load: load.name, id: `${idOf(load.name)}-${i}` })),
  );
  return {
    format: 'sagwright-job',
    version: 1,
    name: 'a machine of the second method',
    machine: {
      name: 'machine',
      kind: 'solo',
      wheelbase: m(chassis.wheelbase),
      rake: { value: (chassis.rake * 180) / Math.PI, unit: 'deg' },
      forkOffset: m(chassis.fork_offset),
      seat: at(chassis.seat_point),
      weighing: {
        front: kg(machine.front_scale),
        rear: kg(machine.rear_scale),
        attitude: machine.weighed_in === 'own_sag' ? 'own sag' : 'level',
        massCentreHeight: m(machine.cg_height),
      },
      rear: {
        unsprung: kg(machine.unsprung_rear),
        tyre: tyreOf(tyres.rear),
        ...travelOf(rear),
        shock: shockOf(rear),
      },
      front: {
        unsprung: kg(machine.unsprung_front),
        tyre: tyreOf(tyres.front),
        measuredAt: m(front.reference_travel),
        fork: forkOf(front),
      },
      places: Object.fromEntries(
        items.map(({ id, x, height }, order) => [
          id,
          { name: id, order, kind: 'other', at: { x: m(x), height: m(height) } },
        ]),
      ),
    },
    springs: {
      rear: springOf('rear', rear.spring),
      ...Object.fromEntries(front.legs.map((leg, i) => [`leg-${i}`, springOf('front', leg.spring)])),
    },
    things: Object.fromEntries(
      items.map(({ id, mass }, order) => [id, { name: id, order, kind: 'item', mass: kg(mass) }]),
    ),
    loadCases: Object.fromEntries(
      load_cases.map((load, order) => [
        idOf(load.name),
        {
          name: load.name,
          order,
          share: 0,
          aboard: Object.fromEntries(
            items.filter((item) => item.load === load.name).map(({ id }) => [id, { thing: id, place: id }]),
          ),
        },
      ]),
    ),
    targetSets: {},
    setups: {
      asFound: {
        rear: {
          [rear.dampers === 1 ? 'single' : 'both']: { spring: 'rear', at: { preload: m(rear.preload) } },
        },
        front: {
          left: { spring: 'leg-0', at: { preload: m(front.legs[0]!.preload) } },
          right: { spring: 'leg-1', at: { preload: m(front.legs[1]!.preload) } },
        },
      },
    },
  };
}

export function idOf(name: string): string {
  return name.replaceAll(' ', '-');
}

type Case = Fixture['case'];

function travelOf(rear: Case['rear']): object {
  if (rear.type !== 'hardpoints') throw new Error('only hard points go by this way');
  const { pivot, damper_a, damper_b, rocker, link } = rear;
  if (rocker === undefined || link === undefined) {
    return {
      pivot: at(pivot),
      travel: { kind: 'direct', armEye: at(damper_a.at), frameEye: at(damper_b.at), sideways: m(0) },
    };
  }
  return {
    pivot: at(pivot),
    travel: {
      kind: 'linkage',
      rocker: {
        on: carrierOf(rocker.pivot.on),
        pivot: at(rocker.pivot.at),
        pin: at(rocker.link_pin),
      },
      linkEnd: at(link.at),
      rockerEye: at(damper_a.at),
      farEye: { on: carrierOf(damper_b.on), ...at(damper_b.at) },
      sideways: m(0),
    },
  };
}

function shockOf(rear: Case['rear']): object {
  if (rear.type !== 'hardpoints') throw new Error('only hard points go by this way');
  const { gas, bump } = rear;
  return {
    count: rear.dampers,
    stroke: m(rear.stroke_max),
    length: m(rear.damper_length_extended),
    gas:
      gas === undefined
        ? 'none'
        : {
            shaft: m(diameter(gas.area)),
            pressure: gauge(gas.pressure_abs),
            volume: { value: gas.volume * 1000, unit: 'l' },
          },
    rubber: bump === undefined ? 'none' : rubberOf(bump),
    topOut: 'none',
    friction: { value: rear.friction, unit: 'N' },
    adjuster: { kind: 'none' },
  };
}

function forkOf(front: Case['front']): object {
  const across = m(diameter(front.air.area));
  return {
    stroke: m(front.stroke_max),
    air: { bore: across, seal: across, gap: m(front.air.gap_full_compression) },
    rubber: front.bump === undefined ? 'none' : rubberOf(front.bump),
    topOut: 'none',
    friction: { value: front.friction, unit: 'N' },
    adjuster: { kind: 'none' },
  };
}

function springOf(end: 'rear' | 'front', spring: Case['rear']['spring']): object {
  if (spring.type !== 'linear') throw new Error('only linear springs go by this way');
  return { name: end, order: 0, end, rate: { kind: 'linear', rate: perMm(spring.rate) } };
}

function rubberOf({ start, k1, k3 }: { start: number; k1: number; k3: number }): object {
  return { start: m(start), rate: perMm(k1), hardening: { value: k3 / 1e9, unit: 'N/mm^3' } };
}

function tyreOf({ radius, rate }: { radius: number; rate: number }): object {
  return { radius: m(radius), rate: perMm(rate) };
}

function carrierOf(on: 'chassis' | 'swingarm'): 'frame' | 'arm' {
  return on === 'chassis' ? 'frame' : 'arm';
}

function at([x, height]: readonly [number, number]): object {
  return { x: m(x), height: m(height) };
}

function m(value: number): object {
  return { value, unit: 'm' };
}

function kg(value: number): object {
  return { value, unit: 'kg' };
}

function perMm(rate: number): object {
  return { value: rate / 1000, unit: 'N/mm' };
}

/** The document has the pressure as a gauge reads it; the fixture, absolute. */
function gauge(absolute: number): object {
  return { value: (absolute - 101325) / 1000, unit: 'kPa' };
}

function diameter(area: number): number {
  return Math.sqrt((4 * area) / Math.PI);
}
