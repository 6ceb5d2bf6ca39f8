/** How a piece of text stands out: said strongly, quietly, as something to do, or as something to look at. */
export type Look = 'strong' | 'quiet' | 'wanted' | 'attention';

export type Paint = (text: string, look: Look) => string;

const codes: { readonly [L in Look]: string } = {
  strong: '\u001b[1m',
  quiet: '\u001b[2m',
  wanted: '\u001b[1;32m',
  attention: '\u001b[1;35m',
};

/** Colour on a terminal, unless NO_COLOR is set (no-color.org) or the terminal says that it knows none. */
export function paintFor(isTerminal: boolean, environment: NodeJS.ProcessEnv): Paint {
  const plain = !isTerminal || Boolean(environment.NO_COLOR) || environment.TERM === 'dumb';
  return plain ? (text) => text : (text, look) => (text === '' ? '' : `${codes[look]}${text}\u001b[0m`);
}
