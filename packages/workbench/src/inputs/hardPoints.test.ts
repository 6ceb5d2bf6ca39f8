import { describe, expect, test } from 'vitest';
import { type JobPlan, planJob } from '../path.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';

const mm = (value: number): object => ({ value, unit: 'mm' });
const at = (x: number, height: number): object => ({ x: mm(x), height: mm(height) });
const TRAVEL = 'machine.rear.travel';

/** Two shocks from the arm's end to the frame, read fully out: √(90² + 310²) = 322.8 mm from eye to eye. */
const direct = (): readonly Change[] => [
  [TRAVEL, { kind: 'direct', armEye: at(60, 365), frameEye: at(150, 675), sideways: mm(0) }],
  ['machine.rear.shock.length', mm(Math.hypot(90, 310))],
];

/** A rocker on the frame, pulled by a link from the arm. */
const linkage = (): readonly Change[] => [
  [
    TRAVEL,
    {
      kind: 'linkage',
      rocker: { on: 'frame', pivot: at(553, 308), pin: at(457, 254) },
      linkEnd: at(401, 357),
      rockerEye: at(399, 242),
      farEye: { on: 'frame', ...at(534, 564) },
    },
  ],
  ['machine.rear.pivot', at(580, 420)],
  ['machine.rear.tyre.radius', mm(325)],
  ['machine.rear.shock.length', mm(367)],
];

describe('A rear by hard points', () => {
  test('read fully out begins at its reference attitude, and its ratio is the sine of its lean at the eye, by the arm’s share', () => {
    const { machine } = plan(...direct()).inputs.question;
    expect(machine.rear.referenceTravel).toBeCloseTo(0, 9);
    const alone = plan(...direct(), [
      'setups.asFound.rear',
      { both: { spring: 'fitted', at: { preload: mm(150) } } },
    ]);
    const stand = alone.plan.alone.answer;
    if (stand.kind !== 'rest') throw new Error(stand.kind);
    expect(stand.rest.rear.standing).toBe('topped out');
    // The arm eye turns with the arm: 500 mm from the pivot, level with it, so it moves straight up by 500/560 of the axle's rise.
    expect(stand.rest.rear.motionRatio).toBeCloseTo((500 / 560) * (310 / Math.hypot(90, 310)), 9);
  });

  test('takes every coordinate with its ±, 2 mm where none was typed, and the length of the shock', () => {
    const { figures, question } = plan(...linkage()).inputs;
    const places = ['rocker.pivot', 'rocker.pin', 'linkEnd', 'rockerEye', 'farEye'].flatMap((place) => [
      `${TRAVEL}.${place}.x`,
      `${TRAVEL}.${place}.height`,
    ]);
    for (const path of [...places, 'machine.rear.pivot.x', 'machine.rear.pivot.height']) {
      expect(figures.get(path)?.halfWidth, path).toBeCloseTo(0.002, 12);
    }
    const names = question.inputs.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining([...places, 'machine.rear.shock.length']));
  });

  test('carries the ± of an eye to the sag, as the sag moves when the eye is moved', () => {
    const eye = `${TRAVEL}.frameEye.x`;
    const sag = (x: number, plusMinus: number) => {
      const typed = { value: x, unit: 'mm', plusMinus: { value: plusMinus, unit: 'mm' } };
      const { asFound } = plan(...direct(), [eye, typed]).plan.loadCases.find(
        ({ loadCase }) => loadCase === 'all',
      )!;
      return asFound.travel!.rear;
    };
    const moves = (sag(150.1, 0).value - sag(149.9, 0).value) / 0.2;
    const [none, five] = [sag(150, 0).plusMinus!, sag(150, 5).plusMinus!];
    // Independent inputs add by squares. The move is the slope of the sag itself, worked out twice.
    expect(Math.sqrt(five ** 2 - none ** 2) / Math.abs(5 * moves)).toBeCloseTo(1, 2);
  });

  test('says that a lean nobody read is taken as none', () => {
    expect(notesOf(...direct())).not.toContain('sideways not known');
    expect(notesOf(...linkage())).toContain('sideways not known');
  });

  test('says that the points were read where the shock does not reach', () => {
    expect(notesOf(...linkage())).not.toContain('points beyond shock');
    // The eyes stand √(135² + 322²) = 349.2 mm apart; this shock is 344 mm fully out.
    const length: Change = ['machine.rear.shock.length', mm(344)];
    expect(notesOf(...linkage(), length)).toContain('points beyond shock');
  });
});

describe('Hard points that cannot move are told on the field that is nearest to the cause', () => {
  test('a pivot behind the axle', () => {
    expect(problem(...direct(), ['machine.rear.pivot', at(-100, 365)])).toMatchObject({
      path: 'machine.rear.pivot',
      message: expect.stringContaining('-100.0 mm ahead of the rear axle'),
    });
  });

  test('two parts at one place', () => {
    const armEye = [`${TRAVEL}.armEye`, at(560, 365)] as const;
    expect(problem(...direct(), armEye)).toMatchObject({
      path: expect.stringMatching(/armEye|pivot/),
      message: expect.stringContaining('stand at one place'),
    });
  });

  test('a shock that gets longer as the wheel rises', () => {
    // Below the arm instead of above it: the ratio is the one of before, the other way.
    const below: Change = [`${TRAVEL}.frameEye`, at(150, 55)];
    expect(problem(...direct(), below)).toMatchObject({
      path: `${TRAVEL}.frameEye`,
      message: expect.stringContaining(`by ${((500 / 560) * (310 / Math.hypot(90, 310))).toFixed(2)} mm`),
    });
  });

  test('a shock longer than the eyes ever stand apart', () => {
    // From arm eye to frame eye along pivot: 500 mm + √(410² + 310²) = 1014 mm at most, and the frame eye drawn near gives less.
    const near: Change = [`${TRAVEL}.frameEye`, at(520, 420)];
    const found = problem(...direct(), near, ['machine.rear.shock.length', mm(580)]);
    expect(found.path).toBe('machine.rear.shock.length');
    const [length, nearest, away] = lengthsIn(found.message);
    expect(length).toBe(580);
    expect(nearest! + away!).toBeCloseTo(580, 0);
  });

  test('a shock of another length than the points were read with', () => {
    expect(problem(...direct(), ['machine.rear.shock.length', mm(480)])).toMatchObject({
      path: 'machine.rear.shock.length',
      message: expect.stringContaining(
        '480.0 mm fully out and 411.0 mm fully in, but by the hard points its eyes stand 322.8 mm apart',
      ) as string,
    });
  });

  test('a linkage that locks inside the stroke: where, what is missing, and which length is too short', () => {
    const found = problem(...linkage(), ['machine.rear.shock.stroke', mm(250)]);
    expect([`${TRAVEL}.linkEnd`, `${TRAVEL}.rocker.pin`, `${TRAVEL}.rockerEye`]).toContain(found.path);
    const [, stroke, whole, missing] = lengthsIn(found.message);
    expect(whole).toBe(250);
    expect(stroke! + missing!).toBeCloseTo(250, 0);
  });
});

describe('Sprockets', () => {
  const belt = {
    kind: 'belt',
    frontSprocket: at(640, 372),
    pitch: mm(8),
    teeth: { front: 32, rear: 70 },
  };

  test('have the pitch circles of the handbooks: a belt’s p·z/π, a chain’s p/sin(180°/z)', () => {
    // Catalogue values, from memory: pulley 32-8M 81.49 mm, sprocket of 17 teeth on a 1/2 in chain 69.12 mm.
    expect(2000 * radiusOf(belt)).toBeCloseTo(81.49, 2);
    const chain = {
      ...belt,
      kind: 'chain',
      pitch: { value: 0.5, unit: 'in' },
      teeth: { front: 17, rear: 45 },
    };
    expect(2000 * radiusOf(chain)).toBeCloseTo(69.12, 2);
  });

  test('must have room', () => {
    const crowded = { ...belt, frontSprocket: at(120, 330) };
    // Pitch circles of 70 and 32 teeth at 8 mm: 8·102/2π = 129.9 mm from middle to middle at least.
    expect(problem(['machine.rear.drive', crowded])).toMatchObject({
      path: 'machine.rear.drive.frontSprocket',
      message: expect.stringContaining('need 130 mm'),
    });
  });

  test('without a pivot are said to be left out', () => {
    expect(notesOf(['machine.rear.drive', belt], ['machine.rear.pivot', undefined])).toContain(
      'drive without pivot',
    );
  });

  function radiusOf(drive: object): number {
    const { drive: got } = plan(['machine.rear.drive', drive]).inputs;
    if (got === null || got.kind === 'shaft') throw new Error('sprockets are wanted');
    return got.frontRadius;
  }
});

function plan(...changes: readonly Change[]): JobPlan {
  const planned = planJob(tourerWith(...changes));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join('\n'));
  return planned;
}

function notesOf(...changes: readonly Change[]): readonly string[] {
  return plan(...changes).inputs.notes.map(({ code }) => code);
}

function problem(...changes: readonly Change[]): { path: string; message: string } {
  const planned = planJob(tourerWith(...changes));
  if (planned.ok) throw new Error('a problem is wanted');
  expect(planned.problems).toHaveLength(1);
  return planned.problems[0]!;
}

/** The millimetres that a message names, in its order. */
function lengthsIn(message: string): readonly number[] {
  return [...message.matchAll(/(-?[\d.]+) mm/g)].map((match) => Number(match[1]));
}
