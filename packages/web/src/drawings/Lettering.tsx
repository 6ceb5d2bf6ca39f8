import type { TextMark } from './lettering.ts';

const ANCHORS = { start: 'start', middle: 'middle', end: 'end' } as const;

/** Texts of a drawing, where they were laid out. */
export function Lettering({ texts, className }: { texts: readonly TextMark[]; className?: string }) {
  return texts.map((mark) => (
    <text
      key={`${mark.text} ${mark.x} ${mark.y}`}
      className={`lettering ${className ?? ''}`}
      x={mark.x}
      y={mark.y}
      fontSize={mark.size}
      fontWeight={mark.bold ? 700 : 400}
      textAnchor={ANCHORS[mark.align]}
    >
      {mark.text}
    </text>
  ));
}
