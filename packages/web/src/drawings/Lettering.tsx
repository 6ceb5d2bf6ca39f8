import { byPlace } from './byPlace.ts';
import type { TextMark } from './lettering.ts';

const ANCHORS = { start: 'start', middle: 'middle', end: 'end' } as const;

/**
 * Texts of a drawing, where they were laid out, to the whole px. Each is known by its place among them: when a figure changes, its
 * text is moved and rewritten. Moved by a transform, which lays no letters out anew.
 */
export function Lettering({ texts, className }: { texts: readonly TextMark[]; className?: string }) {
  return byPlace(texts, (mark) => letters(mark, className));
}

function letters(mark: TextMark, className: string | undefined) {
  return (
    <text
      className={className === undefined ? 'lettering' : `lettering ${className}`}
      transform={`translate(${Math.round(mark.x)} ${Math.round(mark.y)})`}
      fontSize={mark.size}
      fontWeight={mark.bold ? 700 : 400}
      textAnchor={ANCHORS[mark.align]}
    >
      {mark.text}
    </text>
  );
}
