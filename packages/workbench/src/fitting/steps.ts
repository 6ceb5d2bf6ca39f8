import type { Forgotten } from '@sagwright/model/fitting/workOrder';
import type { Fastening, Gripped } from '@sagwright/records/schema/fastenings';
import type { MountEnd, Side, StepDocument, StepKind, WhyCode } from './document.ts';
import { type FittingOptions, mountEnds } from './options.ts';

/** A step before its tools and torque are known. */
export interface BareStep extends Pick<StepDocument, 'id' | 'kind' | 'side' | 'mount' | 'stance' | 'after'> {
  /** Id of the part in the way. */
  readonly of: string | null;
  /** What tools go on, the one that is turned first. */
  readonly on: readonly Gripped[];
  readonly fastens: Fastening | null;
}

type Before = StepDocument['after'][number];

/**
 * The steps of fitting new shocks at the rear, in the order in which they are declared; which of them there are the options say.
 * All of it is common practice, no source, but for what the service manual says otherwise.
 */
export function rearSteps(options: FittingOptions): readonly BareStep[] {
  const steps = [
    ...beforeAnything(options),
    ...options.sides.flatMap((side) => onTheBench(options, side)),
    ...options.sides.flatMap((side, i) => exchange(options, side, options.sides[i - 1] ?? null)),
    ...standing(options),
  ];
  const there = new Set(steps.map(({ id }) => id));
  // A step that these options leave out is waited for by none.
  return steps.map((step) => ({ ...step, after: step.after.filter((before) => there.has(before.step)) }));
}

/** While it stands on its wheels, with everything on it as it came. */
function beforeAnything({ inTheWay }: FittingOptions): readonly BareStep[] {
  return [
    step({ kind: 'found', stance: 'wheels' }),
    ...inTheWay.map(({ id }) =>
      step({
        kind: 'uncover',
        of: id,
        stance: 'wheels',
        after: [before('found', 'cannot be read later', 'lost')],
      }),
    ),
    step({
      kind: 'loosen',
      stance: 'wheels',
      on: ['topBolt', 'bottomBolt'],
      after: [
        before('found', 'cannot be read later', 'lost'),
        ...inTheWay.map(({ id }) => before(`uncover-${id}`, 'in the way', 'still')),
      ],
    }),
  ];
}

/** The new unit, before it goes in: in reach, and with no load on it. */
function onTheBench(
  { toBeSprung, lengthened, sleeved }: FittingOptions,
  side: Side | null,
): readonly BareStep[] {
  const of = (kind: StepKind, why: WhyCode, forgotten: Forgotten): Before =>
    before(at(kind, side), why, forgotten);
  const compared = of('compare', 'known to fit first', 'still');
  const turning: readonly BareStep[] = [
    step({ kind: 'slacken', side, on: ['lockNut', 'eye'], after: [compared] }),
    step({ kind: 'turn', side, on: ['eye'], after: [of('slacken', 'locked until slack', 'undo')] }),
    step({
      kind: 'lock',
      side,
      on: ['lockNut', 'eye'],
      fastens: 'lockNut',
      after: [of('turn', 'where it shall stand', 'undo')],
    }),
    step({ kind: 'mark', side, after: [of('lock', 'seats only when tight', 'again')] }),
  ];
  return [
    step({ kind: 'compare', side, after: [before('found', 'cannot be read later', 'still')] }),
    ...(toBeSprung ? [step({ kind: 'spring', side, on: ['collar'], after: [compared] })] : []),
    ...(lengthened ? turning : []),
    ...sleeved.map((mount) => step({ kind: 'sleeve', mount, side, after: [compared] })),
  ];
}

/** One shock out and the other in, wheel in the air; `first` is the side that was done before this one. */
function exchange(
  { sleeved, rubber, hose, flush }: FittingOptions,
  side: Side | null,
  first: Side | null,
): readonly BareStep[] {
  const of = (kind: StepKind, why: WhyCode, forgotten: Forgotten, mount: MountEnd | null = null): Before =>
    before(at(kind, side, mount), why, forgotten);
  const hoseSteps: readonly BareStep[] = [
    step({ kind: 'reservoir', side, on: ['reservoirClamp'], after: [of('in', 'hose hangs on it', 'still')] }),
    step({
      kind: 'bracket',
      side,
      on: ['bracket'],
      fastens: 'bracket',
      after: [of('reservoir', 'hose too stiff', 'undo')],
    }),
    ...(flush ? [step({ kind: 'flush', side, after: [of('bracket', 'lies on it', 'again')] })] : []),
  ];
  return [
    ...(side === null ? [step({ kind: 'carry', stance: 'air' })] : []),
    step({
      kind: 'out',
      side,
      stance: 'air',
      on: ['topBolt', 'bottomBolt'],
      after: [
        before('found', 'cannot be read later', 'lost'),
        before('loosen', 'held while it stands', 'still'),
        of('compare', 'known to fit first', 'still'),
        before('carry', 'arm would drop', 'still'),
        ...(first === null ? [] : [before(at('nuts', first), 'one holds the arm', 'still')]),
      ],
    }),
    step({ kind: 'clean', side, stance: 'air', after: [of('out', 'bolts are in it', 'undo')] }),
    step({
      kind: 'in',
      side,
      stance: 'air',
      on: ['topBolt', 'bottomBolt'],
      after: [
        of('out', 'place is taken', 'undo'),
        of('clean', 'dirt and damage', 'undo'),
        of('spring', 'out of reach once in', 'undo'),
        of('mark', 'out of reach once in', 'undo'),
        ...sleeved.map((mount) => of('sleeve', 'out of reach once in', 'undo', mount)),
      ],
    }),
    step({
      kind: 'nuts',
      side,
      stance: 'air',
      on: ['topBolt', 'bottomBolt'],
      after: [of('in', 'not in yet', 'undo')],
    }),
    step({ kind: 'float', side, stance: 'air', after: [of('nuts', 'all its thread', 'again')] }),
    ...(hose ? hoseSteps : []),
    step({ kind: 'set', side, stance: 'air', on: ['collar'], after: [of('in', 'not in yet', 'again')] }),
    ...mountEnds.flatMap((mount) => tightening(side, mount, rubber.includes(mount))),
  ];
}

/** A rubber bush at ride height; any other before it carries weight. */
function tightening(side: Side | null, mount: MountEnd, rubber: boolean): readonly BareStep[] {
  const bolt = mount === 'top' ? 'topBolt' : 'bottomBolt';
  return [
    step({
      kind: 'tighten',
      side,
      mount,
      stance: rubber ? 'wheels' : 'air',
      on: [bolt],
      fastens: bolt,
      after: [
        before(at('float', side), 'felt while slack', 'undo'),
        before(at('nuts', side), 'all its thread', 'undo'),
        ...(rubber ? [before('settle', 'rubber twisted', 'undo')] : []),
      ],
    }),
    step({
      kind: 'witness',
      side,
      mount,
      after: [before(at('tighten', side, mount), 'second look at it', 'again')],
    }),
  ];
}

/** On its wheels again. */
function standing(options: FittingOptions): readonly BareStep[] {
  const { rubber, hose, lengthened } = options;
  const covers = covering(options);
  return [
    step({ kind: 'sweep', stance: 'wheels', after: beforeSweep(options) }),
    ...(rubber.length > 0
      ? [step({ kind: 'settle', stance: 'wheels', after: [before('sweep', 'stands anew', 'again')] })]
      : []),
    ...(hose ? clamping(options) : []),
    ...covers,
    ...(lengthened
      ? [
          step({
            kind: 'height',
            stance: 'wheels',
            after: [before('sweep', 'bears on it', 'again'), before('settle', 'stands anew', 'again')],
          }),
        ]
      : []),
    step({ kind: 'look', stance: 'wheels', after: beforeLook(options, covers) }),
    step({ kind: 'ridden', stance: 'wheels', after: [before('look', 'ridden first', 'again')] }),
  ];
}

/** Whatever bears the machine, and what is seen as it goes through its travel. */
function beforeSweep({ sides, rubber }: FittingOptions): readonly Before[] {
  const hard = mountEnds.filter((mount) => !rubber.includes(mount));
  return [
    ...eachSide(sides, 'float', 'bears on it', 'again'),
    ...eachSide(sides, 'set', 'stands anew', 'again'),
    ...hard.flatMap((mount) =>
      sides.map((side) => before(at('tighten', side, mount), 'bears on it', 'again')),
    ),
    ...eachSide(sides, 'bracket', 'seen through travel', 'again'),
  ];
}

function clamping({ sides }: FittingOptions): readonly BareStep[] {
  return sides.map((side) =>
    step({
      kind: 'clamp',
      side,
      stance: 'wheels',
      on: ['reservoirClamp'],
      fastens: 'reservoirClamp',
      after: [
        before('sweep', 'seen through travel', 'undo'),
        before(at('reservoir', side), 'hose hangs on it', 'undo'),
      ],
    }),
  );
}

function covering({ sides, inTheWay }: FittingOptions): readonly BareStep[] {
  return inTheWay.map(({ id }) =>
    step({
      kind: 'cover',
      of: id,
      stance: 'wheels',
      after: [
        before(`uncover-${id}`, 'never off', 'undo'),
        ...eachWitness(sides, 'hidden afterwards', 'undo'),
        ...eachSide(sides, 'flush', 'lies on it', 'undo'),
        ...eachSide(sides, 'clamp', 'hidden afterwards', 'undo'),
        before('sweep', 'hidden afterwards', 'undo'),
      ],
    }),
  );
}

function beforeLook({ sides }: FittingOptions, covers: readonly BareStep[]): readonly Before[] {
  return [
    ...eachWitness(sides, 'whole machine', 'again'),
    ...eachSide(sides, 'clamp', 'whole machine', 'again'),
    before('sweep', 'whole machine', 'again'),
    ...covers.map(({ id }) => before(id, 'whole machine', 'again')),
    before('height', 'whole machine', 'again'),
  ];
}

type Sides = FittingOptions['sides'];

function eachSide(sides: Sides, kind: StepKind, why: WhyCode, forgotten: Forgotten): readonly Before[] {
  return sides.map((side) => before(at(kind, side), why, forgotten));
}

function eachWitness(sides: Sides, why: WhyCode, forgotten: Forgotten): readonly Before[] {
  return sides.flatMap((side) =>
    mountEnds.map((mount) => before(at('witness', side, mount), why, forgotten)),
  );
}

/** The name of a step: its kind, then the end, then the side. */
function at(kind: StepKind, side: Side | null, mount: MountEnd | null = null): string {
  return [kind, mount, side].filter((part) => part !== null).join('-');
}

function before(id: string, why: WhyCode, forgotten: Forgotten): Before {
  return { step: id, why, forgotten };
}

function step(told: Partial<BareStep> & Pick<BareStep, 'kind'>): BareStep {
  const { kind, side = null, mount = null, of = null } = told;
  const id = of === null ? at(kind, side, mount) : `${kind}-${of}`;
  return { stance: null, after: [], on: [], fastens: null, ...told, id, side, mount, of };
}
