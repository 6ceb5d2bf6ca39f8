import { expect, test } from 'vitest';
import { momentsOf } from '../masses/pointMass.ts';
import { type FinalDriveSI, squatOf } from '../rear/finalDrive.ts';
import { prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { cases, passenger, rider, tourer } from '../testing/tourer.ts';
import { squatAtRest } from './squatAtRest.ts';

const belt: FinalDriveSI = {
  kind: 'belt',
  frontSprocket: { x: 0.6, height: 0.36 },
  frontRadius: 0.06,
  rearRadius: 0.12,
};

test('squat in the reference attitude is that of the drawing', () => {
  // All at its place in the body: wheels at reference travel, no pitch, tyres unloaded.
  const machine = tourer();
  const { sprung, rear, front, geometry } = machine;
  const mass = sprung.mass + rear.unsprung + front.unsprung;
  const centre =
    (sprung.mass * sprung.height + rear.unsprung * rear.tyre.radius + front.unsprung * front.tyre.radius) /
    mass;
  const places = {
    axle: { x: 0, height: 0.318 },
    pivot: { x: 0.5, height: 0.36 },
    frontSprocket: belt.frontSprocket,
  };
  const drawn = squatOf(belt, places, centre, geometry.wheelbase);
  const found = squatAtRest(prepare(machine), [0, 0, 0, 0], belt);
  expect(found.squatAngle).toBeCloseTo(drawn.squatAngle, 12);
  expect(found.transferAngle).toBeCloseTo(drawn.transferAngle, 12);
  expect(found.squatRatio).toBeCloseTo(drawn.squatRatio!, 12);
});

test('two aboard the pivot comes down and the weight goes up: the ratio rises', () => {
  const alone = tourer();
  const laden = { ...alone, load: momentsOf([rider, passenger, cases]) };
  const [one, two] = [alone, laden].map((machine) => {
    const prepared = prepare(machine);
    const answer = restOf(prepared);
    if (answer.kind !== 'rest') throw new Error(answer.kind);
    return {
      belt: squatAtRest(prepared, answer.rest.state, belt),
      shaft: squatAtRest(prepared, answer.rest.state, { kind: 'shaft' }),
    };
  });
  for (const drive of ['belt', 'shaft'] as const) {
    expect(two![drive].squatAngle).toBeLessThan(one![drive].squatAngle);
    expect(two![drive].transferAngle).toBeGreaterThan(one![drive].transferAngle);
    expect(two![drive].squatRatio!).toBeGreaterThan(one![drive].squatRatio!);
  }
});

test('squat needs to know where the swingarm turns', () => {
  const machine = tourer();
  const rear = { ...machine.rear, axlePath: { kind: 'straight' as const } };
  expect(() => squatAtRest(prepare({ ...machine, rear }), [0, 0, 0, 0], belt)).toThrow('straight');
});
