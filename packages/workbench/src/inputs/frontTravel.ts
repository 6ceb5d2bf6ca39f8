import { monotoneCubic } from '@sagwright/model/numerics/monotoneCubic';
import { type RatioSI, strokeLimit, travelAtStroke } from '@sagwright/model/rear/kinematics';
import type { EndSI } from '@sagwright/model/statics/machine';
import type { FrontTravel } from '@sagwright/records/schema/frontTravel';
import { siOf } from '@sagwright/records/schema/quantity';
import { type Desk, impossible, note } from './desk.ts';
import { type FoundEnd, foundEnd } from './ends.ts';
import { measuredAtOf } from './measuredAt.ts';
import { rubberOf } from './rubber.ts';
import { topOutOf } from './struts.ts';

const PATH = 'machine.front.travel';
const STRUT = 'machine.front.fork';

/** What moves at a front, and what presses it. */
export interface FrontMotion {
  readonly figures: FoundEnd;
  readonly end: Pick<EndSI, 'referenceTravel' | 'strokeMax' | 'kinematics' | 'axlePath' | 'struts'>;
}

/**
 * A front that is no telescopic fork, told as depth 1 or 2 of a rear is, or by the force of its springs at the wheel. Its axle is taken to
 * move straight along the body's vertical, which is said. No air is shut in unless it is told.
 */
export function otherFront(desk: Desk, travel: FrontTravel): FrontMotion {
  note(desk, 'front path straight', PATH);
  return travel.kind === 'force' ? byForce(desk, travel) : byRatio(desk, travel);
}

type Told = Exclude<FrontTravel, { kind: 'force' }>;

function byRatio(desk: Desk, travel: Told): FrontMotion {
  const { take, job } = desk;
  const { fork } = job.machine.front;
  // The reader has seen to both being there.
  const strokeMax = take.known(`${STRUT}.stroke`, fork!.stroke!, 'stroke');
  const figures = foundEnd(desk, 'front', 2, fork?.adjuster, job.setups.asFound.front!);
  const kinematics = kinematicsOf(desk, travel);
  const friction = take.orAssumed(`${STRUT}.friction`, fork?.friction, 'friction', 'forkFriction');
  const shared = {
    gas: null,
    rubber: rubberOf(desk, `${STRUT}.rubber`, fork?.rubber, strokeMax),
    topOut: topOutOf(desk, `${STRUT}.topOut`, fork?.topOut, strokeMax),
    friction: friction / figures.struts.length,
  };
  return {
    figures,
    end: {
      referenceTravel: measuredAtOf(desk, 'front', wheelTravelOf(desk, kinematics, strokeMax)),
      strokeMax,
      kinematics,
      axlePath: { kind: 'straight' },
      struts: figures.struts.map((strut) => ({ ...strut, ...shared })),
    },
  };
}

function kinematicsOf(desk: Desk, travel: Told): RatioSI {
  const { take } = desk;
  if (travel.kind !== 'table') {
    const ratio = take.known(`${PATH}.ratio`, travel.ratio, 'ratio');
    return { kind: 'ratio', motionRatio: travel.kind === 'motion' ? ratio : 1 / ratio };
  }
  const { rows } = travel;
  const why = 'a drawn or computed table, all together';
  const scale = take.workedOut(`${PATH}.rows`, 1, 0.015, 'share', '%', why);
  const [wheel, shock] = [siOf(rows[0]!.wheel), siOf(rows[0]!.shock)];
  const curve = monotoneCubic(
    rows.map((row) => siOf(row.wheel) - wheel),
    rows.map((row) => shock - siOf(row.shock)),
  );
  return { kind: 'table', curve, scale };
}

function wheelTravelOf(desk: Desk, kinematics: RatioSI, strokeMax: number): number {
  if (strokeMax < 0.999 * strokeLimit(kinematics)) return travelAtStroke(kinematics, 0, strokeMax);
  impossible(
    desk,
    PATH,
    `Front travel: on this table its springs never make their stroke of ${(strokeMax * 1000).toFixed(1)} mm. Check the stroke, and give more rows near the end.`,
  );
  return 0;
}

/**
 * All springs as one at the wheel. Its force fully out is a preload on a spring as stiff as the first rows say: the same force at
 * every travel, since the wheel never gets further out.
 */
function byForce(desk: Desk, { rows }: Extract<FrontTravel, { kind: 'force' }>): FrontMotion {
  const { take, job } = desk;
  const why = 'forces read at the wheel, all together';
  const scale = take.workedOut(`${PATH}.rows`, 1, 0.03, 'share', '%', why);
  const wheel = rows.map((row) => siOf(row.wheel) - siOf(rows[0]!.wheel));
  const force = rows.map((row) => scale * siOf(row.force));
  const preload = (force[0]! * wheel[1]!) / (force[1]! - force[0]!);
  const below = preload > 0 ? [0] : [];
  const compression = [...below, ...wheel.map((each) => each + preload)];
  const strokeMax = wheel.at(-1)!;
  const { fork } = job.machine.front;
  const strut = {
    spring: { kind: 'table', compression, force: [...below, ...force] } as const,
    preload,
    gas: null,
    rubber: null,
    topOut: null,
    friction: take.orAssumed(`${STRUT}.friction`, fork?.friction, 'friction', 'forkFriction'),
  };
  return {
    figures: { fitted: null, struts: [strut], found: null },
    end: {
      referenceTravel: measuredAtOf(desk, 'front', strokeMax),
      strokeMax,
      kinematics: { kind: 'ratio', motionRatio: 1 },
      axlePath: { kind: 'straight' },
      struts: [strut],
    },
  };
}
