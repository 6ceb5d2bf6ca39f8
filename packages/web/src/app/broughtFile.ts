import type { OpenedFile } from '../files/openFile.ts';
import { broken as words } from '../words/files.ts';

/** The file that the terminal program was started with, where the page was opened for one: its address ends in #job=name. */
export async function broughtFile(): Promise<OpenedFile | null> {
  const name = new URLSearchParams(location.hash.slice(1)).get('job');
  if (name === null) return null;
  history.replaceState(null, '', location.pathname);
  const [{ notHad, openFile }, blob] = await Promise.all([import('../files/openFile.ts'), fetched()]);
  return blob === null ? notHad(name, words.notServed) : openFile(new File([blob], name));
}

/** Null where the program that serves it has ended, or serves no job. */
async function fetched(): Promise<Blob | null> {
  try {
    const answer = await fetch('./job.json');
    return answer.ok ? answer.blob() : null;
  } catch (error) {
    if (error instanceof TypeError) return null;
    throw error;
  }
}
