import type { Point } from '../box.ts';
import { at } from '../hatch.ts';
import type { Shape } from './shapes.ts';

/** A wheel on the drawing: its axle, its unloaded radius, and where the ground is. */
export interface WheelMark {
  readonly axle: Point;
  readonly radius: number;
  /** Axle over the ground: less than the radius where the tyre is pressed flat. */
  readonly loadedRadius: number;
}

const SPOKES = 10;
const RIM = 0.73;
const HUB = 0.15;
const GUARD_GAP_MM = 34;

/** Tyre, rim, hub and plain spokes; the tyre is cut off where it stands on the ground. */
export function wheelShapes(wheel: WheelMark, guess: boolean): readonly Shape[] {
  const { axle, radius } = wheel;
  const ring = (part: number, look: Shape['look']): Shape => ({
    kind: 'circle',
    look,
    guess: false,
    centre: axle,
    radius: radius * part,
  });
  return [
    { kind: 'path', look: 'body', guess, d: tyre(wheel) },
    ring(RIM, 'line'),
    ring(RIM - 0.06, 'detail'),
    { kind: 'path', look: 'detail', guess: false, d: spokes(axle, radius) },
    ring(HUB, 'detail'),
  ];
}

/** A guard that moves with the wheel, over its top and back: angles from straight up, positive forward, in radians. */
export function guardShape(wheel: WheelMark, pxPerMm: number, from: number, to: number): Shape {
  const reach = wheel.radius + GUARD_GAP_MM * pxPerMm;
  const spots = Array.from({ length: 17 }, (_, index) => {
    const angle = from + ((to - from) * index) / 16;
    return `${at(wheel.axle.x + reach * Math.sin(angle))} ${at(wheel.axle.y - reach * Math.cos(angle))}`;
  });
  return {
    kind: 'limbs',
    look: 'body',
    guess: false,
    limbs: [{ d: `M${spots.join('L')}`, width: 22 * pxPerMm }],
  };
}

function tyre({ axle, radius, loadedRadius }: WheelMark): string {
  const { x, y } = axle;
  if (loadedRadius >= radius) {
    return `M${at(x - radius)} ${at(y)}a${at(radius)} ${at(radius)} 0 1 1 ${at(2 * radius)} 0a${at(radius)} ${at(radius)} 0 1 1 ${at(-2 * radius)} 0Z`;
  }
  const half = Math.sqrt(radius * radius - loadedRadius * loadedRadius);
  const ground = y + loadedRadius;
  return `M${at(x - half)} ${at(ground)}A${at(radius)} ${at(radius)} 0 1 1 ${at(x + half)} ${at(ground)}Z`;
}

function spokes(axle: Point, radius: number): string {
  return Array.from({ length: SPOKES }, (_, index) => {
    const angle = ((index + 0.5) * 2 * Math.PI) / SPOKES;
    const end = (part: number) =>
      `${at(axle.x + radius * part * Math.cos(angle))} ${at(axle.y + radius * part * Math.sin(angle))}`;
    return `M${end(HUB)}L${end(RIM - 0.06)}`;
  }).join('');
}
