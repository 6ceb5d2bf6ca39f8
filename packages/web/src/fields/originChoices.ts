import type { Origin } from '@sagwright/records/schema/quantity';
import type { Dimension } from '@sagwright/records/units';

/** The origins that have a key of their own; the others are under "more". Common practice, no source. */
const first: { readonly [D in Dimension]?: readonly Origin[] } = {
  length: ['own tape', 'told', 'memory'],
  mass: ['own scale', 'plate', 'told'],
  rate: ['marked', 'own log', 'told'],
};

const elsewhere: readonly Origin[] = ['manual', 'told', 'memory'];

export function firstOrigins(dimension: Dimension): readonly Origin[] {
  return first[dimension] ?? elsewhere;
}
