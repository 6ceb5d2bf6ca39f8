import type { HardPointsSI, PartName } from './hardPoints.ts';

/** One length taken on the machine, in the side view but for what stands further out [m]; `deviation` its standard deviation. */
export type TapedSI =
  | {
      readonly kind: 'between';
      readonly from: PartName;
      readonly to: PartName;
      readonly length: number;
      /** How much further out one of the two stands than the other. */
      readonly sideways: number;
      readonly deviation: number;
    }
  /** Height above the axle, negative below it; along the world's vertical. */
  | {
      readonly kind: 'above axle';
      readonly of: PartName;
      readonly length: number;
      readonly deviation: number;
    }
  /** Level distance ahead of the axle, by plumb line. */
  | {
      readonly kind: 'ahead of axle';
      readonly of: PartName;
      readonly length: number;
      readonly deviation: number;
    };

/** A length to be taken, not yet read. */
export type ToTape =
  | { readonly kind: 'between'; readonly from: PartName; readonly to: PartName }
  | { readonly kind: 'above axle'; readonly of: Exclude<PartName, 'axle'> };

/**
 * Lengths that give all points: each by two from points that are known by then, and by a third where two may well lie in
 * one line with it (an eye on the line from pivot to axle, a rocker with its three bolts in a row). Pin to pin, within
 * reach of a tape or calliper; heights by a level.
 */
export const lengthsToTape: Readonly<Record<HardPointsSI['kind'], readonly ToTape[]>> = {
  direct: [
    between('axle', 'pivot'),
    above('pivot'),
    between('pivot', 'arm eye'),
    between('axle', 'arm eye'),
    above('arm eye'),
    between('pivot', 'frame eye'),
    between('arm eye', 'frame eye'),
  ],
  linkage: [
    between('axle', 'pivot'),
    above('pivot'),
    between('pivot', 'link end'),
    between('axle', 'link end'),
    above('link end'),
    between('pivot', 'rocker pivot'),
    between('link end', 'rocker pivot'),
    between('rocker pivot', 'link pin'),
    between('link end', 'link pin'),
    between('rocker pivot', 'rocker eye'),
    between('link pin', 'rocker eye'),
    between('link end', 'rocker eye'),
    between('pivot', 'far eye'),
    between('rocker eye', 'far eye'),
    between('link end', 'far eye'),
  ],
};

function between(from: PartName, to: PartName): ToTape {
  return { kind: 'between', from, to };
}

function above(of: Exclude<PartName, 'axle'>): ToTape {
  return { kind: 'above axle', of };
}
