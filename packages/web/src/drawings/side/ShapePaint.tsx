import { createElement } from 'react';
import type { Shape } from './shapes.ts';

/** Width of an outline, twice inside a limb's own width. */
const OUTLINE = 2;

/** Shapes of the machine, painted in their order; as children by place, since a shape has no name to be known by. */
export function ShapePaint({ shapes }: { shapes: readonly Shape[] }) {
  return createElement('g', null, ...shapes.map((shape) => createElement(Painted, { shape })));
}

function Painted({ shape }: { shape: Shape }) {
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
}
