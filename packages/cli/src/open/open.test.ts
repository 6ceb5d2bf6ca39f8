import { expect, test } from 'vitest';
import type { ExitCode } from '../exit.ts';
import { outputTo } from '../terminal/output.ts';
import type { Misused } from '../usage.ts';
import { open } from './open.ts';

async function opened(args: readonly string[]): Promise<{ answer: ExitCode | Misused; errors: string }> {
  const said: string[] = [];
  const silent = { ...outputTo(process.stdout), write: () => undefined };
  const answer = await open(args, silent, { ...silent, write: (text) => void said.push(text) });
  return { answer, errors: said.join('') };
}

test.each([
  ['no-such.json', 'there is no such file'],
  ['.', 'this is a folder'],
])('%s is not served, and why is told', async (file, why) => {
  const { answer, errors } = await opened(['--no-browser', file]);
  expect(answer).toBe(3);
  expect(errors).toContain(`${file}: ${why}`);
});

test.each([
  [['a.json', 'b.json'], 'a.json, b.json'],
  [['--port', '7.5'], '7.5'],
  [['--port', '70000'], '70000'],
  [['--port', ''], '--port'],
  [['--colour'], '--colour'],
])('%j is not understood', async (args, found) => {
  const { answer } = await opened(args);
  expect(answer).toHaveProperty('misused', expect.stringContaining(found));
});
