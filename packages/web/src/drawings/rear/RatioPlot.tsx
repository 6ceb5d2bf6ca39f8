import { memo } from 'react';
import { useWidth } from '../../app/useWidth.ts';
import { Lettering } from '../Lettering.tsx';
import { type RatioInput, ratioPlot } from './ratioPlot.ts';
import '../drawing.css';
import './rearPlots.css';

/** Motion ratio over the travel. Paint only: `ratioPlot` says where everything stands; `spoken` says it in words. */
export const RatioPlot = memo(function RatioPlot({
  input,
  spoken,
}: {
  readonly input: RatioInput;
  readonly spoken: readonly string[];
}) {
  const [ref, width] = useWidth<HTMLElement>();
  return (
    <figure className="drawing ratio-plot" ref={ref}>
      {width > 0 && <Plot input={input} width={width} />}
      <ul className="spoken">
        {spoken.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </figure>
  );
});

function Plot({ input, width }: { readonly input: RatioInput; readonly width: number }) {
  const { height, axes, grid, ticks, band, line, letters, rests } = ratioPlot(input, width);
  const chosenLast = rests.toSorted((a, b) => Number(a.chosen) - Number(b.chosen));
  return (
    <svg width={width} height={height} aria-hidden="true">
      <path className="ratio-band" d={band} />
      <path className="ratio-grid" d={grid} />
      {chosenLast.map(({ x, leader, chosen }) => (
        <path key={`${x} ${leader}`} className="ratio-leader" data-chosen={chosen} d={leader} />
      ))}
      <path className="ratio-line" d={line} />
      <path className="ratio-axes" d={axes + ticks} />
      {chosenLast.map(({ x, y, leader, chosen }) => (
        <circle key={leader} className="ratio-rest" data-chosen={chosen} cx={x} cy={y} r={chosen ? 7 : 5} />
      ))}
      <Lettering texts={letters} />
    </svg>
  );
}
