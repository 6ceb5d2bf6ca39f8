import { type Problem, problem } from '../problem.ts';
import type { Points, Rear } from '../schema/machine.ts';
import { isShock } from '../schema/pointTape.ts';
import { asTyped, isBelow } from './compare.ts';

/** What hard points stand on: the swingarm's pivot, the axle's height, the shock's length; the travel follows from them. */
export function* hardPointProblems({ travel, pivot, tyre, shock, measuredAt }: Rear): Generator<Problem> {
  const path = ['machine', 'rear'];
  if (!pivot) yield problem([...path, 'pivot'], 'pointsNeed', "the swingarm's pivot, which they turn about");
  if (!tyre?.radius) {
    const what = "the tyre's radius, which is the axle's height where they were read";
    yield problem([...path, 'tyre', 'radius'], 'pointsNeed', what);
  }
  if (!shock.length) {
    const what = "the shock's length, eye to eye and fully out, where travel begins";
    yield problem([...path, 'shock', 'length'], 'pointsNeed', what);
  }
  if (measuredAt) yield problem([...path, 'measuredAt'], 'followsFromPoints');
  if (travel.kind === 'direct' || travel.kind === 'linkage') yield* tapeProblems(travel);
}

/** A length goes from one part to another, and leans no further than it is long. */
function* tapeProblems({ tape = {}, sideways: shockLeans }: Points): Generator<Problem> {
  for (const [id, each] of Object.entries(tape)) {
    if (each.kind !== 'between') continue;
    const path = ['machine', 'rear', 'travel', 'tape', id];
    if (each.from === each.to) yield problem([...path, 'to'], 'sameEnds', each.to);
    const leans = each.sideways ?? (isShock(each) ? shockLeans : undefined);
    if (leans && !isBelow(leans, each.length)) {
      const what = 'the length, which lies between both ends';
      yield problem(
        [...path, each.sideways ? 'sideways' : 'length'],
        'notBelow',
        asTyped(leans),
        what,
        asTyped(each.length),
      );
    }
  }
}
