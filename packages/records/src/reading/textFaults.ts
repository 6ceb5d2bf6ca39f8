/** The first place where a text is no JSON, and what would have to stand there. */
export interface TextFault {
  readonly offset: number;
  readonly needed: string;
}

/** A name that an object has twice: a reader keeps the last and drops the other without a word. */
export interface NameTwice {
  readonly path: readonly (string | number)[];
  readonly offset: number;
}

/** An object with its names so far, or a list; and the name or place in it that is being read. */
interface Frame {
  readonly names: Set<string> | undefined;
  at: string | number;
}

interface Scan {
  readonly text: string;
  readonly frames: Frame[];
  readonly twice: NameTwice[];
  offset: number;
  next: 'value' | 'name' | 'comma or end';
}

/**
 * Reads through a text as JSON (RFC 8259) for what `JSON.parse` does not say, or not alike in every browser: the place
 * of the first fault, and names that are there twice. Keeps its own stack, so that no depth exhausts it.
 */
export function textFaults(text: string): {
  readonly fault?: TextFault;
  readonly twice: readonly NameTwice[];
} {
  const scan: Scan = { text, frames: [], twice: [], offset: 0, next: 'value' };
  const steps = { value: readValue, name: readName, 'comma or end': readCommaOrEnd };
  // Every step moves on by a character at least, or finds a fault, or the end.
  for (;;) {
    skipBlanks(scan);
    if (scan.next === 'comma or end' && scan.frames.length === 0 && scan.offset === text.length) return scan;
    const fault = steps[scan.next](scan);
    if (fault) return { fault, twice: scan.twice };
  }
}

function readValue(scan: Scan): TextFault | undefined {
  const opening = scan.text[scan.offset];
  if (opening === '{' || opening === '[') {
    scan.offset += 1;
    skipBlanks(scan);
    scan.frames.push(opening === '{' ? { names: new Set(), at: '' } : { names: undefined, at: 0 });
    const isEmpty = scan.text[scan.offset] === (opening === '{' ? '}' : ']');
    scan.next = isEmpty ? 'comma or end' : opening === '{' ? 'name' : 'value';
    return undefined;
  }
  if (opening === '"') return readText(scan);
  const word = wordAt(scan);
  if (!isScalar(word)) return { offset: scan.offset, needed: 'a value' };
  scan.offset += word.length;
  scan.next = 'comma or end';
  return undefined;
}

function readName(scan: Scan): TextFault | undefined {
  const start = scan.offset;
  if (scan.text[start] !== '"') return { offset: start, needed: 'a name in quotation marks' };
  const fault = readText(scan);
  if (fault) return fault;
  const frame = scan.frames.at(-1)!;
  const name: unknown = JSON.parse(scan.text.slice(start, scan.offset));
  frame.at = String(name);
  if (frame.names!.has(frame.at)) scan.twice.push({ path: scan.frames.map(({ at }) => at), offset: start });
  frame.names!.add(frame.at);
  skipBlanks(scan);
  if (scan.text[scan.offset] !== ':') return { offset: scan.offset, needed: 'a colon' };
  scan.offset += 1;
  scan.next = 'value';
  return undefined;
}

function readCommaOrEnd(scan: Scan): TextFault | undefined {
  const frame = scan.frames.at(-1);
  const sign = scan.text[scan.offset];
  if (!frame) return { offset: scan.offset, needed: 'the end of the file' };
  const closing = frame.names ? '}' : ']';
  if (sign === closing) scan.frames.pop();
  else if (sign !== ',') return { offset: scan.offset, needed: `a comma or ${closing}` };
  else {
    scan.next = frame.names ? 'name' : 'value';
    if (typeof frame.at === 'number') frame.at += 1;
  }
  scan.offset += 1;
  return undefined;
}

/** Reads a text in quotation marks, from the first to behind the last. */
function readText(scan: Scan): TextFault | undefined {
  const { text } = scan;
  let i = scan.offset + 1;
  while (text[i] !== '"') {
    if (i >= text.length || text[i]! < ' ') return { offset: i, needed: 'a closing quotation mark' };
    if (text[i] === '\\') {
      const known = /^\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/.exec(text.slice(i, i + 6));
      if (!known) return { offset: i, needed: 'a known escape' };
      i += known[0].length;
    } else i += 1;
  }
  scan.offset = i + 1;
  scan.next = 'comma or end';
  return undefined;
}

/** The longest run of letters, digits and signs that a number, true, false or null is made of. */
function wordAt({ text, offset }: Scan): string {
  let end = offset;
  while (end < text.length && /[-+.0-9A-Za-z]/.test(text[end]!)) end += 1;
  return text.slice(offset, end);
}

function isScalar(word: string): boolean {
  return /^(?:true|false|null|-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][-+]?[0-9]+)?)$/.test(word);
}

function skipBlanks(scan: Scan): void {
  while (scan.offset < scan.text.length && ' \t\n\r'.includes(scan.text[scan.offset]!)) scan.offset += 1;
}
