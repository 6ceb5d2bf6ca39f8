import { Lettering } from '../Lettering.tsx';
import type { ReachInput, ReachSpan } from './reachInput.ts';
import type { ReachLaneMark } from './reachLaneMark.ts';
import { reachAxis, reachLine, reachLineSentence } from './reachLine.ts';
import '../drawing.css';
import './ReachLine.css';

/** One spring's reach: where the collar must stand for each load. Paint only: `reachLine` says where everything stands. */
export function ReachLine({ input, width }: { readonly input: ReachInput; readonly width: number }) {
  const marks = reachLine(input, { width });
  return (
    <figure className="drawing reach" style={{ width }}>
      <svg width={width} height={marks.height} aria-hidden="true">
        <rect className="reach-column" {...marks.column} />
        <path
          className="reach-ticks"
          d={marks.ticks.map(({ x, y, length }) => `M${x} ${y}v${-length}`).join('')}
        />
        {marks.stops.map((stop) => (
          <rect key={stop.x} className="reach-stop" {...stop} />
        ))}
        {marks.lanes.map((lane) => (
          <Lane key={lane.id} lane={lane} />
        ))}
      </svg>
      <ul className="spoken">
        {input.lanes.map((lane) => (
          <li key={lane.id}>{reachLineSentence(lane)}</li>
        ))}
      </ul>
    </figure>
  );
}

/** The numbers of the scale that all rows share, once over them. */
export function ReachAxis({ domain, width }: { readonly domain: ReachSpan; readonly width: number }) {
  return (
    <svg className="reach-axis" width={width} height={20} aria-hidden="true">
      <Lettering texts={reachAxis(domain, width)} className="lettering-quiet" />
    </svg>
  );
}

function Lane({ lane }: { lane: ReachLaneMark }) {
  const { bar, reached, doubt, ground } = lane;
  return (
    <g className="reach-lane" data-verdict={lane.verdict ?? lane.kind}>
      {doubt !== null && (
        <path
          className="reach-doubt"
          d={`M${doubt.from} ${doubt.y - 6}v12M${doubt.from} ${doubt.y}H${doubt.to}M${doubt.to} ${doubt.y - 6}v12`}
        />
      )}
      {ground !== null && <rect className="reach-ground" rx={4} {...ground} />}
      {bar !== null && <rect className="reach-bar" rx={4} {...bar} />}
      {reached !== null && <rect className="reach-reached" {...reached} />}
      {lane.letter !== null && (
        <Lettering
          texts={[lane.letter]}
          className={lane.letter.onFilled ? 'reach-letter-filled' : 'reach-letter'}
        />
      )}
      <Lettering texts={lane.labels} className="reach-label" />
    </g>
  );
}
