import * as z from 'zod/mini';
import { directTape, earlierSurvey, linkageTape } from './pointTape.ts';
import { point, quantities } from './quantity.ts';

/** What a pivot, an eye or the end of a link is bolted to: it stays with the frame, or swings with the arm. */
const carrier = z.enum(['frame', 'arm']);

/** How far one eye stands further out from the machine's middle than the other. Left out: nothing, and said. */
const sideways = z.exactOptional(quantities.sideways);

/** What was known before the points, one ratio or row by row: kept, and held against them. */
const earlier = {
  earlierLeverage: z.exactOptional(quantities.leverage),
  earlierSurvey: z.exactOptional(earlierSurvey),
};

/** Shock between swingarm and frame; two of them stand side by side in one side view. */
export const directPoints = z.strictObject({
  kind: z.literal('direct'),
  armEye: point,
  frameEye: point,
  sideways,
  tape: z.exactOptional(directTape),
  ...earlier,
});

/** Shock worked by a rocker, which a link turns. */
export const linkagePoints = z.strictObject({
  kind: z.literal('linkage'),
  rocker: z.strictObject({ on: carrier, pivot: point, pin: point }),
  /** The link's other end: on the arm where the rocker turns on the frame, on the frame where it turns on the arm. */
  linkEnd: point,
  /** The shock's eye on the rocker, and the other one. */
  rockerEye: point,
  farEye: z.strictObject({ on: carrier, x: quantities.forwardOfRearAxle, height: quantities.height }),
  sideways,
  tape: z.exactOptional(linkageTape),
  ...earlier,
});
