import { readFileSync } from 'node:fs';
import { parseJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import type { TemplateKind } from '@sagwright/records/schema/template';
import { keepTemplate } from '@sagwright/records/template/keep';
import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import { differenceFromSI, dimensionOf, fromSI, unitsOf } from '@sagwright/records/units';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tourerWith } from '../testing/tourerJob.ts';
import { comparedLines, countWords } from '../words/compare.ts';
import { compare } from './compare.ts';
import { type ComparedRow, type CompareVerdict, isDifference } from './comparison.ts';
import { isQuantity } from './isQuantity.ts';
import { type Compared, partsToCompare } from './side.ts';
import { comparedFigure, judge } from './verdict.ts';

const asJob = (job: JobDocument): Compared => ({ from: 'job', job });

function asTemplate(job: JobDocument, kind: TemplateKind): Compared {
  const kept = keepTemplate(job, kind, job.machine.name);
  if (!kept.ok) throw new Error(kept.problems[0]!.message);
  return { from: 'template', template: kept.template };
}

function rowAt(a: JobDocument, b: JobDocument, path: string): ComparedRow | undefined {
  return compare(asJob(a), asJob(b), 'machine').rows.find((row) => row.path === path);
}

function differing(a: Compared, b: Compared, part: TemplateKind): string[] {
  return compare(a, b, part)
    .rows.filter(({ verdict }) => isDifference(verdict))
    .map(({ path, verdict }) => `${path}: ${verdict}`);
}

const verdictOf = (a: Quantity, b: Quantity): CompareVerdict =>
  judge(comparedFigure(a, undefined), comparedFigure(b, undefined)).verdict;

const q = (value: number, unit: string, plusMinus?: number): Quantity =>
  ({ value, unit, ...(plusMinus !== undefined && { plusMinus: { value: plusMinus, unit } }) }) as Quantity;

describe('Two figures', () => {
  test('typed in two units are one where the finer rounding of the two allows it', () => {
    // 1 lbf/in = 4.4482216152605 / 25.4 N/mm = 0.17513 N/mm, so that 50.8 lbf/in are 8.8964 N/mm and 51.5 are 9.019
    expect(verdictOf(q(8.9, 'N/mm'), q(50.8, 'lbf/in'))).toBe('equal');
    expect(verdictOf(q(8.9, 'N/mm'), q(51.5, 'lbf/in'))).toBe('differs');
    expect(verdictOf(q(1, 'mm'), q(0.05, 'in'))).toBe('differs'); // 1.27 mm
    expect(verdictOf(q(25.4, 'mm'), q(1, 'in'))).toBe('equal');
    expect(verdictOf(q(20, 'C'), q(68, 'F'))).toBe('equal');
  });

  test('typed in one unit are one only where they are the same', () => {
    expect(verdictOf(q(9, 'N/mm'), q(8.9, 'N/mm'))).toBe('differs');
    expect(verdictOf(q(8.9, 'N/mm'), q(8.9, 'N/mm'))).toBe('same');
    expect(verdictOf(q(1, 'mm'), q(1.25, 'mm'))).toBe('differs');
  });

  test('that differ are held against both ± together', () => {
    // √(3² + 4²) = 5
    expect(verdictOf(q(100, 'mm', 3), q(105, 'mm', 4))).toBe('within');
    expect(verdictOf(q(100, 'mm', 3), q(105.1, 'mm', 4))).toBe('beyond');
    expect(verdictOf(q(100, 'mm', 3), q(105, 'mm'))).toBe('differs');
  });

  test('of which one is wheel per shock and one shock per wheel are one ratio', () => {
    expect(verdictOf(q(1.25, 'wheel/shock'), q(0.8, 'shock/wheel'))).toBe('equal');
    expect(verdictOf(q(1.25, 'wheel/shock', 0.01), q(0.7, 'shock/wheel', 0.01))).toBe('beyond'); // 1.43
  });

  test('get the same verdict in whatever unit they are told in full', () => {
    const typed = fc.record({
      value: fc.double({ min: 1, max: 90, noNaN: true }),
      width: fc.double({ min: 0, max: 9, noNaN: true }),
    });
    fc.assert(
      fc.property(
        typed,
        typed,
        fc.constantFrom(...unitsOf('rate')),
        fc.constantFrom(...unitsOf('rate')),
        (a, b, one, other) => {
          const as = ({ value, width }: typeof a, unit: Quantity['unit']): Quantity =>
            q(fromSI(value * 1000, unit), unit, differenceFromSI(width * 1000, unit));
          const own = verdictOf(as(a, 'N/mm'), as(b, 'N/mm'));
          const told = verdictOf(as(a, one), as(b, other));
          const alike = (verdict: CompareVerdict) => (isDifference(verdict) ? verdict : 'alike');
          expect(alike(told)).toBe(alike(own));
        },
      ),
      { seed: 91, numRuns: 500 },
    );
  });
});

describe('A comparison', () => {
  test('of a thing with itself finds nothing that differs', () => {
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        const side = asJob(job);
        for (const part of partsToCompare(side, side)) expect(differing(side, side, part)).toEqual([]);
        expect(differing(side, asTemplate(job, 'machine'), 'machine')).toEqual([]);
        expect(differing(asTemplate(job, 'shock'), side, 'shock')).toEqual([]);
        if (keepTemplate(job, 'fork', 'kept').ok) {
          expect(differing(side, asTemplate(job, 'fork'), 'fork')).toEqual([]);
        }
      }),
      { seed: 92, numRuns: 60 },
    );
  });

  test('says the same from either side', () => {
    const mirrored: Partial<Record<CompareVerdict, CompareVerdict>> = {
      'only in a': 'only in b',
      'only in b': 'only in a',
    };
    fc.assert(
      fc.property(arbitraryJob, arbitraryJob, (one, other) => {
        const [there, back] = [
          compare(asJob(one), asJob(other), 'machine'),
          compare(asJob(other), asJob(one), 'machine'),
        ];
        const said = there.rows.map(({ path, pathInB, verdict, difference }) =>
          [path, pathInB, verdict, difference ?? 0].join(' '),
        );
        const saidBack = back.rows.map(({ path, pathInB, verdict, difference }) =>
          [pathInB, path, mirrored[verdict] ?? verdict, difference === null ? 0 : -difference].join(' '),
        );
        expect(saidBack.sort()).toEqual(said.sort());
      }),
      { seed: 93, numRuns: 60 },
    );
  });

  test('does not see in which unit a machine was typed', () => {
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        const told = inOtherUnits(job) as JobDocument;
        expect(differing(asJob(job), asJob(told), 'machine')).toEqual([]);
      }),
      { seed: 94, numRuns: 60 },
    );
  });

  test('puts what differs first, with how much and within what', () => {
    const there = tourerWith();
    const other = tourerWith(['machine.wheelbase', q(1640, 'mm', 3)], ['machine.rake.value', 27.1]);
    const comparison = compare(asJob(there), asJob(other), 'machine');
    expect(comparison.rows.slice(0, 2).map(({ path, verdict }) => `${path}: ${verdict}`)).toEqual([
      'machine.wheelbase: beyond',
      'machine.rake: within',
    ]);
    // The first wheelbase is of a manual without a ±: ± 4 mm is usual there, √(3² + 4²) = 5.
    expect(comparison.rows[0]!.difference).toBeCloseTo(0.015, 12);
    expect(comparison.rows[0]!.plusMinus).toBeCloseTo(0.005, 12);
    const [wheelbase] = comparedLines(asJob(there), asJob(other), comparison, '.');
    expect(wheelbase).toMatchObject({
      name: 'wheelbase',
      a: '1625 mm',
      b: '1640 mm',
      says: 'differ by +15 ± 5 mm, more than both ±',
    });
    expect(countWords(comparison)).toMatch(/^2 fields differ; \d+ fields are alike\.$/);
  });

  test('says of figures that are taken as they stand by how much they differ, and never by more than a ± of 0', () => {
    const [there, other] = [
      tourerWith(['machine.limits.gross', q(600, 'kg')]),
      tourerWith(['machine.limits.gross', q(610, 'kg')]),
    ];
    const comparison = compare(asJob(there), asJob(other), 'machine');
    expect(comparison.rows[0]).toMatchObject({
      path: 'machine.limits.gross',
      verdict: 'differs',
      difference: 10,
      plusMinus: null,
    });
    const [gross] = comparedLines(asJob(there), asJob(other), comparison, '.');
    expect(gross!.says).toMatch(/^differ by \+10 kg/);
    expect(gross!.says).not.toMatch(/± 0|more than/);
  });

  test('tells a difference in both units', () => {
    const [there, other] = [tourerWith(), tourerWith(['machine.wheelbase', q(65, 'in', 0.2)])];
    const comparison = compare(asJob(there), asJob(other), 'machine');
    const [line] = comparedLines(asJob(there), asJob(other), comparison, ',');
    // 65 in = 1651 mm: 26 mm, 1.02 in; √(4² + 5.08²) = 6.47 mm = 0.25 in
    expect(line!.says).toBe('differ by +26 ± 6 mm (+1,02 ± 0,25 in), more than both ±');
  });

  test('of a job with a template leaves out what no template holds', () => {
    const job = tourerWith(['machine.rear.tyre.pressure', q(2.5, 'bar')]);
    const template = asTemplate(tourerWith(['machine.rear.tyre.pressure', q(2.9, 'bar')]), 'machine');
    expect(differing(asJob(job), template, 'machine')).toEqual([]);
    const both = compare(
      asJob(job),
      asJob(tourerWith(['machine.rear.tyre.pressure', q(2.9, 'bar')])),
      'machine',
    );
    expect(both.rows[0]!.path).toBe('machine.rear.tyre.pressure');
  });

  test('knows a place by its kind where its id and name are another', () => {
    const job = tourerWith(['loadCases', {}]);
    const [id, place] = Object.entries(job.machine.places).find(([, { kind }]) => kind === 'rider seat')!;
    const { [id]: _, ...rest } = job.machine.places;
    const machine = { ...job.machine, places: { ...rest, 'another-id': { ...place, name: 'saddle' } } };
    expect(differing(asJob(job), asJob({ ...job, machine }), 'machine')).toEqual([]);
  });

  test('lays rows beside each other that were read at the same travel, and names those without one', () => {
    const row = (wheel: Quantity, shock: number) => ({ wheel, shock: q(shock, 'mm') });
    const at = (...rows: object[]) =>
      tourerWith(
        ['machine.rear.travel', { kind: 'table', rows }],
        ['machine.rear.shock.length', q(320, 'mm')],
      );
    const a = at(row(q(0, 'mm'), 320), row(q(25.4, 'mm'), 297), row(q(70, 'mm'), 255));
    const b = at(row(q(0, 'mm'), 320), row(q(1, 'in'), 298), row(q(60, 'mm'), 266), row(q(70, 'mm'), 255));
    expect(rowAt(a, b, 'machine.rear.travel.rows.1.shock')).toMatchObject({ verdict: 'differs' });
    expect(rowAt(a, b, 'machine.rear.travel.rows.2.shock')).toMatchObject({
      pathInB: 'machine.rear.travel.rows.3.shock',
      verdict: 'same',
    });
    expect(differing(asJob(a), asJob(b), 'machine')).toContain('machine.rear.travel.rows.2: only in b');
  });

  test('tells a part that only one has, and one that is known not to be there', () => {
    const there = tourerWith();
    const other = tourerWith(['machine.rear.drive', undefined], ['machine.rear.shock.gas', 'none']);
    expect(rowAt(there, other, 'machine.rear.drive.kind')).toMatchObject({ verdict: 'only in a', b: null });
    expect(rowAt(there, other, 'machine.rear.shock.gas')).toMatchObject({
      verdict: 'differs',
      a: { kind: 'part' },
      b: { kind: 'word', word: 'none' },
    });
  });

  test('has what both have, and of a shock and a fork nothing', () => {
    const job = tourerWith();
    expect(partsToCompare(asJob(job), asJob(job))).toEqual(['machine', 'shock', 'fork']);
    expect(partsToCompare(asJob(job), asTemplate(job, 'shock'))).toEqual(['shock']);
    expect(partsToCompare(asTemplate(job, 'fork'), asTemplate(job, 'shock'))).toEqual([]);
  });

  test('is explained field by field in docs/template-file.md', () => {
    const page = readFileSync(new URL('../../../../docs/template-file.md', import.meta.url), 'utf8');
    const there = tourerWith();
    const comparison = compare(asJob(there), asJob(tourerWith(['machine.wheelbase.value', 1640])), 'machine');
    const [row] = comparison.rows;
    const figure = row!.a?.kind === 'figure' ? row!.a.figure : {};
    const words = [comparison, comparison.a, row!, row!.a!, figure].flatMap((part) => Object.keys(part));
    const verdicts: readonly CompareVerdict[] = [
      'same',
      'equal',
      'within',
      'beyond',
      'differs',
      'only in a',
      'only in b',
    ];
    expect(
      [...words, ...verdicts].filter((word) => !new RegExp(`\`(rows\\[\\]\\.)?${word}\``).test(page)),
    ).toEqual([]);
  });

  test('has a name for every field of the tourer', () => {
    const side = asJob(tourerWith());
    const lines = comparedLines(side, side, compare(side, side, 'machine'), '.');
    expect(lines.length).toBeGreaterThan(60);
    expect(lines.filter(({ name }) => /^Machine|machine\./.test(name))).toEqual([]);
  });
});

/** Every quantity in another unit of its kind, in full digits; what is judged within a list of one unit only stays. */
function inOtherUnits(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOtherUnits);
  if (typeof value !== 'object' || value === null) return value;
  if (!isQuantity(value)) {
    return Object.fromEntries(
      Object.entries(value).map(([name, inner]) => [name, name === 'wanted' ? inner : inOtherUnits(inner)]),
    );
  }
  const dimension = dimensionOf(value.unit);
  if (dimension === 'leverage' || dimension === 'motion') return value;
  const unit = unitsOf(dimension).at(-1)!;
  return {
    ...value,
    value: fromSI(siOf(value), unit),
    unit,
    ...(value.plusMinus && { plusMinus: { value: 1, unit: '%' } }),
  };
}

test('a job for these tests is one', () => {
  expect(parseJob(tourerWith()).ok).toBe(true);
});
