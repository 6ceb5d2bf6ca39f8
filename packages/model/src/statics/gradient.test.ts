import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arbitraryMachine } from '../testing/arbitraryMachine.ts';
import { between } from '../testing/arbitraryStrut.ts';
import { energyAt, FRONT_TRAVEL, gradientAt, HEAVE, PITCH, REAR_TRAVEL, type State } from './gradient.ts';
import type { MachineSI } from './machine.ts';
import { type Gradient, type Prepared, prepare } from './prepared.ts';
import { startState } from './settle.ts';

/** Any state near those in which a machine may stand; travels as shares of the whole. */
const place = fc.record({
  lift: between(-0.05, 0.05),
  pitch: between(-0.25, 0.25),
  rear: between(0.001, 0.999),
  front: between(0.001, 0.999),
});

function stateAt(
  prepared: Prepared,
  at: { lift: number; pitch: number; rear: number; front: number },
): State {
  const state = new Float64Array(4);
  startState(prepared, state);
  state[HEAVE] = state[HEAVE]! + at.lift;
  state[PITCH] = at.pitch;
  state[REAR_TRAVEL] = at.rear * prepared.rearTravelMax;
  state[FRONT_TRAVEL] = at.front * prepared.frontTravelMax;
  return state;
}

/** V, its gradient and its whole curvature at a state. */
function at(prepared: Prepared, state: State) {
  gradientAt(prepared, state, 0);
  const g = prepared.gradient;
  return {
    energy: energyAt(prepared, state),
    gradient: [g.heave, g.pitch, g.rear.travel, g.front.travel],
    curvature: curvatureOf(g),
  };
}

function curvatureOf(g: Gradient): number[][] {
  const { rear, front } = g;
  return [
    [g.heaveHeave, g.heavePitch, rear.travelHeave, front.travelHeave],
    [g.heavePitch, g.pitchPitch, rear.travelPitch, front.travelPitch],
    [rear.travelHeave, rear.travelPitch, rear.travelTravel, 0],
    [front.travelHeave, front.travelPitch, 0, front.travelTravel],
  ];
}

const STEP = 1e-6;

/** The figures a step below and above a state along one unknown. */
function beside(prepared: Prepared, state: State, unknown: number) {
  const below = Float64Array.from(state);
  const above = Float64Array.from(state);
  below[unknown] = below[unknown]! - STEP;
  above[unknown] = above[unknown]! + STEP;
  return [at(prepared, below), at(prepared, above)] as const;
}

describe.each([
  ['heave', HEAVE],
  ['pitch', PITCH],
  ['rear travel', REAR_TRAVEL],
  ['front travel', FRONT_TRAVEL],
] as const)('along %s', (_, unknown) => {
  test('the gradient is the slope of the energy', () => {
    fc.assert(
      fc.property(arbitraryMachine, place, (machine: MachineSI, where) => {
        const prepared = prepare(machine);
        const [below, above] = beside(prepared, stateAt(prepared, where), unknown);
        const slope = (above.energy - below.energy) / (2 * STEP);
        const mean = 0.5 * (below.gradient[unknown]! + above.gradient[unknown]!);
        // Slope less mean is the trapezoid's error: a quarter of the change of curvature times the step, kinks included.
        // Energies reach some 10 kJ; a dozen roundings of them over the step are 2e-5 N.
        const kink = Math.abs(above.curvature[unknown]![unknown]! - below.curvature[unknown]![unknown]!);
        expect(Math.abs(slope - mean)).toBeLessThanOrEqual(0.25 * kink * STEP + 5e-5);
      }),
      { seed: 101, numRuns: 500 },
    );
  });

  test('the curvature is the slope of the gradient', () => {
    fc.assert(
      fc.property(arbitraryMachine, place, (machine: MachineSI, where) => {
        const prepared = prepare(machine);
        const [below, above] = beside(prepared, stateAt(prepared, where), unknown);
        for (let i = 0; i < 4; i += 1) {
          const slope = (above.gradient[i]! - below.gradient[i]!) / (2 * STEP);
          const ends = [below.curvature[i]![unknown]!, above.curvature[i]![unknown]!];
          // The slope is the mean of the curvature over the step, so it lies between its ends, a kink included. Forces
          // reach 100 kN: roundings of 1e-11 N over the step are 1e-5 N/m, of rates that reach MN/m.
          const slack = 1e-4 + 1e-9 * Math.max(...ends.map(Math.abs));
          expect(slope).toBeGreaterThanOrEqual(Math.min(...ends) - slack);
          expect(slope).toBeLessThanOrEqual(Math.max(...ends) + slack);
        }
      }),
      { seed: 102, numRuns: 500 },
    );
  });
});

test('friction adds to the energy of each strut as it is lifted, and takes away as it is pressed', () => {
  fc.assert(
    fc.property(arbitraryMachine, place, (machine: MachineSI, where) => {
      const prepared = prepare(machine);
      const state = stateAt(prepared, where);
      const travels = [1, 0, -1].map((settling) => {
        gradientAt(prepared, state, settling as 1 | 0 | -1);
        return prepared.gradient.rear.travel;
      });
      const friction = machine.rear.struts.reduce((sum, strut) => sum + strut.friction, 0);
      const along = friction * prepared.gradient.rear.at.motionRatio;
      // Against forces of up to 100 kN.
      expect(travels[0]! - travels[1]!).toBeCloseTo(along, 8);
      expect(travels[1]! - travels[2]!).toBeCloseTo(along, 8);
    }),
    { seed: 103 },
  );
});
