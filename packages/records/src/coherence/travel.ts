import { type Problem, problem } from '../problem.ts';
import { bounds } from '../schema/bounds.ts';
import type { Rear, Travel } from '../schema/machine.ts';
import { siOf } from '../schema/quantity.ts';
import type { Shock } from '../schema/struts.ts';
import { rangeInWords } from '../wording/range.ts';
import { asTyped, isBelow } from './compare.ts';
import { hardPointProblems } from './hardPoints.ts';
import { notFalling, notRising } from './tables.ts';

const path = ['machine', 'rear', 'travel'] as const;

/** Eye-to-eye lengths are rounded on a drawing, and off by a millimetre at each end with a tape: common practice, no source. */
const tolerance = { table: 0.0005, taped: 0.002 } as const;

/** How the wheel moves its shock: a table that goes one way, within what the shock can do. */
export function* travelProblems(rear: Rear): Generator<Problem> {
  const { travel } = rear;
  switch (travel.kind) {
    case 'leverage':
    case 'motion':
      yield* ratioProblems(rear);
      return;
    case 'table':
      yield* notRising(travel.rows, 'wheel', [...path, 'rows']);
      yield* notFalling(travel.rows, 'shock', [...path, 'rows']);
      break;
    case 'taped':
      yield* tapedProblems(travel);
      break;
    case 'direct':
    case 'linkage':
      yield* hardPointProblems(rear);
      return;
  }
  yield* lengthProblems(rear.shock, travel);
}

/**
 * Total wheel travel [m] that a rear end can have, as far as it is told: stroke by the ratio, or the table's last row.
 * Undefined where the stroke is not given, where a tape may have stopped short of the end, and where hard points say it.
 */
export function wheelTravelOf({ travel, shock }: Rear): number | undefined {
  switch (travel.kind) {
    case 'leverage':
      return shock.stroke && siOf(shock.stroke) * siOf(travel.ratio);
    case 'motion':
      return shock.stroke && siOf(shock.stroke) / siOf(travel.ratio);
    case 'table':
      return Math.max(...travel.rows.map(({ wheel }) => siOf(wheel)));
    case 'taped':
    case 'direct':
    case 'linkage':
      return undefined;
  }
}

function* ratioProblems(rear: Rear): Generator<Problem> {
  const total = wheelTravelOf(rear);
  if (total === undefined || total <= bounds.wheelTravel.most) return;
  const travel = `${Math.round(total * 1000)} mm`;
  yield problem([...path, 'ratio'], 'tooMuchTravel', travel, rangeInWords(bounds.wheelTravel, 'mm'));
}

function* tapedProblems({ points }: Extract<Travel, { kind: 'taped' }>): Generator<Problem> {
  const rising = Object.entries(points).sort(([, a], [, b]) => siOf(a.wheel) - siOf(b.wheel));
  const heights = rising.filter(([, point], i) => i === 0 || isBelow(rising[i - 1]![1].wheel, point.wheel));
  if (rising.length < 4 || heights.length < 3) {
    yield problem([...path, 'points'], 'tooFewTaped', rising.length, heights.length);
  }
  for (let i = 1; i < rising.length; i++) {
    const [[, before], [id, here]] = [rising[i - 1]!, rising[i]!];
    // Two readings at one height are a repeat; their spread is worth something.
    if (isBelow(before.wheel, here.wheel) && !isBelow(here.shock, before.shock)) {
      yield problem(
        [...path, 'points', id, 'shock'],
        'tapedBackwards',
        asTyped(here.shock),
        asTyped(before.shock),
        asTyped(here.wheel),
      );
    }
  }
}

function* lengthProblems(
  shock: Shock,
  travel: Extract<Travel, { kind: 'table' | 'taped' }>,
): Generator<Problem> {
  const [rows, field] =
    travel.kind === 'table' ? [travel.rows, 'rows'] : [Object.values(travel.points), 'points'];
  const lengths = rows.map((row) => row.shock).sort((a, b) => siOf(a) - siOf(b));
  const [shortest, longest] = [lengths[0], lengths.at(-1)];
  if (!shortest || !longest) return;
  const { stroke, length, lengthAdjuster } = shock;
  const off = tolerance[travel.kind];
  if (stroke && siOf(longest) - siOf(shortest) > siOf(stroke) + off) {
    yield problem([...path, field], 'beyondStroke', asTyped(longest), asTyped(shortest), asTyped(stroke));
  }
  // With a length adjuster the table may have been taken at another length than the one that is typed.
  if (length && !lengthAdjuster && siOf(longest) > siOf(length) + off) {
    yield problem([...path, field], 'beyondLength', asTyped(longest), asTyped(length));
  }
}
