import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxesMeet, isInside } from '../box.ts';
import { frontLadder, longLadder, rearLadder } from '../invented.ts';
import { TEXT_MIN, type TextMark, textBox } from '../lettering.ts';
import { axisInInches } from './axis.ts';
import type { LadderInput, LadderLane } from './ladderInput.ts';
import {
  ladderLanes,
  ladderScale,
  travelLadder,
  travelLadderSentence,
  travelLadderTable,
} from './travelLadder.ts';

const scale = ladderScale([rearLadder, frontLadder], 320);
const rear = travelLadder(rearLadder, { width: 356, pxPerMm: scale, lanes: 4 });
const front = travelLadder(frontLadder, { width: 356, pxPerMm: scale, lanes: 4 });

/** A ladder of any travel, with lanes that rest anywhere on it. */
const anyLadder: fc.Arbitrary<LadderInput> = fc
  .record({
    travelMaxMm: fc.integer({ min: 60, max: 250 }),
    hangs: fc.double({ min: 0, max: 0.2, noNaN: true }),
    rubber: fc.option(fc.double({ min: 0.5, max: 0.97, noNaN: true })),
    lanes: fc.array(
      fc.record({
        at: fc.double({ min: 0, max: 1, noNaN: true }),
        band: fc.double({ min: 0, max: 0.15, noNaN: true }),
        doubt: fc.double({ min: 0, max: 6, noNaN: true }),
        wanted: fc.option(fc.double({ min: 0.1, max: 0.6, noNaN: true })),
        read: fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
      }),
      { minLength: 1, maxLength: 9 },
    ),
    chosen: fc.nat(8),
    firstLoad: fc.nat(8),
  })
  .map(({ travelMaxMm, hangs, rubber, lanes, chosen, firstLoad }) => ({
    ...rearLadder,
    travelMaxMm,
    hangsAtMm: hangs * travelMaxMm,
    rubberFromMm: rubber === null ? null : rubber * travelMaxMm,
    chosenId: String(chosen % lanes.length),
    firstLoad,
    lanes: lanes.map(({ at, band, doubt, wanted, read }, index): LadderLane => {
      const fromMm = at * travelMaxMm * (1 - band);
      return {
        id: String(index),
        letter: index === 0 ? null : 'ABCDEFGH'[index - 1]!,
        name: `Load ${index}`,
        rest: {
          fromMm,
          toMm: fromMm + band * travelMaxMm,
          plusMinusMm: doubt,
          words: String(Math.round(fromMm)),
          plusMinusWords: String(Math.round(doubt)),
        },
        measured: read === null ? null : { atMm: read * travelMaxMm, words: '' },
        wanted:
          wanted === null
            ? null
            : { fromMm: wanted * travelMaxMm, toMm: wanted * travelMaxMm + 4, words: '' },
        note: null,
        ghost: null,
      };
    }),
  }));

/** A finger in a glove; a mouse [px]. */
const anyTarget = fc.constantFrom(62, 32);

function textsOf(marks: ReturnType<typeof travelLadder>): readonly TextMark[] {
  return [...marks.tickTexts, ...marks.levels, ...marks.lanes.flatMap((lane) => lane.texts)];
}

describe('a travel ladder', () => {
  it('shows a millimetre as long at both ends, from the same top line', () => {
    expect(rear.pxPerMm).toBe(front.pxPerMm);
    expect(rear.top).toBe(front.top);
    expect((rear.bottom - rear.top) / (front.bottom - front.top)).toBeCloseTo(86 / 110, 9);
  });

  it('fits the longer travel into the height it was given', () => {
    expect(front.height).toBeCloseTo(320, 6);
  });

  it('refuses a scale for no travel', () => {
    expect(() => ladderScale([{ ...rearLadder, travelMaxMm: 0 }], 320)).toThrow(RangeError);
  });

  it('has every mark of a lane at its millimetres', () => {
    const mmOf = (y: number) => (y - rear.top) / rear.pxPerMm;
    const lane = rear.lanes.find(({ id }) => id === 'C')!;
    const given = rearLadder.lanes.find(({ id }) => id === 'C')!;
    expect(mmOf(lane.block!.y)).toBeCloseTo(57.5, 6);
    expect(mmOf(lane.block!.y + lane.block!.height)).toBeCloseTo(61, 6);
    expect(mmOf(lane.doubt!.from)).toBeCloseTo(55.5, 6);
    expect(mmOf(lane.doubt!.to)).toBeCloseTo(63, 6);
    expect([mmOf(lane.rails!.from), mmOf(lane.rails!.to)].map(Math.round)).toEqual([29, 33]);
    expect(mmOf(lane.measured!.y)).toBeCloseTo(given.measured!.atMm, 6);
    expect(mmOf(rear.rubber!.box.y)).toBeCloseTo(60, 6);
    expect(mmOf(front.hangsY)).toBeCloseTo(4, 6);
  });

  it('has a light line through a block only where it is 12 px high', () => {
    for (const lane of [...rear.lanes, ...front.lanes]) {
      expect(lane.midLine !== null).toBe(lane.block!.height >= 12);
    }
    expect(front.lanes.some((lane) => lane.midLine !== null)).toBe(true);
  });

  it('keeps the block of a band without friction to be seen, about its true place', () => {
    const alone = { ...rearLadder.lanes[0]!, rest: { ...rearLadder.lanes[0]!.rest!, fromMm: 20, toMm: 20 } };
    const [lane] = travelLadder(
      { ...rearLadder, lanes: [alone] },
      { width: 356, pxPerMm: 2, lanes: 5 },
    ).lanes;
    expect(lane!.block!.height).toBeGreaterThanOrEqual(4);
    expect((lane!.block!.y + lane!.block!.height / 2 - rear.top) / 2).toBeCloseTo(20, 6);
  });

  it('writes the number under a band, and over it near the rubber', () => {
    const at = (id: string) => rear.lanes.find((lane) => lane.id === id)!;
    expect(textBox(at('alone').texts[0]!).y).toBeGreaterThan(at('alone').doubt!.to);
    const c = textBox(at('C').texts[0]!);
    expect(c.y + c.height).toBeLessThan(at('C').doubt!.from + 2);
  });

  it('writes a ± for the chosen lane alone', () => {
    for (const lane of rear.lanes) {
      expect(lane.texts.some((text) => text.text.startsWith('±'))).toBe(lane.chosen);
    }
  });

  it('keeps all words inside the drawing, at 16 px or more, clear of each other', () => {
    fc.assert(
      fc.property(anyLadder, fc.constantFrom(300, 356, 390), anyTarget, (input, width, target) => {
        const marks = travelLadder(input, {
          width,
          pxPerMm: ladderScale([input], 300),
          lanes: ladderLanes([input], width, target),
        });
        const drawing = { x: 0, y: 0, width: marks.width, height: marks.height };
        for (const text of textsOf(marks)) {
          expect(text.size).toBeGreaterThanOrEqual(TEXT_MIN);
          expect(isInside(textBox(text), drawing)).toBe(true);
        }
        marks.levels.forEach((level, index) => {
          for (const other of marks.levels.slice(index + 1)) {
            expect(boxesMeet(textBox(level), textBox(other), -3)).toBe(false);
          }
        });
      }),
      { seed: 51, numRuns: 200 },
    );
  });

  it('keeps its number off its block', () => {
    fc.assert(
      fc.property(anyLadder, anyTarget, (input, target) => {
        const marks = travelLadder(input, {
          width: 356,
          pxPerMm: ladderScale([input], 300),
          lanes: ladderLanes([input], 356, target),
        });
        for (const lane of marks.lanes) {
          for (const text of lane.texts) expect(boxesMeet(textBox(text), lane.block!)).toBe(false);
        }
      }),
      { seed: 52, numRuns: 200 },
    );
  });
});

describe('the numbers at the left of a ladder', () => {
  it('are whole inches at their place where the page is in inches', () => {
    const marks = travelLadder({ ...rearLadder, axis: axisInInches }, { width: 356, pxPerMm: 3, lanes: 4 });
    expect(marks.tickTexts.map((text) => text.text)).toEqual(['0', '1', '2', '3']);
    // 86 mm hold 33 whole tenths of 2.54 mm, and the stop itself.
    expect(marks.ticks.length).toBe(34);
    const numbered = marks.ticks.filter((tick) => tick.length === 16);
    expect(numbered.map((tick) => Math.round((tick.y - marks.top) / 3))).toEqual([0, 25, 51, 76]);
  });

  it('stand at each 20 mm, with ticks at each 2 mm', () => {
    expect(rear.tickTexts.map((text) => text.text)).toEqual(['0', '20', '40', '60', '80']);
    expect(rear.ticks.length).toBe(44);
  });
});

describe('more loads than fit', () => {
  it('always show the machine alone first, and the chosen one, in their order', () => {
    fc.assert(
      fc.property(anyLadder, fc.constantFrom(260, 356, 600), anyTarget, (input, width, target) => {
        const lanes = ladderLanes([input], width, target);
        const marks = travelLadder(input, { width, pxPerMm: 2, lanes });
        const ids = marks.lanes.map((lane) => Number(lane.id));
        expect(ids[0]).toBe(0);
        expect(ids).toContain(Number(input.chosenId));
        expect(ids).toEqual(ids.toSorted((a, b) => a - b));
        expect(marks.lanes.length).toBe(Math.min(lanes, input.lanes.length));
        if (input.lanes.length <= marks.lanes.length) expect([marks.before, marks.after]).toEqual([0, 0]);
      }),
      { seed: 53, numRuns: 200 },
    );
  });

  it('count those out of sight, for steps towards them', () => {
    // Seven loads, A to G, from the second one on: A is before; of B to E the last gives its lane to the chosen F.
    const marks = travelLadder(longLadder, { width: 356, pxPerMm: 2, lanes: 5 });
    expect(marks.lanes.map((lane) => lane.id)).toEqual(['alone', 'B', 'C', 'D', 'F']);
    expect([marks.before, marks.after]).toEqual([1, 2]);
  });

  it('draw no block for one that is not worked out', () => {
    const marks = travelLadder({ ...longLadder, chosenId: 'D' }, { width: 356, pxPerMm: 2, lanes: 5 });
    const lane = marks.lanes.find(({ id }) => id === 'D')!;
    expect(lane.block).toBe(null);
    expect(lane.unknown).not.toBe(null);
  });
});

describe('a ladder in words', () => {
  it('is a row of the table for each lane', () => {
    const table = travelLadderTable(longLadder);
    expect(table.rows.length).toBe(longLadder.lanes.length);
    for (const row of table.rows) expect(row.length).toBe(table.headings.length);
    expect(table.rows[4]).toContain('not worked out');
  });

  it('is spoken lane by lane', () => {
    expect(travelLadderSentence(rearLadder, rearLadder.lanes[3]!)).toBe(
      'Load C, rear: rests at 59 of 86 millimetres, plus or minus 2; read 60 and a half; wanted 29 to 33; on the rubber.',
    );
    expect(travelLadderSentence(longLadder, longLadder.lanes[4]!)).toBe(
      'Load D, rear: not worked out; figure needed: rider’s mass.',
    );
  });
});
