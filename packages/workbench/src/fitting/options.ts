import { sleeveNeeded } from '@sagwright/model/fitting/mount';
import type { JobDocument } from '@sagwright/records/schema';
import type { RearFitting } from '@sagwright/records/schema/fitting';
import { siOf } from '@sagwright/records/schema/quantity';
import { inOrder } from '../inputs/desk.ts';
import type { MountEnd, Side } from './document.ts';
import { bareMount } from './mounts.ts';

/** What of a job decides which steps there are. */
export interface FittingOptions {
  /** One of twins at a time; null: the only one. */
  readonly sides: readonly (Side | null)[];
  /** Ends that are tightened at ride height: rubber bushes, and those of which nobody knows better. */
  readonly rubber: readonly MountEnd[];
  readonly sleeved: readonly MountEnd[];
  readonly toBeSprung: boolean;
  /** Its length is to be changed on the bench. */
  readonly lengthened: boolean;
  readonly hose: boolean;
  readonly flush: boolean;
  readonly inTheWay: readonly { readonly id: string; readonly name: string }[];
}

export const mountEnds: readonly MountEnd[] = ['top', 'bottom'];

export function fittingOptions(job: JobDocument, fitting: RearFitting): FittingOptions {
  const { shock } = job.machine.rear;
  const { reservoir, inTheWay = {} } = fitting;
  const change = job.choice?.shockLength;
  return {
    sides: shock.count === 2 ? ['left', 'right'] : [null],
    rubber: mountEnds.filter((end) => (fitting[end]?.bush ?? 'rubber') === 'rubber'),
    sleeved: mountEnds.filter((end) => {
      const mount = fitting[end];
      return mount?.sleeve !== undefined || (mount !== undefined && sleeveNeeded(bareMount(mount)) !== null);
    }),
    toBeSprung: fitting.spring === 'to be fitted',
    lengthened: change !== undefined && siOf(change) !== 0,
    hose: reservoir?.kind === 'by hose',
    flush: reservoir?.kind === 'by hose' && reservoir.heads === 'flush',
    inTheWay: inOrder(inTheWay).map(([id, { name }]) => ({ id, name })),
  };
}
