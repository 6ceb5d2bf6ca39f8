import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jobFileName } from './fileName.ts';

test.each([
  ['Pepper and Linnet, Hesterness landing', 'pepper-and-linnet-hesterness-landing.json'],
  ['Überfahrt №3', 'uberfahrt-no3.json'],
  ['...', 'job.json'],
  ['../../etc/passwd', 'etc-passwd.json'],
  [undefined, 'job.json'],
])('%s is saved as %s', (name, file) => {
  expect(jobFileName(name)).toBe(file);
});

test('any name gives a short plain file name', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (name) => {
      expect(jobFileName(name)).toMatch(/^[a-z0-9]([a-z0-9-]{0,58}[a-z0-9])?\.json$/);
    }),
    { seed: 5 },
  );
});
