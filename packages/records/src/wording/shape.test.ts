import { describe, expect, test } from 'vitest';
import { parseJob } from '../read.ts';
import { leastJobWith } from '../testing/leastJob.ts';

/** All that is wrong with the least job after a change, one line each. */
function problemsWith(...changes: [path: string, value: unknown][]): string[] {
  const result = parseJob(leastJobWith(...changes));
  return result.ok ? [] : result.problems.map(({ path, message }) => `${path} | ${message}`);
}

const mm = (value: number) => ({ value, unit: 'mm' });

describe('the shape of a job', () => {
  test('holds a wheelbase in inches to the same bound as one in millimetres', () => {
    expect(problemsWith(['machine.wheelbase', { value: 63, unit: 'in' }])).toEqual([]);
    expect(problemsWith(['machine.wheelbase', { value: 20, unit: 'in' }])).toEqual([
      'machine.wheelbase.value | Machine, wheelbase: found 20 in; allowed: 31.5 in to 102.4 in. Correct the figure or its unit.',
    ]);
  });

  test('allows the bound itself in every unit', () => {
    expect(problemsWith(['machine.wheelbase', { value: 0.8, unit: 'm' }])).toEqual([]);
    expect(problemsWith(['machine.wheelbase', { value: 80, unit: 'cm' }])).toEqual([]);
    expect(problemsWith(['machine.wheelbase', { value: 2600, unit: 'mm' }])).toEqual([]);
    expect(problemsWith(['machine.wheelbase', { value: 799.9, unit: 'mm' }])).toHaveLength(1);
  });

  test('asks back where the figure would do in another unit', () => {
    expect(problemsWith(['machine.wheelbase', { value: 1600, unit: 'cm' }])).toEqual([
      'machine.wheelbase.value | Machine, wheelbase: found 1600 cm; allowed: 80 cm to 260 cm. Was it 1600 mm?',
    ]);
  });

  test('refuses a length in kilograms, and says what a length may be in', () => {
    expect(problemsWith(['machine.wheelbase', { value: 1600, unit: 'kg' }])).toEqual([
      'machine.wheelbase.unit | Machine, wheelbase, unit: found "kg", the unit of a mass; for a length it is mm, cm, m or in.',
    ]);
  });

  test('knows a unit with other capitals, but guesses at no other letter', () => {
    expect(problemsWith(['machine.wheelbase', { value: 1600, unit: 'MM' }])[0]).toContain('Did you mean mm?');
    expect(problemsWith(['machine.wheelbase', { value: 1600, unit: 'nm' }])[0]).not.toContain('Did you mean');
  });

  test('refuses a mass below nothing', () => {
    expect(problemsWith(['machine.weighing.rear', { value: -200, unit: 'kg' }])).toEqual([
      'machine.weighing.rear.value | Machine, weighing, rear: found -200 kg; allowed: 1 kg to 2000 kg. Correct the figure or its unit.',
    ]);
  });

  test.each([1e308, -1e308, Number.MAX_VALUE])('refuses %d mm', (value) => {
    expect(problemsWith(['machine.wheelbase', mm(value)])).toHaveLength(1);
  });

  test('refuses a number that no double can hold', () => {
    expect(problemsWith(['machine.wheelbase', mm(Number.POSITIVE_INFINITY)])[0]).toContain(
      'too large to be held',
    );
  });

  test('refuses a number that is written as a text', () => {
    expect(problemsWith(['machine.wheelbase', { value: '1600', unit: 'mm' }])).toEqual([
      'machine.wheelbase.value | Machine, wheelbase: found "1600"; a number is needed.',
    ]);
  });

  test('refuses a bare number where a unit belongs to it, and says the range', () => {
    expect(problemsWith(['machine.wheelbase', 1600])).toEqual([
      'machine.wheelbase | Machine, wheelbase: found 1600; a figure with its unit (800 mm to 2600 mm) is needed.',
    ]);
  });

  test('refuses a ± below 0, wider than the range, or above 100 %', () => {
    const withPlusMinus = (value: number, unit: string) =>
      problemsWith(['machine.wheelbase', { ...mm(1600), plusMinus: { value, unit } }]);
    expect(withPlusMinus(-1, 'mm')).toHaveLength(1);
    expect(withPlusMinus(1900, 'mm')[0]).toContain('allowed: 0 to 1800 mm');
    expect(withPlusMinus(101, '%')[0]).toContain('allowed: 0 to 100 %');
    expect(withPlusMinus(2, '%')).toEqual([]);
    expect(withPlusMinus(1, 'kg')[0]).toContain('for a length it is mm, cm, m, in or %');
  });

  test('refuses an unknown field and names the one that was meant', () => {
    expect(problemsWith(['machine.wheelBase', mm(1600)])).toEqual([
      'machine.wheelBase | Machine, wheel base: no such field; did you mean "wheelbase"?',
    ]);
    expect(problemsWith(['machine.rear.shock.strok', mm(60)])[0]).toContain('did you mean "stroke"?');
    expect(problemsWith(['machine.colour', 'grey'])[0]).toContain('no such field. Remove it');
  });

  test('names every field that is missing', () => {
    expect(problemsWith(['machine.weighing.front', undefined], ['machine.rear.travel', undefined])).toEqual([
      'machine.weighing.front | Machine, weighing, front: missing; a figure with its unit (1 kg to 2000 kg) is needed. Add it.',
      'machine.rear.travel | Machine, rear, travel: missing; a group of fields { } is needed. Add it.',
    ]);
  });

  test('refuses a word that is none of the known ones', () => {
    expect(problemsWith(['machine.kind', 'Solo'])).toEqual([
      'machine.kind | Machine, kind: found "Solo"; allowed: solo, sidecar, trike or rigid rear. Did you mean solo?',
    ]);
    expect(problemsWith(['machine.rear.shock.count', 3])[0]).toContain('found 3; allowed: 1 or 2.');
  });

  test('refuses a kind of travel, spring or adjuster that it does not know', () => {
    expect(problemsWith(['machine.rear.travel.kind', 'levrage'])[0]).toContain(
      'machine.rear.travel.kind | Machine, rear, travel, kind: found "levrage"; allowed: leverage, motion, table, taped, direct or linkage. Did you mean leverage?',
    );
    expect(problemsWith(['machine.rear.shock.adjuster', {}])[0]).toContain('missing; collar, cap, cam');
  });

  test.each(['A', 'a b', '-a', '', 'a'.repeat(65), 'ä', 'a.b'])('refuses %j as an id', (id) => {
    const spring = {
      name: 'x',
      order: 1,
      end: 'rear',
      rate: { kind: 'linear', rate: { value: 60, unit: 'N/mm' } },
    };
    const result = parseJob(leastJobWith(['springs', { [id]: spring }]));
    expect(result).toMatchObject({ ok: false, problems: [{ path: `springs.${id}`, code: 'badId' }] });
  });

  test('drops blanks around a name, and refuses one of blanks only or of more than 120 letters', () => {
    const trimmed = parseJob(leastJobWith(['name', '  job 12 ']));
    expect(trimmed).toMatchObject({ ok: true, job: { name: 'job 12' } });
    expect(problemsWith(['name', '  '])).toEqual(['name | Name: found 0 characters; at least 1.']);
    expect(problemsWith(['name', 'x'.repeat(121)])).toEqual([
      'name | Name: found 121 characters; at most 120.',
    ]);
    expect(problemsWith(['note', 'x'.repeat(4001)])).toHaveLength(1);
  });

  test('holds at most 200 members in a list', () => {
    const thing = { name: 'x', order: 1, kind: 'item', mass: { value: 1, unit: 'kg' } };
    const things = Object.fromEntries(Array.from({ length: 201 }, (_, i) => [`t${i}`, thing]));
    expect(problemsWith(['things', things])).toEqual(['things | Things: found 201 entries; at most 200.']);
  });

  test('goes into the one of several shapes that was meant', () => {
    expect(
      problemsWith(['machine.rear.shock.gas', { shaft: mm(12), pressure: { value: 10, unit: 'mm' } }]),
    ).toEqual([
      'machine.rear.shock.gas.pressure.unit | Machine, rear, shock, gas, pressure, unit: found "mm", the unit of a length; for a pressure it is bar, psi or kPa.',
    ]);
    expect(problemsWith(['setups.asFound.rear', { left: { spring: 'a', at: { preload: mm(1) } } }])).toEqual([
      'setups.asFound.rear.right | Setups, as found, rear, right: missing; a group of fields { } is needed. Add it.',
    ]);
  });

  test('names the choice where it cannot tell which of several shapes was meant', () => {
    expect(problemsWith(['machine.rear.shock.gas', 5])).toEqual([
      'machine.rear.shock.gas | Machine, rear, shock, gas: found 5; just one is needed of: "none"; shaft with pressure.',
    ]);
    expect(problemsWith(['setups.asFound.rear.single.at', {}])).toEqual([
      'setups.asFound.rear.single.at | Setups, as found, rear, single, where the adjuster stands: nothing of it is there yet; just one is needed of: reading; turns; step; click; spacer; preload.',
    ]);
    const both = { reading: mm(1), turns: 2 };
    expect(problemsWith(['setups.asFound.rear.single.at', both])[0]).toContain(
      'found "reading" with "turns"',
    );
    expect(problemsWith(['loadCases.x', { name: 'x', order: 1, share: 10 }])[0]).toContain(
      'just one is needed of: aboard; scales.',
    );
    expect(problemsWith(['setups.asFound.rear', undefined])[0]).toContain(
      'missing; one of single; both; left with right is needed.',
    );
  });

  test('takes only whole steps and clicks', () => {
    expect(problemsWith(['setups.asFound.rear.single.at', { step: 1.5 }])[0]).toContain(
      'a whole number is needed',
    );
  });
});
