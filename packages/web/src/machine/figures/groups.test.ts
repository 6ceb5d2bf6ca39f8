import { readFileSync } from 'node:fs';
import { parseJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import { bounds } from '@sagwright/records/schema/bounds';
import { fastenings } from '@sagwright/records/schema/fastenings';
import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import { dimensionOf } from '@sagwright/records/units';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { outOfBounds } from '../../fields/judge.ts';
import { withEdits } from '../../job/edits.ts';
import { fittingParts, toolFigures } from '../../set/fittingFigures.ts';
import { type Figure, quantitiesIn } from './figure.ts';
import { figureFor, figureGroups } from './groups.ts';

/** Loads and targets have their own pages; readings are told in the terminal alone so far. */
const elsewhere = /^(loadCases|targetSets|readings)\./;
/** Torques have a box of their own, beside the step that tightens. */
const torques: readonly string[] = fastenings.map((part) => `fitting.rear.torques.${part}.value`);

describe('The figures of a machine', () => {
  test('hold every quantity of any job but those of its loads, targets and readings, each under its own path and bound', () => {
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        const all = [...figuresOf(job), ...fittingFigures(job)];
        for (const [path, quantity] of quantitiesIn(job)) {
          if (elsewhere.test(path) || torques.includes(path)) continue;
          const holder = all.find((figure) => holds(figure, path));
          expect(holder, path).toBeDefined();
          if (holder?.kind !== 'quantity') continue;
          expect(bounds[holder.bound].dimension, path).toBe(dimensionOf(quantity.unit));
          expect(outOfBounds(quantity, holder.bound), path).toBeNull();
        }
      }),
      { seed: 21, numRuns: 200 },
    );
  });

  test('have one field for each path', () => {
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        const paths = figuresOf(job).map(({ path }) => path);
        expect(new Set(paths).size).toBe(paths.length);
      }),
      { seed: 22, numRuns: 100 },
    );
  });

  test('leave a job that can be read when a fact is chosen that needs nothing more', () => {
    const job = example('two-and-a-box');
    for (const figure of figuresOf(job)) {
      if (figure.kind !== 'choice' || figure.path.endsWith('.kind')) continue;
      for (const { value } of figure.choices) {
        const read = parseJob(withEdits(job, figure.change(job, value, [])));
        expect(read.ok, `${figure.path} ${value}`).toBe(true);
      }
    }
  });
});

describe('A problem', () => {
  const groups = figureGroups(example('two-and-a-box'));

  test.each([
    ['machine.weighing.rear', 'machine.weighing.rear'],
    ['machine.weighing', 'machine.weighing.rear'],
    ['machine.rear.shock.gas.volume', 'machine.rear.shock.gas.volume'],
    ['machine.rear.shock.adjuster', 'machine.rear.shock.adjuster.kind'],
    ['machine.rear.shock.adjuster.preloadAtLoosest', 'machine.rear.shock.adjuster.touches'],
    ['machine.front.fork.adjuster.preloadAtLoosest', 'machine.front.fork.adjuster.springLength'],
    ['springs.oak.rate.rate.value', 'springs.oak.rate.rate'],
    ['things.linnet.mass.unit', 'things.linnet.mass'],
    ['setups.asFound.rear.left.at.reading', 'setups.asFound.rear.left.at.reading'],
  ])('about %s leads to %s', (path, field) => {
    expect(figureFor(groups, path)?.figure.path).toBe(field);
  });

  test('about what has no field here leads nowhere', () => {
    expect(figureFor(groups, 'version')).toBeNull();
  });
});

function figuresOf(job: JobDocument): readonly Figure[] {
  return figureGroups(job).flatMap(({ parts }) => parts.flatMap(({ figures }) => figures));
}

/** What is fitted has its fields on the Set tab. */
function fittingFigures(job: JobDocument): readonly Figure[] {
  const tools = toolFigures(job.fitting?.rear ?? {}).flatMap(([, figures]) => figures);
  return [...fittingParts(job).flatMap(({ figures }) => figures), ...tools];
}

function holds(figure: Figure, path: string): boolean {
  return figure.kind === 'rows' ? path.startsWith(`${figure.path}.`) : figure.path === path;
}

function example(name: string): JobDocument {
  const file = new URL(`../../../../../examples/${name}.json`, import.meta.url);
  const read = parseJob(JSON.parse(readFileSync(file, 'utf8')));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.job;
}
