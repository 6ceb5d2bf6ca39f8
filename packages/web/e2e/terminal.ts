import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readJob } from '@sagwright/records/read';
import type { JobDocument } from '@sagwright/records/schema';
import { type Units, unitsFor } from '@sagwright/workbench/format/units';
import type { PlanDocument } from '@sagwright/workbench/result/document';

/** The terminal program as it is built, and the files that it and the page are both given. */
const root = fileURLToPath(new URL('../../..', import.meta.url));
const program = join(root, 'packages/cli/dist/main.js');

export const exampleNames = readdirSync(join(root, 'examples'))
  .filter((name) => name.endsWith('.json'))
  .map((name) => name.slice(0, -'.json'.length));

/** The terminal's plan of a job's text. Its exit code tells of fits and refusals; the plan is on its output all the same. */
export function planOf(text: string): PlanDocument {
  const folder = mkdtempSync(join(tmpdir(), 'sagwright-'));
  const file = join(folder, 'job.json');
  writeFileSync(file, text);
  try {
    return JSON.parse(
      execFileSync(process.execPath, [program, 'plan', file, '--json'], { encoding: 'utf8' }),
    );
  } catch (error) {
    const { stdout } = error as { stdout?: string };
    if (stdout === undefined || stdout === '') throw error;
    return JSON.parse(stdout) as PlanDocument;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The job that the terminal makes of answers to what it asks, called by this name. */
export function newJob(name: string, answers: readonly string[]): JobDocument {
  const folder = mkdtempSync(join(tmpdir(), 'sagwright-'));
  const file = join(folder, `${name}.json`);
  try {
    execFileSync(process.execPath, [program, 'new', file], { input: `${answers.join('\n')}\n` });
    return jobOf(readFileSync(file, 'utf8'));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** A job's text read as the program reads it. */
export function jobOf(text: string): JobDocument {
  const read = readJob(text);
  if (!read.ok) throw new Error(`no job: ${read.problems[0]?.message}`);
  return read.job;
}

/** The units in which the page shows a job. */
export function unitsOf(text: string): Units {
  return unitsFor('typed', jobOf(text), '.');
}
