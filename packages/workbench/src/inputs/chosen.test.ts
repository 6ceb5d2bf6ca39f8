import { attitudeAt } from '@sagwright/model/attitude/attitude';
import { withShockLength } from '@sagwright/model/attitude/otherGeometry';
import type { MachineSI } from '@sagwright/model/statics/machine';
import { parameter, parametersOf, setParameter } from '@sagwright/model/statics/parameters';
import type { Prepared } from '@sagwright/model/statics/prepared';
import type { UncertainInput } from '@sagwright/model/uncertainty/inputs';
import { expect, test } from 'vitest';
import { planJob } from '../path.ts';
import { type Change, q, tourerWith } from '../testing/tourerJob.ts';
import { readAt, standing } from '../why/standing.ts';

const rows = [
  [0, 350],
  [30, 325],
  [60, 301],
  [86, 281],
].map(([wheel, shock]) => ({ wheel: q(wheel!, 'mm'), shock: q(shock!, 'mm') }));

const points = Object.fromEntries(
  [0, 15, 30, 45, 60, 75].map((wheel, order) => [
    `p${order}`,
    { order, wheel: q(wheel, 'mm'), shock: q(330 - 0.98 * wheel + 0.0016 * wheel * wheel, 'mm') },
  ]),
);

const ways: readonly (readonly [string, readonly Change[], number])[] = [
  ['one ratio', [], 2e-3],
  // A drawn curve is moved by its scale alone: that its bends stand elsewhere, counted from the moved stop, is left out. Of the
  // slope that is change · MR′/MR, here 9 mm · (0.833 − 0.769)/(60 mm · 0.8) = 1.2 %.
  ['a table', [['machine.rear.travel', { kind: 'table', rows }]], 2e-2],
  ['a tape', [['machine.rear.travel', { kind: 'taped', points }]], 2e-3],
];

/**
 * Against solving again: the machine as found with an input moved, its shock then made longer. A step of a twentieth of the
 * deviation: what the second order leaves is below two thousandths of the slope.
 */
test.each(ways)(
  'another shock length carries the ± of a ratio told by %s into where the machine stands',
  (_, changes, share) => {
    const change = -0.009;
    const found = planJob(tourerWith(...changes));
    const lengthened = planJob(tourerWith(...changes, ['choice.shockLength', q(1000 * change, 'mm')]));
    if (!found.ok || !lengthened.ok) throw new Error('both can be planned');
    const { machine, inputs, loadCases } = found.inputs.question;
    const chosen = lengthened.inputs.question.chosen!;
    const { load } = loadCases[0]!;
    const { contributions } = readAt(standing(chosen.machine, load, chosen.inputs)!, seatHeight);
    const ofRatio = inputs.filter(({ moves }) => moves.some((move) => move.parameter.startsWith('rear.kin')));
    expect(ofRatio.length).toBeGreaterThan(0);
    for (const input of ofRatio) {
      const at = (by: number): number => {
        const { prepared, state } = standing(
          withShockLength(movedBy(machine, input, by), change)!,
          load,
          [],
        )!;
        return seatHeight(prepared, state);
      };
      const step = input.deviation / 20;
      const slope = (at(step) - at(-step)) / (2 * step);
      const told = contributions.find((each) => each.input === input.name)?.slope ?? 0;
      expect(Math.abs(told - slope)).toBeLessThan(share * Math.abs(slope) + 1e-6 / input.deviation);
    }
  },
);

function seatHeight(prepared: Prepared, state: Float64Array): number {
  return attitudeAt(prepared, state).seatHeight!;
}

function movedBy(machine: MachineSI, { moves }: UncertainInput, by: number): MachineSI {
  const parameters = parametersOf(machine);
  for (const move of moves) {
    const index = parameters.indexOf.get(move.parameter)!;
    setParameter(parameters, index, parameter(parameters, index) + move.by * by);
  }
  return parameters.machine;
}
