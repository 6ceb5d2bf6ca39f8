import { describe, expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { type JobPlan, planJob } from '../path.ts';
import { rearMotionOf } from '../result/rearMotion.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';
import { noteWords } from '../words/notes.ts';

const mm = (value: number, plusMinus?: number): object =>
  plusMinus === undefined
    ? { value, unit: 'mm' }
    : { value, unit: 'mm', plusMinus: { value: plusMinus, unit: 'mm' } };
const at = (x: number, height: number): object => ({ x: mm(x), height: mm(height) });
const TRAVEL = 'machine.rear.travel';

/** Two shocks from the arm's end to the frame: pivot at 560, 365, axle 318 high, eyes at 60, 365 and 150, 675. */
const lengths = {
  'axle-pivot': between('axle', 'pivot', Math.hypot(560, 47)),
  'pivot-up': above('pivot', 47),
  'pivot-arm': between('pivot', 'arm eye', 500),
  'axle-arm': between('axle', 'arm eye', Math.hypot(60, 47)),
  'arm-up': above('arm eye', 47),
  'pivot-frame': between('pivot', 'frame eye', Math.hypot(410, 310)),
  'arm-frame': between('arm eye', 'frame eye', Math.hypot(90, 310)),
} as const;

/** Looked for up to 30 mm beside. */
const taped = (tape: object = inOrder(lengths)): readonly Change[] => [
  [TRAVEL, { kind: 'direct', armEye: at(80, 390), frameEye: at(130, 650), sideways: mm(0), tape }],
  ['machine.rear.pivot', at(540, 380)],
  ['machine.rear.shock.length', mm(Math.hypot(90, 310))],
];

const typed = (): readonly Change[] => [
  [TRAVEL, { kind: 'direct', armEye: at(60, 365), frameEye: at(150, 675), sideways: mm(0) }],
  ['machine.rear.shock.length', mm(Math.hypot(90, 310))],
];

describe('Hard points from a tape', () => {
  test('are those that the lengths were taken from, and the machine stands as with them typed', () => {
    const [byTape, byPlace] = [plan(...taped()), plan(...typed())];
    const { rear } = byTape.inputs.question.machine;
    expect(rear.kinematics).toMatchObject({
      armEye: { x: close(0.06), height: close(0.365) },
      frameEye: { x: close(0.15), height: close(0.675) },
    });
    expect(rear.axlePath).toMatchObject({ pivotX: close(0.56), pivotHeight: close(0.365) });
    expect(sagOf(byTape).value).toBeCloseTo(sagOf(byPlace).value, 8);
  });

  test('carry the ± of a length to the sag, as the sag moves when it was taped otherwise', () => {
    const path = `${TRAVEL}.tape.arm-frame.length`;
    const length = Math.hypot(90, 310);
    const sag = (value: number, plusMinus: number) => sagOf(plan(...taped(), [path, mm(value, plusMinus)]));
    const moves = (sag(length + 0.1, 0).value - sag(length - 0.1, 0).value) / 0.2;
    const [none, three] = [sag(length, 0).plusMinus!, sag(length, 3).plusMinus!];
    // Nothing checks this length, so that all of its ± comes through; independent inputs add by squares.
    expect(Math.sqrt(three ** 2 - none ** 2) / Math.abs(3 * moves)).toBeCloseTo(1, 2);
  });

  test('rise with the axle, and lean with the shock, as they do when found anew', () => {
    const leaning = (sideways: number): Change => [`${TRAVEL}.sideways`, mm(sideways, 0)];
    for (const [path, value, step, change] of [
      ['machine.rear.tyre.radius', 318, 0.5, (v: number): Change => ['machine.rear.tyre.radius', mm(v, 0)]],
      [`${TRAVEL}.sideways`, 30, 0.5, leaning],
    ] as const) {
      const frameEye = (by: number) => {
        const { kinematics } = plan(...taped(), change(value + by)).inputs.question.machine.rear;
        if (kinematics.kind !== 'direct') throw new Error(kinematics.kind);
        return kinematics.frameEye.height;
      };
      const planned = plan(...taped(), change(value));
      const input = plan(...taped(), change(value), [
        `${path}.plusMinus.value`,
        1,
      ]).inputs.question.inputs.find(({ name }) => name === path);
      const move = input!.moves.find(({ parameter }) => parameter === 'rear.kinematics.frameEye.height')!;
      const slope = (frameEye(step) - frameEye(-step)) / (2 * step * 1e-3);
      expect(planned.ok && move.by / slope, path).toBeCloseTo(1, 3);
    }
  });

  test('count a place that has its ± beside the lengths, and say that the others only tell the side', () => {
    const { inputs } = plan(...taped());
    expect(inputs.notes.map(({ code }) => code)).toContain('places only looked for');
    expect([...inputs.figures.keys()].filter((path) => path.includes('Eye'))).toEqual([]);
    const known = plan(...taped(), [`${TRAVEL}.frameEye.x`, mm(152, 1)]);
    const { lengths: rows, points, spare } = rearMotionOf(known).tape!;
    expect(spare).toBe(2);
    expect(rows.at(-1)).toMatchObject({ path: `${TRAVEL}.frameEye.x`, taped: { value: close(0.152) } });
    // Between what the lengths say and what the place says.
    const { x } = points.find(({ part }) => part === 'frame eye')!;
    expect(x.value).toBeGreaterThan(0.15);
    expect(x.value).toBeLessThan(0.152);
  });

  test('say where one is found far from where it was looked for: it may be the mirrored place', () => {
    expect(notesOf(plan(...taped()))).not.toContain('place found elsewhere');
    const far = plan(...taped(), [`${TRAVEL}.frameEye`, at(300, 620)]);
    expect(far.inputs.notes).toContainEqual({ code: 'place found elsewhere', path: `${TRAVEL}.frameEye` });
    const [said] = far.inputs.notes
      .filter(({ code }) => code === 'place found elsewhere')
      .map((note) => noteWords(far, note, unitsFor('metric', far.job, '.')));
    // From (300, 620) to (150, 675).
    expect(said).toContain('the frame eye was found 159.8 mm from');
  });

  test('have the ± of their lengths, and a height that of the axle too', () => {
    const { 'arm-up': _, ...bare } = lengths;
    const { points } = rearMotionOf(plan(...taped(inOrder(bare)), ['machine.rear.tyre.radius', mm(318, 4)]))
      .tape!;
    const pivot = points.find(({ part }) => part === 'pivot')!;
    // Straight up by a level, ± 1 mm beside the axle's own 4; forward by Pythagoras: dx = (l dl − h dh)/x.
    expect(pivot.height.plusMinus! * 1000).toBeCloseTo(Math.hypot(1, 4), 6);
    expect(pivot.x.plusMinus! * 1000).toBeCloseTo(Math.hypot(Math.hypot(560, 47), 47) / 560, 6);
    expect(pivot.away * 1000).toBeCloseTo(Math.hypot(20, 15), 6);
  });

  test('name the length that the others do not bear out', () => {
    const again = { ...lengths, 'axle-frame': between('axle', 'frame eye', Math.hypot(150, 357)) };
    const fine = rearMotionOf(plan(...taped(inOrder(again)))).tape!;
    expect(fine.worst).toBeNull();
    expect(fine.spare).toBe(2);
    // Two bolts twice over: the slip stands out among all that check it.
    const twice = { ...again, 'arm-frame-2': lengths['arm-frame'], 'pivot-frame-2': lengths['pivot-frame'] };
    const path = `${TRAVEL}.tape.arm-frame.length`;
    const slipped = plan(...taped(inOrder(twice)), [path, mm(Math.hypot(90, 310) + 3)]);
    const { worst, lengths: rows } = rearMotionOf(slipped).tape!;
    expect(worst).toBe(path);
    expect(rows.find((row) => row.path === path)!.misfit.value).toBeGreaterThan(0.001);
  });
});

describe('A tape that gives no points is told at its length', () => {
  test('too short for the two others of a triangle, by how much', () => {
    expect(problem(...taped(), [`${TRAVEL}.tape.axle-arm.length`, mm(30)])).toEqual({
      path: `${TRAVEL}.tape.axle-arm.length`,
      message: expect.stringContaining(
        'too short by 32.0 mm: with 500.0 mm from pivot to arm eye it does not span',
      ),
    });
  });

  test('too short for a height', () => {
    expect(problem(...taped(), [`${TRAVEL}.tape.pivot-up.length`, mm(600)])).toEqual({
      path: `${TRAVEL}.tape.axle-pivot.length`,
      message: expect.stringContaining('too short by 38.0 mm'),
    });
  });

  test('missing: which part is free to move', () => {
    const { 'arm-frame': _, ...rest } = lengths;
    expect(problem(...taped(inOrder(rest)))).toEqual({
      path: `${TRAVEL}.tape`,
      message: expect.stringContaining('leave the frame eye free to move; at least 1 more is needed'),
    });
  });

  test('too long for all the others', () => {
    const spare = inOrder({
      ...lengths,
      'axle-frame': between('axle', 'frame eye', Math.hypot(150, 357)),
      'axle-frame-2': between('axle', 'frame eye', Math.hypot(150, 357)),
    });
    const path = `${TRAVEL}.tape.arm-frame.length`;
    expect(problem(...taped(spare), [path, mm(Math.hypot(90, 310) + 40)])).toEqual({
      path,
      message: expect.stringMatching(/^From arm eye to frame eye: 362\.8 mm, too long by (39|4[0-2])\.\d mm/),
    });
  });
});

function between(from: string, to: string, length: number): object {
  return { kind: 'between', from, to, length: mm(length) };
}

function above(of: string, length: number): object {
  return { kind: 'above axle', of, length: mm(length) };
}

function inOrder(tape: Readonly<Record<string, object>>): object {
  return Object.fromEntries(Object.entries(tape).map(([id, each], order) => [id, { order, ...each }]));
}

function close(value: number): unknown {
  return expect.closeTo(value, 9);
}

function notesOf({ inputs }: JobPlan): readonly string[] {
  return inputs.notes.map(({ code }) => code);
}

function sagOf({ plan: { loadCases } }: JobPlan) {
  return loadCases.find(({ loadCase }) => loadCase === 'all')!.asFound.travel!.rear;
}

function plan(...changes: readonly Change[]): JobPlan {
  const planned = planJob(tourerWith(...changes));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join('\n'));
  return planned;
}

function problem(...changes: readonly Change[]): { path: string; message: string } {
  const planned = planJob(tourerWith(...changes));
  if (planned.ok) throw new Error('a problem is wanted');
  expect(planned.problems).toHaveLength(1);
  const { path, message } = planned.problems[0]!;
  return { path, message };
}
