import { memo } from 'react';
import { useWidth } from '../../app/useWidth.ts';
import { fork as words } from '../../words/fork.ts';
import { Lettering } from '../Lettering.tsx';
import { type ForceInput, forcePlot } from './forcePlot.ts';
import '../drawing.css';
import './ForcePlot.css';

/** Forces over the travel, with a key below. Paint only: `forcePlot` says where everything stands. */
export const ForcePlot = memo(function ForcePlot({ input }: { readonly input: ForceInput }) {
  const [ref, width] = useWidth<HTMLElement>();
  return (
    <figure className="drawing force-plot" ref={ref}>
      {width > 0 && <Plot input={input} width={width} />}
      <ul className="force-key" aria-hidden="true">
        {input.lines.map(({ id, name }) => (
          <li key={id}>
            <svg width="36" height="12" aria-hidden="true">
              <path className="force-line" data-line={id} d="M0 6H36" />
            </svg>
            {name}
          </li>
        ))}
      </ul>
      <ul className="spoken">
        {input.lines.map((line) => (
          <li key={line.id}>{words.spoken(line, input)}</li>
        ))}
      </ul>
    </figure>
  );
});

function Plot({ input, width }: { readonly input: ForceInput; readonly width: number }) {
  const { height, axes, grid, letters, lines } = forcePlot(input, width);
  return (
    <svg width={width} height={height} aria-hidden="true">
      <path className="force-grid" d={grid} />
      {lines.map(({ id, band }) => band !== null && <path key={id} className="force-band" d={band} />)}
      {lines.map(({ id, path }) => (
        <path key={id} className="force-line" data-line={id} d={path} />
      ))}
      <path className="force-axes" d={axes} />
      <Lettering texts={letters} />
    </svg>
  );
}
