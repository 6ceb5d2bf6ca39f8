import { ATMOSPHERE, type MachineSI } from '@sagwright/model/statics/machine';
import { describe, expect, test } from 'vitest';
import { type JobPlan, planJob } from '../path.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';

const mm = (value: number): object => ({ value, unit: 'mm' });
const ml = (value: number): object => ({ value, unit: 'ml' });
const FORK = 'machine.front.fork';
const FOUND = 'setups.asFound.front';

describe('A stack in the fork', () => {
  /** A 380 mm spring, 150 mm of spacer and two washers of 2 mm in 514 mm of room: 20 mm of preload. */
  const stack: readonly Change[] = [
    ['springs.fork.freeLength', mm(380)],
    [`${FORK}.stack`, { room: mm(514), readAt: 'fully out', washers: [mm(2), mm(2)] }],
    [FOUND, { both: { spring: 'fork', at: { spacer: mm(150) } } }],
  ];

  test('is the same as its preload typed', () => {
    const typed = planned([FOUND, { both: { spring: 'fork', at: { preload: mm(20) } } }]);
    const stacked = planned(...stack);
    expect(preloads(stacked)).toEqual([expect.closeTo(0.02, 12), expect.closeTo(0.02, 12)]);
    expect(frontTravel(stacked)).toBeCloseTo(frontTravel(typed), 12);
  });

  test('tells which spacer gives the wanted sag: cut so and put in, the fork stands there', () => {
    const planning = planned(...stack).plan.front.springs[0]!.cells.find(({ kind }) => kind === 'planned');
    if (planning?.kind !== 'planned' || planning.cell.setting === null) throw new Error('no spacer was told');
    const spacer = 120 + 1000 * planning.cell.setting.position;
    const cut = planned(...stack, [FOUND, { both: { spring: 'fork', at: { spacer: mm(spacer) } } }]);
    expect(preloads(cut)[0]).toBeCloseTo(planning.cell.set.preload, 12);
  });

  test('read in a leg at rest leaves so much less preload as its top-out spring is long', () => {
    const relaxed = planned(
      ...stack,
      [`${FORK}.stack`, { room: mm(502), readAt: 'relaxed', washers: [mm(2), mm(2)] }],
      [`${FORK}.topOut`, { length: mm(12), rate: { value: 8, unit: 'N/mm' } }],
    );
    expect(preloads(relaxed)[0]).toBeCloseTo(0.02, 12);
    const unknown = planned(
      ...stack,
      [`${FORK}.stack`, { room: mm(502), readAt: 'relaxed' }],
      [`${FORK}.topOut`, undefined],
    );
    expect(unknown.inputs.notes.map(({ code }) => code)).toContain('stack read relaxed');
  });

  test('carries the ± of its room and washers', () => {
    const names = planned(...stack).inputs.question.inputs.map(({ name }) => name);
    expect(names).toEqual(
      expect.arrayContaining([`${FORK}.stack.room`, `${FORK}.stack.washers.0`, 'springs.fork.freeLength']),
    );
  });

  test('with a spacer that stays stands under a screwed cap, turned in', () => {
    const cap = planned(
      ...stack,
      [`${FORK}.adjuster`, { kind: 'cap', lead: mm(1), turns: 12 }],
      [`${FORK}.stack`, { room: mm(514), readAt: 'fully out', spacer: mm(140) }],
      [FOUND, { both: { spring: 'fork', at: { turns: 5 } } }],
    );
    // 380 + 140 − 514 mm and five turns of 1 mm.
    expect(preloads(cap)[0]).toBeCloseTo(0.011, 12);
  });
});

describe('What moves with the front wheel', () => {
  const kg = (value: number): object => ({ value, unit: 'kg' });
  const FRONT = 'machine.front';
  const unsprung = (...changes: readonly Change[]): number =>
    planned([`${FRONT}.unsprung`, undefined], ...changes).inputs.question.machine.front.unsprung;

  test('is what its parts weigh', () => {
    const parts = { wheel: kg(14), brakes: kg(2), tubes: kg(6), guard: kg(1) };
    expect(unsprung([`${FRONT}.unsprungParts`, parts])).toBeCloseTo(23, 12);
  });

  test('counts the thick tubes of a conventional fork, and the thin ones of an inverted', () => {
    const whole = (tubes: string): number =>
      unsprung([`${FORK}.tubes`, tubes], [`${FRONT}.unsprungParts`, { wheel: kg(14) }]);
    expect(whole('inverted')).toBeLessThan(whole('conventional'));
    expect(unsprung([`${FORK}.tubes`, 'inverted'])).toBeLessThan(unsprung([`${FORK}.tubes`, 'conventional']));
  });

  test('carries the ± of each part, and says which are assumed', () => {
    const { inputs } = planned(
      [`${FRONT}.unsprung`, undefined],
      [`${FRONT}.unsprungParts`, { wheel: kg(14), brakes: kg(2) }],
    );
    const names = ['wheel', 'brakes', 'tubes', 'guard'].map((part) => `${FRONT}.unsprungParts.${part}`);
    expect(inputs.question.inputs.map(({ name }) => name)).toEqual(expect.arrayContaining(names));
    expect(names.map((name) => inputs.figures.get(name)!.origin)).toEqual([
      'not said',
      'not said',
      'assumed',
      'assumed',
    ]);
  });
});

describe('Legs of a fork', () => {
  test('that differ stand the same with left and right changed over', () => {
    const soft = { spring: 'fork', at: { preload: mm(15) } };
    const hard = { spring: 'fork', at: { preload: mm(25) } };
    const one = planned([FOUND, { left: soft, right: hard }]);
    const other = planned([FOUND, { left: hard, right: soft }]);
    expect(frontTravel(one)).toBeCloseTo(frontTravel(other), 12);
  });

  test('of which one holds no spring have the air of both: twice the spring in one is as both of them', () => {
    const both = planned([FOUND, { both: { spring: 'fork', at: { preload: mm(20) } } }]);
    const single = planned(
      ['springs.fork.rate', { kind: 'linear', rate: { value: 21, unit: 'N/mm' } }],
      [FOUND, { single: { spring: 'fork', at: { preload: mm(20) } } }],
    );
    expect(front(single).struts).toHaveLength(1);
    expect(frontTravel(single)).toBeCloseTo(frontTravel(both), 12);
  });
});

describe('Air in the fork', () => {
  /** 41 mm bore and 125 mm of gap, fully in: 165.03 ml; the seal is the bore. */
  const bore = (Math.PI / 4) * 0.041 ** 2;
  const swept = bore * 0.117;
  const volume = (plan: JobPlan): number => front(plan).struts[0]!.gas!.volume - swept;
  const air = (more: object): Change => [
    `${FORK}.air`,
    { bore: mm(41), seal: mm(41), gap: mm(125), ...more },
  ];

  test('read with nothing in the leg has the room of the gap, less spring and spacer where they are known', () => {
    expect(volume(planned(air({})))).toBeCloseTo(bore * 0.125, 12);
    const known = planned(air({ springVolume: ml(55), spacerVolume: ml(12) }));
    expect(volume(known)).toBeCloseTo(bore * 0.125 - 67e-6, 12);
    expect(planned(air({})).inputs.notes.map(({ code }) => code)).toContain('spring volume not known');
    expect(known.inputs.notes.map(({ code }) => code)).not.toContain('spring volume not known');
  });

  test('loses what the spring displaces by its own wire, where it was measured as a coil', () => {
    const coil = {
      kind: 'coil',
      wire: mm(4.5),
      mean: mm(30),
      coils: 40,
      ends: 'closed ground',
      material: 'chrome silicon',
    };
    const known = planned(air({}), ['springs.fork.rate', coil]);
    // 40 · π · 30 mm of wire, 15.904 mm² thick: 59.96 ml.
    expect(volume(known)).toBeCloseTo(bore * 0.125 - 59.96e-6, 8);
    expect(known.inputs.notes.map(({ code }) => code)).not.toContain('spring volume not known');
  });

  test('read with them in it has as much as is above the oil, but for what of them stands there', () => {
    const read = planned(air({ readWith: 'spring and spacer', springVolume: ml(50), spacerVolume: ml(10) }));
    // Where the stack is not known nine tenths of them are under the oil: 6 ml stand in the air.
    expect(volume(read)).toBeCloseTo(bore * 0.125 - 6e-6, 12);
  });

  test('with the stack known counts what of the spring stood under the oil', () => {
    const read = planned(
      air({ readWith: 'spring', springVolume: ml(50), spacerVolume: ml(10) }),
      ['springs.fork.freeLength', mm(380)],
      [`${FORK}.stack`, { room: mm(510), readAt: 'fully out' }],
      [FOUND, { both: { spring: 'fork', at: { spacer: mm(150) } } }],
    );
    // 510 − 117 − 125 mm of oil above the seat, of a spring of 380 mm: 268/380 of it under oil, the rest and the spacer in the air.
    expect(volume(read)).toBeCloseTo(bore * 0.125 - 50e-6 * (112 / 380) - 10e-6, 12);
  });

  test('of a leg filled by volume follows the oil that went in', () => {
    const more = planned(air({ oil: { filled: ml(480), gapIsFor: ml(470) } }));
    expect(volume(more)).toBeCloseTo(bore * 0.125 - 10e-6, 12);
  });

  test('closed warm presses less than the air outside once it is cold, closed under pressure more', () => {
    const pressure = (more: object): number => front(planned(air(more))).struts[0]!.gas!.pressure;
    expect(pressure({ temperature: { value: 60, unit: 'C' } })).toBeCloseTo(
      (ATMOSPHERE * 293.15) / 333.15,
      6,
    );
    expect(pressure({ pressure: { value: 0.5, unit: 'bar' } })).toBeCloseTo(ATMOSPHERE + 5e4, 6);
  });

  test('more oil never lets the fork stand lower', () => {
    const stands = [150, 130, 110, 90, 70].map((gap) => frontTravel(planned(air({ gap: mm(gap) }))));
    for (let i = 1; i < stands.length; i += 1) expect(stands[i]).toBeLessThan(stands[i - 1]!);
  });

  test('that oil and spring leave no room for is told on its field', () => {
    const answer = planJob(tourerWith(air({ gap: mm(60), springVolume: ml(80) })));
    expect(answer.ok ? [] : answer.problems.map(({ path }) => path)).toEqual([`${FORK}.air.gap`]);
  });

  test('goes by the build where one diameter is not known', () => {
    const areas = (tubes: string, known: object): readonly number[] => {
      const { gas } = front(planned([`${FORK}.tubes`, tubes], [`${FORK}.air`, { gap: mm(125), ...known }]))
        .struts[0]!;
      return [gas!.area, gas!.volume - gas!.area * 0.117].map((each, i) => (i === 0 ? each : each / 0.125));
    };
    const circle = (diameter: number): number => (Math.PI / 4) * diameter ** 2;
    expect(areas('conventional', { seal: mm(41) })[0]).toBeCloseTo(circle(0.041), 12);
    expect(areas('conventional', { seal: mm(41) })[1]).toBeCloseTo(circle(0.037), 12);
    expect(areas('conventional', { bore: mm(37) })[0]).toBeCloseTo(circle(0.041), 12);
    expect(areas('inverted', { seal: mm(43) })[1]).toBeCloseTo(circle(0.046), 12);
  });
});

function planned(...changes: readonly Change[]): JobPlan {
  const answer = planJob(tourerWith(...changes));
  if (!answer.ok) throw new Error(answer.problems.map(({ message }) => message).join('\n'));
  return answer;
}

function front({ inputs }: JobPlan): MachineSI['front'] {
  return inputs.question.machine.front;
}

function preloads(plan: JobPlan): readonly number[] {
  return front(plan).struts.map(({ preload }) => preload);
}

function frontTravel({ plan }: JobPlan): number {
  const { answer } = plan.alone;
  if (answer.kind !== 'rest') throw new Error(answer.kind);
  return answer.rest.front.travel;
}
