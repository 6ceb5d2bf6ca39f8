import { cubicAt, monotoneCubic } from '@sagwright/model/numerics/monotoneCubic';
import { type RatioSI, strokeAt, strokeLimit, travelAtStroke } from '@sagwright/model/rear/kinematics';
import type { Points, Travel } from '@sagwright/records/schema/machine';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import type { Shock } from '@sagwright/records/schema/struts';
import { type Desk, impossible, note } from './desk.ts';
import { LEAST_RATIO } from './leastRatio.ts';
import { lengthened } from './shockLength.ts';
import { halfWidthTyped } from './take.ts';
import { tapedKinematics } from './taped.ts';

const PATH = 'machine.rear.travel';

/**
 * How the rear wheel moves its shock. Travel is counted from where the shock has its length, eye to eye, fully out; where
 * that is not known, from the lowest wheel of a table or of taped points.
 */
export function rearKinematics(desk: Desk, travel: Exclude<Travel, Points>, shock: Shock): RatioSI {
  const { take } = desk;
  switch (travel.kind) {
    case 'leverage':
      return { kind: 'ratio', motionRatio: 1 / take.known(`${PATH}.ratio`, travel.ratio, 'ratio') };
    case 'motion':
      return { kind: 'ratio', motionRatio: take.known(`${PATH}.ratio`, travel.ratio, 'ratio') };
    case 'table':
      return tableKinematics(desk, travel, shock);
    case 'taped':
      return tapedKinematics(desk, desk.tape!, shock);
  }
}

/** Wheel travel [m] beyond a table's rows that is rounding, and nothing carried on. */
const ROUNDING = 0.001;

/** Wheel travel at full stroke [m]; told where the ratio never lets the shock make its stroke, or hardly. */
export function wheelTravel(desk: Desk, kinematics: RatioSI, strokeMax: number): number {
  // A hair is left, so that the small steps by which the doubt of the stroke is followed have an answer too.
  if (strokeMax < 0.999 * strokeLimit(kinematics)) {
    const travel = travelAtStroke(kinematics, 0, strokeMax);
    if (kinematics.kind === 'table' && !spans(kinematics.curve.x, travel))
      note(desk, 'travel carried on', PATH);
    if (Math.min(ratioAt(kinematics, 0), ratioAt(kinematics, travel)) > LEAST_RATIO) return travel;
  }
  impossible(
    desk,
    PATH,
    `Rear travel: on these figures the shock never makes its stroke of ${(strokeMax * 1000).toFixed(1)} mm, or the wheel hardly moves it fully out or at full bump. Check the stroke, and give more points near both ends.`,
  );
  return 0;
}

function ratioAt(kinematics: RatioSI, wheel: number): number {
  const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  strokeAt(kinematics, 0, wheel, at);
  return at.motionRatio;
}

/** Whether the rows of a table reach from the extension stop to full bump. */
function spans(wheel: readonly number[], travel: number): boolean {
  return wheel[0]! <= ROUNDING && wheel.at(-1)! >= travel - ROUNDING;
}

function tableKinematics(desk: Desk, travel: Extract<Travel, { kind: 'table' }>, shock: Shock): RatioSI {
  const wheel = travel.rows.map((row) => siOf(row.wheel));
  const length = travel.rows.map((row) => siOf(row.shock));
  // A curve is moved by its scale alone: the ± of a length that it is cut at is within that.
  const start =
    shock.length === undefined
      ? wheel[0]!
      : wheelAtLength(wheel, length, siOf(shock.length) + lengthened(shock));
  const strokes = strokesFrom(wheel, length, start);
  const why = 'a drawn or computed table, all together';
  const scale = desk.take.workedOut(`${PATH}.rows`, 1, scaleDoubt(travel.rows), 'share', '%', why);
  return {
    kind: 'table',
    curve: monotoneCubic(
      wheel.map((w) => w - start),
      strokes,
    ),
    scale,
  };
}

/** How far off a table's ratio is in all [share]: as drawn or computed, or as far as the widest ± that was typed in it makes its span. */
function scaleDoubt(rows: Extract<Travel, { kind: 'table' }>['rows']): number {
  const ofSpan = (typed: readonly Quantity[]): number => {
    const values = typed.map(siOf);
    const widest = Math.max(...typed.map((each) => halfWidthTyped(each) ?? 0));
    return widest / (Math.max(...values) - Math.min(...values));
  };
  return Math.max(DRAWN, ofSpan(rows.map(({ wheel }) => wheel)), ofSpan(rows.map(({ shock }) => shock)));
}

/** Of a drawn or computed table that came without a ± of its own. */
const DRAWN = 0.015;

/** Wheel reading at which the shock has a length, on the curve through the rows (straight on beyond its ends). */
function wheelAtLength(wheel: readonly number[], length: readonly number[], wanted: number): number {
  const longestFirst = length.map((each) => -each);
  const curve = monotoneCubic(longestFirst, wheel);
  const at = { value: 0, first: 0, second: 0 };
  cubicAt(curve, -wanted, at);
  return at.value;
}

/** Stroke at each row, counted from where the wheel stands at `start`. */
function strokesFrom(wheel: readonly number[], length: readonly number[], start: number): readonly number[] {
  const curve = monotoneCubic(
    wheel,
    length.map((each) => -each),
  );
  const at = { value: 0, first: 0, second: 0 };
  cubicAt(curve, start, at);
  return length.map((each) => -at.value - each);
}
