import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readJob } from '@sagwright/records/read';
import { readTemplate } from '@sagwright/records/readTemplate';
import { leastJobWith } from '@sagwright/records/testing/leastJob';
import { writeJob } from '@sagwright/records/write';
import { compare } from '@sagwright/workbench/compare/compare';
import { tourerWith } from '@sagwright/workbench/testing/tourerJob';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { build, type Ran, run } from '../testing/program.ts';

let folder = '';
const sagwright = (args: readonly string[], input?: string): Promise<Ran> => run(args, folder, input);
const text = (name: string): string => readFileSync(join(folder, name), 'utf8');
const other = () =>
  tourerWith(
    ['machine.name', 'green tourer'],
    ['machine.rear.shock.stroke', { value: 75, unit: 'mm' }],
    ['machine.rear.shock.length', { value: 345, unit: 'mm' }],
  );

beforeAll(() => {
  build();
  folder = mkdtempSync(join(tmpdir(), 'sagwright-templates-'));
  writeFileSync(join(folder, 'tourer.json'), writeJob(tourerWith()));
  writeFileSync(join(folder, 'other.json'), writeJob(other()));
}, 120_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('sagwright keep', () => {
  test('writes a template, and says what it leaves out', async () => {
    const { code, out } = await sagwright([
      'keep',
      'shock',
      'tourer.json',
      'shock.json',
      '--name',
      'blue pair',
    ]);
    expect(code).toBe(0);
    expect(out).toContain('Kept: the shock "blue pair", in shock.json');
    expect(out).toContain('how the rear stood as found');
    expect(readTemplate(text('shock.json'))).toMatchObject({
      ok: true,
      template: { kind: 'shock', name: 'blue pair' },
    });
  });

  test('writes over a file only where it is told to', async () => {
    writeFileSync(join(folder, 'mine.json'), 'mine');
    const { code, errors } = await sagwright(['keep', 'machine', 'tourer.json', 'mine.json']);
    expect(code).toBe(2);
    expect(errors).toContain('mine.json is there already; --over writes over it');
    expect(text('mine.json')).toBe('mine');
    expect(
      (await sagwright(['keep', 'machine', 'tourer.json', 'mine.json', '--over', '--note', 'ours'])).code,
    ).toBe(0);
    expect(readTemplate(text('mine.json'))).toMatchObject({
      ok: true,
      template: { name: 'brown tourer', note: 'ours' },
    });
  });

  test('of a fork that nobody told of says where', async () => {
    writeFileSync(join(folder, 'least.json'), JSON.stringify(leastJobWith()));
    const { code, errors } = await sagwright(['keep', 'fork', 'least.json', 'fork.json']);
    expect(code).toBe(3);
    expect(errors).toContain('machine.front.fork');
  });
});

describe('sagwright put and new --from', () => {
  test('make jobs that are read, and say what is gone', async () => {
    await sagwright(['keep', 'shock', 'other.json', 'long.json']);
    const put = await sagwright(['put', 'long.json', 'tourer.json', 'put.json']);
    expect(put.code).toBe(0);
    expect(put.out.replace(/\s+/g, ' ')).toContain(
      'Gone with the one that was in it: how the rear stood as found.',
    );
    const read = readJob(text('put.json'));
    expect(read.ok && read.job.machine.rear.shock.stroke).toEqual({ value: 75, unit: 'mm' });

    await sagwright(['keep', 'machine', 'tourer.json', 'machine.json']);
    const begun = await sagwright(['new', 'begun.json', '--from', 'machine.json']);
    expect(begun.code).toBe(0);
    expect(begun.out.replace(/\s+/g, ' ')).toContain('preload at the rear 10 ± 8 mm');
    expect(readJob(text('begun.json')).ok).toBe(true);
  });

  test('leave the job as it is where the file is there, or where the shock does not go in', async () => {
    const before = text('tourer.json');
    const { code } = await sagwright(['put', 'long.json', 'tourer.json', 'tourer.json']);
    expect(code).toBe(2);
    expect(text('tourer.json')).toBe(before);
    const rows = [0, 30, 60].map((wheel, i) => ({
      wheel: { value: wheel, unit: 'mm' },
      shock: { value: 350 - 27 * i, unit: 'mm' },
    }));
    const taped = tourerWith(
      ['machine.rear.shock.length', { value: 352, unit: 'mm' }],
      ['machine.rear.travel', { kind: 'table', rows }],
    );
    writeFileSync(join(folder, 'taped.json'), writeJob(taped));
    const { code: refused, errors } = await sagwright(['put', 'long.json', 'taped.json', 'none.json']);
    expect(refused).toBe(3);
    expect(errors).toContain('does not go into this job as it stands');
    expect(errors).toContain('machine.rear.travel.rows');
    expect(() => text('none.json')).toThrow('ENOENT');
  });

  test('tell of the other where the wrong kind of template is given', async () => {
    expect((await sagwright(['put', 'machine.json', 'tourer.json', 'x.json'])).errors).toContain(
      'sagwright new x.json --from',
    );
    expect((await sagwright(['new', 'x.json', '--from', 'long.json'])).errors).toContain(
      'sagwright put long.json',
    );
    const { code, errors } = await sagwright(['put', 'tourer.json', 'tourer.json', 'x.json']);
    expect(code).toBe(3);
    expect(errors).toContain('a template begins with');
  });
});

describe('sagwright compare', () => {
  test('tells what differs between jobs and templates alike, and ends with 1', async () => {
    const { code, out } = await sagwright(['compare', 'tourer.json', 'long.json']);
    expect(code).toBe(1);
    expect(out).toContain('Two shocks: 1 "brown tourer" (job), 2 "green tourer" (template)');
    // A sheet's stroke has ± 1 mm where nobody typed one, one that nobody says the origin of 1.5: √(1² + 1.5²) = 1.8.
    expect(out).toMatch(
      /stroke of the shock\n {4}1: 69 mm {3}2: 75 mm\n {4}differ by \+6\.0 ± 1\.8 mm, more than both ±/,
    );
    expect(Math.max(...out.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(80);
  });

  test('of a job with itself ends with 0', async () => {
    const { code, out } = await sagwright(['compare', 'tourer.json', 'tourer.json']);
    expect(code).toBe(0);
    expect(out).toContain('Nothing differs');
  });

  test('--json is the very document of compare', async () => {
    const { out } = await sagwright(['compare', 'tourer.json', 'other.json', '--part', 'shock', '--json']);
    const [a, b] = [tourerWith(), other()].map((job) => ({ from: 'job', job }) as const);
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(compare(a!, b!, 'shock'))));
  });

  test.each([
    [['compare', 'tourer.json'], 'Two files are needed'],
    [['compare', 'tourer.json', 'long.json', '--part', 'engine'], 'machine, shock, fork'],
    [['compare', 'tourer.json', 'long.json', '--part', 'fork'], 'in both: shock'],
    [['keep', 'engine', 'tourer.json', 'x.json'], 'What to keep is machine, shock, fork'],
    [['put', 'long.json'], 'Three files are needed'],
    [['new', 'x.json', '--over'], '--over goes with --from'],
  ])('%j is not understood, and says why', async (args, why) => {
    const { code, errors } = await sagwright(args);
    expect(code).toBe(2);
    expect(errors).toContain(why);
  });

  test('makes names harmless that would command the terminal', async () => {
    const named = writeJob(tourerWith(['machine.name', 'red \u001b[31m name']));
    const { out } = await sagwright(['compare', '-', 'tourer.json'], named);
    expect(out).toContain('red ?[31m name');
  });
});

test.each(['keep', 'put', 'compare'])(
  'sagwright %s --help teaches by example and names the exit codes',
  async (name) => {
    const { code, out } = await sagwright([name, '--help']);
    expect(code).toBe(0);
    expect(out).toMatch(/ {2}sagwright \w+/);
    expect(out).toContain('Exit code');
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  },
);
