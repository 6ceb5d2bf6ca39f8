import { describe, expect, test } from 'vitest';
import { planJob } from '../path.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';
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

test('beside a collar the pressure is told for the spring as found, and the collar is planned', () => {
  const planned = planOf(['machine.rear.shock.air', air]);
  const fitted = planned.plan.rear.springs.find((each) => each.fitted)!;
  const told = cellsOf(planned, fitted.spring).map((cell) => pressureOf(planned, cell));
  expect(told.length).toBeGreaterThan(0);
  for (const each of told)
    expect(each).toMatchObject({ isPlanned: false, set: { alone: null, laden: null } });
  const other = planned.plan.rear.springs.find((each) => !each.fitted)!;
  for (const cell of cellsOf(planned, other.spring)) expect(cell.pressure).toBeUndefined();
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
