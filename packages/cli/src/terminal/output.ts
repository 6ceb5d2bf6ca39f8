import { type Paint, paintFor } from './paint.ts';

/** Where a command writes, how wide it is there, and whether it may be painted. */
export interface Output {
  readonly width: number;
  readonly paint: Paint;
  readonly write: (text: string) => void;
}

const USUAL = 80;
const WIDEST = 100;
const NARROWEST = 32;

/** The lines of a page are kept short enough to be read, however wide the window. */
export function outputTo(stream: NodeJS.WriteStream): Output {
  const columns = stream.columns || USUAL;
  return {
    width: Math.max(NARROWEST, Math.min(WIDEST, columns)),
    paint: paintFor(stream.isTTY === true, process.env),
    write: (text) => stream.write(text),
  };
}
