import { parseJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import { setField } from '@sagwright/records/testing/setField';

/** An invented tourer with two shocks, five rear springs and four loads, as plain data that a test may change. */
export function tourerData(): Record<string, unknown> {
  return {
    format: 'sagwright-job',
    version: 1,
    name: 'Brown tourer, before the long trip',
    machine: {
      name: 'brown tourer',
      kind: 'solo',
      wheelbase: q(1625, 'mm', 'manual'),
      rake: q(27, 'deg', 'manual'),
      forkOffset: q(48, 'mm', 'manual'),
      seat: { x: q(520, 'mm', 'own tape'), height: q(740, 'mm', 'own tape') },
      weighing: {
        front: q(168, 'kg', 'own scale'),
        rear: q(202, 'kg', 'own scale'),
        fuel: q(9, 'l'),
        attitude: 'own sag',
        massCentreHeight: q(500, 'mm'),
      },
      tank: {
        capacity: q(20, 'l', 'manual'),
        at: { x: q(900, 'mm'), height: q(800, 'mm') },
      },
      rear: {
        unsprung: q(31, 'kg'),
        tyre: { radius: q(318, 'mm', 'own tape'), capacity: q(365, 'kg', 'plate'), ...air(2.9) },
        travel: { kind: 'leverage', ratio: q(1.12, 'wheel/shock', 'own tape') },
        pivot: { x: q(560, 'mm', 'own tape'), height: q(365, 'mm', 'own tape') },
        drive: {
          kind: 'belt',
          frontSprocket: { x: q(640, 'mm', 'own tape'), height: q(372, 'mm', 'own tape') },
          pitch: q(14, 'mm', 'catalogue'),
          teeth: { front: 32, rear: 68 },
        },
        shock: {
          count: 2,
          stroke: q(69, 'mm', 'catalogue'),
          gas: { shaft: q(12.5, 'mm'), pressure: q(8, 'bar', 'catalogue'), volume: q(60, 'ml') },
          rubber: { start: q(55, 'mm'), rate: q(25, 'N/mm') },
          topOut: 'none',
          friction: q(35, 'N'),
          adjuster: {
            kind: 'collar',
            lead: q(1.5, 'mm'),
            between: 'upper face of the collar',
            and: 'lower face of the body',
            reading: 'grows with preload',
            least: q(8, 'mm'),
            most: q(30, 'mm'),
            springLength: { at: q(8, 'mm'), length: q(236, 'mm', 'own tape') },
          },
        },
      },
      front: {
        unsprung: q(24, 'kg'),
        tyre: { capacity: q(265, 'kg', 'plate'), ...air(2.5) },
        fork: {
          stroke: q(117, 'mm', 'manual'),
          air: { bore: q(41, 'mm'), gap: q(125, 'mm', 'manual') },
          rubber: 'none',
          topOut: 'none',
          friction: q(70, 'N'),
          adjuster: { kind: 'spacer', least: q(120, 'mm'), most: q(170, 'mm'), cut: q(1, 'mm') },
        },
      },
      limits: { gross: q(590, 'kg', 'plate'), rearAxle: q(365, 'kg', 'plate') },
      places: {
        rider: {
          name: "rider's seat",
          order: 1,
          kind: 'rider seat',
          at: { x: q(550, 'mm'), height: q(980, 'mm') },
        },
        pillion: {
          name: 'pillion',
          order: 2,
          kind: 'passenger seat',
          at: { x: q(150, 'mm'), height: q(1080, 'mm') },
        },
        cases: {
          name: 'both side cases',
          order: 3,
          kind: 'side cases',
          at: { x: q(-50, 'mm'), height: q(620, 'mm') },
        },
        carrier: {
          name: 'carrier',
          order: 4,
          kind: 'rack',
          limit: q(18, 'kg', 'plate'),
          limitCounts: 'all on it',
        },
        box: {
          name: 'box',
          order: 5,
          kind: 'rear box',
          at: { x: q(-330, 'mm'), height: q(900, 'mm') },
          carriedBy: 'carrier',
        },
      },
    },
    springs: {
      fitted: {
        name: 'as delivered',
        order: 1,
        end: 'rear',
        rate: { kind: 'linear', rate: q(125, 'lbf/in', 'marked') },
        freeLength: q(262, 'mm', 'own tape'),
        solidLength: q(140, 'mm', 'own tape'),
      },
      c1: rearSpring('C1', 2, 24.5),
      c2: rearSpring('C2', 3, 27),
      c3: rearSpring('C3', 4, 30.5),
      c4: rearSpring('C4', 5, 34),
      fork: {
        name: 'fork springs',
        order: 6,
        end: 'front',
        rate: { kind: 'linear', rate: q(10.5, 'N/mm', 'manual') },
      },
    },
    things: {
      owner: { name: 'owner in gear', order: 1, kind: 'person', mass: q(92, 'kg', 'own scale') },
      friend: { name: 'friend in gear', order: 2, kind: 'person', mass: q(163, 'lb', 'told') },
      packed: { name: 'cases, packed', order: 3, kind: 'item', mass: q(16, 'kg', 'own scale') },
      box: { name: 'box, packed', order: 4, kind: 'item', mass: q(9, 'kg', 'own scale') },
    },
    loadCases: {
      work: { name: 'to work', order: 1, share: 55, aboard: { a: on('owner', 'rider') } },
      trip: {
        name: 'alone with the cases',
        order: 2,
        share: 20,
        aboard: { a: on('owner', 'rider'), b: on('packed', 'cases') },
      },
      both: {
        name: 'both of us',
        order: 3,
        share: 15,
        aboard: { a: on('owner', 'rider'), b: on('friend', 'pillion') },
      },
      all: {
        name: 'both of us and the box',
        order: 4,
        share: 10,
        aboard: {
          a: on('owner', 'rider'),
          b: on('friend', 'pillion'),
          c: on('packed', 'cases'),
          d: on('box', 'box'),
        },
      },
    },
    targetSets: {},
    setups: {
      asFound: {
        rear: {
          left: { spring: 'fitted', at: { reading: q(14.5, 'mm', 'own tape') } },
          right: { spring: 'fitted', at: { reading: q(15.5, 'mm', 'own tape') } },
        },
        front: { both: { spring: 'fork', at: { spacer: q(140, 'mm', 'own tape'), preload: q(26, 'mm') } } },
      },
    },
  };
}

/** One field of a job, and what it becomes; undefined takes it out. */
export type Change = readonly [path: string, value: unknown];

/** The tourer with some fields set, or taken out where the value is undefined. */
export function tourerWith(...changes: readonly Change[]): JobDocument {
  const data = tourerData();
  // Changes may share a value and reach into it: each job has its own.
  for (const [path, value] of changes) setField(data, path.split('.'), structuredClone(value));
  const read = parseJob(data);
  if (!read.ok) throw new Error(read.problems.map((each) => each.message).join('\n'));
  return read.job;
}

/** The tourer with a heavy box: over its limits with all of it aboard. */
export function overloadedTourer(): JobDocument {
  return tourerWith(['things.box.mass', q(45, 'kg', 'own scale')]);
}

/** The tourer with a short collar: no spring reaches all its loads. */
export function tourerThatNothingFits(): JobDocument {
  return tourerWith(['machine.rear.shock.adjuster.most', q(16, 'mm')]);
}

export function q(value: number, unit: string, origin?: string): Record<string, unknown> {
  return origin === undefined ? { value, unit } : { value, unit, origin };
}

/** A tyre with as much air as its placard asks for. */
function air(bar: number): Record<string, unknown> {
  return { pressure: q(bar, 'bar', 'own log'), placardPressure: q(bar, 'bar', 'plate') };
}

function on(thing: string, place: string): Record<string, unknown> {
  return { thing, place };
}

function rearSpring(name: string, order: number, rate: number): Record<string, unknown> {
  return {
    name,
    order,
    end: 'rear',
    rate: { kind: 'linear', rate: q(rate, 'N/mm', 'catalogue') },
    freeLength: q(262, 'mm', 'catalogue'),
    ...(name === 'C4' ? {} : { solidLength: q(139, 'mm', 'catalogue') }),
    where: `shelf ${name}`,
  };
}
