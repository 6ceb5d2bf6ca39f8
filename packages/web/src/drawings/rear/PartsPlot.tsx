import { memo } from 'react';
import { useWidth } from '../../app/useWidth.ts';
import { Lettering } from '../Lettering.tsx';
import { type PartsInput, partsPlot } from './partsPlot.ts';
import { Spot } from './Spot.tsx';
import '../drawing.css';
import './rearPlots.css';

interface PartsPlotProps {
  readonly input: PartsInput;
  /** What each stand and each numbered point is. */
  readonly names: { readonly stands: readonly string[]; readonly points: readonly string[] };
  readonly spoken: string;
}

/** The rear's parts at several heights of the wheel. Paint only: `partsPlot` says where everything stands. */
export const PartsPlot = memo(function PartsPlot({ input, names, spoken }: PartsPlotProps) {
  const [ref, width] = useWidth<HTMLElement>();
  return (
    <figure className="drawing parts-plot" ref={ref}>
      {width > 0 && <Plot input={input} width={width} />}
      <p className="spoken">{spoken}</p>
      <ul className="parts-stands" aria-hidden="true">
        {input.stands.map(({ id }, i) => (
          <li key={id}>
            <svg width="36" height="12" aria-hidden="true">
              <path className="parts-bar" data-stand={i} data-bar="shock" d="M0 6H36" />
            </svg>
            {names.stands[i]}
          </li>
        ))}
      </ul>
      <ol className="parts-points">
        {names.points.map((name) => (
          <li key={name}>{name}</li>
        ))}
      </ol>
    </figure>
  );
});

function Plot({ input, width }: { readonly input: PartsInput; readonly width: number }) {
  const { height, stands, points } = partsPlot(input, width);
  return (
    <svg width={width} height={height} aria-hidden="true">
      {stands
        .flatMap(({ id, bars }, i) =>
          bars.map(({ bar, path }) => (
            <path key={`${id} ${bar}`} className="parts-bar" data-stand={i} data-bar={bar} d={path} />
          )),
        )
        .reverse()}
      {points.map((point) => (
        <Spot key={point.part} point={point} />
      ))}
      <Lettering texts={points.map(({ number }) => number)} className="lettering-over" />
    </svg>
  );
}
