import { at } from '../hatch.ts';

const APART = 18;
const DROP = 8;

/** Short strokes under the ground line: the draughtsman's sign for solid ground. */
export function hatchMarks(width: number, groundY: number): string {
  const strokes: string[] = [];
  for (let x = APART; x < width - 4; x += APART)
    strokes.push(`M${at(x)} ${at(groundY + 1)}l${-DROP} ${DROP}`);
  return strokes.join('');
}
