import { isHardPoints } from '@sagwright/model/rear/kinematics';
import { damperAt } from '@sagwright/model/rear/wheelMotion';
import type { Prepared } from '@sagwright/model/statics/prepared';
import { HALF_WIDTH_90, halfWidthOf } from '@sagwright/model/uncertainty/spread';
import { siOf } from '@sagwright/records/schema/quantity';
import { inOrder } from '../inputs/desk.ts';
import { tapeDeviation } from '../inputs/tapeDeviation.ts';
import type { JobPlan } from '../path.ts';
import { doubtAt, type Standing, slopesOf } from '../why/standing.ts';
import type { EarlierRowDocument, EarlierSurveyDocument } from './rearMotionDocument.ts';

/** One row as it was read [m], with its standard deviations. */
interface Row {
  readonly id: string;
  readonly wheel: number;
  readonly shock: number;
  readonly wheelDeviation: number;
  readonly shockDeviation: number;
}

/**
 * A table or tape that was known before the hard points, held against them row by row: the shock's length as read less that by the points at the same wheel
 * travel. Where its wheel reading counts from is found with it: the zero that leaves the least Σ (difference/deviation)². `alone` is the
 * machine as found; null where it has no rest, and where fewer than two rows were kept: the zero uses one up.
 */
export function earlierSurvey({ job }: JobPlan, alone: Standing | null): EarlierSurveyDocument | null {
  const { travel } = job.machine.rear;
  if ((travel.kind !== 'direct' && travel.kind !== 'linkage') || alone === null) return null;
  const rows = inOrder(travel.earlierSurvey ?? {}).map(
    ([id, { wheel, shock }]): Row => ({
      id,
      wheel: siOf(wheel),
      shock: siOf(shock),
      wheelDeviation: tapeDeviation(wheel),
      shockDeviation: tapeDeviation(shock),
    }),
  );
  if (rows.length < 2) return null;
  let counted = rows;
  let told = heldAgainst(rows, counted, alone);
  // One at a time, the worst first, held anew each time: a misread row pulls the zero, and so accuses its neighbours.
  for (let gross = grossOf(told, counted); gross !== null; gross = grossOf(told, counted)) {
    counted = counted.filter(({ id }) => id !== gross);
    told = heldAgainst(rows, counted, alone);
  }
  return told;
}

/** Off by more than this, in its ± of 90 %, a row is no reading of this machine's zero: 3.29 deviations, one in a thousand. */
const GROSS = 3.29 / HALF_WIDTH_90;

/** The worst of the rows that the zero was found from, where it is that far off and three are there at least. */
function grossOf({ rows }: EarlierSurveyDocument, counted: readonly Row[]): string | null {
  if (counted.length < 3) return null;
  const among = rows.filter(({ id }) => counted.some((row) => row.id === id));
  const worst = among.reduce((most, row) => (offOf(row) > offOf(most) ? row : most));
  return offOf(worst) > GROSS ? worst.id : null;
}

/** All rows against the points, their zero found from those that count. */
function heldAgainst(rows: readonly Row[], counted: readonly Row[], alone: Standing): EarlierSurveyDocument {
  const counts = rows.map((row) => counted.includes(row));
  const zero = zeroOf(rows, counts, alone.prepared);
  const at = rows.map(({ wheel }) => lengthAt(alone.prepared, wheel + zero));
  const pulls = pullsOf(rows, counts, at);
  const byPoints = slopesOf(
    alone,
    (prepared, _, out) => {
      rows.forEach(({ wheel }, i) => {
        out[i] = lengthAt(prepared, wheel + zero).length;
      });
    },
    rows.length,
  );
  const followed = new Map([...byPoints].map(([name, slopes]) => [name, left(slopes, at, pulls)]));
  const zeroDeviation = Math.hypot(...rows.map((row, i) => pulls[i]! * ownDeviation(row, at[i]!)));
  const documents = rows.map((row, i): EarlierRowDocument => {
    const own = ownDeviation(row, at[i]!);
    // A row that counts has pulled the zero towards it; to one that does not, the zero's own doubt comes on top.
    const apart = counts[i]
      ? own * Math.sqrt(Math.max(0, 1 - pulls[i]! * at[i]!.ratio))
      : Math.hypot(own, at[i]!.ratio * zeroDeviation);
    const difference = {
      value: row.shock - at[i]!.length,
      plusMinus: Math.hypot(halfWidthOf(apart), doubtAt(i, followed)),
    };
    return {
      id: row.id,
      wheel: row.wheel,
      shock: { value: row.shock, plusMinus: halfWidthOf(own) },
      byPoints: { value: at[i]!.length, plusMinus: doubtAt(i, byPoints) },
      difference,
      verdict: Math.abs(difference.value) <= difference.plusMinus ? 'agrees' : 'differs',
    };
  });
  return {
    zero: { value: zero, plusMinus: halfWidthOf(zeroDeviation) },
    rows: documents,
    worst: worstOf(documents),
  };
}

const STEPS = 30;

/** Wheel travel by the points at which the survey counts 0 [m]: Gauss and Newton in one unknown. */
function zeroOf(rows: readonly Row[], counts: readonly boolean[], prepared: Prepared): number {
  let zero = 0;
  for (let i = 0; i < STEPS; i += 1) {
    const at = rows.map(({ wheel }) => lengthAt(prepared, wheel + zero));
    const pulls = pullsOf(rows, counts, at);
    const step = rows.reduce((sum, { shock }, k) => sum + pulls[k]! * (at[k]!.length - shock), 0);
    zero += step;
    if (Math.abs(step) < 1e-12) break;
  }
  return zero;
}

interface AtTravel {
  readonly length: number;
  readonly ratio: number;
}

/** How far the zero goes down for a metre more of each row's shock: MR w / Σ MR² w, w = 1/variance. */
function pullsOf(
  rows: readonly Row[],
  counts: readonly boolean[],
  at: readonly AtTravel[],
): readonly number[] {
  const weights = rows.map((row, i) => (counts[i] ? 1 / ownDeviation(row, at[i]!) ** 2 : 0));
  const whole = weights.reduce((sum, weight, i) => sum + weight * at[i]!.ratio ** 2, 0);
  return weights.map((weight, i) => (weight * at[i]!.ratio) / whole);
}

/** What is left of a move of the lengths by the points once the zero has followed it. */
function left(
  moves: readonly number[],
  at: readonly AtTravel[],
  pulls: readonly number[],
): readonly number[] {
  const zero = moves.reduce((sum, move, i) => sum + pulls[i]! * move, 0);
  return moves.map((move, i) => move - at[i]!.ratio * zero);
}

/** Of a row: the shock's reading, and the wheel's as it moves the shock. */
function ownDeviation({ shockDeviation, wheelDeviation }: Row, { ratio }: AtTravel): number {
  return Math.hypot(shockDeviation, ratio * wheelDeviation);
}

function worstOf(rows: readonly EarlierRowDocument[]): string | null {
  const [worst] = rows.filter(({ verdict }) => verdict === 'differs').toSorted((a, b) => offOf(b) - offOf(a));
  return worst?.id ?? null;
}

function offOf({ difference }: EarlierRowDocument): number {
  return Math.abs(difference.value) / difference.plusMinus!;
}

/** Eye to eye by the points at a wheel travel [m], and how it falls; past the ends of the travel straight on. */
function lengthAt({ machine: { rear }, rearTravelMax }: Prepared, travel: number): AtTravel {
  if (!isHardPoints(rear.kinematics)) {
    throw new RangeError(`lengthAt: a rear known as ${rear.kinematics.kind}; it must have hard points`);
  }
  const within = Math.min(Math.max(travel, 0), rearTravelMax);
  const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  damperAt(rear, 0, within, at);
  const length = rear.kinematics.damper.extendedLength - at.stroke - at.motionRatio * (travel - within);
  return { length, ratio: at.motionRatio };
}
