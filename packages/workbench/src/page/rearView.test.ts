import { expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { type JobPlan, planJob } from '../path.ts';
import { rearMotionOf } from '../result/rearMotion.ts';
import { type Change, tourerWith } from '../testing/tourerJob.ts';
import { type PartView, rearView } from './rearView.ts';

const mm = (value: number): object => ({ value, unit: 'mm' });
const at = (x: number, height: number): object => ({ x: mm(x), height: mm(height) });

const linkage: readonly Change[] = [
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

test('a rear without hard points has its curve and rests, and no parts', () => {
  const planned = plan();
  const view = rearView(planned, 'both', units(planned));
  expect(view.parts).toBeNull();
  expect(view.steps).toHaveLength(11);
  expect(view.rests.map(({ load }) => load)).toEqual(
    rearMotionOf(planned).rests.map((rest) => rest.loadCase),
  );
  // The tourer's 1.12 of wheel per shock, from an own tape: 4 %.
  expect(view.steps[5]!.ratio).toBeCloseTo(1 / 1.12, 9);
  expect(view.steps[5]!.ratioDoubt).toBeCloseTo(0.04 / 1.12, 6);
  expect(structuredClone(view)).toEqual(view);
});

test('parts keep their lengths at every height: arm, link and rocker are stiff, the shock gives its stroke', () => {
  const planned = plan(...linkage);
  const { parts, steps } = rearView(planned, 'both', units(planned));
  const { fullyOut, rest, fullBump } = parts!;
  for (const [one, other] of [
    ['pivot', 'axle'],
    ['pivot', 'link end'],
    ['link pin', 'link end'],
    ['rocker pivot', 'link pin'],
    ['rocker pivot', 'rocker eye'],
    ['link pin', 'rocker eye'],
  ] as const) {
    const length = between(fullyOut, one, other);
    expect(between(rest!, one, other)).toBeCloseTo(length, 6);
    expect(between(fullBump, one, other)).toBeCloseTo(length, 6);
  }
  const shock = (stand: readonly PartView[]): number => between(stand, 'rocker eye', 'far eye');
  expect(shock(fullyOut)).toBeCloseTo(367, 6);
  // 69 mm of stroke to metal.
  expect(shock(fullyOut) - shock(fullBump)).toBeCloseTo(69, 6);
  expect(height(fullBump) - height(fullyOut)).toBeCloseTo(steps.at(-1)!.travel, 6);
});

test('a longer shock that is planned stands further out at its own stop', () => {
  const longer = plan(...linkage, ['choice', { shockLength: mm(6) }]);
  const out = (load: string | null): number => {
    const { fullyOut } = rearView(longer, load, units(longer)).parts!;
    return between(fullyOut, 'rocker eye', 'far eye');
  };
  expect(out('both') - out(null)).toBeCloseTo(6, 6);
});

test('a leverage known before that is far from the points is told as a difference, with what is worked with', () => {
  const before = (value: number): Change => [
    'machine.rear.travel.earlierLeverage',
    { value, unit: 'wheel/shock', plusMinus: { value: 0.02, unit: 'wheel/shock' } },
  ];
  const said = (value: number): readonly string[] => {
    const planned = plan(...linkage, before(value));
    return rearView(planned, null, units(planned)).sentences.filter((each) => /known before/.test(each));
  };
  const planned = plan(...linkage, before(3));
  const { now } = rearMotionOf(planned).earlier!;
  expect(said(3)).toEqual([expect.stringMatching(/3\.00 ± 0\.02 .* apart, more than both ±/)]);
  expect(said(now.value)).toEqual([expect.stringMatching(/ agrees with what is worked with/)]);
});

function plan(...changes: readonly Change[]): JobPlan {
  const planned = planJob(tourerWith(...changes));
  if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
  return planned;
}

function units({ job }: JobPlan) {
  return unitsFor('metric', job, '.');
}

function height(stand: readonly PartView[]): number {
  return stand.find(({ part }) => part === 'axle')!.height;
}

function between(stand: readonly PartView[], one: string, other: string): number {
  const [a, b] = [one, other].map((name) => stand.find(({ part }) => part === name)!);
  return Math.hypot(a!.x - b!.x, a!.height - b!.height);
}
