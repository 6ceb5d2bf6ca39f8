/** A line of the table: a figure with its unit and, where there is one, the aim. A line without a figure is a heading. */
export interface Line {
  readonly name: string;
  readonly figure?: string;
  readonly unit?: string;
  readonly aim?: string;
}

/** The lines under one another, figures and aims flush right. */
export function tableOf(lines: readonly Line[]): string {
  const rows = lines.map(({ name, figure = '', unit = '', aim = '' }) => [
    figure === '' ? name : `  ${name}`,
    figure,
    unit,
    aim,
  ]);
  const all = [['', 'figure', 'unit', 'aim'], ...rows];
  const widths = [0, 1, 2, 3].map((column) => Math.max(...all.map((row) => row[column]!.length)));
  return all
    .map((row) => row.map((cell, i) => (i % 2 === 1 ? cell.padStart(widths[i]!) : cell.padEnd(widths[i]!))))
    .map((row) => row.join('  ').trimEnd())
    .join('\n');
}

/** A number with three significant digits, thousands apart: 1 110 000, 31.2, 0.914. */
export function rounded(value: number): string {
  const digits = Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value))));
  const [whole, part] = Number(value.toPrecision(3)).toFixed(digits).split('.');
  const apart = whole!.replace(/\B(?=(\d{3})+$)/g, ' ');
  return part === undefined ? apart : `${apart}.${part}`;
}
