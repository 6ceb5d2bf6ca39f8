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
  if (shape.kind === 'path') return <path className={name} data-guess={shape.guess} d={shape.d} />;
  if (shape.kind === 'circle') {
    const { centre, radius } = shape;
    return <circle className={name} data-guess={shape.guess} cx={centre.x} cy={centre.y} r={radius} />;
  }
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
}
