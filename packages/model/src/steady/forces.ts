import { type FinalDriveSI, upperRun } from '../rear/finalDrive.ts';
import type { HardPoint } from '../rear/hardPoints.ts';
import { FRONT_TRAVEL, HEAVE, PITCH, REAR_TRAVEL } from '../statics/gradient.ts';
import type { Prepared, WheelGradient } from '../statics/prepared.ts';

/** What goes on along the road while the machine is held in one attitude. Aerodynamic drag and lift are left out. */
export type SteadyAction = SteadyBraking | SteadyDriving;

/** Slowing down evenly. */
export interface SteadyBraking {
  readonly kind: 'braking';
  /** [m/s²], above 0. */
  readonly deceleration: number;
  /** Of the braking force, at the front wheel: 0 to 1. */
  readonly frontShare: number;
}

/** Gaining speed evenly, driven at the rear wheel. */
export interface SteadyDriving {
  readonly kind: 'driving';
  /** Along the ground [m/s²], or the whole push of the rear tyre [N]; above 0. */
  readonly by: { readonly acceleration: number } | { readonly thrust: number };
  readonly drive: FinalDriveSI;
}

/**
 * Forces of a steady action along heave, pitch and both travels, Q in dV = Q·dx, from the state whose gradient was written last.
 *   inertia   −m a on every mass;  δx = (h − u) δθ, at an axle also (X' cos θ + sin θ) δz
 *   braking   B against the road at the contact point, which turns with what carries the brake:
 *             δx = δx_axle − h δφ;  φ turns as the body, at the rear by 1/reach more for each metre of wheel travel
 *   driving   S at the contact point, the wheel turned so that the upper run keeps its length, or with a shaft as the arm
 * The wheels are free of every other torque; a rear brake is held on the swingarm, a front brake on the fork's legs.
 * Source: d'Alembert and virtual work (any textbook of mechanics). Checked: steady.test.ts, by moments of free bodies.
 */
export function actionForces(
  prepared: Prepared,
  state: ArrayLike<number>,
  action: SteadyAction,
  out: Float64Array,
): void {
  out.fill(0);
  const gain = gainOf(prepared, action);
  addInertia(prepared, state, gain, out);
  const push = gain * wholeMass(prepared);
  if (action.kind === 'driving') {
    addThrust(prepared, state, action.drive, push, out);
    return;
  }
  addBrake(prepared, state, 'front', push * action.frontShare, out);
  addBrake(prepared, state, 'rear', push * (1 - action.frontShare), out);
}

/** Acceleration of a steady action, forward positive [m/s²]. */
export function gainOf(prepared: Prepared, action: SteadyAction): number {
  if (action.kind === 'braking') return -action.deceleration;
  return 'thrust' in action.by ? action.by.thrust / wholeMass(prepared) : action.by.acceleration;
}

/** Mass of all that moves [kg]. */
export function wholeMass({ machine }: Prepared): number {
  return machine.sprung.mass + machine.load.mass + machine.rear.unsprung + machine.front.unsprung;
}

function addInertia(prepared: Prepared, state: ArrayLike<number>, gain: number, out: Float64Array): void {
  const { machine, gradient } = prepared;
  const { sprung, load } = machine;
  const sin = Math.sin(state[PITCH]!);
  const cos = Math.cos(state[PITCH]!);
  const momentX = sprung.mass * sprung.x + load.momentX;
  const momentHeight = sprung.mass * sprung.height + load.momentHeight;
  out[PITCH] = out[PITCH]! - gain * (momentHeight * cos - momentX * sin);
  for (const [name, place] of places) {
    const { unsprung } = machine[name];
    const wheel = gradient[name];
    out[PITCH] = out[PITCH]! - gain * unsprung * (wheel.height - state[HEAVE]!);
    out[place] = out[place]! - gain * unsprung * advance(wheel, sin, cos);
  }
}

const places = [
  ['rear', REAR_TRAVEL],
  ['front', FRONT_TRAVEL],
] as const;

/** How far an axle goes forward for each metre of travel, the body held [-]. */
function advance({ at }: WheelGradient, sin: number, cos: number): number {
  return at.axleSlope * cos + sin;
}

/** A force `push` of the road [N], forward positive, on a wheel that turns with what carries its brake. */
function addBrake(
  prepared: Prepared,
  state: ArrayLike<number>,
  name: 'rear' | 'front',
  push: number,
  out: Float64Array,
): void {
  const wheel = prepared.gradient[name];
  addAtAxle(state, name, wheel, push, out);
  addTorque(prepared, name, -push * wheel.height, out);
}

/** A force `push` [N], forward positive, at an axle. */
function addAtAxle(
  state: ArrayLike<number>,
  name: 'rear' | 'front',
  wheel: WheelGradient,
  push: number,
  out: Float64Array,
): void {
  const sin = Math.sin(state[PITCH]!);
  const cos = Math.cos(state[PITCH]!);
  const place = name === 'rear' ? REAR_TRAVEL : FRONT_TRAVEL;
  out[PITCH] = out[PITCH]! + push * (wheel.height - state[HEAVE]!);
  out[place] = out[place]! + push * advance(wheel, sin, cos);
}

/** A torque [N·m], nose-down positive, on what carries a wheel: the fork's legs, or the swingarm. */
function addTorque(prepared: Prepared, name: 'rear' | 'front', torque: number, out: Float64Array): void {
  out[PITCH] = out[PITCH]! + torque;
  if (name === 'rear') out[REAR_TRAVEL] = out[REAR_TRAVEL]! + torque * armTurns(prepared);
}

/** How far the swingarm turns against the body for each metre of wheel travel [1/m]; 0 where no pivot is known. */
function armTurns({ machine, gradient }: Prepared): number {
  const { axlePath } = machine.rear;
  return axlePath.kind === 'circle' ? 1 / (axlePath.pivotX - gradient.rear.at.x) : 0;
}

function addThrust(
  prepared: Prepared,
  state: ArrayLike<number>,
  drive: FinalDriveSI,
  push: number,
  out: Float64Array,
): void {
  const wheel = prepared.gradient.rear;
  addAtAxle(state, 'rear', wheel, push, out);
  const torque = -push * wheel.height;
  if (drive.kind === 'shaft') {
    addTorque(prepared, 'rear', torque, out);
    return;
  }
  const { pitch, travel } = wheelTurns(prepared, state, drive);
  out[PITCH] = out[PITCH]! + torque * pitch;
  out[REAR_TRAVEL] = out[REAR_TRAVEL]! + torque * travel;
}

/**
 * How far the rear wheel turns for a radian of pitch and for a metre of travel while the upper run keeps its length and the
 * front sprocket is held in the body:  r_r δφ = (δx_sprocket − δx_axle)·t + r_f δθ,  t along the run, forward.
 */
function wheelTurns(
  prepared: Prepared,
  state: ArrayLike<number>,
  drive: Exclude<FinalDriveSI, { kind: 'shaft' }>,
): { readonly pitch: number; readonly travel: number } {
  const sin = Math.sin(state[PITCH]!);
  const cos = Math.cos(state[PITCH]!);
  const { frontSprocket, frontRadius, rearRadius } = drive;
  const wheel = prepared.gradient.rear;
  const axle: HardPoint = { x: wheel.forward, height: wheel.height };
  const sprocket: HardPoint = {
    x: frontSprocket.x * cos + frontSprocket.height * sin,
    height: state[HEAVE]! - frontSprocket.x * sin + frontSprocket.height * cos,
  };
  const { normalX, normalHeight } = upperRun(axle, rearRadius, sprocket, frontRadius);
  const [alongX, alongHeight] = [normalHeight, -normalX];
  // A radian of pitch moves what lies (x, h) from another point of the body by (h, −x).
  const pitched =
    (sprocket.height - axle.height) * alongX - (sprocket.x - axle.x) * alongHeight + frontRadius;
  const travelled = -(advance(wheel, sin, cos) * alongX + wheel.rise * alongHeight);
  return { pitch: pitched / rearRadius, travel: travelled / rearRadius };
}
