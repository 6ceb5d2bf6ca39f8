import { describe, expect, test } from 'vitest';
import { type JobPlan, planJob } from '../path.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';
import { rearMotionOf } from './rearMotion.ts';
import type { EarlierSurveyDocument, RearMotionDocument } from './rearMotionDocument.ts';

const mm = (value: number, plusMinus?: number): object =>
  plusMinus === undefined
    ? { value, unit: 'mm' }
    : { value, unit: 'mm', plusMinus: { value: plusMinus, unit: 'mm' } };
const at = (x: number, height: number): object => ({ x: mm(x), height: mm(height) });

const points = (): readonly Change[] => [
  [
    'machine.rear.travel',
    {
      kind: 'linkage',
      rocker: { on: 'frame', pivot: at(553, 308), pin: at(457, 254) },
      linkEnd: at(401, 357),
      rockerEye: at(399, 242),
      farEye: { on: 'frame', ...at(534, 564) },
      sideways: mm(0),
    },
  ],
  ['machine.rear.pivot', at(580, 420)],
  ['machine.rear.tyre.radius', mm(325)],
  ['machine.rear.shock.length', mm(367)],
];

describe('The rear along its travel', () => {
  test('of one ratio has it everywhere, with the ± that it was typed with', () => {
    const { along, rests } = rearMotionOf(plan());
    for (const { motionRatio, leverage } of [...along, ...rests]) {
      expect(leverage.value).toBeCloseTo(1.12, 9);
      expect(motionRatio.value).toBeCloseTo(1 / 1.12, 9);
      // A ratio from an own tape has 4 %, whichever way round it is told.
      expect(motionRatio.plusMinus! * 1.12).toBeCloseTo(0.04, 6);
      expect(leverage.plusMinus! / 1.12).toBeCloseTo(0.04, 6);
    }
  });

  test('goes from fully out to metal, and its stroke is what the ratio adds up to', () => {
    const { along } = rearMotionOf(plan(...points()));
    expect(along[0]!.stroke).toBeCloseTo(0, 9);
    expect(along.at(-1)!.stroke).toBeCloseTo(0.069, 9);
    // Simpson's rule over ten steps of a smooth ratio.
    const step = along[1]!.travel;
    const weights = [1, 4, 2, 4, 2, 4, 2, 4, 2, 4, 1];
    const sum = along.reduce((total, { motionRatio }, i) => total + weights[i]! * motionRatio.value, 0);
    expect((sum * step) / 3).toBeCloseTo(0.069, 5);
  });

  test('has the ± of its ratio from every point, as the ratio moves when that point is moved', () => {
    const path = 'machine.rear.travel.rockerEye.height';
    const ratio = (height: number, plusMinus: number) =>
      rearMotionOf(plan(...points(), [path, mm(height, plusMinus)])).along[5]!.motionRatio;
    const moves = (ratio(242.1, 0).value - ratio(241.9, 0).value) / 0.2;
    const [none, three] = [ratio(242, 0).plusMinus!, ratio(242, 3).plusMinus!];
    // Independent inputs add by squares.
    expect(Math.sqrt(three ** 2 - none ** 2) / Math.abs(3 * moves)).toBeCloseTo(1, 2);
  });

  test('tells the axle’s path: a circle about the pivot, through where the axle was measured', () => {
    const { along } = rearMotionOf(plan(...points()));
    const { referenceTravel } = rearMotionOf(plan(...points()));
    for (const { travel, axleForward } of along) {
      const arm = Math.hypot(580, 420 - 325);
      const height = 325 + 1000 * (travel - referenceTravel);
      expect(1000 * axleForward!).toBeCloseTo(580 - Math.sqrt(arm ** 2 - (420 - height) ** 2), 6);
    }
    const straight = rearMotionOf(plan(['machine.rear.pivot', undefined], ['machine.rear.drive', undefined]));
    expect(straight.along.map(({ axleForward }) => axleForward)).toEqual(new Array(11).fill(null));
  });

  test('says at which travel the points were read, and that the link is pulled', () => {
    const { link, referenceTravel, knownBy } = rearMotionOf(plan(...points()));
    expect(knownBy).toBe('linkage');
    // Moments about the rocker's pivot: the shock presses its eye by (−135, −322) at (−154, −66), 40 678 one way; a link that
    // pulls its pin by (−56, 103) at (−96, −54) gives 12 912 the other way, and so can hold it.
    expect(link).toBe('pulls');
    expect(referenceTravel).toBeGreaterThan(0);
  });
});

describe('A leverage that was known before the hard points', () => {
  const path = 'machine.rear.travel.earlierLeverage';
  const known = (value: number, plusMinus: number): Change => [
    path,
    { value, unit: 'wheel/shock', plusMinus: { value: plusMinus, unit: 'wheel/shock' } },
  ];
  const earlier = (...changes: readonly Change[]) => rearMotionOf(plan(...points(), ...changes)).earlier!;
  /** Full wheel travel over the stroke of 69 mm. */
  const whole = (): number => rearMotionOf(plan(...points())).along.at(-1)!.travel / 0.069;

  test('is held against their whole travel, and what tells them apart is the ± of both', () => {
    const { now, difference } = earlier(known(1.5, 0.04));
    expect(now.value).toBeCloseTo(whole(), 9);
    expect(difference.value).toBeCloseTo(whole() - 1.5, 9);
    expect(difference.plusMinus!).toBeCloseTo(Math.sqrt(now.plusMinus! ** 2 + 0.04 ** 2), 9);
  });

  test('agrees where the difference is within that, and differs where it is not', () => {
    const doubt = earlier(known(whole(), 0.04)).difference.plusMinus!;
    expect(earlier(known(whole() + 0.9 * doubt, 0.04)).verdict).toBe('agrees');
    expect(earlier(known(whole() - 1.1 * doubt, 0.04)).verdict).toBe('differs');
  });

  test('moves nothing else, and is null where none was kept', () => {
    const [without, kept] = [
      rearMotionOf(plan(...points())),
      rearMotionOf(plan(...points(), known(1.5, 0.04))),
    ];
    expect(without.earlier).toBeNull();
    expect({ ...kept, earlier: null }).toEqual(without);
  });
});

describe('A table that was known before the hard points', () => {
  const path = 'machine.rear.travel.earlierSurvey';
  const bare = (): RearMotionDocument => rearMotionOf(plan(...points()));
  /** Wheel and shock as the points have them, every tenth of the travel, read from another zero. */
  const rows = (zero: number, off: readonly number[] = []): readonly (readonly [number, number])[] =>
    bare()
      .along.slice(1, 9)
      .map(({ travel, stroke }, i) => [travel * 1000 - zero, 367 - stroke * 1000 + (off[i] ?? 0)]);
  const kept = (all: readonly (readonly [number, number])[]): Change => [
    path,
    Object.fromEntries(
      all.map(([wheel, shock], order) => [`s${order}`, { order, wheel: mm(wheel, 1), shock: mm(shock, 1) }]),
    ),
  ];
  const survey = (...changes: readonly Change[]): EarlierSurveyDocument =>
    rearMotionOf(plan(...points(), ...changes)).earlierSurvey!;

  test('of the same machine agrees in every row, and tells from where its wheel was counted', () => {
    const told = survey(kept(rows(3)));
    expect(told.worst).toBeNull();
    expect(told.zero.value).toBeCloseTo(0.003, 6);
    for (const { difference, verdict } of told.rows) {
      expect(Math.abs(difference.value)).toBeLessThan(1e-6);
      expect(verdict).toBe('agrees');
    }
  });

  test('names the row that is furthest off, in its own ±', () => {
    const told = survey(kept(rows(0, [0, 0, 0, 0, 6, 0, 0, 0])));
    expect(told.worst).toBe('s4');
    expect(told.rows.filter(({ verdict }) => verdict === 'differs').map(({ id }) => id)).toEqual(['s4']);
    // A grossly misread row is not let pull the zero: all of it shows.
    expect(told.zero.value).toBeCloseTo(0, 6);
    expect(told.rows[4]!.difference.value).toBeCloseTo(0.006, 6);
  });

  test('has of each row what its own ± and that of the points leave once the zero has followed', () => {
    // With every figure of the machine exact only the rows' own is left: two like rows at about one ratio halve what they share.
    const [first, second] = rows(0).slice(3, 5);
    const [one, other] = survey(kept([first!, second!])).rows;
    expect(one!.difference.value).toBeCloseTo(-other!.difference.value, 5);
    expect(one!.shock.plusMinus!).toBeGreaterThan(0.001);
    expect(one!.difference.plusMinus!).toBeLessThan(
      Math.hypot(one!.shock.plusMinus!, one!.byPoints.plusMinus!),
    );
  });

  test('needs two rows, since the zero uses one up; and moves nothing else', () => {
    expect(rearMotionOf(plan(...points(), kept(rows(0).slice(2, 3)))).earlierSurvey).toBeNull();
    const all = rearMotionOf(plan(...points(), kept(rows(0))));
    expect({ ...all, earlierSurvey: null }).toEqual(bare());
  });
});

test('a ratio kept beside rows is held against them as beside points', () => {
  const taped = [0, 15, 30, 45, 60, 75].map((wheel, order) => [
    `p${order}`,
    { order, wheel: mm(wheel), shock: mm(320 - 0.9 * wheel) },
  ]);
  const earlierLeverage = { value: 1.4, unit: 'wheel/shock' };
  const travel = { kind: 'taped', points: Object.fromEntries(taped), earlierLeverage };
  const { earlier } = rearMotionOf(plan(['machine.rear.travel', travel]));
  expect(earlier!.now.value).toBeCloseTo(1 / 0.9, 9);
  expect(earlier!.verdict).toBe('differs');
});

describe('Squat', () => {
  test('with a shaft is the line from the contact point to the pivot, and the transfer line by the mass centre', () => {
    const planned = plan(['machine.rear.drive', { kind: 'shaft' }]);
    const { squatAngle, squatRatio, armAngle } = rearMotionOf(planned).rests[0]!;
    const { answer, attitude } = planned.plan.alone;
    if (answer.kind !== 'rest') throw new Error(answer.kind);
    const [, pitch] = answer.rest.state as unknown as readonly [number, number];
    const { rear } = planned.inputs.question.machine;
    // Down from the pivot along the arm to the axle, and on down to the ground by the loaded radius.
    const arm = Math.hypot(0.56, 0.365 - rear.tyre.radius);
    const slope = armAngle!.value - pitch;
    const height = rear.tyre.radius - answer.rest.rear.tyreDeflection + arm * Math.sin(slope);
    expect(Math.tan(squatAngle!.value)).toBeCloseTo(height / (arm * Math.cos(slope)), 9);
    // The transfer line: height of the whole mass centre, 0.5 m by the weighing, sunk with the machine, over the wheelbase.
    const transfer = squatRatio!.value * Math.tan(squatAngle!.value) * attitude!.wheelbase;
    expect(transfer).toBeGreaterThan(0.44);
    expect(transfer).toBeLessThan(0.5);
  });

  test('has the ± of the front sprocket’s place too, as it moves when that is moved', () => {
    const path = 'machine.rear.drive.frontSprocket.height';
    const ratio = (height: number, plusMinus: number) =>
      rearMotionOf(plan([path, mm(height, plusMinus)])).rests[0]!.squatRatio!;
    const moves = (ratio(372.1, 0).value - ratio(371.9, 0).value) / 0.2;
    const [none, three] = [ratio(372, 0).plusMinus!, ratio(372, 3).plusMinus!];
    expect(Math.sqrt(three ** 2 - none ** 2) / Math.abs(3 * moves)).toBeCloseTo(1, 2);
  });

  test('is null where nobody said how the wheel is driven, or where the pivot is', () => {
    const none = { squatAngle: null, squatRatio: null };
    expect(rearMotionOf(plan(['machine.rear.drive', undefined])).rests[0]).toMatchObject(none);
    expect(rearMotionOf(plan(['machine.rear.pivot', undefined])).rests[0]).toMatchObject({
      ...none,
      armAngle: null,
    });
  });
});

test('A belt is tightest where it is longest of all the steps, or between them', () => {
  const { along, tightest } = rearMotionOf(plan());
  for (const { centreDistance } of along) {
    expect(tightest!.centreDistance).toBeGreaterThanOrEqual(centreDistance! - 1e-12);
  }
});

function plan(...changes: readonly Change[]): JobPlan {
  const planned = planJob(tourerWith(...changes));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join('\n'));
  return planned;
}
