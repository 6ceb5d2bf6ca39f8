/** An invented question to the plan: a wall of springs, five loads, and every figure with its ±. */
import { stated } from '@sagwright/model/limits/limits';
import { momentsOf, type PointMass } from '@sagwright/model/masses/pointMass';
import type { EndQuestion, LoadCaseSI, PlanQuestion, SpringChoiceSI } from '@sagwright/model/plan/question';
import type { SagSI, WantedSI } from '@sagwright/model/plan/wanted';
import type { KinematicsSI } from '@sagwright/model/rear/kinematics';
import type { SpringSI } from '@sagwright/model/springs/spring';
import type { EndName } from '@sagwright/model/statics/prepared';
import { weigh } from '@sagwright/model/statics/weighing';
import type { Move, UncertainInput } from '@sagwright/model/uncertainty/inputs';
import { throughWeighing } from '@sagwright/model/uncertainty/weighed';
import { lightRider, passenger, rider, shock, sideCases, topBox, tourer, weighing } from './tourer.ts';

const REAR_SPRINGS = 22;
const FRONT_SPRINGS = 8;

/** 30 springs (22 for the rear, 8 for the fork) with 5 loads, on a machine weighed on its own sag. */
export function invented(kinematics: KinematicsSI): PlanQuestion {
  const machine = tourer(kinematics, shock);
  const answer = weigh(machine, weighing);
  if (answer.kind !== 'body') throw new Error('the invented tourer does not rest on its scales');
  const weighed = { ...machine, sprung: answer.sprung, weighing };
  return {
    machine: { ...machine, sprung: answer.sprung },
    inputs: throughWeighing(weighed, machineInputs(kinematics)),
    loadCases: [
      loadCase('alone', 0.3, [rider]),
      loadCase('light', 0.1, [lightRider]),
      loadCase('alone with cases', 0.2, [rider, sideCases]),
      loadCase('two aboard', 0.25, [rider, passenger]),
      loadCase('two and all cases', 0.15, [rider, passenger, sideCases, topBox]),
    ],
    limits: {
      gross: stated(600),
      frontAxle: stated(250),
      rearAxle: stated(390),
      frontTyre: stated(265),
      rearTyre: stated(412),
    },
    rear: collars('rear', rearSprings(), 0.019, 0.03),
    front: collars('front', frontSprings(), 0.015, 0.025),
  };
}

function rearSprings(): readonly SpringSI[] {
  return Array.from({ length: REAR_SPRINGS }, (_, i) => {
    const rate = 16000 + 1000 * i;
    return i % 4 === 3
      ? { kind: 'series', soft: 2 * rate, stiff: 2 * rate, softStroke: 0.02 }
      : { kind: 'linear', rate };
  });
}

function frontSprings(): readonly SpringSI[] {
  return Array.from({ length: FRONT_SPRINGS }, (_, i) => ({ kind: 'linear', rate: 8500 + 500 * i }));
}

function collars(
  end: EndName,
  springs: readonly SpringSI[],
  preloadAtZero: number,
  most: number,
): EndQuestion {
  return {
    adjuster: { kind: 'continuous', most, quantum: 0.000375, lead: 0.0015, readingAtZero: 0.06, sense: -1 },
    choices: springs.map((spring, i) => choice(end, spring, i, preloadAtZero)),
    found: [0.003, 0.003],
    keepPreload: 0.003,
    keepFromCoilBind: 0.002,
  };
}

function choice(end: EndName, spring: SpringSI, i: number, preloadAtZero: number): SpringChoiceSI {
  const name = `springs.${end}-${i}`;
  const rates = spring.kind === 'linear' ? ['rate'] : ['soft', 'stiff'];
  return {
    id: `${end} ${i}`,
    fitted: i === 5,
    spring,
    preloadAtZero,
    freeLength: 0.262,
    solidLength: 0.142,
    inputs: [
      ...rates.map((rate) => input(`${name}.${rate}`, 300, both(end, `spring.${rate}`))),
      input(`${name}.freeLength`, 0.0005, both(end, 'preload')),
      input(`machine.${end}.collarAtZero`, 0.0005, both(end, 'preload')),
    ],
  };
}

function loadCase(id: string, share: number, parts: readonly PointMass[]): LoadCaseSI {
  const load = momentsOf(parts);
  const missingFuel = { mass: 9, x: 0.6, height: 0.8 };
  const inputs = parts.flatMap((each, i) => thingInputs(`things.${id}.${i}`, each));
  const wanted: WantedSI = {
    low: part(0.27),
    aim: part(0.32),
    high: part(0.37),
    from: 'stop',
    along: 'wheel',
  };
  return {
    id,
    share,
    load,
    loadFullTank: momentsOf([...parts, missingFuel]),
    inputs,
    inputsFullTank: [...inputs, one('load.mass', 0.5)],
    wanted: { rear: wanted, front: wanted },
    places: [],
  };
}

/** Its mass, which weighs at its place, and its place. */
function thingInputs(name: string, thing: PointMass): readonly UncertainInput[] {
  return [
    input(`${name}.mass`, 1, [
      { parameter: 'load.mass', by: 1 },
      { parameter: 'load.momentX', by: thing.x },
      { parameter: 'load.momentHeight', by: thing.height },
    ]),
    input(`${name}.x`, 0.02, [{ parameter: 'load.momentX', by: thing.mass }]),
  ];
}

function part(share: number): SagSI {
  return { kind: 'share', share };
}

/** Every figure of the machine that somebody read, typed or assumed. */
function machineInputs(kinematics: KinematicsSI): readonly UncertainInput[] {
  const ratio = kinematics.kind === 'table' ? 'scale' : 'motionRatio';
  return [
    one('weighing.front', 0.5),
    one('weighing.rear', 0.5),
    one('weighing.wholeHeight', 0.02),
    one('geometry.wheelbase', 0.003),
    one('geometry.rake', 0.005),
    one('rear.axlePath.pivotX', 0.003),
    one('rear.axlePath.pivotHeight', 0.003),
    one(`rear.kinematics.${ratio}`, 0.01),
    ...(['rear', 'front'] as const).flatMap(endInputs),
  ];
}

function endInputs(end: EndName): readonly UncertainInput[] {
  const each: readonly (readonly [figure: string, deviation: number])[] = [
    ['spring.rate', 400],
    ['preload', 0.001],
    ['gas.area', 2e-6],
    ['gas.pressure', 20000],
    ['gas.volume', 3e-6],
    ['rubber.start', 0.002],
    ['rubber.rate', 5000],
    ['rubber.hardening', 5e7],
    ['topOut.rate', 8000],
    ['topOut.length', 0.001],
    ['friction', 10],
  ];
  return [
    one(`${end}.unsprung`, 1.5),
    one(`${end}.tyre.radius`, 0.003),
    one(`${end}.tyre.rate`, 10000),
    one(`${end}.strokeMax`, 0.0005),
    ...each.map(([figure, deviation]) => input(`${end}.${figure}`, deviation, both(end, figure))),
  ];
}

function one(parameter: string, deviation: number): UncertainInput {
  return input(parameter, deviation, [{ parameter, by: 1 }]);
}

function input(name: string, deviation: number, moves: readonly Move[]): UncertainInput {
  return { name, deviation, moves };
}

/** A figure of the left strut and of the right one. */
function both(end: EndName, figure: string): readonly Move[] {
  return [0, 1].map((i) => ({ parameter: `${end}.struts.${i}.${figure}`, by: 1 }));
}
