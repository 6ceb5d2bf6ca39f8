import { readFileSync } from 'node:fs';
import { parseJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import { siOf } from '@sagwright/records/schema/quantity';
import { beforeEach, describe, expect, test } from 'vitest';
import { write } from '../../job/edits.ts';
import { createJobStore, type JobStore } from '../../job/jobStore.ts';
import type { PageProblem } from '../../worker/messages.ts';
import { figureGroups } from './groups.ts';
import { plainProblem } from './plainProblem.ts';

let store: JobStore;
beforeEach(() => lay('two-and-a-box'));

function lay(name: string): void {
  const file = new URL(`../../../../../examples/${name}.json`, import.meta.url);
  store = createJobStore({ id: 'job', document: JSON.parse(readFileSync(file, 'utf8')), changes: [] });
}

function document(): JobDocument {
  return store.state().document as JobDocument;
}

/** Chooses another kind in the field of a path, as hands do. */
function choose(path: string, kind: string): void {
  const figures = figureGroups(document()).flatMap(({ parts }) => parts.flatMap((part) => part.figures));
  const figure = figures.find((each) => each.path === path);
  if (figure?.kind !== 'choice') throw new Error(`no choice at ${path}`);
  store.act(figure.label, (before) => figure.change(before, kind, store.state().changes));
}

function problems(): readonly PageProblem[] {
  const read = parseJob(document());
  return read.ok ? [] : read.problems;
}

const ADJUSTER = 'machine.rear.shock.adjuster.kind';
const TRAVEL = 'machine.rear.travel.kind';
const FRONT = 'machine.front.travel.kind';

describe('another kind of front', () => {
  beforeEach(() => lay('nose-down'));

  test.each(['leverage', 'motion', 'table', 'force'])('%s, and back: nothing of the fork is lost', (kind) => {
    const before = document();
    choose(FRONT, kind);
    expect(document().machine.front.fork?.stack).toBeUndefined();
    expect(document().machine.front.fork?.air).toBeUndefined();
    choose(FRONT, 'fork');
    expect(document()).toEqual(before);
  });

  test.each(['leverage', 'motion', 'table', 'force'])(
    '%s asks for no more than its ratio or its rows',
    (kind) => {
      choose(FRONT, kind);
      const needed = kind === 'leverage' || kind === 'motion' ? 'ratio' : 'rows';
      expect(problems().map(({ path }) => path)).toEqual([`machine.front.travel.${needed}`]);
    },
  );

  test('a ratio told the other way round is turned over', () => {
    choose(FRONT, 'leverage');
    store.act('ratio', (before) => [
      write(before, ['machine', 'front', 'travel', 'ratio'], { value: 1.25, unit: 'wheel/shock' }),
    ]);
    choose(FRONT, 'motion');
    expect(document().machine.front.travel).toMatchObject({ kind: 'motion', ratio: { value: 0.8 } });
  });
});

describe('another kind of adjuster', () => {
  test.each(['cap', 'cam', 'clicks', 'spacer', 'none'])('%s, and back: nothing is lost', (kind) => {
    const before = document();
    choose(ADJUSTER, kind);
    expect(problems()).not.toEqual([]);
    choose(ADJUSTER, 'collar');
    expect(document()).toEqual(before);
    store.undo();
    store.undo();
    expect(document()).toEqual(before);
  });

  test('is asked for in the words of its fields', () => {
    choose(ADJUSTER, 'cam');
    const said = problems().map((problem) => plainProblem(figureGroups(document()), problem));
    const stands = 'one figure of these is needed: Step, from the softest; Preload at the spring, if read.';
    expect(said).toEqual([
      'Rear · What sets the preload · Rise of each step above the first: readings needed.',
      `Rear, as found: LEFT: ${stands}`,
      `Rear, as found: RIGHT: ${stands}`,
    ]);
  });
});

describe('the ratio, told in another way', () => {
  test('is the same one turned over, with the same share of doubt', () => {
    const { travel } = document().machine.rear;
    if (travel.kind !== 'leverage') throw new Error('the demo has a leverage ratio');
    choose(TRAVEL, 'motion');
    const turned = document().machine.rear.travel;
    if (turned.kind !== 'motion') throw new Error('no motion ratio');
    expect(problems()).toEqual([]);
    expect(siOf(turned.ratio) * siOf(travel.ratio)).toBeCloseTo(1, 4);
    expect(turned.ratio.origin).toBe(travel.ratio.origin);
    choose(TRAVEL, 'leverage');
    expect(document().machine.rear.travel).toEqual(travel);
  });

  test('is the mean of taped points, with a ± that holds either half of them; and they come back', () => {
    lay('long-legs');
    const { travel } = document().machine.rear;
    if (travel.kind !== 'taped') throw new Error('this example was taped');
    choose(TRAVEL, 'leverage');
    expect(problems()).toEqual([]);
    const mean = document().machine.rear.travel;
    if (mean.kind !== 'leverage') throw new Error('no leverage ratio');
    const points = Object.values(travel.points).sort((a, b) => siOf(a.wheel) - siOf(b.wheel));
    const [first, middle, last] = [points[0]!, points[Math.floor(points.length / 2)]!, points.at(-1)!];
    for (const [from, to] of [
      [first, middle],
      [middle, last],
    ] as const) {
      const half = (siOf(to.wheel) - siOf(from.wheel)) / (siOf(from.shock) - siOf(to.shock));
      // Both are written to a few digits: half a unit of the last of the two that the ± has.
      const share = Math.abs(100 * (half / mean.ratio.value - 1));
      expect(share).toBeLessThanOrEqual(mean.ratio.plusMinus!.value + 0.5);
    }
    choose(TRAVEL, 'taped');
    expect(document().machine.rear.travel).toEqual(travel);
  });

  test('is the one that was kept beside hard points, as it was written', () => {
    lay('taped-linkage');
    const kept = { value: 2.5, unit: 'wheel/shock', origin: 'own tape' };
    store.act('kept', (before) => [write(before, ['machine', 'rear', 'travel', 'earlierLeverage'], kept)]);
    choose(TRAVEL, 'leverage');
    expect(document().machine.rear.travel).toEqual({ kind: 'leverage', ratio: kept });
    choose(TRAVEL, 'linkage');
    expect(document().machine.rear.travel).toMatchObject({ kind: 'linkage', earlierLeverage: kept });
  });

  test('as rows is asked for, since no ratio tells them', () => {
    choose(TRAVEL, 'table');
    expect(problems().map((problem) => plainProblem(figureGroups(document()), problem))).toEqual([
      'Rear · How the wheel moves the shock · Wheel travel and shock length: found 0 entries; at least 3.',
    ]);
  });

  test('as hard points keeps the ratio beside them, and asks for each place in the words of its field', () => {
    const { travel } = document().machine.rear;
    if (travel.kind !== 'leverage') throw new Error('the demo has a leverage ratio');
    choose(TRAVEL, 'direct');
    expect(document().machine.rear.travel).toEqual({ kind: 'direct', earlierLeverage: travel.ratio });
    expect(problems().map((problem) => plainProblem(figureGroups(document()), problem))).toEqual([
      'Rear · How the wheel moves the shock: needed: Eye on the arm, ahead of the rear axle; Eye on the arm, height.',
      'Rear · How the wheel moves the shock: needed: Eye on the frame, ahead of the rear axle; Eye on the frame, height.',
    ]);
    choose(TRAVEL, 'leverage');
    expect(document().machine.rear.travel).toEqual(travel);
  });

  test('as hard points keeps a whole survey beside them, and gives it back as rows', () => {
    lay('long-legs');
    const { travel } = document().machine.rear;
    if (travel.kind !== 'taped') throw new Error('this example was taped');
    choose(TRAVEL, 'linkage');
    const points = document().machine.rear.travel;
    if (points.kind !== 'linkage') throw new Error('no hard points');
    const bare = (all: object): object =>
      Object.fromEntries(Object.entries(all).map(([id, { wheel, shock }]) => [id, { wheel, shock }]));
    expect(bare(points.earlierSurvey!)).toEqual(bare(travel.points));
    expect(document().machine.rear.measuredAt).toBeUndefined();
    choose(TRAVEL, 'table');
    const table = document().machine.rear.travel;
    if (table.kind !== 'table') throw new Error('no table');
    expect(table.rows).toHaveLength(Object.keys(travel.points).length);
    choose(TRAVEL, 'taped');
    expect(document().machine.rear.travel).toEqual(travel);
  });

  test('as rows keeps the ratio beside them', () => {
    const { travel } = document().machine.rear;
    if (travel.kind !== 'leverage') throw new Error('the demo has a leverage ratio');
    choose(TRAVEL, 'taped');
    expect(document().machine.rear.travel).toEqual({
      kind: 'taped',
      points: {},
      earlierLeverage: travel.ratio,
    });
  });
});
