import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import { leastJobWith } from '@sagwright/records/testing/leastJob';
import { writeJob } from '@sagwright/records/write';
import type { FirstEntries } from '@sagwright/workbench/first/entries';
import { firstJob } from '@sagwright/workbench/first/firstJob';
import { planJob } from '@sagwright/workbench/path';
import { resultJson } from '@sagwright/workbench/result/result';
import {
  type Change,
  overloadedTourer,
  q,
  tourerData,
  tourerThatNothingFits,
  tourerWith,
} from '@sagwright/workbench/testing/tourerJob';
import { type FigureName, figureNames } from '@sagwright/workbench/why/figures';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { build, type Ran, run } from './testing/program.ts';

let folder = '';
const sagwright = (args: readonly string[], input?: string): Promise<Ran> => run(args, folder, input);
const ESCAPE = '\u001b';

beforeAll(() => {
  build();
  folder = mkdtempSync(join(tmpdir(), 'sagwright-cli-'));
  const jobs = { tourer: tourerWith(), over: overloadedTourer(), none: tourerThatNothingFits() };
  for (const [name, job] of Object.entries(jobs)) writeFileSync(join(folder, `${name}.json`), writeJob(job));
}, 120_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('sagwright plan', () => {
  test('tells a person what to fit, and ends with 0 where something fits', async () => {
    const { code, out, errors } = await sagwright(['plan', 'tourer.json']);
    expect(errors).toBe('');
    expect(code).toBe(0);
    expect(out).toContain('Fit "C1", 24.5 N/mm, shelf C1');
    expect(out).toContain('The service manual, local rules and a qualified technician come first.');
  });

  test('puts no colour into a pipe, and keeps to 80 columns there', async () => {
    const { out } = await sagwright(['plan', 'tourer.json']);
    expect(out).not.toContain(ESCAPE);
    expect(Math.max(...out.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(80);
  });

  test('reads standard input', async () => {
    const { out: piped } = await sagwright(['plan', '-'], writeJob(tourerWith()));
    const { out } = await sagwright(['plan', 'tourer.json']);
    expect(piped).toBe(out);
  });

  test('--json is the very document of resultJson, and nothing else', async () => {
    const { code, out } = await sagwright(['plan', 'tourer.json', '--json']);
    expect(code).toBe(0);
    const read = readJob(writeJob(tourerWith()));
    const planned = read.ok ? planJob(read.job) : null;
    if (planned === null || !planned.ok) throw new Error('the tourer is planned');
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(resultJson(planned))));
  });

  test('--units imperial shows inches and pounds, --units typed what was typed', async () => {
    const { out: imperial } = await sagwright(['plan', 'tourer.json', '--units', 'imperial']);
    expect(imperial).toContain('of 804.7'); // 365 kg / 0.45359237 kg per lb
    expect(imperial).toContain('along the wheel, in;');
    const { out: typed } = await sagwright(['plan', 'tourer.json']);
    expect(typed).toContain('125 lbf/in');
  });

  test('--full tells every cell', async () => {
    const { out: short } = await sagwright(['plan', 'tourer.json']);
    const { out: full } = await sagwright(['plan', 'tourer.json', '--full']);
    expect(full.split('\n').length).toBeGreaterThan(2 * short.split('\n').length);
    for (const spring of ['as delivered', 'C1', 'C2', 'C3', 'C4']) expect(full).toContain(`REAR  ${spring}`);
  });

  test('says overload first and ends with 4', async () => {
    const { code, out } = await sagwright(['plan', 'over.json']);
    expect(code).toBe(4);
    const [before, after] = out.split('LOADS');
    expect(before).toContain('Not planned: "both of us and the box"');
    expect(after).toContain('over a limit');
  });

  test('where nothing fits says what would, and ends with 1', async () => {
    const { code, out } = await sagwright(['plan', 'none.json']);
    expect(code).toBe(1);
    expect(out).toMatch(/What would:\n\s+1\. less on board: .*[\s\S]*another damper/);
  });

  test('makes names harmless that would command the terminal', async () => {
    const job = tourerWith(
      ['name', `red ${ESCAPE}[31m name\u0007`],
      ['loadCases.work.name', `up\u202eside${ESCAPE}]0;title`],
    );
    const { code, out } = await sagwright(['plan', '-'], JSON.stringify(job));
    expect(code).toBe(0);
    expect(out).toContain('red ?[31m name?');
    expect([...out].filter((sign) => /[\p{Cc}\u202e]/u.test(sign) && sign !== '\n')).toEqual([]);
  });
});

describe('A file with problems', () => {
  const broken: readonly (readonly [what: string, job: unknown, path: string])[] = [
    ['a field that is missing', leastJobWith(['machine.weighing.rear', undefined]), 'machine.weighing.rear'],
    [
      'a unit of something else',
      leastJobWith(['machine.weighing.front.unit', 'mm']),
      'machine.weighing.front',
    ],
    [
      'a figure out of bounds',
      leastJobWith(['machine.wheelbase', { value: 20, unit: 'in' }]),
      'machine.wheelbase',
    ],
    ['a field that does not exist', leastJobWith(['machine.weel', 3]), 'machine.weel'],
    [
      'a spring that does not exist',
      leastJobWith(['setups.asFound.rear.single.spring', 'b']),
      'setups.asFound.rear',
    ],
    ['a machine out of scope', leastJobWith(['machine.kind', 'trike']), 'machine.kind'],
    [
      'wheels heavier than the scales',
      leastJobWith(['machine.rear.unsprung', { value: 200, unit: 'kg' }]),
      'machine.rear.unsprung',
    ],
    ['a newer version', leastJobWith(['version', 99]), 'version'],
  ];

  test.each(broken)('%s: ends with 3 and names the path', async (_, job, path) => {
    for (const command of ['plan', 'check', 'why']) {
      const args = command === 'why' ? ['why', 'sag', '-'] : [command, '-'];
      const { code, out, errors } = await sagwright(args, JSON.stringify(job));
      expect(code).toBe(3);
      expect(out).toBe('');
      expect(errors).toContain(path);
    }
  });

  test('a megabyte of noise ends with 3 and one short message', async () => {
    const noise = Uint8Array.from({ length: 1_000_000 }, (_, i) => (i * 7919 + (i >> 3)) % 256);
    writeFileSync(join(folder, 'noise.json'), noise);
    const { code, errors } = await sagwright(['plan', 'noise.json']);
    expect(code).toBe(3);
    expect(errors.length).toBeLessThan(500);
    expect(errors).toContain('no JSON from line 1');
  });

  test.each([
    ['nowhere.json', 'there is no such file'],
    ['.', 'this is a folder'],
  ])('%s: ends with 3 and says that %s', async (name, why) => {
    const { code, errors } = await sagwright(['plan', name]);
    expect(code).toBe(3);
    expect(errors).toContain(why);
  });
});

describe('sagwright check', () => {
  test('says what is assumed, each with its path, and ends with 0', async () => {
    const { code, out } = await sagwright(['check', 'tourer.json']);
    expect(code).toBe(0);
    expect(out).toContain('machine.rear.tyre.rate');
    expect(out).toContain('Not checked, figure needed: front axle rating');
  });
});

describe('sagwright why', () => {
  const lengthAdjuster: Change = [
    'machine.rear.shock.lengthAdjuster',
    {
      change: q(3, 'mm'),
      least: q(0, 'mm'),
      most: q(10, 'mm'),
      lead: q(1.25, 'mm'),
      thread: { diameter: q(14, 'mm'), engaged: q(20, 'mm') },
    },
  ];

  test('--list names every figure', async () => {
    const { code, out } = await sagwright(['why', '--list']);
    expect(code).toBe(0);
    for (const name of figureNames) expect(out).toContain(name);
  });

  /** Figures of what the tourer has not; each with a shock that has it. */
  const ofAnotherShock: Partial<Record<FigureName, Change>> = {
    pressure: [
      'machine.rear.shock.air',
      {
        diameter: q(30, 'mm'),
        volume: q(160, 'ml'),
        pressure: q(4, 'bar'),
        least: q(0, 'bar'),
        most: q(9, 'bar'),
      },
    ],
    'longer-left': lengthAdjuster,
    'shorter-left': lengthAdjuster,
  };

  test.each(figureNames)('opens %s up', async (figure) => {
    const another = ofAnotherShock[figure];
    const { code, out, errors } = await (another === undefined
      ? sagwright(['why', figure, 'tourer.json'])
      : sagwright(['why', figure, '-', '--end', 'rear'], writeJob(tourerWith(another))));
    expect(errors).toBe('');
    expect(code).toBe(0);
    expect(out).toMatch(/ ± .*/);
    expect(out).toContain('share');
  });

  test('says so where a figure cannot be had, and ends with 1', async () => {
    const { code, errors } = await sagwright(['why', 'rubber-left', 'tourer.json', '--end', 'front']);
    expect(code).toBe(1);
    expect(errors).toContain('figure needed: where the bump rubber begins');
  });
});

describe('sagwright tape', () => {
  test.each([
    ['direct', 7, 'from arm eye to frame eye'],
    ['linkage', 15, 'from link end to far eye'],
  ])('%s lists its %i lengths, and how they are taken', async (kind, count, last) => {
    const { code, out, errors } = await sagwright(['tape', kind]);
    expect([code, errors]).toEqual([0, '']);
    expect(out).toMatch(new RegExp(`^ +${count}  ${last}$`, 'm'));
    expect(out).toContain('from axle to pivot');
  });

  test('of a job tells which it has and what they give, and ends with 0', async () => {
    const job = readFileSync(new URL('../../../examples/known-three-ways.json', import.meta.url), 'utf8');
    const { code, out, errors } = await sagwright(['tape', '-'], job);
    expect([code, errors]).toEqual([0, '']);
    expect(out).toMatch(/14 {2}from rocker eye to far eye +349 mm/);
    expect(out).toContain('found by tape');
    const { machine } = JSON.parse(job);
    delete machine.rear.travel.tape.l14;
    delete machine.rear.travel.tape.l15;
    const lacking = await sagwright(['tape', '-'], JSON.stringify({ ...JSON.parse(job), machine }));
    expect(lacking.code).toBe(3);
    expect(lacking.out).toMatch(/14 {2}from rocker eye to far eye +to be taken/);
    expect(lacking.errors).toContain('leave the far eye free to move');
  });

  test('of a job without hard points says which kinds there are, and ends with 1', async () => {
    const { code, errors } = await sagwright(['tape', 'tourer.json']);
    expect(code).toBe(1);
    expect(errors).toMatch(/sagwright\s+tape direct/);
  });
});

describe('sagwright measured', () => {
  const length = (value: number) => q(value, 'mm', 'own tape');
  const readings = (hanging: number) => ({
    one: {
      kind: 'sag',
      order: 1,
      loadCase: 'both',
      end: 'rear',
      marks: 'axle to tail',
      hanging: length(hanging),
      afterPush: length(360),
      afterLift: length(363),
    },
  });
  const job = (hanging: number): string => writeJob(tourerWith(['readings', readings(hanging)]));

  test('tells each sag beside what was expected, as text and as JSON', async () => {
    const { out, errors } = await sagwright(['measured', '-'], job(400));
    expect(errors).toBe('');
    // 400 − (360 + 363)/2.
    expect(out).toMatch(/"both of us", rear\s+38\.5 ± 1\.2 mm/);
    const { sags } = JSON.parse((await sagwright(['measured', '-', '--json'], job(400))).out);
    expect(sags[0].sag.value).toBeCloseTo(0.0385, 12);
  });

  test('ends with 1 where something is off, and where nothing was read', async () => {
    expect((await sagwright(['measured', '-'], job(470))).code).toBe(1);
    const nothing = await sagwright(['measured', 'tourer.json']);
    expect(nothing.code).toBe(1);
    expect(nothing.out).toContain('no readings');
  });

  test('ends with 3 where a reading is of no load that there is', async () => {
    const told = JSON.parse(job(400)) as { readings: { one: { loadCase: string } } };
    told.readings.one.loadCase = 'nobody';
    const { code, errors } = await sagwright(['measured', '-'], JSON.stringify(told));
    expect(code).toBe(3);
    expect(errors).toContain('readings.one.loadCase');
  });
});

describe('sagwright worklist', () => {
  const job = (rear: object): string => writeJob(tourerWith(['fitting', { rear }]));

  test('tells what hands do, and ends with 0', async () => {
    const { code, out, errors } = await sagwright(['worklist', '-'], job({}));
    expect([code, errors]).toEqual([0, '']);
    expect(out).toContain('LEFT: Take the old shock out. [out-left]');
  });

  test('takes steps as done, and refuses what is none with 2', async () => {
    const done = await sagwright(['worklist', '-', '--done', 'found,loosen', '--json'], job({}));
    expect(JSON.parse(done.out).rear.done.map(({ step }: { step: string }) => step)).toEqual([
      'found',
      'loosen',
    ]);
    const { code, errors } = await sagwright(['worklist', '-', '--done', 'polish'], job({}));
    expect(code).toBe(2);
    expect(errors).toContain('no step "polish"');
  });

  test('ends with 1 where a part does not fit, and where nothing is being fitted', async () => {
    expect((await sagwright(['worklist', '-'], job({ mountOffset: q(9, 'mm') }))).code).toBe(1);
    const nothing = await sagwright(['worklist', 'tourer.json']);
    expect(nothing.code).toBe(1);
    expect(nothing.out).toContain('Nothing is being fitted');
  });

  test('ends with 3 where a torque is not from the manual', async () => {
    const told = JSON.parse(job({})) as { fitting: { rear: object } };
    told.fitting.rear = { torques: { topBolt: { value: q(40, 'N·m', 'memory') } } };
    const { code, errors } = await sagwright(['worklist', '-'], JSON.stringify(told));
    expect(code).toBe(3);
    expect(errors).toMatch(/a\s+torque\s+is\s+kept\s+only\s+as\s+somebody\s+read\s+it/);
  });
});

describe('sagwright new', () => {
  const answers = ['92', '150 lb ± 5 lb', '?', '198 kg', '2', '120 lbf/in', '14,5', '24'];
  const entries: FirstEntries = {
    rider: { value: 92, unit: 'kg' },
    passenger: { value: 150, unit: 'lb', plusMinus: { value: 5, unit: 'lb' } },
    behind: null,
    rear: { value: 198, unit: 'kg' },
    shocks: 2,
    rate: { value: 120, unit: 'lbf/in' },
    collarNow: { value: 14.5, unit: 'mm' },
    collarMost: { value: 24, unit: 'mm' },
  };

  function written(name: string): JobDocument {
    const read = readJob(readFileSync(join(folder, name), 'utf8'));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    return read.job;
  }

  test('makes the job of eight piped answers, units as typed, says what nobody read, and it can be planned', async () => {
    const { code, out, errors } = await sagwright(['new', 'first.json'], `${answers.join('\n')}\n`);
    expect(errors).toBe('');
    expect(code).toBe(0);
    const job = firstJob(entries, 'first');
    expect(written('first.json')).toEqual(job);
    expect(out.replace(/\s+/g, ' ')).toContain(job.note);
    const planned = await sagwright(['plan', 'first.json']);
    expect([0, 1]).toContain(planned.code);
    expect(planned.out).toContain('Worth reading first');
    const checked = await sagwright(['check', 'first.json']);
    expect(checked.out.replace(/\s+/g, ' ')).toContain(job.note);
  });

  test('asks eight entries', async () => {
    const { out } = await sagwright(['new', 'eight.json'], `${answers.join('\n')}\n`);
    const asked = out.split('\n').filter((line) => /\)(?:: )\S/.test(line));
    expect(asked.length).toBe(8);
  });

  test('asks again where a figure could be two, lies out of bounds or measures something else', async () => {
    const stubborn = [...answers.slice(0, 3), '1,234', '1760 t', '5000', ...answers.slice(3)];
    const { code, out } = await sagwright(['new', 'again.json'], `${stubborn.join('\n')}\n`);
    expect(code).toBe(0);
    expect(out).toContain('Write 1234 or 1.2340');
    expect(out).toContain('"t" is no unit known here');
    expect(out).toContain('5000 kg; allowed: 1 kg to 2000 kg');
    expect(written('again.json')).toEqual(firstJob(entries, 'again'));
  });

  test('asks for both readings of a collar again where it stands beyond its end', async () => {
    const beyond = [...answers.slice(0, 6), '30', '24', ...answers.slice(6)];
    const { code, out } = await sagwright(['new', 'beyond.json'], `${beyond.join('\n')}\n`);
    expect(code).toBe(0);
    expect(out).toContain('The collar stands beyond its tightest end.');
    expect(written('beyond.json')).toEqual(firstJob(entries, 'beyond'));
  });

  test('keeps a needed figure needed, and tells how to come by it', async () => {
    const shy = [...answers.slice(0, 3), "don't know", ...answers.slice(3)];
    const { code, out } = await sagwright(['new', 'shy.json'], `${shy.join('\n')}\n`);
    expect(code).toBe(0);
    expect(out).toContain('This one is needed. A platform scale under the wheel');
  });

  test('takes a shock without a collar, and a single shock', async () => {
    const plain = ['80', '', '', '160', '1', '95', 'none'];
    const { code } = await sagwright(['new', 'plain.json'], `${plain.join('\n')}\n`);
    expect(code).toBe(0);
    expect(written('plain.json').machine.rear.shock).toEqual({ count: 1, adjuster: { kind: 'none' } });
  });

  test('never writes over a file unasked', async () => {
    const before = readFileSync(join(folder, 'tourer.json'), 'utf8');
    for (const input of ['no\n', '', `maybe\nno\n${answers.join('\n')}\n`]) {
      const { code } = await sagwright(['new', 'tourer.json'], input);
      expect(code).toBe(2);
      expect(readFileSync(join(folder, 'tourer.json'), 'utf8')).toBe(before);
    }
    writeFileSync(join(folder, 'old.json'), '{}');
    const { code } = await sagwright(['new', 'old.json'], `yes\n${answers.join('\n')}\n`);
    expect(code).toBe(0);
    expect(readFileSync(join(folder, 'old.json'), 'utf8')).toContain('sagwright-job');
  });

  test('writes nothing where the answers end early, and ends with 2', async () => {
    const { code, errors } = await sagwright(['new', 'short.json'], '176\n198\n');
    expect(code).toBe(2);
    expect(errors).toContain('nothing was written');
    expect(existsSync(join(folder, 'short.json'))).toBe(false);
  });
});

describe('The command line', () => {
  test.each([
    [['--help']],
    [['plan', '--help']],
    [['check', '--help']],
    [['why', '-h']],
    [['new', '--help']],
    [['measured', '--help']],
    [['worklist', '--help']],
  ])('%j teaches by example and names the exit codes', async (args) => {
    const { code, out } = await sagwright(args);
    expect(code).toBe(0);
    expect(out).toMatch(/ {2}sagwright \w+/);
    expect(out).toContain('Exit code');
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test('--version is that of the package', async () => {
    const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
    expect((await sagwright(['--version'])).out).toBe(`sagwright ${version}\n`);
  });

  test.each([
    [[], ''],
    [['plot', 'x.json'], 'No command "plot"'],
    [['plan'], 'A job file is needed'],
    [['plan', 'a.json', 'b.json'], 'One job file at a time'],
    [['plan', 'tourer.json', '--unit', 'metric'], '--unit'],
    [['plan', 'tourer.json', '--units', 'stone'], 'typed, metric, imperial'],
    [['why', 'tourer.json'], 'No figure "tourer.json"'],
    [['why', 'sag', 'tourer.json', '--end', 'middle'], 'rear or front'],
  ])('%j is not understood: ends with 2, says why and points to the help', async (args, why) => {
    const { code, out, errors } = await sagwright(args);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(errors).toContain(why);
    expect(errors).toMatch(/--help/);
  });

  test('the tourer of these tests is plain data that JSON holds', () => {
    expect(JSON.parse(JSON.stringify(tourerData()))).toEqual(tourerData());
  });
});
