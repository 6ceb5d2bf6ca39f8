import { type Dimension, differenceFromSI, type Unit } from '@sagwright/records/units';

/** One step where a field says nothing else, in SI. Common practice, no source: about what a hand can set or a tool can read. */
export const usualStep: { readonly [D in Dimension]: number } = {
  length: 0.0005,
  mass: 0.5,
  rate: 500,
  hardening: 1e8,
  force: 5,
  pressure: 5000,
  angle: Math.PI / 360,
  volume: 0.0005,
  torque: 1,
  temperature: 1,
  leverage: 0.01,
  motion: 0.01,
  share: 0.01,
  acceleration: 0.5,
  speed: 1,
};

/** A step (SI) as a round figure of a unit: 0.5 mm stays 0.5 mm and is 1/64 in; 0.5 N/mm is 2 lbf/in. */
export function stepIn(step: number, unit: Unit): number {
  const size = differenceFromSI(step, unit);
  return unit === 'in' && size < 1 ? 2 ** Math.round(Math.log2(size)) : roundFigure(size);
}

/** A figure of one or two digits as it is; any other to the nearest of 1, 2, 5 times a power of ten, by ratio. */
export function roundFigure(figure: number): number {
  if (!(figure > 0)) throw new RangeError(`roundFigure: ${figure}; a figure above 0 is needed`);
  const size = Number(figure.toPrecision(9));
  if (Number(size.toPrecision(2)) === size) return size;
  const power = 10 ** Math.floor(Math.log10(size));
  const off = (part: number) => Math.abs(Math.log((part * power) / size));
  const near = [1, 2, 5, 10].reduce((best, part) => (off(part) < off(best) ? part : best));
  return Number((near * power).toPrecision(1));
}

/** How many decimals a step has: 0.5 → 1, 2 → 0. */
export function decimalsOf(step: number): number {
  return String(step).split('.')[1]?.length ?? 0;
}
