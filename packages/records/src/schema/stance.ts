import * as z from 'zod/mini';
import { descriptions } from './descriptions.ts';
import type { Immutable } from './immutable.ts';
import { id, members, name, order } from './names.ts';
import { point, quantities } from './quantity.ts';

/** A point of the machine whose height or lean is told. A side stand's is its foot, swung out; the machine upright. */
const stancePoint = z.strictObject({
  name,
  order,
  kind: z.enum(['rider peg', 'passenger peg', 'hard part', 'side stand', 'headlamp']),
  at: point,
  /** From the machine's middle, left or right alike. Left out: no lean is told. */
  sideways: z.exactOptional(quantities.fromMiddle),
});

export const stancePoints = members(stancePoint);

/** Where the dipped beam's edge falls: how far below the lamp's centre at a distance, as found. */
export const beam = z
  .strictObject({
    drop: quantities.beamDrop,
    distance: quantities.beamDistance,
    /** The load it was read with; left out: the machine alone. */
    load: z.exactOptional(id),
  })
  .register(descriptions, { id: 'beam' });

/** One wheel raised, the suspension locked and the tyres hard: what one scale reads with the machine level, and then. */
export const raised = z.strictObject({
  wheel: z.enum(['front', 'rear']),
  by: quantities.raisedBy,
  /** The wheel that the scale stands under. */
  scale: z.enum(['front', 'rear']),
  level: quantities.massOnWheel,
  raised: quantities.massOnWheel,
});

/** Steady braking and driving that are looked at. */
export const steady = z.strictObject({
  braking: z.exactOptional(
    z.strictObject({
      deceleration: quantities.acceleration,
      /** Of the braking force, at the front wheel. */
      frontShare: quantities.frontShare,
    }),
  ),
  driving: z.exactOptional(
    z.union([
      z.strictObject({ acceleration: quantities.acceleration }),
      z.strictObject({ thrust: quantities.thrust }),
    ]),
  ),
});

/** What a metric size looks like. */
export const ofSize = /^(\d{2,3})\/(\d{2,3})\s?(?:-|[A-Z]{0,2}(?:R|B|-))\s?(\d{2})(?:\s.*)?$/;

/** A tyre's metric size as on its wall: 130/80-17, 130/80 B 17 M/C 65H, 180/55 ZR 17. */
export const tyreSize = z.string().check(z.trim(), z.maxLength(60), z.regex(ofSize));

/** The figures of a size: width in mm, height in % of it, rim in inches. */
export function sizeFigures(size: string): {
  readonly width: number;
  readonly aspect: number;
  readonly rim: number;
} {
  const [, width, aspect, rim] = ofSize.exec(size.trim())!;
  return { width: Number(width), aspect: Number(aspect), rim: Number(rim) };
}

export type StancePoint = Immutable<z.infer<typeof stancePoint>>;
export type Raised = Immutable<z.infer<typeof raised>>;
