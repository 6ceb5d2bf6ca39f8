import { parseJob } from '@sagwright/records/read';
import { setField } from '@sagwright/records/testing/setField';
import { describe, expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { limitRows } from '../limits/list.ts';
import { type JobPlan, planJob } from '../path.ts';
import { tourerData, tourerWith } from '../testing/tourerJob.ts';
import type { LoadView, StandView } from './shapes.ts';
import { pageView } from './view.ts';
import { type StandFigure, whyStand } from './whyStand.ts';

const planned = planOf(tourerWith());
const units = unitsFor('metric', planned.job, '.');
const view = pageView(planned, units);
const number = ({ value }: { readonly value: string }): number => Number(value);

describe('What a thing does on the scales', () => {
  const all = view.loads.flatMap((load) => load.things);

  test('adds up to its mass: what one wheel does not bear, the other does', () => {
    expect(all.length).toBeGreaterThan(5);
    for (const { effect, mass } of all) {
      const kilograms = Number.parseFloat(mass);
      // Each of the three numbers is rounded to its own place, at worst to whole kilograms.
      expect(Math.abs(number(effect!.rear) + number(effect!.front) - kilograms)).toBeLessThan(1.6);
    }
  });

  test('is more than its mass on the rear, and less than nothing in front, behind the rear axle', () => {
    const behind = all.filter((thing) => thing.x < -0.1);
    expect(behind.length).toBeGreaterThan(0);
    for (const { effect, mass } of behind) {
      expect(number(effect!.front)).toBeLessThan(0);
      expect(number(effect!.rear)).toBeGreaterThan(Number.parseFloat(mass));
      expect(effect!.says).toContain('lifts');
    }
  });
});

describe('A figure of how a load stands', () => {
  const shown = (stand: StandView): Readonly<Partial<Record<StandFigure, string>>> => ({
    'rear travel': said(stand.rear!.words),
    'front travel': said(stand.front!.words),
    'rear load': said(stand.loads!.rear),
    'front load': said(stand.loads!.front),
    'whole load': said(stand.loads!.total),
    ...Object.fromEntries(stand.attitude.map(({ name, figure }) => [name, said(figure)])),
  });
  const said = ({ value, plusMinus, unit }: StandView['attitude'][number]['figure']): string =>
    `${value} ± ${plusMinus} ${unit}`;

  test.each(view.loads.filter((load) => load.planned !== null || load.id === null).map((load) => [load]))(
    'opens to the same value and ± as the page shows: $name',
    (load: LoadView) => {
      for (const setUp of ['asFound', 'planned'] as const) {
        const stand = load[setUp];
        if (stand === null) continue;
        const figures = Object.entries(shown(stand)) as [StandFigure, string][];
        expect(figures).toHaveLength(10);
        for (const [figure, text] of figures) {
          expect(whyStand(planned, { figure, load: load.id, setUp }, units)?.value).toBe(text);
        }
      }
    },
  );

  test('tells shares of its ± that make the whole', () => {
    const { inputs } = whyStand(planned, { figure: 'rear load', load: 'both', setUp: 'planned' }, units)!;
    expect(inputs.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  });
});

test('a limit that is not known is checked once a figure stands at its path', () => {
  const data = tourerData();
  setField(data, ['machine', 'limits'], {});
  setField(data, ['machine', 'rear', 'tyre'], {});
  const typed: Readonly<Record<string, unknown>> = {
    'tyre capacity': 80,
    pressure: { value: 2.6, unit: 'bar' },
    'placard pressure': { value: 2.6, unit: 'bar' },
  };
  for (const { told } of limitRows(planOf(jobOf(data)))) {
    const isLoad = told.kind === 'place' || told.dimension === 'mass';
    for (const { what, path } of isLoad ? told.needs : [])
      setField(data, path.split('.'), typed[what] ?? { value: 300, unit: 'kg' });
  }
  const limits = pageView(planOf(jobOf(data)), units).loads.flatMap((load) => load.limits);
  expect(limits.length).toBeGreaterThan(5);
  expect(limits.map(({ verdict }) => verdict)).not.toContain('not checked');
});

test('a place that nobody measured lies where the page says its kind usually is', () => {
  const bare = planOf(tourerWith(['machine.places.cases.at', undefined]));
  const usual = pageView(bare, units).usualPlaces['side cases'];
  for (const axis of ['x', 'height'] as const) {
    const { value, halfWidth, assumed } = bare.inputs.figures.get(`machine.places.cases.at.${axis}`)!;
    expect({ value, halfWidth, ...assumed }).toEqual(usual[axis]);
  }
});

function jobOf(data: Record<string, unknown>): JobPlan['job'] {
  const read = parseJob(data);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.job;
}

function planOf(job: JobPlan['job']): JobPlan {
  const answer = planJob(job);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer;
}
