import type { OpenedFile } from '../files/readFile.ts';

/** The file that the terminal program was started with, where this page was opened for one (its address ends in #job). */
export async function broughtFile(): Promise<OpenedFile | null> {
  if (location.hash !== '#job') return null;
  history.replaceState(null, '', location.pathname);
  const answer = await fetch('./job.json');
  if (!answer.ok) return null;
  const { readFile } = await import('../files/readFile.ts');
  return readFile('job.json', await answer.text());
}
