import fc from 'fast-check';
import { expect, test } from 'vitest';
import { monotoneCubic } from '../numerics/monotoneCubic.ts';
import type { RatioSI } from '../rear/kinematics.ts';
import { damperAt } from '../rear/wheelMotion.ts';
import { arbitraryHardPoints } from '../testing/arbitraryHardPoints.ts';
import { tourer } from '../testing/tourer.ts';
import type { EndSI, MachineSI } from './machine.ts';
import { prepare } from './prepared.ts';
import { type Rest, restOf } from './rest.ts';

test('a machine rests alike by its hard points and by a fine table of them', () => {
  let free = 0;
  fc.assert(
    fc.property(arbitraryHardPoints(0.069), ({ rear: { points, arm, axleHeight }, survey }) => {
      const machine = tourer();
      const rear: EndSI = {
        ...machine.rear,
        kinematics: points,
        axlePath: arm,
        referenceTravel: survey.referenceTravel,
        tyre: { ...machine.rear.tyre, radius: axleHeight },
      };
      const own = resting({ ...machine, rear });
      const drawn = resting({ ...machine, rear: { ...rear, kinematics: tableOf(rear, survey.travelMax) } });
      if (own.rear.standing === 'free') free += 1;
      // Rows 0.1 to 0.3 mm apart; slopes of a monotone cubic are good to the square of that: 1e-7 of the ratio.
      expect(Math.abs(own.rear.travel - drawn.rear.travel)).toBeLessThan(1e-6);
      expect(Math.abs(own.front.travel - drawn.front.travel)).toBeLessThan(1e-6);
      expect(Math.abs(own.pitch - drawn.pitch)).toBeLessThan(1e-6);
      expect(own.rear.standing).toBe(drawn.rear.standing);
    }),
    { seed: 807, numRuns: 60 },
  );
  expect(free).toBeGreaterThan(10);
});

function resting(machine: MachineSI): Rest {
  const answer = restOf(prepare(machine));
  if (answer.kind !== 'rest') throw new Error(answer.kind);
  return answer.rest;
}

function tableOf(rear: EndSI, travelMax: number): RatioSI {
  const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  const z = Array.from({ length: 1001 }, (_, i) => (travelMax * i) / 1000);
  const s = z.map((each) => {
    damperAt(rear, 0, each, at);
    return Math.max(0, at.stroke);
  });
  return { kind: 'table', curve: monotoneCubic(z, s), scale: 1 };
}
