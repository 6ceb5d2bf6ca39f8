import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxesMeet, isInside } from '../box.ts';
import { reachRows } from '../invented.ts';
import { TEXT_MIN, textBox } from '../lettering.ts';
import { type PlannedLane, type ReachInput, type ReachVerdict, reachDomain } from './reachInput.ts';
import { reachLine, reachLineSentence, reachLineTable, reachScale } from './reachLine.ts';

const domain = reachDomain(reachRows);
const rows = reachRows.map((row) => ({ ...row, domain }));

const anyRow: fc.Arbitrary<ReachInput> = fc
  .record({
    least: fc.double({ min: 0, max: 12, noNaN: true }),
    reach: fc.double({ min: 4, max: 30, noNaN: true }),
    lanes: fc.array(
      fc.record({
        from: fc.double({ min: -8, max: 60, noNaN: true }),
        length: fc.double({ min: 0.1, max: 12, noNaN: true }),
        doubt: fc.double({ min: 0, max: 5, noNaN: true }),
        label: fc.constantFrom('24.6', 'past by 10.7', 'only at the edge'),
      }),
      { minLength: 1, maxLength: 6 },
    ),
  })
  .map(({ least, reach, lanes }) => {
    const collar = { fromMm: least, toMm: least + reach };
    const row = {
      spring: '30.6 newtons per millimetre',
      collar,
      counts: 'preload',
      reaches: 'collar, mm',
      stepsMm: [],
      lanes: lanes.map(({ from, length, doubt, label }, index): PlannedLane => {
        const to = from + length;
        const verdict: ReachVerdict =
          from >= collar.fromMm && to <= collar.toMm
            ? 'in reach'
            : to < collar.fromMm || from > collar.toMm
              ? 'past the end'
              : 'only at the edge';
        return {
          id: String(index),
          letter: 'ABCDEF'[index]!,
          name: `Load ${'ABCDEF'[index]}`,
          kind: 'planned',
          verdict,
          fromMm: from,
          toMm: to,
          fromPlusMinusMm: doubt,
          toPlusMinusMm: doubt,
          label,
          words: '',
          plusMinusWords: '',
        };
      }),
    };
    return { ...row, domain: reachDomain([row]) };
  });

describe('a reach line', () => {
  it('has bars, whiskers and the collar’s ends at their millimetres', () => {
    fc.assert(
      fc.property(anyRow, fc.constantFrom(350, 520, 640), (row, width) => {
        const marks = reachLine(row, { width });
        const mmOf = (x: number) => (x - marks.zeroX) / marks.pxPerMm;
        expect(mmOf(marks.stops[0]!.x + 1.5)).toBeCloseTo(row.collar.fromMm, 6);
        expect(mmOf(marks.stops[1]!.x + 1.5)).toBeCloseTo(row.collar.toMm, 6);
        marks.lanes.forEach((lane, index) => {
          const given = row.lanes[index] as PlannedLane;
          expect(mmOf(lane.bar!.x)).toBeCloseTo(given.fromMm, 6);
          expect(mmOf(lane.bar!.x + lane.bar!.width)).toBeCloseTo(given.toMm, 6);
          expect(mmOf(lane.doubt!.from)).toBeCloseTo(given.fromMm - given.fromPlusMinusMm, 6);
          expect(mmOf(lane.doubt!.to)).toBeCloseTo(given.toMm + given.toPlusMinusMm, 6);
        });
      }),
      { seed: 61, numRuns: 100 },
    );
  });

  it('shows a millimetre as long in every row of one domain', () => {
    const scales = new Set(rows.map((row) => reachLine(row, { width: 560 }).pxPerMm));
    expect(scales.size).toBe(1);
  });

  it('keeps labels inside the drawing and off every bar and whisker', () => {
    fc.assert(
      fc.property(anyRow, fc.constantFrom(350, 520, 640), (row, width) => {
        const marks = reachLine(row, { width });
        const drawing = { x: 0, y: 0, width, height: marks.height };
        for (const lane of marks.lanes) {
          for (const label of lane.labels) {
            expect(label.size).toBeGreaterThanOrEqual(TEXT_MIN);
            expect(isInside(textBox(label), drawing)).toBe(true);
            for (const { bar, doubt } of marks.lanes) {
              expect(boxesMeet(textBox(label), bar!, -3)).toBe(false);
              const whisker = { x: doubt!.from, y: doubt!.y - 1, width: doubt!.to - doubt!.from, height: 2 };
              expect(boxesMeet(textBox(label), whisker)).toBe(false);
            }
          }
        }
      }),
      { seed: 62, numRuns: 200 },
    );
  });

  it('fills a bar at the edge up to the collar’s end, and no further', () => {
    const marks = reachLine(rows[1]!, { width: 560 });
    const lane = marks.lanes[2]!;
    expect(lane.verdict).toBe('only at the edge');
    expect((lane.reached!.x + lane.reached!.width - marks.zeroX) / marks.pxPerMm).toBeCloseTo(29.5, 6);
    expect(lane.reached!.x).toBeCloseTo(lane.bar!.x, 6);
    expect(marks.lanes[0]!.reached).toBe(null);
  });

  it('says in words why a lane has no bar', () => {
    const lanes = reachLine(rows[2]!, { width: 350 }).lanes.filter((lane) => lane.bar === null);
    expect(lanes.map((lane) => [lane.kind, lane.letter?.text])).toEqual([
      ['not planned', 'B'],
      ['refused', 'C'],
    ]);
    for (const lane of lanes) expect(lane.labels.length).toBeGreaterThan(0);
  });

  it('names a load beside its bar where the letter does not fit into it', () => {
    const lane = reachLine(rows[2]!, { width: 350 }).lanes[3]!;
    expect(lane.letter).toBe(null);
    expect(lane.labels.map((label) => label.text)).toEqual(['D: 24.2']);
  });
});

describe('the common scale of all rows', () => {
  it('runs in whole fives over everything drawn', () => {
    expect(domain).toEqual({ fromMm: 0, toMm: 50 });
  });

  it('refuses a domain without a length', () => {
    expect(() => reachScale({ fromMm: 5, toMm: 5 }, 350)).toThrow(RangeError);
  });
});

describe('a reach line in words', () => {
  it('is a row of the table for each lane', () => {
    const table = reachLineTable(rows[2]!);
    expect(table.rows.length).toBe(4);
    for (const row of table.rows) expect(row.length).toBe(table.headings.length);
  });

  it('is spoken lane by lane', () => {
    expect(rows[0]!.lanes.map((lane) => reachLineSentence(lane, rows[0]!.counts))).toEqual([
      'Load A: 22.9 to 26.4 mm of preload, plus or minus 2 mm; in reach: 24.6.',
      'Load B: 35.1 to 38.6 mm of preload, plus or minus 2.3 mm; past the end: past by 5.6.',
      'Load C: 40.2 to 43.7 mm of preload, plus or minus 2.5 mm; past the end: past by 10.7.',
    ]);
    expect(reachLineSentence(rows[2]!.lanes[2]!, 'preload')).toBe('Load C: refused: 9 kg over the plate.');
  });
});
