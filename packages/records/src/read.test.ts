import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseJob, readJob } from './read.ts';
import { arbitraryJob } from './testing/arbitraryJob.ts';
import { leastJob, leastJobWith } from './testing/leastJob.ts';
import { writeJob } from './write.ts';

/** What is wrong, as "path: code", and the first message. */
function refusal(result: ReturnType<typeof readJob>) {
  if (result.ok) throw new Error('read without a problem');
  return {
    problems: result.problems.map(({ path, code }) => `${path}: ${code}`),
    message: result.problems[0]!.message,
    partial: result.partial,
  };
}

describe('a job file', () => {
  test('with the least fields is read', () => {
    const result = readJob(JSON.stringify(leastJob()));
    expect(result).toEqual({ ok: true, job: leastJob() });
  });

  test('may begin with a byte order mark', () => {
    expect(readJob(`\uFEFF${JSON.stringify(leastJob())}`).ok).toBe(true);
  });

  test('that is no JSON is refused with line and column', () => {
    const { problems, message } = refusal(readJob('{\n  "format": "sagwright-job",\n  version: 1\n}'));
    expect(problems).toEqual([': notJson']);
    expect(message).toContain('line 3, column 3');
    expect(message).toContain('found "v" where a name in quotation marks is needed');
  });

  test('cut off in the middle says that it ends', () => {
    const text = JSON.stringify(leastJob());
    const { message } = refusal(readJob(text.slice(0, text.length / 2)));
    expect(message).toMatch(/line 1, column \d+ on: found the end of the file/);
  });

  test('that is empty says that it ends', () => {
    expect(refusal(readJob('')).message).toContain('found the end of the file where a value is needed');
  });

  test('of over 4 million characters is not even looked at', () => {
    const { problems, message } = refusal(readJob(' '.repeat(4_000_001)));
    expect(problems).toEqual([': fileTooLong']);
    expect(message).toContain('4 million at most');
  });

  test('of a megabyte of noise is refused at its first character', () => {
    let state = 1;
    const noise = Array.from({ length: 1_000_000 }, () => {
      state = (state * 48271) % 2147483647; // Park and Miller's generator
      return String.fromCharCode(33 + (state % 90));
    });
    expect(refusal(readJob(noise.join(''))).message).toContain('line 1, column 1');
  });

  test.each(['[', '{"a":'])('nested 10 000 deep by %s is refused without being followed', (opening) => {
    const closing = opening === '[' ? ']' : '}';
    const text = `${opening.repeat(10_000)}1${closing.repeat(10_000)}`;
    const { problems, partial } = refusal(readJob(text));
    expect(problems).toEqual([': tooDeep']);
    expect(partial).toBeUndefined();
  });

  test('with a name twice is refused, since one of the two would be lost', () => {
    const text = JSON.stringify(leastJob(), null, 2).replace('"springs": {', '"springs": {\n"a": 1,');
    const { problems, message } = refusal(readJob(text));
    expect(problems).toEqual(['springs.a: nameTwice']);
    expect(message).toMatch(/"a" is there twice, the second time in line \d+/);
  });

  test.each(['__proto__', 'constructor', 'prototype'])(
    'with a field named %s reaches no other object',
    (name) => {
      const text = JSON.stringify(leastJob()).replace('"things":{}', `"things":{"${name}":{"order":1}}`);
      expect(refusal(readJob(text)).problems).toEqual([`things.${name}: forbiddenName`]);
      expect(({} as { order?: number }).order).toBeUndefined();
    },
  );

  test('of another kind is not judged as a job', () => {
    expect(refusal(readJob('[1, 2]')).problems).toEqual([': notAJob']);
    expect(refusal(readJob('null')).problems).toEqual([': notAJob']);
    expect(refusal(readJob('{"format": "recipe"}')).problems).toEqual(['format: notAJob']);
  });

  test('of a newer version is refused and left alone', () => {
    const { problems, message, partial } = refusal(parseJob({ ...leastJob(), version: 7, tyres: [] }));
    expect(problems).toEqual(['version: newerVersion']);
    expect(message).toContain('made by a newer Sagwright (version 7); this one reads 1; nothing was changed');
    expect(partial).toHaveProperty('tyres');
  });

  test.each([0, -1, '1', null, undefined])('of version %j is refused', (version) => {
    expect(refusal(parseJob({ ...leastJob(), version })).problems).toEqual(['version: wrongVersion']);
  });

  test('with problems still shows what it holds', () => {
    const spoiled = leastJobWith(['machine.wheelbase', { value: 3, unit: 'kg' }]);
    expect(refusal(readJob(JSON.stringify(spoiled))).partial).toEqual(spoiled);
  });

  test('with thousands of problems lists 200 and counts the rest', () => {
    const unknown = Object.fromEntries(Array.from({ length: 1000 }, (_, i) => [`field${i}`, i]));
    const result = parseJob({ ...leastJob(), ...unknown });
    if (result.ok) throw new Error('read without a problem');
    expect(result.problems).toHaveLength(201);
    expect(result.problems.at(-1)!.message).toContain('800 more problems');
  });

  test('that was written is read back as it was, whatever the job', () => {
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        expect(readJob(writeJob(job))).toEqual({ ok: true, job });
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  test('of any text is read or refused, and never fails otherwise', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.json()), (text) => {
        const result = readJob(text);
        expect(result.ok || result.problems.length > 0).toBe(true);
      }),
      { seed: 4, numRuns: 1000 },
    );
  });

  test('with any JSON value in any of its places is read or refused', () => {
    fc.assert(
      fc.property(
        arbitraryJob,
        fc.jsonValue(),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (job, value, share) => {
          const spoiled = structuredClone(job) as unknown;
          const places = placesOf(spoiled);
          const { group, name } = places[Math.floor(share * (places.length - 1))]!;
          group[name] = value;
          const result = parseJob(spoiled);
          expect(result.ok || result.problems.every(({ message }) => !/undefined|NaN/.test(message))).toBe(
            true,
          );
        },
      ),
      { seed: 5, numRuns: 500 },
    );
  });
});

/** Every place in a value that can be overwritten. */
function placesOf(value: unknown): { group: Record<string, unknown>; name: string }[] {
  if (typeof value !== 'object' || value === null) return [];
  const group = value as Record<string, unknown>;
  return Object.keys(group).flatMap((name) => [{ group, name }, ...placesOf(group[name])]);
}

test('jobs for property tests know their rear in every way, and linkages are of every arrangement', () => {
  const seen = fc.sample(arbitraryJob, { seed: 31, numRuns: 300 }).map(({ machine: { rear } }) => {
    const { travel } = rear;
    return travel.kind === 'linkage'
      ? `rocker on ${travel.rocker.on}, eye on ${travel.farEye.on}`
      : travel.kind;
  });
  expect([...new Set(seen)].sort()).toEqual([
    'direct',
    'leverage',
    'motion',
    'rocker on arm, eye on arm',
    'rocker on arm, eye on frame',
    'rocker on frame, eye on arm',
    'rocker on frame, eye on frame',
    'table',
    'taped',
  ]);
});
