import { memo } from 'react';
import { byPlace } from '../byPlace.ts';
import { at } from '../hatch.ts';
import type { Layer, Shape } from './shapes.ts';

/** Width of an outline, twice inside a limb's own width. */
const OUTLINE = 2;

/** Layers of the machine, painted in their order. */
export function LayerPaint({ layers }: { layers: readonly Layer[] }) {
  return (
    <g>
      {byPlace(layers, (layer) => (
        <Moved layer={layer} />
      ))}
    </g>
  );
}

function Moved({ layer: { stand, shapes } }: { layer: Layer }) {
  const { x, y } = stand.at;
  const transform = `translate(${x.toFixed(2)} ${y.toFixed(2)}) rotate(${degrees(stand.turned).toFixed(4)})`;
  return (
    <g transform={transform}>
      {byPlace(shapes, (shape) => (
        <Painted shape={shape} />
      ))}
    </g>
  );
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
          cx={at(shape.centre.x)}
          cy={at(shape.centre.y)}
          r={at(shape.radius)}
        />
      );
    case 'limbs':
      return (
        <g className={name}>
          {byPlace(shape.limbs, ({ d, width }) => (
            <path className="limb-edge" d={d} strokeWidth={width} />
          ))}
          {byPlace(shape.limbs, ({ d, width }) => (
            <path className="limb-fill" d={d} strokeWidth={Math.max(0.5, width - 2 * OUTLINE)} />
          ))}
        </g>
      );
    case 'melted':
      return (
        <g className={name}>
          {byPlace(shape.parts, (d) => (
            <path className="melted-edge" d={d} />
          ))}
          {byPlace(shape.parts, (d) => (
            <path className="melted-fill" d={d} />
          ))}
        </g>
      );
  }
});

function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}
