import { expect, test } from 'vitest';
import { momentsOf } from '../masses/pointMass.ts';
import { parameter, parametersOf, setParameter } from '../statics/parameters.ts';
import { prepare, refresh } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { rider, tourer } from '../testing/tourer.ts';
import { directionsOf } from '../uncertainty/inputs.ts';
import { steadyDerivatives, steadyShift } from './derivatives.ts';
import type { SteadyAction } from './forces.ts';
import { steadyOf } from './steady.ts';

const action = (deceleration: number): SteadyAction => ({ kind: 'braking', deceleration, frontShare: 0.6 });
const parameters = parametersOf({ ...tourer(), load: momentsOf([rider]) });
const prepared = prepare(parameters.machine);
const answer = restOf(prepared);
if (answer.kind !== 'rest') throw new Error(answer.kind);
const start = answer.rest.state;

function stand(gain = 4) {
  const found = steadyOf(prepared, start, action(gain));
  if (found.kind !== 'stands') throw new Error(found.kind);
  return found.stand;
}

test.each([
  ['sprung.height', 0.01],
  ['rear.struts.0.spring.rate', 200],
  ['front.tyre.radius', 0.003],
  ['geometry.rake', 0.005],
])('moving %s moves the stand as its derivative says', (name, step) => {
  const [direction] = directionsOf(parameters, [
    { name, deviation: step, moves: [{ parameter: name, by: 1 }] },
  ]);
  const slopes = steadyDerivatives(parameters, prepared, stand(), action(4), [direction!])!;
  const index = parameters.indexOf.get(name)!;
  const at = parameter(parameters, index);
  const solved = [step, -step].map((by) => {
    setParameter(parameters, index, at + by);
    refresh(prepared);
    return stand().state;
  });
  setParameter(parameters, index, at);
  refresh(prepared);
  for (let i = 0; i < 4; i += 1) {
    const slope = (solved[0]![i]! - solved[1]![i]!) / (2 * step);
    // Both are central; what is left is the third derivative over a step of the input's own size.
    expect(Math.abs(slopes[i]! - slope)).toBeLessThan(1e-3 * Math.abs(slope) + 1e-9);
  }
});

test('so does the deceleration itself', () => {
  const slopes = steadyShift(prepared, stand(), action(4), action(4.001), action(3.999), 0.001)!;
  const [more, less] = [stand(4.01).state, stand(3.99).state];
  for (let i = 0; i < 4; i += 1) expect(slopes[i]!).toBeCloseTo((more[i]! - less[i]!) / 0.02, 6);
});
