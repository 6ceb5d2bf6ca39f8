import type { Output } from './terminal/output.ts';
import { harmless, wrap } from './terminal/text.ts';

/** What keeps a file from being planned: the place in the file, then what was found there and what to do. */
export interface FileProblem {
  readonly path: string;
  readonly message: string;
}

export function problemLines(
  name: string,
  problems: readonly FileProblem[],
  { width, paint }: Pick<Output, 'width' | 'paint'>,
): readonly string[] {
  const count = problems.length === 1 ? 'one problem' : `${problems.length} problems`;
  return [
    paint(`${harmless(name)}: ${count}`, 'attention'),
    ...problems.flatMap(({ path, message }) => [
      `  ${paint(path === '' ? '(the whole file)' : harmless(path), 'strong')}`,
      ...wrap(harmless(message), width, '    '),
    ]),
  ];
}
