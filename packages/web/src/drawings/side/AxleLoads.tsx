import { byPlace } from '../byPlace.ts';
import { halfPx } from '../hatch.ts';
import { Lettering } from '../Lettering.tsx';
import { type AxleMarks, type LoadMark, wordsBox } from './axleMarks.ts';

/** What stands on each wheel, under the ground line, with its limit. */
export function AxleLoads({ marks }: { marks: AxleMarks }) {
  return (
    <g>
      {byPlace(marks.arrows, ({ x, from, to }) => (
        <g className="side-arrow" transform={`translate(${halfPx(x)} 0)`}>
          <path d={`M0 ${from}V${to + 8}`} />
          <path className="side-arrow-head" d={`M0 ${to}L5 ${to + 13}H-5Z`} />
        </g>
      ))}
      <Load mark={marks.rear} />
      <Load mark={marks.whole} />
      <Load mark={marks.front} />
      {marks.limitsAt !== null && <Lettering texts={[marks.limitsAt]} className="lettering-quiet" />}
    </g>
  );
}

function Load({ mark }: { mark: LoadMark }) {
  const box = mark.limit.length === 0 ? null : wordsBox(mark.limit);
  return (
    <g className="side-load" data-verdict={mark.verdict}>
      {box !== null && mark.verdict === 'over' && (
        <rect className="side-load-edge" x={box.x - 8} y={box.y} width={5} height={box.height} />
      )}
      {box !== null && mark.verdict === 'unknown' && (
        <rect
          className="side-load-unknown"
          x={box.x - 4}
          y={box.y - 1}
          width={box.width + 8}
          height={box.height + 2}
          rx={4}
        />
      )}
      <Lettering texts={mark.texts.slice(0, 1)} />
      <Lettering texts={mark.texts.slice(1)} className="lettering-quiet" />
      <Lettering texts={mark.limit} className="lettering-quiet side-load-limit" />
    </g>
  );
}
