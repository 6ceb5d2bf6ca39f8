import { halfPx } from '../hatch.ts';
import { Lettering } from '../Lettering.tsx';
import { textBox } from '../lettering.ts';
import { AxleLoads } from './AxleLoads.tsx';
import { hatchMarks } from './ground.ts';
import { LayerPaint } from './LayerPaint.tsx';
import { type DotMark, dashedSentences, type SideViewMarks, sideViewSentence } from './sideView.ts';
import type { SideViewInput } from './sideViewInput.ts';
import type { TagMark } from './tagMarks.ts';
import '../drawing.css';
import './SideView.css';

interface SideViewProps {
  readonly input: SideViewInput;
  /** Where everything stands: `sideView` of the input. */
  readonly marks: SideViewMarks;
  /** A tag was pressed. */
  readonly onSelect: (id: string) => void;
}

/** The machine to scale with what is on it. Paint only. */
export function SideView({ input, marks, onSelect }: SideViewProps) {
  const { width, height, groundY } = marks;
  const untagged = input.carried.filter((thing) => marks.untagged.includes(thing.id));
  return (
    <figure className="drawing side-view" style={{ width, height }}>
      <svg width={width} height={height} aria-hidden="true">
        <path className="side-ground-hatch" d={hatchMarks(width, groundY)} />
        <LayerPaint layers={marks.layers} />
        <path className="side-ground" d={`M4 ${groundY}H${width - 4}`} />
        {marks.massCentre !== null && (
          <MassCentre x={halfPx(marks.massCentre.x)} y={halfPx(marks.massCentre.y)} />
        )}
        {marks.tags.map((tag) => (
          <Leader key={tag.id} tag={tag} />
        ))}
        {marks.dots.map((dot) => (
          <Dot key={dot.id} dot={dot} />
        ))}
        {marks.axles !== null && <AxleLoads marks={marks.axles} />}
        {marks.dimension !== null && (
          <g className="side-dimension">
            <path
              d={dimensionPath(marks.dimension.from.x, marks.dimension.to.x, marks.dimension.from.y, groundY)}
            />
            <rect {...textBox(marks.dimension.text)} />
            <Lettering texts={[marks.dimension.text]} />
          </g>
        )}
        <Lettering texts={marks.sentence} />
      </svg>
      {marks.tags.map((tag) => (
        <Tag key={tag.id} tag={tag} label={said(input, tag.id)} onSelect={onSelect} />
      ))}
      <ul className="spoken">
        {untagged.map((thing) => (
          <li key={thing.id}>{sideViewSentence(thing)}</li>
        ))}
        {input.machine !== null &&
          dashedSentences(input.machine).map((sentence) => <li key={sentence}>{sentence}</li>)}
        {marks.sentence.length > 0 && <li>{marks.sentence.map((line) => line.text).join(' ')}</li>}
      </ul>
    </figure>
  );
}

function said(input: SideViewInput, id: string): string {
  const thing = input.carried.find((other) => other.id === id);
  return thing === undefined ? '' : sideViewSentence(thing);
}

interface TagProps {
  readonly tag: TagMark;
  readonly label: string;
  readonly onSelect: (id: string) => void;
}

function Tag({ tag, label, onSelect }: TagProps) {
  const { x, y, width, height } = tag.box;
  return (
    <button
      type="button"
      className="side-tag"
      aria-label={label}
      aria-pressed={tag.selected}
      data-over={tag.overLimit}
      style={{ left: x, top: y, width, height }}
      onClick={() => onSelect(tag.id)}
    >
      <svg width={width} height={height} aria-hidden="true">
        <g transform={`translate(${-x} ${-y})`}>
          <Lettering texts={tag.texts} />
        </g>
      </svg>
    </button>
  );
}

function Leader({ tag }: { tag: TagMark }) {
  const d = `M${tag.leader.map(({ x, y }) => `${halfPx(x)} ${halfPx(y)}`).join('L')}`;
  return (
    <g className="side-leader" data-over={tag.overLimit}>
      <path className="side-leader-edge" d={d} />
      <path d={d} />
    </g>
  );
}

/** A dot at the mass centre; a triangle where a limit is passed. */
function Dot({ dot }: { dot: DotMark }) {
  const [x, y] = [halfPx(dot.at.x), halfPx(dot.at.y)];
  return dot.overLimit ? (
    <path className="side-dot" data-over d={`M${x} ${y - 9}L${x + 9} ${y + 7}H${x - 9}Z`} />
  ) : (
    <circle className="side-dot" cx={x} cy={y} r={dot.selected ? 7 : 5} />
  );
}

/** The sign of a mass centre: a circle in quarters. */
function MassCentre({ x, y }: { x: number; y: number }) {
  const r = 11;
  return (
    <g className="side-mass-centre">
      <circle cx={x} cy={y} r={r} />
      <path
        d={`M${x} ${y}V${y - r}A${r} ${r} 0 0 1 ${x + r} ${y}ZM${x} ${y}V${y + r}A${r} ${r} 0 0 1 ${x - r} ${y}Z`}
      />
    </g>
  );
}

function dimensionPath(from: number, to: number, y: number, groundY: number): string {
  const inward = Math.sign(to - from) * 8;
  const head = (x: number, way: number) => `M${x + way} ${y - 4}L${x} ${y}L${x + way} ${y + 4}`;
  return `M${to} ${groundY + 3}V${y + 6}M${from} ${y}H${to}${head(from, inward)}${head(to, -inward)}`;
}
