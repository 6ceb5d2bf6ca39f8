import { momentsOf, type PointMass } from '../masses/pointMass.ts';
import type { AdjusterSI } from '../plan/adjuster.ts';
import type { EndQuestion, LoadCaseSI, PlanQuestion, SpringChoiceSI } from '../plan/question.ts';
import type { WantedSI } from '../plan/wanted.ts';
import type { SpringSI } from '../springs/spring.ts';
import type { MachineSI } from '../statics/machine.ts';
import { tourer } from './tourer.ts';

/** A collar of 1.5 mm a turn and some range [m], set by hundredths of a millimetre, so that hardly anything is rounded. */
export function fineCollar(most: number): AdjusterSI {
  return { kind: 'continuous', most, quantum: 1e-5, lead: 0.0015, readingAtZero: 0.05, sense: 1 };
}

/** A spring that could be fitted, 12 mm preloaded at the collar's loosest, its lengths not known. */
export function choice(id: string, spring: SpringSI, change: Partial<SpringChoiceSI> = {}): SpringChoiceSI {
  return {
    id,
    fitted: false,
    spring,
    preloadAtZero: 0.012,
    freeLength: null,
    solidLength: null,
    inputs: [],
    ...change,
  };
}

export function linear(rate: number): SpringSI {
  return { kind: 'linear', rate };
}

/** Sag as shares of the whole wheel travel, from the stop. */
export function shares(low: number, aim: number, high: number): WantedSI {
  const share = (each: number): WantedSI['aim'] => ({ kind: 'share', share: each });
  return { low: share(low), aim: share(aim), high: share(high), from: 'stop', along: 'wheel' };
}

/** Things carried, a third of the riding, and a rear sag of 36 to 44 % wanted with them. */
export function carrying(
  id: string,
  things: readonly PointMass[],
  change: Partial<LoadCaseSI> = {},
): LoadCaseSI {
  return {
    id,
    share: 0.3,
    load: momentsOf(things),
    loadFullTank: momentsOf(things),
    inputs: [],
    inputsFullTank: [],
    wanted: { rear: shares(0.36, 0.4, 0.44), front: null },
    places: [],
    ...change,
  };
}

export const nothingToDo: EndQuestion = {
  adjuster: null,
  choices: [],
  found: null,
  keepPreload: 0,
  keepFromCoilBind: 0,
};

/** What to fit at the rear of the invented tourer. */
export function rearQuestion(
  rear: Partial<EndQuestion>,
  loadCases: readonly LoadCaseSI[],
  change: Partial<PlanQuestion> = {},
  machine: MachineSI = tourer(),
): PlanQuestion {
  return {
    machine,
    inputs: [],
    limits: { gross: null, frontAxle: null, rearAxle: null, frontTyre: null, rearTyre: null },
    loadCases,
    rear: { ...nothingToDo, adjuster: fineCollar(0.02), ...rear },
    front: nothingToDo,
    ...change,
  };
}
