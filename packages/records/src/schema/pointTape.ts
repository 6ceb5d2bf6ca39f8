import * as z from 'zod/mini';
import type { Immutable } from './immutable.ts';
import { members, order } from './names.ts';
import { quantities } from './quantity.ts';

/** Parts of a rear that a tape is laid to, pin to pin. */
const parts = {
  direct: ['pivot', 'arm eye', 'frame eye'],
  linkage: ['pivot', 'rocker pivot', 'link pin', 'link end', 'rocker eye', 'far eye'],
} as const;

/** Lengths between parts; heights above the axle (below it negative) by a level, and level distances ahead of it by a plumb line. */
function lengths<P extends string>(known: readonly P[]) {
  const part = z.enum([...known]);
  const partOrAxle = z.enum(['axle', ...known]);
  return members(
    z.discriminatedUnion('kind', [
      z.strictObject({
        kind: z.literal('between'),
        order,
        from: partOrAxle,
        to: partOrAxle,
        length: quantities.tapedLength,
        /** How much further out one end stands than the other. Left out: as the shock leans between its eyes, else nothing. */
        sideways: z.exactOptional(quantities.sideways),
      }),
      z.strictObject({ kind: z.literal('above axle'), order, of: part, length: quantities.besideAxle }),
      z.strictObject({ kind: z.literal('ahead of axle'), order, of: part, length: quantities.besideAxle }),
    ]),
  );
}

export const directTape = lengths(parts.direct);
export const linkageTape = lengths(parts.linkage);

/** One length of a tape, of either kind of rear. */
export type PointLength = Immutable<z.infer<typeof directTape> | z.infer<typeof linkageTape>>[string];

/** A wheel travel with the shock's length there, as it was known before the hard points. */
export const earlierSurvey = members(
  z.strictObject({ order, wheel: quantities.wheelTravel, shock: quantities.shockLength }),
);

/** Whether a length is that of the shock itself, eye to eye. */
export function isShock({ from, to }: { readonly from: string; readonly to: string }): boolean {
  const ends = [from, to].sort().join(' ');
  return ends === 'arm eye frame eye' || ends === 'far eye rocker eye';
}
