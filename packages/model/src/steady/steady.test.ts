import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { momentsOf } from '../masses/pointMass.ts';
import { type FinalDriveSI, squatOf } from '../rear/finalDrive.ts';
import { FRONT_TRAVEL, PITCH, REAR_TRAVEL } from '../statics/gradient.ts';
import { GRAVITY, type MachineSI } from '../statics/machine.ts';
import { type Prepared, prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { between } from '../testing/arbitraryStrut.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { passenger, rider, tourer } from '../testing/tourer.ts';
import { gainOf, type SteadyAction, wholeMass } from './forces.ts';
import { HARDEST, liftsFrom } from './lift.ts';
import { type SteadyStand, steadyOf } from './steady.ts';

const belt: FinalDriveSI = {
  kind: 'belt',
  frontSprocket: { x: 0.6, height: 0.36 },
  frontRadius: 0.06,
  rearRadius: 0.12,
};
const shaft: FinalDriveSI = { kind: 'shaft' };

const laden = (): MachineSI => ({ ...tourer(), load: momentsOf([rider, passenger]) });

function restState(prepared: Prepared): readonly number[] {
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') throw new Error(answer.kind);
  return answer.rest.state;
}

function standing(prepared: Prepared, action: SteadyAction): SteadyStand {
  const answer = steadyOf(prepared, restState(prepared), action);
  if (answer.kind !== 'stands') throw new Error(answer.kind);
  return answer.stand;
}

const braking = (deceleration: number, frontShare = 0.7): SteadyAction => ({
  kind: 'braking',
  deceleration,
  frontShare,
});
const driving = (acceleration: number, drive: FinalDriveSI): SteadyAction => ({
  kind: 'driving',
  by: { acceleration },
  drive,
});

/** Height and place of the whole mass centre in the world, from the state whose gradient was written last. */
function centre({ machine, gradient }: Prepared, state: readonly number[]) {
  const { sprung, load, rear, front } = machine;
  const [u, pitch] = [state[0]!, state[PITCH]!];
  const momentX = sprung.mass * sprung.x + load.momentX;
  const momentHeight = sprung.mass * sprung.height + load.momentHeight;
  const body = sprung.mass + load.mass;
  const x = momentX * Math.cos(pitch) + momentHeight * Math.sin(pitch);
  const h = body * u - momentX * Math.sin(pitch) + momentHeight * Math.cos(pitch);
  const whole = body + rear.unsprung + front.unsprung;
  return {
    x: (x + rear.unsprung * gradient.rear.forward + front.unsprung * gradient.front.forward) / whole,
    height: (h + rear.unsprung * gradient.rear.height + front.unsprung * gradient.front.height) / whole,
  };
}

const actions: readonly (readonly [string, SteadyAction])[] = [
  ['braked at 4 m/s², 70 % in front', braking(4)],
  ['braked at 3 m/s² by the rear alone', braking(3, 0)],
  ['driven at 3 m/s² by a belt', driving(3, belt)],
  ['driven at 3 m/s² by a shaft', driving(3, shaft)],
];

describe.each(actions)('%s', (_name, action) => {
  const prepared = prepare(laden());
  const stand = standing(prepared, action);
  const gain = gainOf(prepared, action);

  test('both wheels stand free of their stops, and their loads add up to the weight', () => {
    expect(stand.free).toEqual({ rear: true, front: true });
    expect(stand.rearLoad + stand.frontLoad).toBeCloseTo(GRAVITY * wholeMass(prepared), 4);
  });

  test('moments about the rear contact point give the front load', () => {
    const { rear, front } = prepared.gradient;
    const { x, height } = centre(prepared, stand.state);
    const p = front.forward - rear.forward;
    const mass = wholeMass(prepared);
    // The inertia, −M a, acts at the mass centre: braked it adds to the front.
    const moment = mass * (GRAVITY * (x - rear.forward) - gain * height);
    expect(stand.frontLoad).toBeCloseTo(moment / p, 3);
  });

  test('the fork’s springs bear what pushes along its legs', () => {
    const { front } = prepared.gradient;
    const { machine } = prepared;
    const rake = machine.geometry.rake - stand.state[PITCH]!;
    const brake = action.kind === 'braking' ? action.frontShare * -gain * wholeMass(prepared) : 0;
    const unsprung = machine.front.unsprung;
    // Free body of wheel and legs, along the legs; the clamps push only across them.
    const along =
      (stand.frontLoad - unsprung * GRAVITY) * Math.cos(rake) + (brake + unsprung * gain) * Math.sin(rake);
    expect(front.at.force / front.at.motionRatio).toBeCloseTo(along, 3);
  });

  test('the shocks bear what moments about the pivot leave', () => {
    const { machine, gradient } = prepared;
    const { rear } = gradient;
    const pitch = stand.state[PITCH]!;
    const inWorld = (x: number, height: number): readonly [number, number] => [
      x * Math.cos(pitch) + height * Math.sin(pitch),
      stand.state[0]! - x * Math.sin(pitch) + height * Math.cos(pitch),
    ];
    const [pivotX, pivotHeight] = inWorld(0.5, 0.36);
    const mass = wholeMass(prepared);
    const unsprung = machine.rear.unsprung;
    const push = action.kind === 'braking' ? (1 - action.frontShare) * mass * gain : mass * gain;
    // Nose-down (about y) on arm and wheel, about the pivot: r × F = height·F_x − x·F_z.
    const turning = (x: number, height: number, fx: number, fz: number): number =>
      (height - pivotHeight) * fx - (x - pivotX) * fz;
    let moment =
      turning(rear.forward, 0, push, stand.rearLoad) +
      turning(rear.forward, rear.height, -unsprung * gain, -unsprung * GRAVITY);
    if (action.kind === 'driving' && action.drive.kind !== 'shaft') {
      // The upper run pulls the rear sprocket with T = S R/r along the common tangent.
      const { frontSprocket, frontRadius, rearRadius } = action.drive;
      const [fx, fh] = inWorld(frontSprocket.x, frontSprocket.height);
      const distance = Math.hypot(fx - rear.forward, fh - rear.height);
      const slope =
        Math.atan2(fh - rear.height, fx - rear.forward) - Math.asin((rearRadius - frontRadius) / distance);
      const tension = (push * rear.height) / rearRadius;
      const touchX = rear.forward - rearRadius * Math.sin(slope);
      const touchHeight = rear.height + rearRadius * Math.cos(slope);
      moment += turning(touchX, touchHeight, tension * Math.cos(slope), tension * Math.sin(slope));
    }
    // The springs push the arm down: Q dz = M dψ, ψ turns by 1/reach of the body's own forward distance to the pivot.
    const reach = 0.5 - rear.at.x;
    expect(rear.at.force * reach).toBeCloseTo(moment, 3);
  });
});

describe('small actions', () => {
  const prepared = prepare(laden());
  const rest = restState(prepared);

  test('nothing done, nothing changed', () => {
    const { state } = standing(prepared, braking(0));
    for (let i = 0; i < 4; i += 1) expect(state[i]).toBeCloseTo(rest[i]!, 12);
  });

  test('driving back what braking did: the change is odd to first order', () => {
    const change = (gain: number): readonly number[] =>
      standing(prepared, braking(gain, 0.6)).state.map((each, i) => each - rest[i]!);
    // Negative deceleration with the same lines of action: the mirror of the same forces.
    const [ahead, back] = [change(1e-3), change(-1e-3)];
    for (let i = 0; i < 4; i += 1) expect(ahead[i]! + back[i]!).toBeCloseTo(0, 9);
    expect(Math.abs(ahead[FRONT_TRAVEL]!)).toBeGreaterThan(1e-6);
  });
});

/** As thrust pitches the body its weight shifts too, by some per cent of the transfer, which the squat ratio leaves out. */
const NEAR_ONE = 0.12;

test('a thrust is the acceleration that it gives the whole machine', () => {
  const prepared = prepare(laden());
  const thrust = 2.5 * wholeMass(prepared);
  expect(standing(prepared, { kind: 'driving', by: { thrust }, drive: belt }).state).toEqual(
    standing(prepared, driving(2.5, belt)).state,
  );
});

test('braked so hard that the fork is at its end, the stop bears the rest', () => {
  const prepared = prepare(laden());
  const stand = standing(prepared, braking(7));
  expect(stand.free.front).toBe(false);
  expect(stand.state[FRONT_TRAVEL]).toBe(prepared.frontTravelMax);
  expect(stand.rearLoad + stand.frontLoad).toBeCloseTo(GRAVITY * wholeMass(prepared), 4);
});

test('thrust presses the rear down where the squat ratio is above 1, and lifts it below', () => {
  // Wheels of no mass, as the squat ratio takes them; A of the run lies with pivot height and sprocket.
  fc.assert(
    fc.property(
      between(0.3, 0.5),
      between(0.3, 0.48),
      between(0.05, 0.13),
      (pivotHeight, sprocket, rearRadius) => {
        const machine = laden();
        const arm = { kind: 'circle' as const, pivotX: 0.5, pivotHeight };
        const light = {
          ...machine,
          rear: { ...machine.rear, unsprung: 1e-6, axlePath: arm },
          front: { ...machine.front, unsprung: 1e-6 },
        };
        const drive: FinalDriveSI = {
          kind: 'chain',
          frontSprocket: { x: 0.58, height: sprocket },
          frontRadius: 0.04,
          rearRadius,
        };
        const prepared = prepare(light);
        const rest = restState(prepared);
        const now = standing(prepared, driving(0.01, drive));
        const { rear, front } = prepared.gradient;
        const pitch = rest[PITCH]!;
        const world = (x: number, height: number) => ({
          x: x * Math.cos(pitch) + height * Math.sin(pitch),
          height: rest[0]! - x * Math.sin(pitch) + height * Math.cos(pitch),
        });
        const { squatRatio } = squatOf(
          drive,
          {
            axle: { x: rear.forward, height: rear.height },
            pivot: world(0.5, pivotHeight),
            frontSprocket: world(0.58, sprocket),
          },
          centre(prepared, rest).height,
          front.forward - rear.forward,
        );
        fc.pre(squatRatio !== null && squatRatio > 0 && Math.abs(squatRatio - 1) > NEAR_ONE);
        expect(Math.sign(now.state[REAR_TRAVEL]! - rest[REAR_TRAVEL]!)).toBe(Math.sign(squatRatio! - 1));
      },
    ),
    { seed: 909, numRuns: 60 },
  );
});

describe('a wheel that lifts', () => {
  const tall = { mass: 150, x: 0.9, height: 1.1 };
  const prepared = prepare({ ...levelMachine(plainStrut(60_000, 0.02)), load: momentsOf([tall]) });
  const rest = restState(prepared);

  test('braked ever harder the rear wheel comes up where g b = a h, said and not drawn as standing', () => {
    const lift = liftsFrom(prepared, rest, (gain) => braking(gain, 1));
    if (lift === null) throw new Error('stays down');
    const before = standing(prepared, braking(lift - 1e-4, 1));
    const { rear, front } = prepared.gradient;
    const { x, height } = centre(prepared, before.state);
    // At the lift all weight is in front: M g (p − b) = M a h about the front contact point.
    expect(lift).toBeCloseTo((GRAVITY * (front.forward - x)) / height, 2);
    expect(rear.wheelLoad).toBeGreaterThan(0);
    expect(steadyOf(prepared, rest, braking(lift + 0.01, 1))).toMatchObject({ kind: 'lifts', wheel: 'rear' });
  });

  test('driven ever harder the front wheel comes up', () => {
    const machine = laden();
    const heavy = prepare({
      ...machine,
      load: momentsOf([rider, passenger, { mass: 60, x: -0.5, height: 1.4 }]),
    });
    const at = liftsFrom(heavy, restState(heavy), (gain) => driving(gain, shaft));
    expect(at).toBeGreaterThan(0);
    expect(at).toBeLessThan(HARDEST);
    expect(steadyOf(heavy, restState(heavy), driving(at! + 0.05, shaft))).toMatchObject({
      kind: 'lifts',
      wheel: 'front',
    });
  });
});
