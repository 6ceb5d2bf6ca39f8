import type { KinematicsSI } from '@sagwright/model/rear/kinematics';
import { describe, expect, test } from 'vitest';
import { planJob } from '../path.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';

const mm = (value: number): object => ({ value, unit: 'mm' });
const TRAVEL = 'machine.rear.travel';

/** The shock shortens by 0.80 of the first 20 mm that the wheel rises, and by 0.85 of each 20 mm after. */
const taped: readonly (readonly [number, number])[] = [
  [0, 320],
  [20, 304],
  [40, 287],
  [60, 270],
  [80, 253],
];

function points(pairs: readonly (readonly [number, number])[]): object {
  const list = pairs.map(([wheel, shock], order) => [
    `p${order}`,
    { order, wheel: mm(wheel), shock: mm(shock) },
  ]);
  return { kind: 'taped', points: Object.fromEntries(list) };
}

function kinematicsOf(pairs: readonly (readonly [number, number])[]): KinematicsSI {
  const planned = planJob(tourerWith([TRAVEL, points(pairs)]));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join('\n'));
  return planned.inputs.question.machine.rear.kinematics;
}

describe('Taped points', () => {
  test('say the same in whatever order they were taped', () => {
    expect(kinematicsOf([...taped].reverse())).toEqual(kinematicsOf(taped));
    const [first, ...rest] = taped;
    expect(kinematicsOf([...rest, first!])).toEqual(kinematicsOf(taped));
  });

  test('may end where they began: that height is taped twice, and welcome', () => {
    const ended = kinematicsOf([...taped, [0, 320.5]]);
    if (ended.kind !== 'quadratic') throw new Error('taped points are fitted');
    // The ratio at the start of a parabola near chords of 0.80 and 0.85; the last reading, half a millimetre longer, steepens it.
    expect(ended.slope).toBeGreaterThan(0.79);
    expect(ended.slope).toBeLessThan(0.86);
  });
});

describe('Taped points that a curve does not hold', () => {
  const heights = [0, 9, 18, 27, 36, 45, 54, 63, 72];
  const straight = heights.map((wheel): readonly [number, number] => [wheel, 320 - 0.9 * wheel]);

  test('are named, and the machine is as it is without them', () => {
    const wrong = straight.map(([wheel, shock], i): readonly [number, number] => [
      wheel,
      i === 5 ? shock - 6 : shock,
    ]);
    const planned = planJob(tourerWith([TRAVEL, points(wrong)]));
    if (!planned.ok) throw new Error('no plan');
    expect(planned.inputs.notes).toContainEqual({
      code: 'taped point left out',
      path: `${TRAVEL}.points.p5`,
    });
    const { kinematics } = planned.inputs.question.machine.rear;
    expect(kinematics).toMatchObject({ slope: expect.closeTo(0.9, 9), bend: expect.closeTo(0, 9) });
  });

  test('carry slope, bend and twist where there are enough of them', () => {
    const names = (count: number): readonly string[] => {
      const planned = planJob(tourerWith([TRAVEL, points(straight.slice(0, count))]));
      if (!planned.ok) throw new Error('no plan');
      return planned.inputs.question.inputs
        .map(({ name }) => name)
        .filter((name) => name.startsWith(`${TRAVEL}.points`));
    };
    const bent = heights.map((wheel): readonly [number, number] => [
      wheel,
      320 - 0.6 * wheel - 0.006 * wheel ** 2 + 0.00003 * wheel ** 3,
    ]);
    expect(names(9)).toEqual([`${TRAVEL}.points.slope`, `${TRAVEL}.points.bend`]);
    const planned = planJob(tourerWith([TRAVEL, points(bent)], ['machine.rear.shock.rubber', 'none']));
    if (!planned.ok) throw new Error('no plan');
    expect(planned.inputs.question.machine.rear.kinematics.kind).toBe('cubic');
    expect(planned.inputs.question.inputs.map(({ name }) => name)).toContain(`${TRAVEL}.points.twist`);
  });
});

test('the ± of the shock’s length goes on through taped points: they begin where the shock is fully out', () => {
  const sag = (length: number, plusMinus: number): { value: number; plusMinus: number | null } => {
    const typed = { value: length, unit: 'mm', plusMinus: { value: plusMinus, unit: 'mm' } };
    // The ratio falls from 0.95 to 0.75, so that it matters where along it the travel begins.
    const falling = points([
      [0, 320],
      [20, 301],
      [40, 283],
      [60, 266.5],
      [80, 251.5],
    ]);
    const planned = planJob(tourerWith([TRAVEL, falling], ['machine.rear.shock.length', typed]));
    if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join('\n'));
    return planned.plan.loadCases.find(({ loadCase }) => loadCase === 'all')!.asFound.travel!.rear;
  };
  const moves = (sag(320.1, 0).value - sag(319.9, 0).value) / 0.2;
  const [none, five] = [sag(320, 0).plusMinus!, sag(320, 5).plusMinus!];
  // Independent inputs add by squares. The move is the slope of the sag itself, worked out twice.
  expect(Math.sqrt(five ** 2 - none ** 2) / Math.abs(5 * moves)).toBeCloseTo(1, 2);
});

test('a shock longer than the curve through the taped points ever is, is told with its place', () => {
  // The shock shortens by 0.1, 0.2, 0.3 and 0.4 of each 20 mm: l = 300 − 0.05 w − 0.0025 w², at its longest 300.25 mm at −10 mm.
  const rising = points([
    [0, 300],
    [20, 298],
    [40, 294],
    [60, 288],
    [80, 280],
  ]);
  const of = (length: number, stroke: number) =>
    problemsOf(
      [TRAVEL, rising],
      ['machine.rear.shock.length', mm(length)],
      ['machine.rear.shock.stroke', mm(stroke)],
      ['machine.rear.shock.rubber', 'none'],
    );
  for (const length of [300.5, 301, 305.18, 312.21, 350])
    expect(of(length, 40)).toContain('machine.rear.shock.length');
  // At 298 mm the wheel stands at 20 mm, and the ratio there is 0.05 + 0.005 · 20 = 0.15.
  const planned = planJob(
    tourerWith(
      [TRAVEL, rising],
      ['machine.rear.shock.length', mm(298)],
      ['machine.rear.shock.stroke', mm(40)],
      ['machine.rear.shock.rubber', 'none'],
    ),
  );
  const kinematics = planned.ok ? planned.inputs.question.machine.rear.kinematics : null;
  expect(kinematics).toMatchObject({
    kind: 'quadratic',
    slope: expect.closeTo(0.15, 9),
    bend: expect.closeTo(2.5, 9),
  });
});

describe('A drawn table', () => {
  const table = (rows: readonly (readonly [number, number])[]): object => ({
    kind: 'table',
    rows: rows.map(([wheel, shock]) => ({ wheel: mm(wheel), shock: mm(shock) })),
  });

  test('that ends flat before the shock has made its stroke is told with its place, not carried on', () => {
    // The tourer's shocks stroke 69 mm; here the last 5 mm of wheel move them by a tenth of a millimetre.
    for (const last of [68.9, 69, 69.02]) {
      const rows = table([
        [0, 320],
        [40, 285],
        [75, 251.15],
        [80, 320 - last],
      ]);
      expect(problemsOf([TRAVEL, rows]), String(last)).toEqual([TRAVEL]);
    }
  });

  test('whose uneven rows draw a ratio of 0 where it begins is told so', () => {
    // Chords of 0.374 over 50 mm and 0.98 over 10 mm: the curve's end rule draws a slope of 0 at the first row.
    const uneven = [
      [0, 328],
      [50, 309.3],
      [60, 299.5],
      [80, 289.4],
      [100, 279],
      [124, 266.1],
    ] as const;
    expect(problemsOf([TRAVEL, table(uneven)], ['machine.rear.shock.stroke', mm(61.5)])).toEqual([TRAVEL]);
  });

  test('that ends far before the stroke is told with its place', () => {
    expect(
      problemsOf([
        TRAVEL,
        table([
          [0, 320],
          [15, 307],
          [30, 294],
        ]),
      ]),
    ).toEqual([TRAVEL]);
  });

  test('that ends somewhat before the stroke is carried on straight, which is said', () => {
    const planned = planJob(
      tourerWith([
        TRAVEL,
        table([
          [0, 320],
          [30, 294],
          [60, 268],
        ]),
      ]),
    );
    expect(planned.ok && planned.inputs.notes.map(({ code }) => code)).toContain('travel carried on');
    const whole = planJob(
      tourerWith([
        TRAVEL,
        table([
          [0, 320],
          [40, 285.5],
          [80, 251],
        ]),
      ]),
    );
    expect(whole.ok && whole.inputs.notes.map(({ code }) => code)).not.toContain('travel carried on');
  });
});

describe('What lies in the travel', () => {
  test('lies within a stroke that nobody gave, too', () => {
    const rubber = { start: mm(150), rate: { value: 40, unit: 'N/mm' } };
    const topOut = { length: mm(150), rate: { value: 40, unit: 'N/mm' } };
    for (const [end, strut] of [
      ['rear', 'shock'],
      ['front', 'fork'],
    ] as const) {
      const path = `machine.${end}.${strut}`;
      const unknown = [`${path}.stroke`, undefined] as const;
      expect(problemsOf(unknown, [`${path}.rubber`, rubber])).toEqual([`${path}.rubber.start`]);
      expect(problemsOf(unknown, [`${path}.rubber`, 'none'], [`${path}.topOut`, topOut])).toEqual([
        `${path}.topOut.length`,
      ]);
    }
  });

  test('is where heights were read: a fork’s wheel travel is shorter than its stroke', () => {
    // 117 mm of stroke at 27° of rake: 104.2 mm of wheel travel.
    expect(problemsOf(['machine.front.measuredAt', mm(115)])).toEqual(['machine.front.measuredAt']);
    expect(problemsOf(['machine.front.measuredAt', mm(104)])).toEqual([]);
    const unknown = ['machine.rear.shock.stroke', undefined] as const;
    expect(problemsOf(unknown, ['machine.rear.measuredAt', mm(300)])).toContain('machine.rear.measuredAt');
  });

  test('lets the arm reach down to where the wheel hangs, from where its pivot was read', () => {
    // Read at 75 of 77 mm, the pivot 190 mm above the axle on an arm of 260 mm: fully out it would need 265 mm.
    const deep = ['machine.rear.measuredAt', mm(75)] as const;
    const pivot = ['machine.rear.pivot', { x: mm(177), height: mm(508) }] as const;
    expect(problemsOf(deep, pivot)).toEqual(['machine.rear.pivot']);
    expect(problemsOf(deep)).toEqual([]);
  });
});

function problemsOf(...changes: readonly Change[]): readonly string[] {
  const planned = planJob(tourerWith(...changes));
  return planned.ok ? [] : planned.problems.map(({ path }) => path);
}
