import type { Point } from '../box.ts';
import { centredBaseline, TEXT_MIN, type TextMark, textWidth } from '../lettering.ts';

/** How far the selected thing is from the rear axle. */
export interface DimensionMark {
  readonly from: Point;
  readonly to: Point;
  readonly text: TextMark;
}

/** The words stand in the middle of the line where they fit, else beyond the thing's end of it, else beyond the axle. */
export function dimensionOf(
  words: string,
  axleX: number,
  thingX: number,
  y: number,
  width: number,
): DimensionMark {
  const room = textWidth(words, TEXT_MIN) + 12;
  const away = thingX < axleX ? -1 : 1;
  const beyond = thingX + away * 8;
  const text = (x: number, align: TextMark['align']): TextMark => ({
    text: words,
    x,
    y: centredBaseline(y, TEXT_MIN),
    size: TEXT_MIN,
    align,
    bold: false,
  });
  const outward = away < 0 ? 'end' : 'start';
  const inward = away < 0 ? 'start' : 'end';
  const fitsBeyond = away < 0 ? beyond > room : beyond + room < width;
  return {
    from: { x: axleX, y },
    to: { x: thingX, y },
    text:
      Math.abs(thingX - axleX) > room + 24
        ? text((axleX + thingX) / 2, 'middle')
        : fitsBeyond
          ? text(beyond, outward)
          : text(axleX - away * 12, inward),
  };
}
