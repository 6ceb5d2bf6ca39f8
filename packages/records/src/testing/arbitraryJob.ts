import fc from 'fast-check';
import type { Drive } from '../schema/drive.ts';
import type { Fork, SpringStack } from '../schema/fork.ts';
import type { FrontTravel } from '../schema/frontTravel.ts';
import type { Front, Machine, Rear } from '../schema/machine.ts';
import type { EndSetting } from '../schema/setups.ts';
import { type JobDocument, jobFormat, jobVersion } from '../schema.ts';
import { arbitraryRearFitting } from './arbitraryFitting.ts';
import {
  arbitraryClearances,
  arbitraryKnobs,
  arbitraryStandLean,
  arbitraryTyreLimits,
} from './arbitraryLimits.ts';
import {
  arbitraryLoadCases,
  arbitraryPlace,
  arbitraryTargetSet,
  arbitraryThing,
  listOf,
} from './arbitraryLoads.ts';
import { arbitraryPoints, type PointedRear } from './arbitraryPoints.ts';
import { arbitraryQuantity as quantity } from './arbitraryQuantity.ts';
import { arbitraryReadings } from './arbitraryReadings.ts';
import { arbitrarySpring } from './arbitrarySprings.ts';
import {
  arbitraryBeam,
  arbitraryRaised,
  arbitraryStancePoints,
  arbitraryStandChoice,
  arbitrarySteady,
  arbitraryTyreSize,
} from './arbitraryStance.ts';
import {
  arbitraryAdjuster,
  arbitraryFork,
  arbitraryForkSize,
  arbitraryFrontTravel,
  arbitraryShock,
  arbitraryShockSize,
  arbitraryStack,
  arbitraryTravel,
  type StrutSize,
} from './arbitraryStruts.ts';

/**
 * Any job that the reader accepts, within what a machine can be: every kind of travel, spring, adjuster and load case,
 * in every unit, optional parts there or not. All of it is invented. For property tests here and elsewhere.
 */
export const arbitraryJob: fc.Arbitrary<JobDocument> = fc
  .record({
    ends: arbitraryEnds(),
    machineAlone: arbitraryMachineAlone(),
    places: listOf('place', 1, 4, arbitraryPlace),
    things: listOf('thing', 0, 4, arbitraryThing),
    targetSets: listOf('set', 0, 2, arbitraryTargetSet),
    note: fc.string({ maxLength: 200 }),
  })
  .chain((parts) =>
    arbitraryLoadCases(Object.keys(parts.things), Object.keys(parts.places)).map((loadCases) => ({
      ...parts,
      loadCases,
    })),
  )
  .chain(({ ends, machineAlone, places, things, loadCases, targetSets, note }) =>
    fc
      .tuple(
        fc.option(arbitraryReadings(Object.keys(loadCases), ends.asFound), { freq: 2, nil: undefined }),
        arbitraryStandChoice(tyresKnown(ends)),
        fc.option(arbitrarySteady, { nil: undefined }),
        fc.option(arbitraryRearFitting, { freq: 2, nil: undefined }),
      )
      .map(([readings, standing, steady, fitting]) => ({
        format: jobFormat,
        version: jobVersion,
        name: 'an invented job',
        ...(note === '' ? {} : { note }),
        machine: { ...machineAlone, rear: ends.rear, front: ends.front, places },
        springs: ends.springs,
        things,
        loadCases,
        targetSets,
        ...(Object.keys(targetSets).length > 0 ? { targetSet: Object.keys(targetSets)[0]! } : {}),
        setups: { asFound: ends.asFound },
        choice: { ...ends.choice, ...(ends.front.travel ? withoutClamps(standing) : standing) },
        ...(steady === undefined ? {} : { steady }),
        ...(fitting === undefined ? {} : { fitting: { rear: fitting } }),
        ...(readings === undefined ? {} : { readings }),
      })),
  );

/** Only a telescopic fork stands in clamps. */
function withoutClamps<T extends { readonly clampHeight?: unknown }>({ clampHeight: _, ...standing }: T) {
  return standing;
}

function tyresKnown({ rear, front }: Ends): { readonly rear: boolean; readonly front: boolean } {
  const isKnown = (tyre: Rear['tyre']): boolean => tyre?.radius !== undefined || tyre?.size !== undefined;
  return { rear: isKnown(rear.tyre), front: isKnown(front.tyre) };
}

/** What is told of the machine beside its two ends and its places. */
function arbitraryMachineAlone(): fc.Arbitrary<Omit<Machine, 'rear' | 'front' | 'places'>> {
  return fc.record(
    {
      name: fc.constantFrom('grey tourer', 'long-travel machine', 'Dicke Berta'),
      kind: fc.constant('solo' as const),
      ridingHeightControl: fc.constantFrom('none', 'self-levelling', 'electronic'),
      wheelbase: quantity('length', 1.35, 1.75),
      rake: quantity('angle', 0.4, 0.58),
      forkOffset: quantity('length', 0.02, 0.07),
      seat: fc.record({ x: quantity('length', 0.3, 0.6), height: quantity('length', 0.68, 0.88) }),
      weighing: arbitraryWeighing(),
      points: arbitraryStancePoints,
      beam: arbitraryBeam,
      clearances: arbitraryClearances,
      knobs: arbitraryKnobs,
      tank: fc.record(
        {
          capacity: quantity('volume', 0.013, 0.03),
          at: fc.record({ x: quantity('length', 0.6, 0.9), height: quantity('length', 0.7, 0.95) }),
        },
        { requiredKeys: ['capacity'] },
      ),
      limits: fc.record(
        {
          gross: quantity('mass', 380, 650),
          frontAxle: quantity('mass', 150, 250),
          rearAxle: quantity('mass', 220, 420),
          topSpeed: quantity('speed', 40, 60),
          standLean: arbitraryStandLean,
        },
        { requiredKeys: [] },
      ),
    },
    { requiredKeys: ['name', 'kind', 'weighing'] },
  );
}

/** The height of the mass centre told, by a raised wheel, or neither. */
function arbitraryWeighing(): fc.Arbitrary<Machine['weighing']> {
  const read = fc.record(
    {
      front: quantity('mass', 95, 190),
      rear: quantity('mass', 95, 220),
      fuel: quantity('volume', 0.001, 0.012),
      attitude: fc.constantFrom('own sag' as const, 'level' as const),
      massCentreHeight: quantity('length', 0.42, 0.65),
    },
    { requiredKeys: ['front', 'rear', 'attitude'] },
  );
  return read.chain((weighing) =>
    weighing.massCentreHeight !== undefined
      ? fc.constant(weighing)
      : fc
          .option(arbitraryRaised(weighing.front, weighing.rear), { nil: undefined })
          .map((raised) => ({ ...weighing, ...(raised === undefined ? {} : { raised }) })),
  );
}

interface Ends extends Pick<Machine, 'rear' | 'front'>, Pick<JobDocument, 'springs'> {
  readonly asFound: JobDocument['setups']['asFound'];
  readonly choice: NonNullable<JobDocument['choice']>;
}

function arbitraryEnds(): fc.Arbitrary<Ends> {
  const sizes = fc.tuple(arbitraryShockSize, arbitraryForkSize);
  return sizes.chain(([shockSize, forkSize]) =>
    fc
      .record({
        count: fc.constantFrom(1 as const, 2 as const),
        hasFork: fc.boolean(),
        shock: arbitraryShock(shockSize),
        fork: arbitraryFork(forkSize),
        stack: fc.option(arbitraryStack(forkSize), { freq: 2, nil: undefined }),
        otherFront: fc.option(arbitraryFrontTravel(forkSize), { freq: 4, nil: undefined }),
        travel: arbitraryTravel(shockSize),
        drive: fc.option(arbitraryDrive, { freq: 2, nil: undefined }),
        pointed: fc.oneof(
          { arbitrary: fc.constant(null), weight: 3 },
          { arbitrary: arbitraryPoints(shockSize.stroke), weight: 1 },
        ),
        wheels: fc.tuple(arbitraryWheel, arbitraryFrontWheel),
        pivot: fc.record({ x: quantity('length', 0.45, 0.6), height: quantity('length', 0.32, 0.46) }),
        rear: arbitraryFitting('rear', shockSize),
        front: arbitraryFitting('front', forkSize),
      })
      .map(
        ({
          count,
          hasFork,
          shock,
          fork,
          stack,
          otherFront,
          travel,
          drive,
          pointed,
          wheels,
          pivot,
          rear,
          front,
        }) => ({
          rear: byPoints(pointed, {
            ...wheels[0],
            travel,
            pivot,
            ...(drive === undefined ? {} : { drive }),
            shock: { count, ...shock, adjuster: rear.adjuster },
          }),
          front: {
            ...wheels[1],
            ...(hasFork ? frontOf({ ...fork, adjuster: front.adjuster }, stack, otherFront) : {}),
          },
          springs: { ...rear.springs, ...(hasFork ? front.springs : {}) },
          asFound: { rear: rear.sides[count], ...(hasFork ? { front: front.sides[2] } : {}) },
          choice: { rear: rear.first, ...(hasFork ? { front: front.first } : {}) },
        }),
      ),
  );
}

/** A fork; or what stands in its place, without what only a fork has. */
function frontOf(
  fork: Fork,
  stack: SpringStack | undefined,
  travel: FrontTravel | undefined,
): Pick<Front, 'fork' | 'travel'> {
  if (travel === undefined) return { fork: stacked(fork, stack) };
  const { tubes: _tubes, air: _air, clampHeight: _clampHeight, ...strut } = fork;
  return { travel, fork: strut };
}

/** A stack where nothing else says how long the installed spring is; its own spacer where none is set. */
function stacked(fork: Fork, stack: SpringStack | undefined): Fork {
  const { adjuster } = fork;
  if (stack === undefined || adjuster === undefined || adjuster.kind === 'none') return fork;
  if (adjuster.springLength !== undefined) return fork;
  const { spacer: _, ...without } = stack;
  return { ...fork, stack: adjuster.kind === 'spacer' ? without : stack };
}

/** The same rear known by its hard points; as it is where there are none. */
function byPoints(pointed: PointedRear | null, { measuredAt, ...rear }: Rear): Rear {
  if (pointed === null) return { ...rear, ...(measuredAt === undefined ? {} : { measuredAt }) };
  const { travel, pivot, radius, length } = pointed;
  const { lengthAdjuster: _, ...shock } = rear.shock;
  return { ...rear, travel, pivot, tyre: { ...rear.tyre, radius }, shock: { ...shock, length } };
}

const arbitraryTeeth = fc.record({
  front: fc.integer({ min: 15, max: 34 }),
  rear: fc.integer({ min: 38, max: 70 }),
});

const arbitraryDrive: fc.Arbitrary<Drive> = fc.oneof(
  fc.constant({ kind: 'shaft' as const }),
  fc.record({
    kind: fc.constantFrom('chain' as const, 'belt' as const),
    frontSprocket: fc.record({ x: quantity('length', 0.6, 0.72), height: quantity('length', 0.33, 0.46) }),
    pitch: quantity('length', 0.0127, 0.0159),
    teeth: arbitraryTeeth,
  }),
);

const arbitraryWheel = fc.record(
  {
    unsprung: quantity('mass', 14, 32),
    tyre: fc.record(
      {
        ...arbitraryTyreLimits,
        radius: quantity('length', 0.29, 0.34),
        size: arbitraryTyreSize,
        rate: quantity('rate', 1.3e5, 2.4e5),
        capacity: quantity('mass', 180, 400),
        loadIndex: fc.integer({ min: 50, max: 80 }),
        pressure: quantity('pressure', 2e5, 3e5),
      },
      { requiredKeys: [] },
    ),
    measuredAt: quantity('length', 0, 0.03),
  },
  { requiredKeys: [] },
);

/** What moves with it told whole, in parts, or not at all. */
const arbitraryFrontWheel = fc
  .tuple(
    arbitraryWheel,
    fc.option(
      fc.record(
        {
          wheel: quantity('mass', 9, 18),
          brakes: quantity('mass', 0, 4),
          tubes: quantity('mass', 3, 8),
          guard: quantity('mass', 0, 2),
        },
        { requiredKeys: ['wheel'] },
      ),
      { freq: 3, nil: undefined },
    ),
  )
  .map(([{ unsprung, ...wheel }, unsprungParts]) => ({
    ...wheel,
    ...(unsprungParts !== undefined ? { unsprungParts } : unsprung === undefined ? {} : { unsprung }),
  }));

/** The springs of an end, its adjuster, and which of the springs stand in it and how: for one strut and for two. */
function arbitraryFitting(end: 'rear' | 'front', size: StrutSize) {
  return fc
    .record({
      springs: listOf(end, 1, 3, arbitrarySpring(end, size)),
      adjusted: arbitraryAdjuster(size),
      areAlike: fc.boolean(),
    })
    .map(({ springs, adjusted: { adjuster, at }, areAlike }) => {
      const ids = Object.keys(springs);
      const [left, right] = [ids[0]!, ids.at(-1)!].map((spring) => ({ spring, at }));
      const two: EndSetting = areAlike ? { both: left! } : { left: left!, right: right! };
      return { springs, adjuster, first: ids[0]!, sides: { 1: { single: left! }, 2: two } };
    });
}
