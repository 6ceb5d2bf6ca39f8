/**
 * Machines worked out by a second method: potential energy minimised with SciPy 1.10.1 from several starts, an
 * independent implementation with its own code; conventions stand inside each file. Two implementations of the same
 * equations should agree to rounding; the bounds below are what two careful solvers can promise each other.
 */
import { attitudeAt } from '@sagwright/model/attitude/attitude';
import { momentsOf } from '@sagwright/model/masses/pointMass';
import { energyAt } from '@sagwright/model/statics/gradient';
import { type Prepared, prepare } from '@sagwright/model/statics/prepared';
import { frictionBand, type Rest, restOf } from '@sagwright/model/statics/rest';
import { describe, expect, test } from 'vitest';
import { type ExpectedRest, type Fixture, fixture, machineOf } from './energy-minimised-machines/machine.ts';

/** Travels and lengths [m], loads [N], pitch [rad]; rates and frequencies relative: ten times the travel's share. */
const TRAVEL = 1e-6;
const LOAD = 0.01;
const PITCH = 1e-7;
const RELATIVE = 1e-7;

describe.each(['light_standard_dual_rate', 'collar_out_of_range'])('%s', (name) => {
  const given = fixture(name);
  const { statics } = given.expected;

  test('the sprung body from the scales', () => {
    const { sprung } = machineOf(given);
    expect(sprung.mass).toBeCloseTo(statics.sprung_body.mass, 10);
    expect(sprung.x).toBeCloseTo(statics.sprung_body.x, 10);
    expect(sprung.height).toBeCloseTo(statics.sprung_body.height, 10);
  });

  test.each(given.case.load_cases.map((load) => load.name))('%s: rest, loads, rates and attitude', (load) => {
    const expected = statics.load_cases[load]!;
    const { rest, prepared } = atRest(given, load);
    within(rest.pitch, expected.pitch, PITCH);
    within(rest.energy, expected.energy, 1e-8);
    for (const end of ['rear', 'front'] as const) {
      within(rest[end].travel, expected[end].travel, TRAVEL);
      within(
        rest[end].travelMax,
        end === 'rear' ? statics.rear_travel_max : statics.front_travel_max,
        TRAVEL,
      );
      within(rest[end].stroke, expected[end].damper_stroke, TRAVEL);
      within(rest[end].hangingTravel, expected[end].hanging_travel, TRAVEL);
      within(rest[end].tyreDeflection, expected[end].tyre_deflection, TRAVEL);
      within(rest[end].wheelLoad, expected[end].wheel_load, LOAD);
      within(rest[end].stopForce, expected[end].stop_force_at_wheel, LOAD);
      within(rest[end].motionRatio, expected[end].motion_ratio, RELATIVE);
      within(rest[end].wheelRate, expected[end].wheel_rate, RELATIVE * expected[end].wheel_rate);
      within(rest[end].rideRate, expected[end].ride_rate, RELATIVE * expected[end].ride_rate);
      within(rest[end].rideFrequency, expected[end].frequency_ride, RELATIVE * 10);
      within(rest[end].frequencyWithoutTyre, expected[end].frequency_body_on_wheel, RELATIVE * 10);
    }
    attitudeAgrees(prepared, rest, expected);
  });

  test.each(given.case.load_cases.map((load) => load.name))('%s: friction band with both ends', (load) => {
    const expected = statics.load_cases[load]!.friction_band;
    const { rest, prepared } = atRest(given, load);
    const band = frictionBand(prepared, rest);
    for (const end of ['rear', 'front'] as const) {
      within(band?.[end].least, expected[end].travel_after_lifting, TRAVEL);
      within(band?.[end].most, expected[end].travel_after_pressing, TRAVEL);
    }
  });
});

function atRest(given: Fixture, load: string): { rest: Rest; prepared: Prepared } {
  const items = given.case.load_cases.find((each) => each.name === load)!.items;
  const prepared = prepare({ ...machineOf(given), load: momentsOf(items) });
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') throw new Error(`${load}: ${JSON.stringify(answer)}`);
  expect(energyAt(prepared, Float64Array.from(answer.rest.state))).toBe(answer.rest.energy);
  return { rest: answer.rest, prepared };
}

function attitudeAgrees(prepared: Prepared, rest: Rest, expected: ExpectedRest): void {
  const attitude = attitudeAt(prepared, rest.state);
  within(attitude.rake, expected.rake, PITCH);
  within(attitude.groundTrail, expected.trail_ground, TRAVEL);
  within(attitude.normalTrail, expected.trail_normal, TRAVEL);
  within(attitude.wheelbase, expected.wheelbase, TRAVEL);
  within(attitude.seatHeight, expected.seat_height, TRAVEL);
}

function within(got: number | null | undefined, expected: number, bound: number): void {
  if (got === null || got === undefined) throw new Error(`nothing found where ${expected} is expected`);
  expect(Math.abs(got - expected), `${got} for ${expected}`).toBeLessThanOrEqual(bound);
}
