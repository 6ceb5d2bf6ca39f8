import { createInterface } from 'node:readline/promises';
import type { Readable, Writable } from 'node:stream';

/** Asks a person, or a pipe, one line at a time. */
export interface Asker {
  /** The answer; null where the answers have ended. */
  readonly ask: (prompt: string) => Promise<string | null>;
  readonly say: (text: string) => void;
  readonly close: () => void;
}

/**
 * Lines are taken one by one, so that answers that are all there from the start (a pipe) are not lost. Ctrl-C and Ctrl-D end
 * the answers. What came through a pipe is shown, so that the conversation can be read.
 */
export function askerOn(input: Readable & { isTTY?: boolean }, output: Writable): Asker {
  const isTerminal = input.isTTY === true;
  const lines = createInterface({ input, terminal: isTerminal, ...(isTerminal ? { output } : {}) });
  lines.on('SIGINT', () => lines.close());
  const next = lines[Symbol.asyncIterator]();
  return {
    ask: async (prompt) => {
      if (isTerminal) {
        lines.setPrompt(prompt);
        lines.prompt();
      } else {
        output.write(prompt);
      }
      const { done, value } = await next.next();
      output.write(isTerminal && done !== true ? '' : `${done ? '' : value}\n`);
      return done ? null : value;
    },
    say: (text) => {
      output.write(`${text}\n`);
    },
    close: () => lines.close(),
  };
}
