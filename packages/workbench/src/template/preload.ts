import type { Quantity } from '@sagwright/records/schema/quantity';
import type { PreloadOf } from '@sagwright/records/template/around';
import { usual } from '../first/usual.ts';
import { asQuantity, assumptions } from '../inputs/assumptions.ts';

/** What the springs of a template are taken to be pressed by, until somebody reads it: usual figures with a wide ±. */
export const usualPreload: PreloadOf = {
  rear: asQuantity(usual.preload) as Quantity<'length'>,
  front: asQuantity(assumptions.forkPreload) as Quantity<'length'>,
};
