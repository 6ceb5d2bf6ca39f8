import { broken as words } from '../words/files.ts';
import { type BrokenRead, type ReadFile, readFile, unreadable } from './readFile.ts';

/** A file that was opened: a job, a template, or what is wrong with it. */
export type OpenedFile = Exclude<ReadFile, BrokenRead> | BrokenFileOpened;

export interface BrokenFileOpened extends BrokenRead {
  readonly name: string;
  /** The file itself, to be saved again to the letter; null where it could not be had. */
  readonly file: File | null;
}

/** Four million characters, as many as a job may have, take no more than this. */
const bytesAtMost = 16_000_000;

/** Opens a file that was picked, dropped or brought along. */
export async function openFile(file: File): Promise<OpenedFile> {
  const { name, size } = file;
  if (size > bytesAtMost) return { ...unreadable(words.tooLarge(size / 1e6)), name, file };
  try {
    const read = readFile(await file.text());
    return read.kind === 'broken' ? { ...read, name, file } : read;
  } catch (error) {
    // A folder, or a file that was taken away meanwhile, is given by no browser.
    if (!(error instanceof DOMException)) throw error;
    return notHad(name, words.notGiven(error.message));
  }
}

/** A file that could not be had at all. */
export function notHad(name: string, why: string): BrokenFileOpened {
  return { ...unreadable(why), name, file: null };
}
