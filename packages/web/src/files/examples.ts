import { examples as words } from '../words/files.ts';

/** The files of the examples, each fetched when it is opened. */
const texts = import.meta.glob<string>('../../../../examples/*.json', { query: '?raw', import: 'default' });

export interface Example {
  readonly title: string;
  /** What it shows, in a line. */
  readonly story: string;
  readonly file: () => Promise<File>;
}

export const examples: readonly Example[] = words.map(([name, title, story]) => ({
  title,
  story,
  file: async () => new File([await texts[`../../../../examples/${name}.json`]!()], `${name}.json`),
}));
