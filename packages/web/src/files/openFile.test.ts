import { expect, test } from 'vitest';
import { openFile } from './openFile.ts';

test('bytes that are no text are given back to the byte', async () => {
  const bytes = Uint8Array.from({ length: 1_000_000 }, (_, i) => (i * 197 + 128) % 256);
  const opened = await openFile(new File([bytes], 'noise.json'));
  if (opened.kind !== 'broken' || opened.file === null) throw new Error('the file is not there');
  expect(opened.problems).toHaveLength(1);
  const back = new Uint8Array(await opened.file.arrayBuffer());
  expect(back).toHaveLength(bytes.length);
  expect(back.findIndex((byte, i) => byte !== bytes[i])).toBe(-1);
});

test('a file larger than any job is not read', async () => {
  const file = new File([new Uint8Array(16_000_001)], 'film.json');
  file.text = () => Promise.reject(new Error('it was read'));
  const opened = await openFile(file);
  expect(opened.kind === 'broken' && opened.problems[0]!.message).toContain('16 MB');
});

test('a file that the browser does not hand over is told, and cannot be saved again', async () => {
  const file = new File([], 'folder');
  file.text = () => Promise.reject(new DOMException('it is a folder', 'NotReadableError'));
  const opened = await openFile(file);
  if (opened.kind !== 'broken') throw new Error('it was read');
  expect(opened.file).toBeNull();
  expect(opened.problems[0]!.message).toContain('it is a folder');
});
