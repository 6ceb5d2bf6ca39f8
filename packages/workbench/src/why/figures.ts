import type { ShownDimension } from '../format/format.ts';

/**
 * Every figure that opens up, by its readable name: what it is counted in, and what it belongs to. Its equation, symbols and
 * source stand under the same name in words/english/why.ts.
 *   cell    one spring with one load, both ends standing as that cell of the plan has them
 *   load    one load on the machine as found, tank full
 *   shock   the rear shock by itself
 *   spring  one spring, at the load that is ridden most
 */
export const figures = {
  collar: { dimension: 'length', of: 'cell' },
  preload: { dimension: 'length', of: 'cell' },
  'spring-length': { dimension: 'length', of: 'cell' },
  sag: { dimension: 'length', of: 'cell' },
  'free-sag': { dimension: 'length', of: 'cell' },
  'travel-left': { dimension: 'length', of: 'cell' },
  'rubber-left': { dimension: 'length', of: 'cell' },
  'rubber-force': { dimension: 'force', of: 'cell' },
  'coil-bind': { dimension: 'length', of: 'cell' },
  'wheel-rate': { dimension: 'rate', of: 'cell' },
  'motion-ratio': { dimension: 'motion', of: 'cell' },
  leverage: { dimension: 'leverage', of: 'cell' },
  'arm-angle': { dimension: 'angle', of: 'cell' },
  'squat-angle': { dimension: 'angle', of: 'cell' },
  'squat-ratio': { dimension: 'share', of: 'cell' },
  'ride-frequency': { dimension: 'frequency', of: 'cell' },
  pitch: { dimension: 'angle', of: 'cell' },
  rake: { dimension: 'angle', of: 'cell' },
  trail: { dimension: 'length', of: 'cell' },
  wheelbase: { dimension: 'length', of: 'cell' },
  'seat-height': { dimension: 'length', of: 'cell' },
  'axle-load': { dimension: 'mass', of: 'load' },
  pressure: { dimension: 'pressure', of: 'cell' },
  'longer-left': { dimension: 'length', of: 'shock' },
  'shorter-left': { dimension: 'length', of: 'shock' },
  'spring-rate': { dimension: 'rate', of: 'spring' },
  'kg-per-turn': { dimension: 'mass', of: 'spring' },
} as const satisfies Readonly<Record<string, FigureEntry>>;

interface FigureEntry {
  readonly dimension: ShownDimension;
  readonly of: 'cell' | 'load' | 'spring' | 'shock';
}

export type FigureName = keyof typeof figures;

export const figureNames = Object.keys(figures) as readonly FigureName[];
