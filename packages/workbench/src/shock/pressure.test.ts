import type { FirstMoments } from '@sagwright/model/masses/pointMass';
import { ATMOSPHERE, type MachineSI } from '@sagwright/model/statics/machine';
import { parametersOf, putOn } from '@sagwright/model/statics/parameters';
import { type Prepared, prepare } from '@sagwright/model/statics/prepared';
import { restOf } from '@sagwright/model/statics/rest';
import { describe, expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { planJob } from '../path.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';
import { suggestionWords } from '../words/suggestion.ts';
import { pressureOf } from './pressure.ts';

const q = (value: number, unit: string, plusMinus?: number) => ({
  value,
  unit,
  ...(plusMinus === undefined ? {} : { plusMinus: { value: plusMinus, unit } }),
});

const air = {
  diameter: q(30, 'mm', 0.1),
  volume: q(160, 'ml', 4),
  pressure: q(1, 'bar', 0.05),
  least: q(0, 'bar'),
  most: q(9, 'bar'),
  gauge: q(0, 'ml'),
};

/** The tourer with air beside its springs, and nothing else that sets the rear. */
const airAssisted: readonly Change[] = [
  ['machine.rear.shock.air', air],
  ['machine.rear.shock.adjuster', { kind: 'none' }],
  ['setups.asFound.rear', { both: { spring: 'c3', at: { preload: q(6, 'mm', 0.5) } } }],
];

function foundAt(reading: unknown, preload: unknown): unknown {
  return { both: { spring: 'fitted', at: { reading, preload } } };
}

function onMachine(machine: MachineSI, load: FirstMoments): Prepared {
  const parameters = parametersOf(machine);
  putOn(parameters, load);
  return prepare(parameters.machine);
}

function planOf(...changes: readonly Change[]) {
  const planned = planJob(tourerWith(...changes));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join(' '));
  return planned;
}

function cellsOf(planned: ReturnType<typeof planOf>, spring: string) {
  return planned.plan.rear.springs
    .find((each) => each.spring === spring)!
    .cells.flatMap((cell) => (cell.kind === 'planned' ? [cell.cell] : []));
}

describe('An air-assisted shock without a collar', () => {
  const planned = planOf(...airAssisted);
  const cells = cellsOf(planned, 'c3');

  test('rests where it is wanted at the pressure planned, as near as hands set it', () => {
    expect(cells.length).toBeGreaterThan(0);
    for (const { pressure, set, wanted } of cells) {
      if (pressure!.reach.kind !== 'reached') continue;
      // Hands set to a twentieth of a bar: at most 0.025 bar off, on 7 cm² and two shocks 4 N, on some 60 N/mm.
      expect(Math.abs(set.travel.value - wanted.aim)).toBeLessThan(2e-4);
    }
  });

  test('wants more pressure the more is aboard, and the same setting reads higher the deeper the shock is in', () => {
    for (const cell of cells) {
      const told = pressureOf(planned, cell)!;
      expect(told.least).toBeLessThan(told.aim.value);
      expect(told.aim.value).toBeLessThan(told.most);
      expect(told.aim.plusMinus!).toBeGreaterThan(0);
      expect(told.set.alone!).toBeGreaterThan(told.set.fullyOut);
      expect(told.set.laden!).toBeGreaterThan(told.set.alone!);
    }
  });

  test('stands in the plan of both ends on that pressure too', () => {
    const { loadCase, stand } = planned.plan.planned.loadCases.find(({ stand }) => stand.travel !== null)!;
    const cell = planned.plan.rear.springs
      .find(({ spring }) => spring === planned.plan.planned.rear.spring)!
      .cells.find((each) => each.loadCase === loadCase)!;
    if (cell.kind !== 'planned') throw new Error('it is planned');
    // The front is at its own setting there, which moves the rear by less than a millimetre.
    expect(Math.abs(stand.travel!.rear.value - cell.cell.set.travel.value)).toBeLessThan(1e-3);
  });

  test('with a spring that was picked, both ends are planned on that one, not on the one found', () => {
    const picked = planOf(...airAssisted, ['choice', { rear: 'c1' }]);
    for (const { loadCase, stand } of picked.plan.planned.loadCases) {
      const cell = picked.plan.rear.springs
        .find(({ spring }) => spring === 'c1')!
        .cells.find((each) => each.loadCase === loadCase)!;
      if (cell.kind !== 'planned' || stand.travel === null) throw new Error('it is planned, and rests');
      // The front is at its own setting there, which moves the rear by less than a millimetre.
      expect(Math.abs(stand.travel.rear.value - cell.cell.set.travel.value)).toBeLessThan(1e-3);
      expect(stand.travel.rear.plusMinus! / cell.cell.set.travel.plusMinus!).toBeCloseTo(1, 1);
    }
  });

  test('more pressure as found never gives more sag as found', () => {
    const sag = (bar: number): number => {
      const found = planOf(...airAssisted, ['machine.rear.shock.air.pressure', q(bar, 'bar')]);
      const { travel } = found.plan.loadCases[0]!.asFound;
      return travel!.rear.value;
    };
    expect(sag(2)).toBeLessThan(sag(1));
  });
});

test('a gauge that takes some of the air widens the ±, one that takes none does not', () => {
  const doubt = (gauge: unknown): number => {
    const planned = planOf(...airAssisted, ['machine.rear.shock.air.gauge', gauge]);
    const { deviation } = planned.inputs.figures.get('machine.rear.shock.air.gaugeLoss') ?? { deviation: 0 };
    return deviation;
  };
  expect(doubt(q(0, 'ml'))).toBe(0);
  // Derived: 1 bar · 4 ml / 160 ml = 0.025 bar, as a 90 % half-width.
  expect(doubt(q(4, 'ml')) * 1.6448536).toBeCloseTo(2500, 0);
});

test('read on its wheels, the pressure was less fully out', () => {
  const planned = planOf(...airAssisted, ['machine.rear.shock.air.readAt', q(20, 'mm')]);
  const { air: held } = planned.inputs.question.machine.rear.struts[0]!;
  const area = (Math.PI / 4) * 0.03 ** 2;
  // Derived: P0 = (1 bar + P_atm)(V0 − A·20 mm)/V0.
  expect(held!.pressure).toBeCloseTo(((1e5 + 101325) * (160e-6 - area * 0.02)) / 160e-6, 6);
});

describe('Beside a collar', () => {
  const planned = planOf(['machine.rear.shock.air', air]);

  test('the collar is planned, and a pressure is told for every spring considered', () => {
    for (const spring of planned.plan.rear.springs) {
      const cells = cellsOf(planned, spring.spring);
      expect(cells.length).toBeGreaterThan(0);
      for (const cell of cells)
        expect(pressureOf(planned, cell)).toMatchObject({
          isPlanned: false,
          set: { alone: null, laden: null },
        });
    }
  });

  test('with its spring in, its collar where it was found and that pressure the wheel rests where it is wanted', () => {
    const { machine, rear, loadCases } = planned.inputs.question;
    for (const { spring } of planned.plan.rear.springs) {
      const choice = rear.choices.find(({ id }) => id === spring)!;
      for (const [i, cell] of cellsOf(planned, spring).entries()) {
        const pressure = cell.pressure!.aim.value;
        const struts = machine.rear.struts.map((strut, side) => ({
          ...strut,
          spring: choice.spring,
          preload: choice.preloadAtZero + rear.found![side]!,
          air: { ...strut.air!, pressure },
        }));
        const set = { ...machine, rear: { ...machine.rear, struts } };
        const answer = restOf(onMachine(set, loadCases[i]!.load));
        if (answer.kind !== 'rest') throw new Error('it rests');
        // Left and right are shared by their mean, which a linear spring makes exact.
        expect(Math.abs(answer.rest.rear.travel - cell.wanted.aim)).toBeLessThan(1e-6);
      }
    }
  });

  test('a reading of the collar says nothing against a preload that was read itself', () => {
    const doubt = (reading: number): number => {
      const set = planOf(
        ['machine.rear.shock.air', air],
        ['setups.asFound.rear', foundAt(q(14, 'mm', reading), q(6, 'mm', 0.5))],
      );
      return cellsOf(set, 'fitted')[0]!.pressure!.aim.plusMinus!;
    };
    expect(doubt(3)).toBeCloseTo(doubt(0.1), 3);
  });
});

describe('The ± of a planned pressure', () => {
  const level: Change = ['machine.weighing.attitude', 'level'];
  const bare = (...changes: readonly Change[]) => cellsOf(planOf(...airAssisted, level, ...changes), 'c3');

  test('is none of the pressure that was found, where the machine was weighed level', () => {
    const found = (width: number) =>
      bare(['machine.rear.shock.air.pressure', q(1, 'bar', width)]).map(({ pressure, set }) => [
        pressure!.aim.plusMinus!,
        set.travel.plusMinus!,
      ]);
    for (const [i, [aim, sag]] of found(0.6).entries()) {
      const [before, sagBefore] = found(0.01)[i]!;
      expect(Math.abs(aim! / before! - 1)).toBeLessThan(1e-6);
      expect(Math.abs(sag! / sagBefore! - 1)).toBeLessThan(1e-6);
    }
  });

  test('holds what the gauge takes when it is set: its share of the pressure, beside the rest', () => {
    const lossless = bare();
    const lossy = bare(['machine.rear.shock.air.gauge', q(8, 'ml')]);
    for (const [i, { pressure }] of lossy.entries()) {
      // Derived: 8 ml of 160 ml take a twentieth of what the gauge shows; it adds as a square.
      const loss = (pressure!.aim.value - ATMOSPHERE) / 20;
      const expected = Math.hypot(lossless[i]!.pressure!.aim.plusMinus!, loss);
      expect(pressure!.aim.plusMinus! / expected).toBeCloseTo(1, 2);
      expect(lossy[i]!.set.travel.plusMinus!).toBeGreaterThan(lossless[i]!.set.travel.plusMinus!);
    }
  });

  test('is made of named figures of the job, and of nothing else', () => {
    const planned = planOf(...airAssisted);
    for (const { pressure } of cellsOf(planned, 'c3')) {
      const { aim, contributions } = pressure!;
      const whole = Math.hypot(...contributions.map(({ halfWidth }) => halfWidth));
      expect(whole / aim.plusMinus!).toBeCloseTo(1, 9);
      for (const { input } of contributions) expect(planned.inputs.figures.has(input)).toBe(true);
    }
  });
});

describe('Where no pressure reaches', () => {
  const weak: readonly Change[] = [...airAssisted, ['machine.rear.shock.air.most', q(7, 'bar')]];

  test('what would help is told as pressure and coil, not as a longer adjuster', () => {
    const planned = planOf(...weak);
    const { headline, remedies } = suggestionWords(planned, 'rear', unitsFor('metric', planned.job, '.'));
    expect(headline).toContain('None of the rear springs');
    const all = remedies.join('; ');
    expect(all).toMatch(/bar/);
    expect(all).not.toMatch(/preload|adjuster|damper/);
  });

  test('the coil that is named reaches every load, and the pressures that are named hold them all', () => {
    const { suggestion } = planOf(...weak).plan.rear;
    if (suggestion.kind !== 'none') throw new Error('none fits');
    const coil = suggestion.remedies.find((remedy) => remedy.kind === 'other coil')!;
    const coils = planOf(
      ...weak,
      [
        'springs.new',
        {
          name: 'new',
          order: 9,
          end: 'rear',
          rate: { kind: 'linear', rate: q((coil.least + coil.most) / 2000, 'N/mm') },
        },
      ],
      ['springs.new.freeLength', q(262, 'mm')],
      ['springs.c3.freeLength', q(262, 'mm')],
    );
    const ridden = cellsOf(coils, 'new');
    for (const { pressure } of ridden) expect(pressure!.reach.kind).toBe('reached');
    const unit = suggestion.remedies.find((remedy) => remedy.kind === 'other pressures')!;
    const bar = (pascal: number) => q(pascal / 1e5, 'bar');
    const other = planOf(
      ...weak,
      ['machine.rear.shock.air.least', bar(unit.least)],
      ['machine.rear.shock.air.most', bar(unit.most + 1)],
    );
    for (const { pressure } of cellsOf(other, unit.spring)) expect(pressure!.reach.kind).toBe('reached');
  });

  test('what is too much for it, taken off the wheel, is what it reaches with', () => {
    const { suggestion } = planOf(...weak).plan.rear;
    if (suggestion.kind !== 'none') throw new Error('none fits');
    const less = suggestion.remedies.filter((remedy) => remedy.kind === 'less load');
    expect(less.length).toBeGreaterThan(0);
    for (const { kilograms } of less) expect(kilograms).toBeGreaterThan(0);
  });
});

describe('A shock whose air bears alone', () => {
  const noCoil: readonly Change[] = [
    [
      'machine.rear.shock.air',
      { ...air, diameter: q(48, 'mm'), volume: q(300, 'ml'), pressure: q(5, 'bar'), most: q(15, 'bar') },
    ],
    ['machine.rear.shock.adjuster', { kind: 'none' }],
    ['springs.bare', { name: 'no coil', order: 1, end: 'rear', rate: { kind: 'none' } }],
    ['setups.asFound.rear', { both: { spring: 'bare', at: { preload: q(0, 'mm') } } }],
  ];

  test('is planned by pressure, and no coil is asked for', () => {
    const planned = planOf(...noCoil);
    const cells = cellsOf(planned, 'bare');
    expect(cells.length).toBeGreaterThan(0);
    for (const { pressure, set, wanted } of cells) {
      if (pressure!.reach.kind !== 'reached') continue;
      expect(Math.abs(set.travel.value - wanted.aim)).toBeLessThan(5e-4);
    }
    const { reasons } = planned.plan.rear.springs.find(({ spring }) => spring === 'bare')!;
    expect(reasons.map(({ code }) => code)).not.toContain('little preload');
    expect(reasons.map(({ code }) => code)).not.toContain('coil bind not checked');
  });
});
