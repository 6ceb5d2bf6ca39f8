import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arbitraryMachine } from '../testing/arbitraryMachine.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { gradientAt } from './gradient.ts';
import { parameter, parametersOf, putOn, setParameter } from './parameters.ts';
import { prepare, refresh } from './prepared.ts';

/** The value at a path such as `rear.struts.0.spring.rate`. */
function valueAt(machine: unknown, path: string): unknown {
  return path.split('.').reduce((value, key) => (value as Record<string, unknown>)[key], machine);
}

test('every number of a machine stands in the list under its path', () => {
  fc.assert(
    fc.property(arbitraryMachine, (machine) => {
      const parameters = parametersOf(machine);
      expect(parameters.machine).toEqual(machine);
      expect(new Set(parameters.names).size).toBe(parameters.names.length);
      parameters.names.forEach((name, i) => {
        expect(parameter(parameters, i)).toBe(valueAt(machine, name));
        expect(parameters.indexOf.get(name)).toBe(i);
      });
    }),
    { seed: 721 },
  );
});

test('setting a number sets it in the copy, never in the machine that was given', () => {
  const machine = levelMachine(plainStrut(40_000, 0.01));
  const parameters = parametersOf(machine);
  const rate = parameters.indexOf.get('rear.struts.0.spring.rate')!;
  setParameter(parameters, rate, 50_000);
  expect(parameters.machine.rear.struts[0]!.spring).toEqual({ kind: 'linear', rate: 50_000 });
  // Both ends came as one object; each has its own numbers now.
  expect(parameters.machine.front.struts[0]!.spring).toEqual({ kind: 'linear', rate: 40_000 });
  expect(machine.rear.struts[0]!.spring).toEqual({ kind: 'linear', rate: 40_000 });
});

test('the points of a drawn curve are no inputs, its scale is', () => {
  const curve = { x: [0, 0.1, 0.2], y: [0, 0.05, 0.1], slope: [0.5, 0.5, 0.5] };
  const machine = levelMachine(plainStrut(40_000, 0.01));
  const rear = { ...machine.rear, kinematics: { kind: 'table' as const, curve, scale: 1 } };
  const { names } = parametersOf({ ...machine, rear });
  expect(names.filter((name) => name.startsWith('rear.kinematics'))).toEqual(['rear.kinematics.scale']);
});

test('the travel at metal hangs on the numbers that say so, and on no other', () => {
  fc.assert(
    fc.property(arbitraryMachine, (machine) => {
      const parameters = parametersOf(machine);
      const prepared = prepare(parameters.machine);
      const { rearTravelMax, frontTravelMax } = prepared;
      parameters.names.forEach((name, i) => {
        const value = parameter(parameters, i);
        setParameter(parameters, i, value * 1.001);
        refresh(prepared);
        const moved = prepared.rearTravelMax !== rearTravelMax || prepared.frontTravelMax !== frontTravelMax;
        if (moved) expect(parameters.reaches[i]!.travel, name).toBe(true);
        setParameter(parameters, i, value);
      });
    }),
    { seed: 722, numRuns: 30 },
  );
});

test('the balance of a wheel hangs on the numbers that say so, and on no other', () => {
  const state = Float64Array.of(-0.03, 0.02, 0.04, 0.05);
  fc.assert(
    fc.property(arbitraryMachine, (machine) => {
      const parameters = parametersOf(machine);
      const prepared = prepare(parameters.machine);
      gradientAt(prepared, state, 1);
      const before = structuredClone(prepared.gradient);
      parameters.names.forEach((name, i) => {
        const value = parameter(parameters, i);
        setParameter(parameters, i, 1.001 * value + 1e-6);
        gradientAt(prepared, state, 1);
        for (const end of ['rear', 'front'] as const) {
          if (!parameters.reaches[i]![end]) expect(prepared.gradient[end], name).toEqual(before[end]);
        }
        setParameter(parameters, i, value);
      });
    }),
    { seed: 723, numRuns: 30 },
  );
});

test('a load is put on the machine in the list', () => {
  const parameters = parametersOf(levelMachine(plainStrut(40_000, 0.01)));
  putOn(parameters, { mass: 80, momentX: 40, momentHeight: 76 });
  expect(parameters.machine.load).toEqual({ mass: 80, momentX: 40, momentHeight: 76 });
  expect(parameter(parameters, parameters.indexOf.get('load.momentX')!)).toBe(40);
});
