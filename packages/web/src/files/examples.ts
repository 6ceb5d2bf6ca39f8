/** The examples, each fetched when it is opened. */
const texts = import.meta.glob<string>('../../../../examples/*.json', { query: '?raw', import: 'default' });

export interface Example {
  readonly name: string;
  readonly text: () => Promise<string>;
}

export const examples: readonly Example[] = Object.entries(texts)
  .map(([path, text]) => ({ name: path.slice(path.lastIndexOf('/') + 1, -'.json'.length), text }))
  .sort((a, b) =>
    a.name === 'two-and-a-box' ? -1 : b.name === 'two-and-a-box' ? 1 : a.name < b.name ? -1 : 1,
  );

/** What each example shows, in a line. */
export const exampleWords: Readonly<Record<string, string>> = {
  'two-and-a-box': 'A heavy tourer, five loads, six pairs of springs',
  'long-legs': 'One shock, its ratio taped point by point; clicks and caps',
  'light-standard': 'Two-stage springs, a stepped cam, spacers in the fork',
  'too-much-aboard': 'Over the axle limit with a full tank: refused',
  'least-figures': 'As little as gives an honest plan; the rest assumed and said',
  'nothing-fits': 'No spring at hand holds both loads; what would',
  'weighed-aboard': 'A load given by two scales; a spring measured from its wire',
};
