import type { FrontTravel } from '@sagwright/records/schema/frontTravel';
import { at, type Change, type Edit, write } from '../../job/edits.ts';
import { formerKind } from '../../job/formerKind.ts';
import { told } from './changeTravel.ts';

const PATH = ['machine', 'front', 'travel'];

/** What a front may be: a telescopic fork, or one of the ways to tell how its wheel moves its springs. */
export type FrontKind = 'fork' | FrontTravel['kind'];

/** Of what only a telescopic fork has, its fields. */
const ofFork = ['tubes', 'stack', 'clampHeight', 'air'];
/** What the forces at the wheel tell already. */
const ofSprings = ['stroke', 'rubber', 'topOut', 'adjuster'];

/**
 * The front told as another kind: with all that it had when it was of that kind before, else without what that kind has no use for. What
 * it needs is then asked for at its fields.
 */
export function changeFront(document: unknown, kind: FrontKind, done: readonly Change[]): readonly Edit[] {
  const travel = at(document, PATH) as FrontTravel | undefined;
  if ((travel?.kind ?? 'fork') === kind) return [];
  const former = formerKind(document, done, PATH, kind === 'fork' ? undefined : kind);
  if (former !== null) return former;
  if (kind === 'fork') return [write(document, PATH, undefined)];
  const before = travel === undefined || travel.kind === 'force' ? null : travel;
  const next = { kind, ...(before !== null && kind !== 'force' ? told(before, kind) : {}) };
  return [write(document, PATH, next), ...without(document, kind)];
}

/** What is in the job and has no place with a front of this kind. */
function without(document: unknown, kind: FrontKind): readonly Edit[] {
  const fork = ['machine', 'front', 'fork'];
  const paths = [
    ...[...ofFork, ...(kind === 'force' ? ofSprings : [])].map((field) => [...fork, field]),
    ['choice', 'clampHeight'],
    ...(kind === 'force'
      ? [
          ['setups', 'asFound', 'front'],
          ['choice', 'front'],
        ]
      : []),
  ];
  return paths.flatMap((path) =>
    at(document, path) === undefined ? [] : [write(document, path, undefined)],
  );
}
