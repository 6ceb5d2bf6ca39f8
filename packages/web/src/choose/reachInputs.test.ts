import { readFileSync } from 'node:fs';
import { parseJob } from '@sagwright/records/read';
import { unitsFor } from '@sagwright/workbench/format/units';
import type { PageView } from '@sagwright/workbench/page/shapes';
import { pageView } from '@sagwright/workbench/page/view';
import { type JobPlan, planJob } from '@sagwright/workbench/path';
import { describe, expect, test } from 'vitest';
import { reachHeadInput, reachInputs } from './reachInputs.ts';
import { wantedGroups } from './wantedGroups.ts';

function planned(example: string): { readonly plan: JobPlan; readonly view: PageView } {
  const file = new URL(`../../../../examples/${example}.json`, import.meta.url);
  const read = parseJob(JSON.parse(readFileSync(file, 'utf8')));
  if (!read.ok) throw new Error(`${example} is not a job`);
  const plan = planJob(read.job);
  if (!plan.ok) throw new Error(`${example} has no plan`);
  return { plan, view: pageView(plan, unitsFor('metric', read.job, '.')) };
}

describe.each(['two-and-a-box', 'nothing-fits', 'light-standard', 'too-much-aboard', 'long-legs'])(
  'the reach lines of %s',
  (example) => {
    const { plan, view } = planned(example);

    test.each(['rear', 'front'] as const)('stand at the %s plan’s own millimetres', (end) => {
      const inputs = reachInputs(view[end], view.loads);
      if (view[end].adjuster === null) {
        expect(inputs).toEqual({});
        return;
      }
      for (const { spring, cells } of plan.plan[end].springs) {
        const { lanes, collar, domain } = inputs[spring]!;
        expect(lanes.map(({ id }) => id)).toEqual(cells.map(({ loadCase }) => loadCase));
        expect(collar).toEqual({ fromMm: 0, toMm: view[end].adjuster!.mostMm });
        for (const [i, lane] of lanes.entries()) {
          const cell = cells[i]!;
          const positions = cell.kind === 'planned' ? cell.cell.positions : null;
          if (lane.kind !== 'planned') {
            expect(positions).toBeNull();
            continue;
          }
          expect(lane.fromMm).toBeCloseTo(positions!.loosest * 1000, 9);
          expect(lane.toMm).toBeCloseTo(positions!.tightest * 1000, 9);
          expect(lane.fromPlusMinusMm).toBeCloseTo((positions!.aim.plusMinus ?? 0) * 1000, 9);
          expect(lane.fromMm - lane.fromPlusMinusMm).toBeGreaterThanOrEqual(domain.fromMm);
          expect(lane.toMm + lane.toPlusMinusMm).toBeLessThanOrEqual(domain.toMm);
        }
      }
    });

    test('share one scale, whose head marks both ends of the adjuster', () => {
      const inputs = reachInputs(view.rear, view.loads);
      const head = reachHeadInput(view.rear, inputs)!;
      for (const { domain } of Object.values(inputs)) expect(domain).toEqual(head.domain);
      expect(head.marks[0]!.atMm).toBe(0);
      expect(head.marks.at(-1)!.atMm).toBeCloseTo(view.rear.adjuster!.mostMm, 9);
    });
  },
);

test('a cam has a mark and a line at each of its steps', () => {
  const { view, plan } = planned('light-standard');
  const head = reachHeadInput(view.rear, reachInputs(view.rear, view.loads))!;
  const { adjuster } = plan.inputs.question.rear;
  if (adjuster?.kind !== 'steps') throw new Error('the light standard has a cam');
  expect(head.marks.map(({ words }) => words)).toEqual(adjuster.positions.map((_, i) => String(i + 1)));
  head.marks.forEach(({ atMm }, i) => {
    expect(atMm).toBeCloseTo(adjuster.positions[i]! * 1000, 9);
  });
});

test('a load over a limit has no bar, and says so', () => {
  const { view } = planned('too-much-aboard');
  const refused = view.loads.filter((load) => load.refused).map(({ id }) => id);
  expect(refused).toHaveLength(1);
  for (const { lanes } of Object.values(reachInputs(view.rear, view.loads))) {
    expect(lanes.filter(({ kind }) => kind === 'refused').map(({ id }) => id)).toEqual(refused);
  }
});

test('loads that want the same are told together, each of them once', () => {
  const { view } = planned('two-and-a-box');
  const groups = wantedGroups(view.loads, view.rear.wanted);
  // One person wants 26 to 34 %, two want 30 to 38 %: three loads of the one, two of the other.
  expect(groups.map(({ letters }) => letters)).toEqual([
    ['A', 'B', 'C'],
    ['D', 'E'],
  ]);
});
