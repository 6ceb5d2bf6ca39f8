import { type Problem, problem } from '../problem.ts';
import type { Rear } from '../schema/machine.ts';

/** What hard points stand on: the swingarm's pivot, the axle's height, the shock's length; the travel follows from them. */
export function* hardPointProblems({ pivot, tyre, shock, measuredAt }: Rear): Generator<Problem> {
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
}
