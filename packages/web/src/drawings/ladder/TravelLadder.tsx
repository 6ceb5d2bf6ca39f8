import { memo } from 'react';
import { Lettering } from '../Lettering.tsx';
import { centredBaseline, TEXT_FIGURE } from '../lettering.ts';
import type { LadderInput } from './ladderInput.ts';
import type { LaneMark } from './laneMark.ts';
import { aloneSign, type LadderMarks, travelLadderSentence } from './travelLadder.ts';
import { useMoved } from './useMoved.ts';
import '../drawing.css';
import './TravelLadder.css';

interface TravelLadderProps {
  readonly input: LadderInput;
  readonly marks: LadderMarks;
}

/** Where one end rests under each load. Paint only: `travelLadder` says where everything stands. */
export const TravelLadder = memo(function TravelLadder({ input, marks }: TravelLadderProps) {
  const { width, height, top, left, right, bottom } = marks;
  return (
    <figure className="drawing ladder" style={{ width }}>
      <figcaption>{input.title}</figcaption>
      <svg width={width} height={height} aria-hidden="true">
        {marks.lanes.map(
          (lane) => lane.chosen && <rect key={lane.id} className="ladder-column" {...lane.column} />,
        )}
        {marks.quarterYs.map((y) => (
          <path key={y} className="ladder-quarter" d={`M${left} ${y}H${right}`} />
        ))}
        {marks.rubber !== null && <path className="ladder-rubber" d={marks.rubber.hatch} />}
        {marks.hangsY > top + 1 && <path className="ladder-hangs" d={`M${left} ${marks.hangsY}H${right}`} />}
        <Axis left={left} top={top} bottom={bottom} ticks={marks.ticks} tickTexts={marks.tickTexts} />
        <path className="ladder-stop" d={`M${left - 16} ${top}H${right}`} />
        <path className="ladder-metal" d={`M${left - 16} ${bottom}H${right}`} />
        <Lettering texts={marks.levels} className="lettering-quiet" />
        {marks.lanes.map((lane) => (
          <Lane key={lane.id} lane={lane} />
        ))}
      </svg>
      <ul className="spoken">
        {input.lanes.map((lane) => (
          <li key={lane.id}>{travelLadderSentence(input, lane)}</li>
        ))}
      </ul>
    </figure>
  );
});

type AxisProps = Pick<LadderMarks, 'left' | 'top' | 'bottom' | 'ticks' | 'tickTexts'>;

const Axis = memo(function Axis({ left, top, bottom, ticks, tickTexts }: AxisProps) {
  return (
    <>
      <path className="ladder-axis" d={`M${left} ${top}V${bottom}`} />
      <path className="ladder-ticks" d={ticks.map(({ y, length }) => `M${left} ${y}h${-length}`).join('')} />
      <Lettering texts={tickTexts} />
    </>
  );
});

const Lane = memo(function Lane({ lane }: { lane: LaneMark }) {
  const { x, block, doubt, rails, measured, ghost, unknown } = lane;
  const moved = useMoved<SVGRectElement>(block);
  return (
    <g data-chosen={lane.chosen} className="ladder-lane">
      <LaneHead lane={lane} />
      {rails !== null && (
        <>
          <rect className="ladder-wanted" {...rails.box} />
          <path
            className="ladder-rails"
            d={`M${rails.box.x} ${rails.from}h${rails.box.width}M${rails.box.x} ${rails.to}h${rails.box.width}`}
          />
        </>
      )}
      {ghost !== null && <rect className="ladder-ghost" {...ghost} />}
      {doubt !== null && (
        <path
          className="ladder-doubt"
          d={`M${x - 8} ${doubt.from}h16M${x} ${doubt.from}V${doubt.to}M${x - 8} ${doubt.to}h16`}
        />
      )}
      {block !== null && <rect ref={moved} className="ladder-block" {...block} />}
      {lane.midLine !== null && block !== null && (
        <path className="ladder-mid" d={`M${block.x} ${lane.midLine}h${block.width}`} />
      )}
      {measured !== null && (
        <path
          className="ladder-measured"
          d={`M${measured.box.x} ${measured.box.y}v${measured.box.height}L${measured.box.x + measured.box.width} ${measured.y}Z`}
        />
      )}
      {unknown !== null && (
        <>
          <rect className="ladder-unknown" rx={4} {...unknown} />
          <text
            className="lettering"
            x={x}
            y={centredBaseline(unknown.y + 16, 18)}
            fontSize={18}
            textAnchor="middle"
          >
            ?
          </text>
        </>
      )}
      <Lettering texts={lane.texts.slice(0, 1)} className="lettering-over" />
      <Lettering texts={lane.texts.slice(1)} className="lettering-over lettering-quiet" />
    </g>
  );
});

const HEAD_Y = 22;

function LaneHead({ lane }: { lane: LaneMark }) {
  if (lane.letter === null) return <path className="ladder-alone" d={aloneSign(lane.x, HEAD_Y)} />;
  return (
    <g className="ladder-head">
      <circle cx={lane.x} cy={HEAD_Y} r={15} />
      <text
        className="lettering"
        x={lane.x}
        y={centredBaseline(HEAD_Y, TEXT_FIGURE)}
        fontSize={TEXT_FIGURE}
        fontWeight={700}
        textAnchor="middle"
      >
        {lane.letter}
      </text>
    </g>
  );
}
