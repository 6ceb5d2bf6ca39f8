/** Columns that a text takes on a terminal: marks take none, Chinese, Japanese and Korean signs and emoji two. */
export function columnsOf(text: string): number {
  let columns = 0;
  for (const sign of text) columns += NONE.test(sign) ? 0 : WIDE.test(sign) ? 2 : 1;
  return columns;
}

const NONE = /^(?:[\p{Mn}\p{Me}\u200b-\u200d]|\ufe0f)$/u;
const WIDE =
  /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Emoji_Presentation}\uff01-\uff60]$/u;

/**
 * A name from a file made harmless for a terminal: what would move the cursor, colour the screen or turn the direction of
 * writing becomes "?"; line breaks and tabs become blanks.
 */
export function harmless(text: string): string {
  return text.replace(/\s+/g, ' ').replace(/[\p{Cc}\u200e\u200f\u2028-\u202e\u2066-\u2069]/gu, '?');
}

/** Cuts a text that is too long, with a sign that it was cut. */
export function cutTo(text: string, columns: number): string {
  if (columnsOf(text) <= columns) return text;
  let cut = '';
  for (const sign of text) {
    if (columnsOf(cut) + columnsOf(sign) > columns - 1) break;
    cut += sign;
  }
  return `${cut.trimEnd()}…`;
}

export function padTo(text: string, columns: number, align: 'left' | 'right'): string {
  const room = ' '.repeat(Math.max(0, columns - columnsOf(text)));
  return align === 'left' ? text + room : room + text;
}

/** Breaks a text between words; lines after the first may be set in by `hanging` more. */
export function wrap(text: string, width: number, indent = '', hanging = ''): readonly string[] {
  const lines: string[] = [];
  let line = indent;
  let empty = true;
  for (const word of text.split(' ')) {
    if (!empty && columnsOf(line) + 1 + columnsOf(word) > width) {
      lines.push(line);
      line = indent + hanging;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line];
}

/** Sections of lines with an empty line between them; one without lines is left out. */
export function pageOf(sections: readonly (readonly string[])[]): string {
  const blocks = sections.filter((lines) => lines.length > 0).map((lines) => lines.join('\n').trimEnd());
  return `${blocks.join('\n\n')}\n`;
}
