import { stripVTControlCharacters } from 'node:util';
import type { JobDocument } from '@sagwright/records/schema';
import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import { unitsFor } from '@sagwright/workbench/format/units';
import { planJob } from '@sagwright/workbench/path';
import { resultJson } from '@sagwright/workbench/result/result';
import { overloadedTourer, tourerThatNothingFits, tourerWith } from '@sagwright/workbench/testing/tourerJob';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { paintFor } from '../terminal/paint.ts';
import { columnsOf } from '../terminal/text.ts';
import { planPage } from './planPage.ts';

const plain = paintFor(false, {});

describe('The plan on a terminal', () => {
  test('of five springs and four loads is read without scrolling far', () => {
    expect(linesOf(page(tourerWith())).length).toBeLessThan(150);
  });

  test('says in this order: what must not be, the loads, what hands do, where it rests, why, what was assumed', () => {
    const text = page(overloadedTourer());
    const places = [
      'Not planned:',
      'LOADS',
      'REAR  Keep "as delivered"',
      'FRONT  Keep',
      'SAG  ',
      'ROOM  ',
      'REAR SPRINGS',
      'ASSUMED',
      'NOTES',
      'The service manual',
    ].map((heading) => text.indexOf(heading));
    expect(places).not.toContain(-1);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  });

  test('tells the reading, the spring length and the turns of each load of the spring in view', () => {
    const text = page(tourerWith());
    const { rear } = resultJson(planned(tourerWith()));
    const spring = rear.springs.find(({ id }) => id === rear.inView.spring)!;
    for (const cell of spring.cells) {
      if (cell.kind !== 'planned') throw new Error('all of them are planned');
      const reading = (cell.set.setting!.at as { reading: number }).reading * 1000;
      const length = cell.set.springLength! * 1000;
      const isNear = (cell: string, value: number): boolean => Math.abs(Number(cell) - value) <= 0.0501;
      const rows = linesOf(text).map((line) => line.split(/ {2,}/));
      const row = rows.find((cells) => cells.some((each) => isNear(each, length)));
      expect(row?.some((each) => isNear(each, reading))).toBe(true);
    }
  });

  test('gives left and right apart where a spring stays that was found with unequal collars', () => {
    const text = page(tourerWith(['choice', { rear: 'fitted' }]));
    expect(text).toMatch(/left, from +right, from/);
    expect(text).toContain('Picked by hand: "as delivered"');
  });

  test('never shows an unknown limit as passed', () => {
    const text = page(tourerWith(['machine.limits', undefined]));
    expect(text).toContain('Not checked, figure needed: gross rating; rear axle rating; front axle rating');
    expect(text.match(/limit \?/g)!.length).toBe(3);
  });

  test('marks what to do and what to look at on a terminal, and says the same without', () => {
    const painted = page(tourerThatNothingFits(), 80, paintFor(true, {}));
    expect(painted).toContain('\u001b[1;35m');
    expect(stripVTControlCharacters(painted)).toBe(page(tourerThatNothingFits()));
  });

  test('is plain where NO_COLOR is set or the terminal is dumb', () => {
    expect(paintFor(true, { NO_COLOR: '1' })('x', 'strong')).toBe('x');
    expect(paintFor(true, { TERM: 'dumb' })('x', 'strong')).toBe('x');
    expect(paintFor(true, {})('x', 'strong')).not.toBe('x');
  });

  test('keeps to the width of the terminal, for any job, short and full', () => {
    fc.assert(
      fc.property(arbitraryJob, fc.constantFrom(32, 48, 80, 100), fc.boolean(), (job, width, full) => {
        const answer = planJob(job);
        if (!answer.ok) return;
        for (const line of linesOf(page(job, width, plain, full))) {
          // A single word, or a heading with its figure, may be longer than a very narrow terminal.
          const isUnbreakable = !line.trim().includes(' ') || width < 80;
          if (!isUnbreakable) expect(columnsOf(line)).toBeLessThanOrEqual(width);
          expect(line).not.toMatch(/undefined|NaN|null|\[object/);
          expect(line).toBe(line.trimEnd());
        }
      }),
      { seed: 13, numRuns: 120 },
    );
  });
});

function planned(job: JobDocument) {
  const answer = planJob(job);
  if (!answer.ok) throw new Error(answer.problems.map(({ message }) => message).join('\n'));
  return answer;
}

function page(job: JobDocument, width = 80, paint = plain, full = false): string {
  const answer = planned(job);
  return planPage({
    planned: answer,
    result: resultJson(answer),
    units: unitsFor('typed', job, '.'),
    width,
    paint,
    full,
  });
}

function linesOf(text: string): readonly string[] {
  return text.split('\n');
}
