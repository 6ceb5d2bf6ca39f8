/**
 * Machines worked out by a second method: potential energy minimised with SciPy 1.10.1 from several starts, an
 * independent implementation with its own code; conventions stand inside each file. Two implementations of the same
 * equations should agree to rounding; the bounds below are what two careful solvers can promise each other.
 */
import { attitudeAt } from '@sagwright/model/attitude/attitude';
import { momentsOf } from '@sagwright/model/masses/pointMass';
import { plan } from '@sagwright/model/plan/plan';
import type { EndQuestion, PlanQuestion } from '@sagwright/model/plan/question';
import type { WantedSI } from '@sagwright/model/plan/wanted';
import { wheelAt } from '@sagwright/model/rear/wheelMotion';
import type { SpringSI } from '@sagwright/model/springs/spring';
import { energyAt } from '@sagwright/model/statics/gradient';
import type { MachineSI } from '@sagwright/model/statics/machine';
import { type Prepared, prepare } from '@sagwright/model/statics/prepared';
import { frictionBand, type Rest, restOf } from '@sagwright/model/statics/rest';
import { parseJob } from '@sagwright/records/read';
import { planJob } from '@sagwright/workbench/path';
import { describe, expect, test } from 'vitest';
import { documentOf, idOf } from './energy-minimised-machines/document.ts';
import {
  type ExpectedRest,
  type Fixture,
  fixture,
  machineOf,
  springOf,
} from './energy-minimised-machines/machine.ts';

/** Travels and lengths [m], loads [N], pitch [rad]; rates and frequencies relative: ten times the travel's share. */
const TRAVEL = 1e-6;
const LOAD = 0.01;
const PITCH = 1e-7;
const RELATIVE = 1e-7;

describe.each([
  'light_standard_dual_rate',
  'collar_out_of_range',
  'tourer_twin_two_aboard',
  'adventure_linkage',
])('%s', (name) => {
  const given = fixture(name);
  const { statics } = given.expected;

  test('the sprung body from the scales', () => {
    const { sprung } = machineOf(given);
    expect(sprung.mass).toBeCloseTo(statics.sprung_body.mass, 10);
    expect(sprung.x).toBeCloseTo(statics.sprung_body.x, 10);
    expect(sprung.height).toBeCloseTo(statics.sprung_body.height, 10);
  });

  test('the travel of the reference attitude', () => {
    const { rear, front } = machineOf(given);
    within(rear.referenceTravel, statics.reference_travels.rear, TRAVEL);
    within(front.referenceTravel, statics.reference_travels.front, TRAVEL);
  });

  test('axle and damper all along the travel', () => {
    const { rear } = machineOf(given);
    const at = { x: 0, height: 0, axleSlope: 0, axleBend: 0, stroke: 0, motionRatio: 0, ratioSlope: 0 };
    expect(given.expected.rear_kinematics).toHaveLength(11);
    for (const row of given.expected.rear_kinematics) {
      wheelAt(rear, 0, 0, row.travel, at);
      within(at.stroke, row.stroke, TRAVEL);
      within(at.x, row.axle_x, TRAVEL);
      within(at.height, row.axle_z, TRAVEL);
      within(at.motionRatio, row.motion_ratio, RELATIVE);
      // The second method differenced the complex step once more.
      within(at.ratioSlope, row.dmotion_ratio_dz, 1e-7);
    }
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

/** The same two machines by the technician's way: typed as documents, read, planned. Units cost a digit, no more. */
describe.each(['tourer_twin_two_aboard', 'adventure_linkage'])('%s, typed as a document', (name) => {
  const given = fixture(name);
  const read = parseJob(documentOf(given));
  if (!read.ok) throw new Error(read.problems.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  const planned = planJob(read.job);
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join('\n'));
  const { statics } = given.expected;

  test('has the reference travel that follows from its points', () => {
    within(planned.inputs.question.machine.rear.referenceTravel, statics.reference_travels.rear, TRAVEL);
  });

  test.each(given.case.load_cases.map((load) => load.name))(
    '%s: both ends rest where they should',
    (load) => {
      const { asFound } = planned.plan.loadCases.find(({ loadCase }) => loadCase === idOf(load))!;
      if (asFound.answer.kind !== 'rest') throw new Error(asFound.answer.kind);
      const expected = statics.load_cases[load]!;
      for (const end of ['rear', 'front'] as const) {
        within(asFound.answer.rest[end].travel, expected[end].travel, TRAVEL);
        within(asFound.answer.rest[end].motionRatio, expected[end].motion_ratio, RELATIVE);
        within(
          asFound.answer.rest[end].wheelRate,
          expected[end].wheel_rate,
          RELATIVE * expected[end].wheel_rate,
        );
      }
    },
  );
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

describe.each(['collar_out_of_range', 'tourer_twin_two_aboard'])('%s: springs and collar', (machine) => {
  const given = fixture(machine);
  const asked = given.case.plan!;
  const planned = plan(questionOf(given));

  test.each(given.expected.plan!.map((spring) => spring.spring))('%s', (name) => {
    const expected = given.expected.plan!.find((spring) => spring.spring === name)!;
    const spring = planned.rear.springs.find((each) => each.spring === name)!;
    for (const [load, cell] of Object.entries(expected.load_cases)) {
      const got = spring.cells.find((each) => each.loadCase === load)!;
      if (got.kind !== 'planned') throw new Error(`${name}, ${load}: ${got.kind}`);
      const { cell: mine } = got;
      within(mine.wanted.aim, cell.target_travel as number, TRAVEL);
      within(mine.preload?.value, cell.wanted_preload as number, TRAVEL);
      within(mine.positions?.aim.value, cell.collar_position as number, TRAVEL);
      expect(mine.reach.kind === 'reached').toBe(cell.reachable);
      // The second method set the collar exactly where it is wanted; here hands set it: recompute what follows from that.
      within(mine.setting?.position, cell.collar_used as number, asked.collar.thread_pitch / 8);
      within(mine.set.travelToMetal + mine.set.travel.value, given.expected.statics.rear_travel_max, TRAVEL);
    }
    const failing = (load: string): boolean => {
      const cell = spring.cells.find((each) => each.loadCase === load);
      return cell?.kind === 'planned' && cell.cell.reach.kind !== 'reached';
    };
    const bound = spring.reasons.some((reason) => reason.code === 'coil bind');
    expect(Object.keys(asked.targets).some(failing) || bound).toBe(!expected.feasible);
    expect(spring.fits).toBe(expected.feasible);
  });

  test.each(given.expected.plan!.map((spring) => spring.spring))('%s at the collar position used', (name) => {
    const expected = given.expected.plan!.find((spring) => spring.spring === name)!;
    const spring = asked.springs.find((each) => each.name === name)!;
    for (const [load, cell] of Object.entries(expected.load_cases)) {
      const preload = cell.preload_used as number;
      const machine = withRear(machineOf(given), springOf(spring.spring), preload);
      const items = given.case.load_cases.find((each) => each.name === load)!.items;
      const laden = restOf(prepare({ ...machine, load: momentsOf(items) }));
      const alone = restOf(prepare(machine));
      if (laden.kind !== 'rest' || alone.kind !== 'rest') throw new Error(`${name}, ${load}: no rest`);
      const { rear } = laden.rest;
      within(rear.travel, cell.laden_travel_with_collar_used as number, TRAVEL);
      within(alone.rest.rear.travel, cell.free_sag_travel as number, TRAVEL);
      within(rear.travelMax - rear.travel, cell.travel_left_to_stop as number, TRAVEL);
      within(rear.wheelRate, cell.wheel_rate as number, RELATIVE * rear.wheelRate);
      within(rear.rideFrequency, cell.frequency_ride as number, RELATIVE * 10);
      const deflection = machine.rear.strokeMax + preload;
      within(spring.free_length - spring.solid_length - deflection, cell.coil_bind_margin as number, TRAVEL);
    }
  });
});

function withRear(machine: MachineSI, spring: SpringSI, preload: number): MachineSI {
  const struts = machine.rear.struts.map((strut) => ({ ...strut, spring, preload }));
  return { ...machine, rear: { ...machine.rear, struts } };
}

function questionOf(given: Fixture): PlanQuestion {
  const asked = given.case.plan!;
  const nothingToDo: EndQuestion = {
    adjuster: null,
    choices: [],
    found: null,
    keepPreload: 0,
    keepFromCoilBind: 0,
  };
  return {
    machine: machineOf(given),
    inputs: [],
    limits: { gross: null, frontAxle: null, rearAxle: null, frontTyre: null, rearTyre: null },
    loadCases: given.case.load_cases.map((load) => {
      const target = asked.targets[load.name];
      const sag = { kind: 'share', share: (target?.percent ?? 0) / 100 } as const;
      const rear: WantedSI | null =
        target === undefined ? null : { low: sag, aim: sag, high: sag, from: 'stop', along: 'wheel' };
      const moments = momentsOf(load.items);
      return {
        id: load.name,
        share: target === undefined ? 0 : 0.5,
        load: moments,
        loadFullTank: moments,
        inputs: [],
        inputsFullTank: [],
        wanted: { rear, front: null },
        places: [],
      };
    }),
    rear: {
      adjuster: {
        kind: 'continuous',
        most: asked.collar.max - asked.collar.min,
        quantum: asked.collar.thread_pitch / 4,
        lead: asked.collar.thread_pitch,
        readingAtZero: asked.collar.min,
        sense: 1,
      },
      choices: asked.springs.map((spring) => ({
        id: spring.name,
        fitted: false,
        spring: springOf(spring.spring),
        preloadAtZero: asked.collar.preload_at_zero + asked.collar.min,
        freeLength: spring.free_length,
        solidLength: spring.solid_length,
        inputs: [],
      })),
      found: null,
      keepPreload: 0.003,
      keepFromCoilBind: 0.002,
    },
    front: nothingToDo,
  };
}
