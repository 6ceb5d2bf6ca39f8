import { attitudeAt } from '@sagwright/model/attitude/attitude';
import { describe, expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { type JobPlan, planJob } from '../path.ts';
import { type Change as Edit, q, tourerWith } from '../testing/tourerJob.ts';

import { standingShown } from '../why/standingShown.ts';
import type { SteadyDocument } from './document.ts';
import { stanceOf, stanceOfLoad } from './stance.ts';
import { beamWords, feltOfLoad, keepWords, steadyWords } from './words.ts';

function plan(...edits: readonly Edit[]): JobPlan {
  const planned = planJob(tourerWith(...edits));
  if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
  return planned;
}

const at = (x: number, height: number) => ({ x: q(x, 'mm'), height: q(height, 'mm') });
const points: Edit = [
  'machine.points',
  {
    board: { name: 'board', order: 1, kind: 'rider peg', at: at(800, 300), sideways: q(330, 'mm') },
    clamp: { name: 'clamp', order: 2, kind: 'hard part', at: at(300, 220), sideways: q(300, 'mm') },
    link: { name: 'link', order: 3, kind: 'hard part', at: at(300, 220) },
    stand: { name: 'stand', order: 4, kind: 'side stand', at: at(600, 100), sideways: q(310, 'mm') },
    lamp: { name: 'lamp', order: 5, kind: 'headlamp', at: at(1400, 860) },
  },
];
const beam: Edit = ['machine.beam', { drop: q(150, 'mm'), distance: q(10, 'm') }];

function figure(planned: JobPlan, load: string | null, name: string, point: string | null = null) {
  return stanceOfLoad(planned, load)!.figures.find((each) => each.figure === name && each.point === point)!;
}

describe('the figures of a load', () => {
  const planned = plan(points, beam);

  test('are those of its rest, as found and as planned, seat and pegs first', () => {
    const { figures } = stanceOfLoad(planned, 'both')!;
    expect(figures.slice(0, 2).map((each) => each.figure)).toEqual(['seat-height', 'peg-height']);
    for (const setUp of ['asFound', 'planned'] as const) {
      const { prepared, state } = standingShown(planned, 'both', setUp)!;
      const attitude = attitudeAt(prepared, state);
      expect(figure(planned, 'both', 'seat-height')[setUp]!.value).toBeCloseTo(attitude.seatHeight!, 12);
      expect(figure(planned, 'both', 'normal-trail')[setUp]!.value).toBeCloseTo(attitude.normalTrail!, 12);
    }
  });

  test('a change is their difference, its ± less than that of either', () => {
    for (const each of stanceOfLoad(planned, 'both')!.figures) {
      if (each.change === null) continue;
      expect(each.change.value).toBeCloseTo(each.planned!.value - each.asFound!.value, 12);
      expect(each.change.plusMinus!).toBeLessThan(
        Math.max(each.planned!.plusMinus!, each.asFound!.plusMinus!),
      );
    }
  });

  test('what is missing names the figure that is needed, and nothing is told of it', () => {
    const needs = figure(planned, 'both', 'lean', 'link');
    expect([needs.needs, needs.asFound, needs.change]).toEqual(['sideways', null, null]);
    expect(figure(plan(), 'both', 'stand-lean').needs).toBe('side stand');
    expect(figure(plan(['machine.forkOffset', undefined]), 'both', 'trail').needs).toBe('fork offset');
  });

  test('in a bend a part touches sooner than at a stand, loaded sooner than alone', () => {
    const lean = (load: string | null, name: string): number =>
      figure(planned, load, name, 'clamp').asFound!.value;
    expect(lean('both', 'lean-in-bend')).toBeLessThan(lean('both', 'lean'));
    expect(lean('both', 'lean')).toBeLessThan(lean(null, 'lean'));
  });

  test('the machine alone has nothing planned, and nothing to keep', () => {
    const alone = stanceOf(planned).loads[0]!;
    expect(alone.loadCase).toBeNull();
    expect(alone.keep).toEqual([]);
    expect(alone.figures.every((each) => each.planned === null && each.change === null)).toBe(true);
  });

  test('the beam lies where it was read with the load it was read with', () => {
    const alone = figure(planned, null, 'beam-drop').asFound!;
    expect(alone.value).toBeCloseTo(0.15, 12);
    // Only the reading's own doubt is left: what moves the pitch moved it then too. 30 mm for the edge, 1 % of 10 m.
    expect(alone.plusMinus!).toBeCloseTo(0.03, 3);
    const loaded = figure(planned, 'both', 'beam-drop').asFound!;
    // The rear sinks: the beam rises.
    expect(loaded.value).toBeLessThan(alone.value);
    expect(loaded.plusMinus!).toBeGreaterThan(alone.plusMinus!);
  });

  test('no change in, no change out', () => {
    const same = plan(points, ['choice', { shockLength: q(0, 'mm') }]);
    const before = stanceOfLoad(planned, 'both')!;
    const now = stanceOfLoad(same, 'both')!;
    now.figures.forEach((each, i) => {
      if (each.planned !== null)
        expect(each.planned.value).toBeCloseTo(before.figures[i]!.planned!.value, 12);
    });
  });
});

describe('what a person chose for how it stands', () => {
  test('longer shocks lift the seat of what is planned, and leave what was found', () => {
    const [plain, longer] = [plan(), plan(['choice', { shockLength: q(8, 'mm') }])];
    const seat = (job: JobPlan) => figure(job, 'both', 'seat-height');
    expect(seat(longer).asFound).toEqual(seat(plain).asFound);
    const lift = seat(longer).planned!.value - seat(plain).planned!.value;
    // 8 mm at a leverage of 1.12, two thirds of it at the seat.
    expect(lift).toBeCloseTo(0.008 * 1.12 * (1 - 0.52 / 1.625), 3);
  });

  test('another tyre moves it by its radius, and brings its own ±', () => {
    const sized: Edit = ['machine.front.tyre.size', '120/70-17'];
    const other = plan(sized, ['choice', { frontTyre: '130/80-17' }]);
    const [plain, now] = [plan(sized), other].map((job) => figure(job, 'both', 'rake').planned!);
    // The radius grows by 20 mm over 1625 mm.
    expect(now!.value - plain!.value).toBeCloseTo(0.02 / 1.625, 3);
    expect(other.inputs.figures.get('choice.frontTyre')!.value).toBeCloseTo(0.32, 12);
    const { change } = figure(other, 'both', 'seat-height');
    expect(change!.plusMinus!).toBeGreaterThan(figure(plan(sized), 'both', 'seat-height').change!.plusMinus!);
  });
});

describe('keep the attitude', () => {
  const adjuster: Edit = [
    'machine.rear.shock.lengthAdjuster',
    { change: q(2, 'mm'), least: q(-10, 'mm'), most: q(10, 'mm') },
  ];

  test('set as it says, the part is that of the load as found', () => {
    const planned = plan(adjuster);
    for (const answer of stanceOfLoad(planned, 'both')!.keep) {
      if (answer.choice === null) continue;
      const name = answer.by === 'shock length' ? 'shockLength' : 'clampHeight';
      const set = plan(adjuster, ['choice', { [name]: { value: 1000 * answer.choice, unit: 'mm' } }]);
      const part = { rake: 'rake', groundTrail: 'trail', seatHeight: 'seat-height' }[answer.part];
      // On the machine that stands otherwise the collar goes to its next quarter turn (0.4 mm at the wheel), the spacer of the
      // fork to its next cut (1 mm): so much over 1625 mm, and at the seat.
      const [now, wanted] = [figure(set, 'both', part).planned!, figure(set, answer.like, part).asFound!];
      expect(Math.abs(now.value - wanted.value)).toBeLessThan(answer.part === 'rake' ? 1e-3 : 1.4e-3);
    }
  });

  test('both changes set as it says, both parts are those of the load as found', () => {
    const planned = plan(adjuster);
    const answers = stanceOfLoad(planned, 'both')!.keepTwo;
    expect(answers.length).toBeGreaterThan(0);
    for (const { parts, like, shockLength, clampHeight } of answers) {
      const mm = ({ choice }: typeof shockLength): object => ({ value: 1000 * choice!, unit: 'mm' });
      const set = plan(adjuster, ['choice', { shockLength: mm(shockLength), clampHeight: mm(clampHeight) }]);
      for (const part of parts) {
        const name = { rake: 'rake', groundTrail: 'trail', seatHeight: 'seat-height' }[part];
        const [now, wanted] = [figure(set, 'both', name).planned!, figure(set, like, name).asFound!];
        // As above: the next quarter turn and the next cut.
        expect(Math.abs(now.value - wanted.value)).toBeLessThan(part === 'rake' ? 1e-3 : 1.4e-3);
      }
      expect(shockLength.change!.plusMinus).toBeGreaterThan(0);
      expect(clampHeight.change!.plusMinus).toBeGreaterThan(0);
    }
  });

  test('is held against what the length adjuster leaves; of clamps nobody said', () => {
    const { keep } = stanceOfLoad(plan(adjuster), 'both')!;
    const length = keep.find(({ by }) => by === 'shock length')!;
    // Stands at 2 of −10 to 10 mm.
    expect(length.range.least).toBeCloseTo(-0.012, 12);
    expect(length.range.most).toBeCloseTo(0.008, 12);
    expect(keep.find(({ by }) => by === 'clamp height')!.verdict).toBe('not checked');
  });

  test('tubes go no further down than flush with their clamp', () => {
    const flush: Edit = ['machine.front.fork.clampHeight', { now: q(1, 'mm') }];
    const down = stanceOfLoad(plan(flush), 'both')!.keep.filter(
      ({ by, change }) =>
        by === 'clamp height' && change !== null && change.value < -0.002 - change.plusMinus!,
    );
    expect(down.length).toBeGreaterThan(0);
    for (const { range, verdict } of down) expect([range.least, verdict]).toEqual([-0.001, 'outside']);
  });

  test('a length beyond its adjuster is told as such', () => {
    const short: Edit = [
      'machine.rear.shock.lengthAdjuster',
      { change: q(0, 'mm'), least: q(-0.1, 'mm'), most: q(0.1, 'mm') },
    ];
    const far = stanceOfLoad(plan(short), 'both')!.keep.filter(
      ({ by, change }) =>
        by === 'shock length' && change !== null && Math.abs(change.value) > 2 * change.plusMinus!,
    );
    expect(far.length).toBeGreaterThan(0);
    for (const { verdict } of far) expect(verdict).toBe('outside');
  });
});

describe('braked and driven', () => {
  const braking: Edit = ['steady.braking', { deceleration: q(0.4, 'g'), frontShare: q(70, '%') }];
  const driving: Edit = ['steady.driving', { acceleration: q(0.2, 'g') }];
  const of = (planned: JobPlan, action: SteadyDocument['action']): SteadyDocument =>
    stanceOfLoad(planned, 'both')!.steady.find((each) => each.action === action)!;

  test('the loads add up to what a scale reads at rest, the front dives', () => {
    const planned = plan(braking, driving);
    const [braked, driven] = [of(planned, 'braking'), of(planned, 'driving')];
    if (braked.kind !== 'stands' || driven.kind !== 'stands') throw new Error('does not stand');
    const rest = planned.plan.planned.loadCases.find(({ loadCase }) => loadCase === 'both')!.stand.loads!;
    for (const { rear, front } of [braked, driven])
      expect(rear.load.value + front.load.value).toBeCloseTo(rest.total, 6);
    expect(braked.front.change.value).toBeGreaterThan(0);
    expect(braked.front.load.value).toBeGreaterThan(driven.front.load.value);
    // Grip times load is the braking force: M a.
    const held = braked.front.grip * braked.front.load.value + braked.rear.grip * braked.rear.load.value;
    expect(held).toBeCloseTo(0.4 * rest.total, 6);
  });

  test('a typed ± of the deceleration widens what follows from it', () => {
    const wide: Edit = [
      'steady.braking',
      {
        deceleration: { value: 0.4, unit: 'g', plusMinus: { value: 0.05, unit: 'g' } },
        frontShare: q(70, '%'),
      },
    ];
    const [exact, doubted] = [of(plan(braking), 'braking'), of(plan(wide), 'braking')];
    if (exact.kind !== 'stands' || doubted.kind !== 'stands') throw new Error('does not stand');
    expect(doubted.front.change.plusMinus!).toBeGreaterThan(exact.front.change.plusMinus!);
  });

  test('without what it needs it says so', () => {
    expect(of(plan(), 'braking')).toMatchObject({ kind: 'needs', needs: 'deceleration' });
    expect(of(plan(driving, ['machine.rear.drive', undefined]), 'driving')).toMatchObject({ needs: 'drive' });
    expect(of(plan(driving, ['machine.rear.pivot', undefined]), 'driving')).toMatchObject({ needs: 'pivot' });
  });

  test('so hard that a wheel lifts there is no stand, but from where on it lifts', () => {
    const tall: Edit = ['machine.weighing.massCentreHeight', q(800, 'mm')];
    const hard: Edit = ['steady.braking', { deceleration: q(1.3, 'g'), frontShare: q(100, '%') }];
    const braked = of(plan(tall, hard), 'braking');
    if (braked.kind !== 'lifts') throw new Error(braked.kind);
    expect(braked.wheel).toBe('rear');
    expect(braked.liftsFrom!).toBeLessThan(1.3 * 9.80665);
    const softer: Edit = [
      'steady.braking',
      { deceleration: { value: braked.liftsFrom! - 0.01, unit: 'm/s²' }, frontShare: q(100, '%') },
    ];
    expect(of(plan(tall, softer), 'braking').kind).toBe('stands');
  });
});

test('all of it has its words', () => {
  const planned = plan(points, beam, [
    'steady',
    {
      braking: { deceleration: q(0.4, 'g'), frontShare: q(0, '%') },
      driving: { thrust: q(800, 'N') },
    },
  ]);
  const units = unitsFor('metric', planned.job, '.');
  const load = stanceOfLoad(planned, 'both')!;
  const said = [
    ...beamWords(planned, load.beam!, units),
    ...feltOfLoad(planned, load.figures),
    ...load.keep.flatMap((each) => Object.values(keepWords(planned, each, units))),
    ...load.steady.flatMap((each) => steadyWords(planned, each, units)),
  ];
  expect(said.join(' ')).toMatch(/Information only.*United Kingdom/);
  expect(said.join(' ')).toMatch(/rear tyre holds \d+ % of its load/);
  expect(said.join(' ')).not.toMatch(/NaN|undefined/);
});

describe('the mass centre by a raised wheel', () => {
  // 370 kg, wheelbase 1625 mm, rear 318 mm, front 312 mm (assumed): worked backward by moments about the rear contact.
  const height = 0.52;
  const [total, front, wheelbase, by] = [370, 168, 1.625, 0.45];
  const step = 0.312 - 0.318;
  const tilt = Math.asin((by + step) / Math.hypot(wheelbase, step)) - Math.atan2(step, wheelbase);
  const ahead = (wheelbase * front) / total;
  const reading =
    (total * (ahead * Math.cos(tilt) - (height - 0.318) * Math.sin(tilt))) /
    (wheelbase * Math.cos(tilt) - step * Math.sin(tilt));
  const raised = (wheel: string, scale: string, level: number, read: number): Edit[] => [
    ['machine.weighing.massCentreHeight', undefined],
    [
      'machine.weighing.raised',
      { wheel, by: q(1000 * by, 'mm'), scale, level: q(level, 'kg'), raised: q(read, 'kg') },
    ],
  ];
  const found = (edits: readonly Edit[]): number => {
    const { machine } = plan(...edits).inputs.question;
    const { sprung, rear, front: end } = machine;
    const whole = sprung.mass + rear.unsprung + end.unsprung;
    return (
      (sprung.mass * sprung.height + rear.unsprung * rear.tyre.radius + end.unsprung * end.tyre.radius) /
      whole
    );
  };

  test('on either scale is that of the machine', () => {
    expect(found(raised('front', 'front', front, reading))).toBeCloseTo(height, 9);
    expect(found(raised('front', 'rear', total - front, total - reading))).toBeCloseTo(height, 9);
  });

  test('carries the scale’s kilogram into its ±: some 18 mm and more', () => {
    const planned = plan(...raised('front', 'front', front, reading));
    const input = planned.inputs.question.inputs.find(
      ({ name }) => name === 'machine.weighing.raised.raised',
    )!;
    const moved = input.moves.find(({ parameter }) => parameter === 'sprung.height')!;
    expect(Math.abs(moved.by)).toBeGreaterThan(0.012);
    expect(Math.abs(moved.by)).toBeLessThan(0.025);
    const { height: told, perKilogram } = stanceOf(planned).massCentre!;
    expect(told.value).toBeCloseTo(height, 9);
    // Per kilogram (L − (R_f − R_r) tan t)/(W tan t); each reading is told to ± 1 kg, both move it about alike.
    expect(perKilogram).toBeCloseTo((wheelbase - step * Math.tan(tilt)) / (total * Math.tan(tilt)), 12);
    expect(told.plusMinus!).toBeGreaterThan(perKilogram);
  });

  test('readings that no machine gives are told with what they would mean', () => {
    const planned = planJob(tourerWith(...raised('front', 'front', front, front + 20)));
    expect(planned).toMatchObject({ ok: false, problems: [{ path: 'machine.weighing.raised' }] });
  });
});
