import type { RubberByTableSI } from '@sagwright/model/dampers/rubber';
import type { Rubber } from '@sagwright/records/schema/struts';

/** A rubber that nobody measured. */
interface AssumedRubber extends Omit<RubberByTableSI, 'start'> {
  /** How far full bump presses it [m], where nobody read at which stroke it is met. */
  readonly pressed: number;
}

/**
 * Curves of our own, made up so that the end of the stroke is not left empty: assumed, not measured. Rubber of the usual hardness
 * is pressed to about half its height by 2 to 3 kN (common practice, no source), and grows stiffer all the way.
 */
export const assumedRubbers: Readonly<Record<NonNullable<Rubber['assumed']>, AssumedRubber>> = {
  'short and hard': byRows(0.007, [
    [2, 150],
    [4, 450],
    [6, 1250],
    [8, 3200],
  ]),
  middling: byRows(0.013, [
    [3, 90],
    [6, 260],
    [9, 620],
    [12, 1450],
    [15, 3300],
  ]),
  'long and soft': byRows(0.022, [
    [5, 60],
    [10, 170],
    [15, 430],
    [20, 1150],
    [25, 3100],
  ]),
};

/** ± of such a curve, all forces together, as a share; and of how far it is pressed [m]. */
export const assumedRubberWidths = { force: 0.5, pressed: 0.004 } as const;

function byRows(pressed: number, rows: readonly (readonly [mm: number, newtons: number])[]): AssumedRubber {
  return {
    pressed,
    compression: [0, ...rows.map(([mm]) => mm / 1000)],
    force: [0, ...rows.map(([, newtons]) => newtons)],
  };
}
