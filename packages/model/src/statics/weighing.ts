import type { PointMass } from '../masses/pointMass.ts';
import { sprungFromScales } from '../masses/scales.ts';
import { GRAVITY, type MachineSI } from './machine.ts';
import { type Prepared, prepare } from './prepared.ts';
import { type Settled, settle, startState } from './settle.ts';

/** Two wheel scales, and the attitude in which they were read. */
export interface WeighingSI {
  /** Scale readings [kg]. */
  readonly front: number;
  readonly rear: number;
  /** Height of the whole machine's mass centre in the reference attitude [m]. */
  readonly wholeHeight: number;
  /** On its own sag, or held level with the wheels at their reference travel. */
  readonly attitude: 'own sag' | 'level';
}

/** Everything of a machine but where its sprung mass is; `load` is what was aboard at the weighing. */
export type UnweighedSI = Omit<MachineSI, 'sprung'>;

/** The weighing gave no body: why, with the figures. */
export type WeighingAnswer =
  | { readonly kind: 'body'; readonly sprung: PointMass }
  | { readonly kind: 'no body'; readonly residual: number };

/**
 * The sprung body from the scales. Its mass and height are explicit; its x is where the machine, at rest with the settings
 * at weighing, puts the front reading on the front wheel: found once, a property of the body from then on.
 * Throws RangeError where the scales read less than the unsprung masses and what is aboard.
 */
export function weigh(machine: UnweighedSI, weighing: WeighingSI): WeighingAnswer {
  const level = levelBody(machine, weighing);
  if (weighing.attitude === 'level') return { kind: 'body', sprung: level };
  const found = momentForFrontLoad(
    { ...machine, sprung: { ...level, x: 0 } },
    level.mass * level.x,
    weighing.front * GRAVITY,
  );
  if (found.kind === 'not found') return { kind: 'no body', residual: found.residual };
  return { kind: 'body', sprung: { ...level, x: found.momentX / level.mass } };
}

/** The body that the scales would give with the machine level: what they read, less wheels and what is aboard. */
export function levelBody(machine: UnweighedSI, weighing: WeighingSI): PointMass {
  const whole = sprungFromScales({
    front: weighing.front,
    rear: weighing.rear,
    wholeHeight: weighing.wholeHeight,
    wheelbase: machine.geometry.wheelbase,
    rearUnsprung: machine.rear.unsprung,
    frontUnsprung: machine.front.unsprung,
    rearRadius: machine.rear.tyre.radius,
    frontRadius: machine.front.tyre.radius,
  });
  const { load } = machine;
  if (load.mass === 0) return whole;
  const mass = whole.mass - load.mass;
  if (!(mass > 0)) {
    throw new RangeError(
      `weigh: above the wheels the scales read ${whole.mass} kg, aboard are ${load.mass} kg; they must read more`,
    );
  }
  const x = (whole.mass * whole.x - load.momentX) / mass;
  return { mass, x, height: (whole.mass * whole.height - load.momentHeight) / mass };
}

/**
 * Where a load lies that was weighed with all aboard: its mass is what the scales read more than the machine, its height
 * is given, its x puts the front reading on the front wheel in the attitude that the load itself makes.
 * height [m] of the load's mass centre;  readings [kg]
 * Throws RangeError where the scales read no more than the machine alone.
 */
export function weighLoad(
  machine: MachineSI,
  readings: { readonly front: number; readonly rear: number },
  height: number,
):
  | { readonly kind: 'load'; readonly load: PointMass }
  | { readonly kind: 'not found'; readonly residual: number } {
  const alone = machine.sprung.mass + machine.rear.unsprung + machine.front.unsprung;
  const mass = readings.front + readings.rear - alone;
  if (!(mass > 0)) {
    throw new RangeError(
      `weighLoad: scales read ${readings.front + readings.rear} kg, the machine alone weighs ${alone} kg; they must read more`,
    );
  }
  const carrying = { ...machine, load: { mass, momentX: 0, momentHeight: mass * height } };
  const found = momentForFrontLoad(
    carrying,
    0.4 * machine.geometry.wheelbase * mass,
    readings.front * GRAVITY,
  );
  if (found.kind === 'not found') return found;
  return { kind: 'load', load: { mass, x: found.momentX / mass, height } };
}

/** First moment [kg·m], added to the load's own, that puts `frontLoad` [N] on the front wheel: a bounded secant search. */
function momentForFrontLoad(
  machine: MachineSI,
  guess: number,
  frontLoad: number,
):
  | { readonly kind: 'found'; readonly momentX: number }
  | { readonly kind: 'not found'; readonly residual: number } {
  const prepared = prepare(machine);
  const state = new Float64Array(4);
  const own = machine.load;
  let moment = guess;
  let miss = frontLoadMiss(prepared, own, moment, frontLoad, state, true);
  let slope = GRAVITY / machine.geometry.wheelbase;
  for (let iteration = 0; iteration < 40; iteration += 1) {
    if (Math.abs(miss) < 1e-9 * frontLoad) return { kind: 'found', momentX: moment };
    const next = moment - miss / slope;
    const nextMiss = frontLoadMiss(prepared, own, next, frontLoad, state, false);
    if (!Number.isFinite(nextMiss)) return { kind: 'not found', residual: Math.abs(miss) };
    const newSlope = (nextMiss - miss) / (next - moment);
    if (newSlope > 0) slope = newSlope;
    moment = next;
    miss = nextMiss;
  }
  return { kind: 'not found', residual: Math.abs(miss) };
}

function frontLoadMiss(
  prepared: Prepared,
  own: MachineSI['load'],
  moment: number,
  frontLoad: number,
  state: Float64Array,
  cold: boolean,
): number {
  prepared.machine = { ...prepared.machine, load: { ...own, momentX: own.momentX + moment } };
  if (cold) startState(prepared, state);
  const settled: Settled = { converged: false, residual: 0, iterations: 0 };
  settle(prepared, state, 0, 'none', settled);
  return settled.converged ? prepared.gradient.front.wheelLoad - frontLoad : Number.NaN;
}
