import type { GasSI } from '@sagwright/model/dampers/gas';
import { type RubberSI, rubberTimes } from '@sagwright/model/dampers/rubber';
import type { StrutSI } from '@sagwright/model/dampers/strut';
import type { TopOutSI } from '@sagwright/model/dampers/topOut';
import type { Fork } from '@sagwright/records/schema/fork';
import type { Desk } from './desk.ts';
import { legAirs } from './legAir.ts';
import { rubberOf } from './rubber.ts';
import { topOutOf } from './struts.ts';

const LEGS = 2;

/**
 * What works in a fork beside its springs, by each of the `springs` legs that hold one. Air, rubber and top-out spring are in both
 * legs: where only one holds a spring it carries those of the other too, since both move as one.
 */
export function forkParts(
  desk: Desk,
  fork: Fork | undefined,
  strokeMax: number,
  springs: number,
): readonly Omit<StrutSI, 'spring' | 'preload'>[] {
  const path = 'machine.front.fork';
  const legs = LEGS / springs;
  const friction = desk.take.orAssumed(`${path}.friction`, fork?.friction, 'friction', 'forkFriction');
  const rubber = rubbersOf(rubberOf(desk, `${path}.rubber`, fork?.rubber, strokeMax), legs);
  const topOut = topOutsOf(topOutOf(desk, `${path}.topOut`, fork?.topOut, strokeMax), legs);
  return airOfStruts(legAirs(desk, fork, strokeMax), springs).map((air) => ({
    ...air,
    rubber,
    topOut,
    friction: friction / springs,
  }));
}

/** The air of the legs by each strut; legs that differ do not add up to one gas, and stay beside each other in one strut. */
function airOfStruts(
  [left = null, right = left]: readonly (GasSI | null)[],
  springs: number,
): readonly Pick<StrutSI, 'gas' | 'air'>[] {
  if (springs === LEGS) return [{ gas: left }, { gas: right }];
  if (left === right) return [{ gas: airOf(left, LEGS) }];
  const [gas = null, air] = [left, right].filter((each) => each !== null);
  return [air === undefined ? { gas } : { gas, air }];
}

/** The air of several legs as one: areas and volumes add up. */
function airOf(gas: GasSI | null, legs: number): GasSI | null {
  return gas === null ? null : { ...gas, area: legs * gas.area, volume: legs * gas.volume };
}

function rubbersOf(rubber: RubberSI | null, legs: number): RubberSI | null {
  return rubber === null ? null : rubberTimes(rubber, legs);
}

function topOutsOf(topOut: TopOutSI | null, legs: number): TopOutSI | null {
  return topOut === null ? null : { ...topOut, rate: legs * topOut.rate };
}
