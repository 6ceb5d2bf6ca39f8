import { attitudeAt } from '@sagwright/model/attitude/attitude';
import { type Keeping, type KeptBy, type KeptPart, keepAttitude } from '@sagwright/model/attitude/keep';
import { type KeepingTwo, keepTwo, type TwoParts } from '@sagwright/model/attitude/keepTwo';
import type { Figure } from '@sagwright/model/plan/answer';
import { halfWidthOf } from '@sagwright/model/uncertainty/spread';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import type { JobPlan } from '../path.ts';
import { mainLoad } from '../why/place.ts';
import { doubtAt, type Slopes, type Standing, slopesOf, standing } from '../why/standing.ts';
import { standingShown } from '../why/standingShown.ts';
import type { KeepDocument, KeepTwoDocument, KeptChange } from './document.ts';

const parts: readonly KeptPart[] = ['rake', 'groundTrail', 'seatHeight'];

/** A part of an attitude that is wanted back, with how it moves with each input. */
interface Wanted {
  readonly load: string;
  readonly values: Readonly<Record<KeptPart, number | null>>;
  readonly slopes: Slopes;
}

/**
 * What would bring the attitude of a load as it is planned back to that of the same load as found, and, for a load that is not
 * the one ridden most, to that one's as found: what a change of spring did, and what the load itself does.
 */
export function keepsOf(planned: JobPlan, load: string, now: Standing): readonly KeepDocument[] {
  const isFork = now.parameters.machine.front.kinematics.kind === 'fork';
  const means: readonly KeptBy[] = isFork ? ['shock length', 'clamp height'] : ['shock length'];
  return wantedOf(planned, load, now).flatMap((wanted) =>
    parts.flatMap((part) => means.map((by) => keepDocument(planned, now, wanted, part, by))),
  );
}

/** Two parts that a rider would have back together; rake and trail go together by themselves. */
const pairs: readonly TwoParts[] = [
  ['rake', 'seatHeight'],
  ['groundTrail', 'seatHeight'],
];

/** The same by two changes at once: shock length and clamp height, for two parts. Nothing where the front is no fork. */
export function keepTwosOf(planned: JobPlan, load: string, now: Standing): readonly KeepTwoDocument[] {
  if (now.parameters.machine.front.kinematics.kind !== 'fork') return [];
  return wantedOf(planned, load, now).flatMap((wanted) =>
    pairs.map((pair) => keepTwoDocument(planned, now, wanted, pair)),
  );
}

/** What is wanted back: the same load as found, and the one that is ridden most. */
function wantedOf(planned: JobPlan, load: string, now: Standing): readonly Wanted[] {
  const main = mainLoad(planned.inputs.question.loadCases)?.id ?? null;
  const likes = main === null || main === load ? [load] : [load, main];
  return likes.flatMap((like) => {
    const found = standingShown(planned, like, 'asFound');
    if (found === null || isSame(found, now)) return [];
    return [{ load: like, values: valuesAt(found), slopes: partSlopes(found) }];
  });
}

/** Two stands of the same machine: nothing to keep. */
function isSame(a: Standing, b: Standing): boolean {
  return a.state.every((each, i) => Math.abs(each - b.state[i]!) < 1e-12);
}

function valuesAt({ prepared, state }: Standing): Wanted['values'] {
  return attitudeAt(prepared, state);
}

function partSlopes(at: Standing): Slopes {
  return slopesOf(
    at,
    (prepared, beside, out) => {
      const attitude = attitudeAt(prepared, beside);
      for (let i = 0; i < parts.length; i += 1) out[i] = attitude[parts[i]!] ?? 0;
    },
    parts.length,
  );
}

function keepDocument(
  planned: JobPlan,
  now: Standing,
  { load, values, slopes }: Wanted,
  part: KeptPart,
  by: KeptBy,
): KeepDocument {
  const range = rangeOf(planned, by);
  const told = { part, by, like: load, range };
  const wanted = values[part];
  const keeping = wanted === null ? null : keepAttitude(now.parameters.machine, part, wanted, by);
  if (keeping === null) return { ...told, change: null, choice: null, verdict: 'not known' };
  if (keeping.kind === 'none') return { ...told, change: null, choice: null, verdict: 'no change does' };
  const change = { value: keeping.change, plusMinus: doubtOf(keeping, now, slopes, part) };
  const choice = chosenNow(planned, by) + keeping.change;
  return { ...told, change, choice, verdict: verdictOf(choice, change, range) };
}

function keepTwoDocument(
  planned: JobPlan,
  now: Standing,
  { load, values, slopes }: Wanted,
  pair: TwoParts,
): KeepTwoDocument {
  const [first, second] = [values[pair[0]], values[pair[1]]];
  const keeping =
    first === null || second === null ? null : keepTwo(now.parameters.machine, pair, [first, second]);
  const kept = (by: KeptBy, i: 0 | 1): KeptChange => {
    const range = rangeOf(planned, by);
    if (keeping === null) return { change: null, choice: null, range, verdict: 'not known' };
    if (keeping.kind === 'none') return { change: null, choice: null, range, verdict: 'no change does' };
    const value = by === 'shock length' ? keeping.shockLength : keeping.clampHeight;
    const change = { value, plusMinus: doubtOfTwo(keeping, now, slopes, pair, i) };
    const choice = chosenNow(planned, by) + value;
    return { change, choice, range, verdict: verdictOf(choice, change, range) };
  };
  return {
    parts: pair,
    like: load,
    shockLength: kept('shock length', 0),
    clampHeight: kept('clamp height', 1),
  };
}

/** dc = J⁻¹ (d wanted − d parts), input by input, at the machine so changed; one row of it. */
function doubtOfTwo(
  { machine, slopes: [[a, b], [c, d]] }: Extract<KeepingTwo, { kind: 'changes' }>,
  now: Standing,
  wanted: Slopes,
  pair: TwoParts,
  row: 0 | 1,
): number | null {
  const there = standing(machine, null, now.inputs);
  if (there === null) return null;
  const moved = partSlopes(there);
  const [one, other] = pair.map((part) => parts.indexOf(part)) as [number, number];
  const determinant = a * d - b * c;
  const inverse = row === 0 ? [d, -b] : [-c, a];
  let variance = 0;
  for (const name of new Set([...wanted.keys(), ...moved.keys()])) {
    const off = (place: number): number => (wanted.get(name)?.[place] ?? 0) - (moved.get(name)?.[place] ?? 0);
    variance += ((inverse[0]! * off(one) + inverse[1]! * off(other)) / determinant) ** 2;
  }
  return halfWidthOf(Math.sqrt(variance));
}

/** dc = (d wanted − d part)/(∂part/∂c), at the machine so changed: what both share cancels. */
function doubtOf(
  { machine, slope }: Extract<Keeping, { kind: 'change' }>,
  now: Standing,
  wanted: Slopes,
  part: KeptPart,
): number | null {
  const there = standing(machine, null, now.inputs);
  return there === null ? null : doubtAt(parts.indexOf(part), partSlopes(there), wanted) / Math.abs(slope);
}

/** What is chosen already, against as found [m]. */
function chosenNow({ job }: JobPlan, by: KeptBy): number {
  const typed = by === 'shock length' ? job.choice?.shockLength : job.choice?.clampHeight;
  return typed === undefined ? 0 : siOf(typed);
}

/** What an adjuster leaves either way, against as found [m]; null where nobody said. Tubes go down to flush with their clamp. */
function rangeOf(planned: JobPlan, by: KeptBy): KeepDocument['range'] {
  const { rear, front } = planned.job.machine;
  if (by === 'clamp height') {
    const now = front.fork?.clampHeight?.now;
    return { least: now === undefined ? null : -siOf(now), most: null };
  }
  const adjuster = rear.shock.lengthAdjuster;
  if (adjuster === undefined) return { least: null, most: null };
  const at = siOf(adjuster.change);
  const from = (end: Quantity | undefined): number | null => (end === undefined ? null : siOf(end) - at);
  const longer = planned.inputs.shock.lengthAdjuster?.longer ?? null;
  return { least: from(adjuster.least), most: longer === null ? null : longer.length.value };
}

function verdictOf(
  choice: number,
  { plusMinus }: Figure,
  { least, most }: KeepDocument['range'],
): KeepDocument['verdict'] {
  const room = Math.min(least === null ? Infinity : choice - least, most === null ? Infinity : most - choice);
  const doubt = plusMinus ?? 0;
  if (room < -doubt) return 'outside';
  if (least === null || most === null) return 'not checked';
  return room < doubt ? 'within its ±' : 'within';
}
