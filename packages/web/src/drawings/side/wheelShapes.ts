import type { Point } from '../box.ts';
import { at } from '../hatch.ts';
import type { Layer, Shape } from './shapes.ts';

/** A wheel on the drawing: its axle, its unloaded radius, and where the ground is. */
export interface WheelMark {
  readonly axle: Point;
  readonly radius: number;
  /** Axle over the ground: less than the radius where the tyre is pressed flat. */
  readonly loadedRadius: number;
}

/** Parts of the tyre's radius, for the eye only. */
const BEAD = 0.7;
const RIM = 0.62;
const DISC = 0.45;
const HUB = 0.17;
const SPOKES = 7;
/** Half the angle between the two edges of a spoke, at the hub and at the rim. */
const SPOKE_ROOT = 0.3;
const SPOKE_TIP = 0.075;

/** A wheel is drawn about its axle. */
export const AXLE: Point = { x: 0, y: 0 };

/** Tyre, rim, brake disc and plain cast spokes, and what goes with the axle; the tyre is cut off where it stands on the ground. */
export function wheelLayer(wheel: WheelMark, guess: boolean, ...beside: readonly Shape[]): Layer {
  const { axle, radius } = wheel;
  const ring = (part: number, look: Shape['look']): Shape => ({
    kind: 'circle',
    look,
    guess: false,
    centre: AXLE,
    radius: radius * part,
  });
  return {
    stand: { at: axle, turned: 0 },
    shapes: [
      { kind: 'path', look: 'body', guess, d: tyre(wheel) },
      ring(BEAD, 'line'),
      ring(RIM, 'detail'),
      { kind: 'path', look: 'detail', guess: false, d: spokes(radius) },
      ring(DISC, 'detail'),
      ring(HUB, 'body'),
      ...beside,
    ],
  };
}

/** A guard about a point: a band between two radii, from one angle to the other; straight up is 0, forward positive [rad]. */
export function guardShape(
  centre: Point,
  inner: number,
  outer: number,
  from: number,
  to: number,
  guess = false,
): Shape {
  const on = (radius: number, angle: number) =>
    `${at(centre.x + radius * Math.sin(angle))} ${at(centre.y - radius * Math.cos(angle))}`;
  const arc = (radius: number, sweep: 0 | 1, end: string) =>
    `A${at(radius)} ${at(radius)} 0 0 ${sweep} ${end}`;
  const end = (outer - inner) / 2;
  return {
    kind: 'path',
    look: 'body',
    guess,
    d: [
      `M${on(outer, from)}`,
      arc(outer, 1, on(outer, to)),
      arc(end, 1, on(inner, to)),
      arc(inner, 0, on(inner, from)),
      arc(end, 1, on(outer, from)),
      'Z',
    ].join(''),
  };
}

function tyre({ radius, loadedRadius }: WheelMark): string {
  const r = at(radius);
  if (loadedRadius >= radius) {
    return `M${at(-radius)} 0a${r} ${r} 0 1 1 ${at(2 * radius)} 0a${r} ${r} 0 1 1 ${at(-2 * radius)} 0Z`;
  }
  const half = Math.sqrt(radius * radius - loadedRadius * loadedRadius);
  const ground = at(loadedRadius);
  return `M${at(-half)} ${ground}A${r} ${r} 0 1 1 ${at(half)} ${ground}Z`;
}

function spokes(radius: number): string {
  const on = (part: number, angle: number) =>
    `${at(radius * part * Math.cos(angle))} ${at(radius * part * Math.sin(angle))}`;
  return Array.from({ length: SPOKES }, (_, index) => {
    const angle = (index * 2 * Math.PI) / SPOKES - Math.PI / 2;
    return [-1, 1]
      .map((side) => `M${on(HUB, angle + side * SPOKE_ROOT)}L${on(RIM, angle + side * SPOKE_TIP)}`)
      .join('');
  }).join('');
}
