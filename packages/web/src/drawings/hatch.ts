import type { Box } from './box.ts';

/** An SVG path of lines at 45°, rising to the right, `spacing` px apart along x, that fill a box and stay inside it. */
export function hatch(box: Box, spacing: number): string {
  const lines: string[] = [];
  const right = box.x + box.width;
  const bottom = box.y + box.height;
  const last = right + bottom;
  for (let sum = Math.ceil((box.x + box.y + 1) / spacing) * spacing; sum < last; sum += spacing) {
    const fromX = Math.max(box.x, sum - bottom);
    const toX = Math.min(right, sum - box.y);
    if (toX - fromX > 1) lines.push(`M${at(fromX)} ${at(sum - fromX)}L${at(toX)} ${at(sum - toX)}`);
  }
  return lines.join('');
}

/** Where a mark that points is painted: half a px is as fine as an eye sees it move, and it stands still under less. */
export function halfPx(coordinate: number): number {
  return Math.round(coordinate * 2) / 2;
}

/** A coordinate as it is written into a path: a tenth of a px is finer than any screen shows. */
export function at(coordinate: number): string {
  return String(Math.round(coordinate * 10) / 10);
}
