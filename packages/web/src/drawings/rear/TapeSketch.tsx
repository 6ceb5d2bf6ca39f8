import type { ListedLength } from '@sagwright/workbench/result/tapeList';
import { useWidth } from '../../app/useWidth.ts';
import { Lettering } from '../Lettering.tsx';
import { Spot } from './Spot.tsx';
import { type SketchKind, tapeSketch } from './tapeSketch.ts';
import '../drawing.css';
import './rearPlots.css';

interface TapeSketchProps {
  readonly kind: SketchKind;
  readonly length: ListedLength['wanted'];
  /** What each numbered point is. */
  readonly points: (part: string) => string;
  readonly spoken: string;
}

/** Where one length is taken. Paint only: `tapeSketch` says where everything stands. */
export function TapeSketch({ kind, length, points, spoken }: TapeSketchProps) {
  const [ref, width] = useWidth<HTMLElement>();
  const marks = width > 0 ? tapeSketch(kind, length, Math.min(width, WIDEST)) : null;
  return (
    <figure className="drawing tape-sketch" ref={ref}>
      {marks !== null && (
        <>
          <svg width={Math.min(width, WIDEST)} height={marks.height} aria-hidden="true">
            {marks.bars.map(({ bar, path }) => (
              <path key={bar} className="parts-bar tape-bar" data-bar={bar} d={path} />
            ))}
            <path className="tape-level" d={marks.level} />
            <path className="tape-length" d={marks.length} />
            {marks.points.map((point) => (
              <Spot key={point.part} point={point} />
            ))}
            <Lettering texts={marks.points.map(({ number }) => number)} className="lettering-over" />
          </svg>
          <ol className="parts-points">
            {marks.points.map(({ part }) => (
              <li key={part}>{points(part)}</li>
            ))}
          </ol>
        </>
      )}
      <p className="spoken">{spoken}</p>
    </figure>
  );
}

const WIDEST = 520;
