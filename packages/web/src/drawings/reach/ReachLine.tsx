import { memo } from 'react';
import { useSame } from '../../app/useSame.ts';
import { Lettering } from '../Lettering.tsx';
import type { ReachInput } from './reachInput.ts';
import type { ReachLaneMark } from './reachLaneMark.ts';
import { reachLine, reachLineSentence } from './reachLine.ts';
import '../drawing.css';
import './ReachLine.css';

interface ReachLineProps {
  readonly input: ReachInput;
  readonly width: number;
}

/** One spring's reach: where the adjuster must stand for each load. Paint only: `reachLine` says where everything stands. */
export const ReachLine = memo(function ReachLine({ input, width }: ReachLineProps) {
  const marks = useSame(reachLine(input, { width }));
  return (
    <figure className="drawing reach" style={{ width }}>
      <svg width={width} height={marks.height} aria-hidden="true">
        <rect className="reach-column" {...marks.column} />
        <path
          className="reach-ticks"
          d={marks.ticks.map(({ x, y, length }) => `M${x} ${y}v${-length}`).join('')}
        />
        {marks.steps.length > 0 && (
          <path
            className="reach-steps"
            d={marks.steps.map((x) => `M${x} 0V${marks.column.height}`).join('')}
          />
        )}
        {marks.stops.map((stop) => (
          <rect key={stop.x} className="reach-stop" {...stop} />
        ))}
        {marks.lanes.map((lane) => (
          <Lane key={lane.id} lane={lane} />
        ))}
      </svg>
      <ul className="spoken">
        {input.lanes.map((lane) => (
          <li key={lane.id}>{reachLineSentence(lane, input.counts)}</li>
        ))}
      </ul>
    </figure>
  );
});

const Lane = memo(function Lane({ lane }: { lane: ReachLaneMark }) {
  const { bar, reached, doubt, ground } = lane;
  return (
    <g
      className="reach-lane"
      data-verdict={lane.verdict ?? lane.kind}
      data-cut={reached !== null || undefined}
    >
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
});
