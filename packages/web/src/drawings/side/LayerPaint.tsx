import { createElement, memo } from 'react';
import type { Layer, Shape } from './shapes.ts';

/** Width of an outline, twice inside a limb's own width. */
const OUTLINE = 2;

/** Layers of the machine, painted in their order; as children by place, since neither a layer nor a shape has a name to be known by. */
export function LayerPaint({ layers }: { layers: readonly Layer[] }) {
  return createElement('g', null, ...layers.map((layer) => createElement(Moved, { layer })));
}

function Moved({ layer: { stand, shapes } }: { layer: Layer }) {
  const { x, y } = stand.at;
  const transform = `translate(${x.toFixed(2)} ${y.toFixed(2)}) rotate(${degrees(stand.turned).toFixed(4)})`;
  return createElement('g', { transform }, ...shapes.map((shape) => createElement(Painted, { shape })));
}

/** One that did not change is not painted anew. */
const Painted = memo(function Painted({ shape }: { shape: Shape }) {
  const name = `shape shape-${shape.look.replace(' ', '-')}`;
  switch (shape.kind) {
    case 'path':
      return <path className={name} data-guess={shape.guess} d={shape.d} />;
    case 'circle':
      return (
        <circle
          className={name}
          data-guess={shape.guess}
          cx={shape.centre.x}
          cy={shape.centre.y}
          r={shape.radius}
        />
      );
    case 'limbs':
      return (
        <g className={name}>
          {shape.limbs.map((limb) => (
            <path key={limb.d} className="limb-edge" d={limb.d} strokeWidth={limb.width} />
          ))}
          {shape.limbs.map((limb) => (
            <path
              key={limb.d}
              className="limb-fill"
              d={limb.d}
              strokeWidth={Math.max(0.5, limb.width - 2 * OUTLINE)}
            />
          ))}
        </g>
      );
    case 'melted':
      return (
        <g className={name}>
          {shape.parts.map((part) => (
            <path key={part} className="melted-edge" d={part} />
          ))}
          {shape.parts.map((part) => (
            <path key={part} className="melted-fill" d={part} />
          ))}
        </g>
      );
  }
});

function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}
