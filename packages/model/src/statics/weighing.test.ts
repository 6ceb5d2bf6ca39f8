import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { momentsOf } from '../masses/pointMass.ts';
import { arbitraryMachine, arbitraryThing } from '../testing/arbitraryMachine.ts';
import { between } from '../testing/arbitraryStrut.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { GRAVITY, type MachineSI } from './machine.ts';
import { prepare } from './prepared.ts';
import { restOf } from './rest.ts';
import { type WeighingSI, weigh, weighLoad } from './weighing.ts';

const NOTHING = { mass: 0, momentX: 0, momentHeight: 0 };

/** What two scales read under a machine at rest [kg]; null where it has no rest, or more than one. */
function onScales(machine: MachineSI): { front: number; rear: number } | null {
  const answer = restOf(prepare(machine));
  if (answer.kind !== 'rest' || answer.rest.otherRests.length > 0) return null;
  return { front: answer.rest.front.wheelLoad / GRAVITY, rear: answer.rest.rear.wheelLoad / GRAVITY };
}

/** Height of the mass centre of machine and load in the reference attitude. */
function wholeHeight({ sprung, load, rear, front }: MachineSI): number {
  const mass = sprung.mass + load.mass + rear.unsprung + front.unsprung;
  const moment =
    sprung.mass * sprung.height +
    load.momentHeight +
    rear.unsprung * rear.tyre.radius +
    front.unsprung * front.tyre.radius;
  return moment / mass;
}

/** Draws machines that rest, and fails when too few of them do. */
function eachResting(
  seed: number,
  drawn: fc.Arbitrary<MachineSI>,
  check: (machine: MachineSI, scales: { front: number; rear: number }) => void,
): void {
  let seen = 0;
  fc.assert(
    fc.property(drawn, (machine) => {
      const scales = onScales(machine);
      if (scales === null) return;
      seen += 1;
      check(machine, scales);
    }),
    { seed, numRuns: 200 },
  );
  expect(seen).toBeGreaterThan(150);
}

const unladen = arbitraryMachine.map((machine) => ({ ...machine, load: NOTHING }));

describe('the body of a machine weighed level', () => {
  test('by hand', () => {
    const machine = levelMachine(plainStrut(40_000, 0.01));
    const answer = weigh(machine, { front: 140, rear: 110, wholeHeight: 0.46, attitude: 'level' });
    // 250 kg less 20 on each wheel; front 120 of 210 kg over 1.5 m; 250 · 0.46 − 2 · 20 · 0.3 = 103 kg·m.
    expect(answer).toEqual({
      kind: 'body',
      sprung: {
        mass: 210,
        x: expect.closeTo((120 * 1.5) / 210, 12),
        height: expect.closeTo(103 / 210, 12),
      },
    });
  });

  test('leaves out what was aboard', () => {
    const machine = {
      ...levelMachine(plainStrut(40_000, 0.01)),
      load: momentsOf([{ mass: 10, x: 0.6, height: 1 }]),
    };
    const answer = weigh(machine, { front: 140, rear: 110, wholeHeight: 0.46, attitude: 'level' });
    expect(answer).toEqual({
      kind: 'body',
      sprung: {
        mass: 200,
        x: expect.closeTo((120 * 1.5 - 6) / 200, 12),
        height: expect.closeTo((103 - 10) / 200, 12),
      },
    });
  });
});

describe('the body of a machine weighed on its own sag', () => {
  test('is the one that stood on the scales', () => {
    eachResting(601, arbitraryMachine, (machine, scales) => {
      const { sprung } = machine;
      const answer = weigh(machine, { ...scales, wholeHeight: wholeHeight(machine), attitude: 'own sag' });
      // The front load is met to 1e-9 of itself, 10 mg: over a body of 90 kg and more some 1e-7 m.
      expect(answer).toEqual({
        kind: 'body',
        sprung: {
          mass: expect.closeTo(sprung.mass, 8),
          x: expect.closeTo(sprung.x, 6),
          height: expect.closeTo(sprung.height, 8),
        },
      });
    });
  });

  test('put back on the scales with the same settings reads the same', () => {
    const readings = fc.tuple(unladen, between(0.9, 1.1), between(0.9, 1.1));
    let seen = 0;
    fc.assert(
      fc.property(readings, ([machine, more, less]) => {
        const scales = onScales(machine);
        if (scales === null) return;
        const weighing: WeighingSI = {
          front: more * scales.front,
          rear: less * scales.rear,
          wholeHeight: wholeHeight(machine),
          attitude: 'own sag',
        };
        const { front, rear } = machine;
        if (weighing.front <= front.unsprung || weighing.rear <= rear.unsprung) return;
        const answer = weigh(machine, weighing);
        if (answer.kind !== 'body') return;
        const again = onScales({ ...machine, sprung: answer.sprung });
        if (again === null) return;
        seen += 1;
        expect(again.front).toBeCloseTo(weighing.front, 5);
        expect(again.rear).toBeCloseTo(weighing.rear, 5);
      }),
      { seed: 602, numRuns: 200 },
    );
    expect(seen).toBeGreaterThan(150);
  });

  test('is the same whatever the preload was, although the scales then read otherwise', () => {
    eachResting(603, unladen, (machine) => {
      const wound = {
        ...machine,
        rear: {
          ...machine.rear,
          struts: machine.rear.struts.map((strut) => ({ ...strut, preload: strut.preload + 0.01 })),
        },
      };
      const scales = onScales(wound);
      if (scales === null) return;
      const answer = weigh(wound, { ...scales, wholeHeight: wholeHeight(machine), attitude: 'own sag' });
      if (answer.kind !== 'body') throw new Error(answer.kind);
      expect(answer.sprung.x).toBeCloseTo(machine.sprung.x, 6);
    });
  });

  test('is not what the level rule would make of the readings', () => {
    // Its rear sags by 78 mm more than its front: 1/1.5 · 0.078 rad nose-up carry 0.2 m of height over the axles back
    // by some 10 mm, which the level rule takes for the place of the body.
    const machine = levelMachine(plainStrut(40_000, 0.06));
    const low = { ...machine, rear: { ...machine.rear, struts: [plainStrut(40_000, 0.01)] } };
    const scales = onScales(low)!;
    const weighing = { ...scales, wholeHeight: wholeHeight(low) };
    const onSag = weigh(low, { ...weighing, attitude: 'own sag' });
    const level = weigh(low, { ...weighing, attitude: 'level' });
    if (onSag.kind !== 'body' || level.kind !== 'body') throw new Error('no body');
    expect(onSag.sprung.x).toBeCloseTo(0.75, 6);
    expect(level.sprung.x).toBeGreaterThan(0.735);
    expect(level.sprung.x).toBeLessThan(0.745);
  });
});

test('a load weighed aboard is the one that lay there', () => {
  const laden = fc.tuple(unladen, arbitraryThing).map(([machine, thing]) => ({
    ...machine,
    load: momentsOf([thing]),
  }));
  eachResting(604, laden, (machine, scales) => {
    const { load } = machine;
    const answer = weighLoad({ ...machine, load: NOTHING }, scales, load.momentHeight / load.mass);
    if (answer.kind !== 'load') throw new Error(answer.kind);
    expect(answer.load.mass).toBeCloseTo(load.mass, 8);
    expect(answer.load.mass * answer.load.x).toBeCloseTo(load.momentX, 5);
  });
});

test('readings that leave nothing to weigh are refused', () => {
  const machine = levelMachine(plainStrut(40_000, 0.01));
  const weighing: WeighingSI = { front: 19, rear: 110, wholeHeight: 0.46, attitude: 'own sag' };
  expect(() => weigh(machine, weighing)).toThrow('19 and 110 kg, unsprung 20 and 20 kg');
  const full = { ...machine, load: { mass: 90, momentX: 60, momentHeight: 80 } };
  expect(() => weigh(full, { ...weighing, front: 22, rear: 30 })).toThrow('aboard are 90 kg');
  expect(() => weighLoad(machine, { front: 100, rear: 100 }, 0.8)).toThrow(
    '200 kg, the machine alone weighs 240 kg',
  );
});
