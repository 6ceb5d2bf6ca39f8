import type { Reach } from '@sagwright/model/plan/answer';
import type { LaneView } from './shapes.ts';

/** How a load's lane is drawn, by how far what sets the end gets. */
export const laneKinds = {
  reached: 'in reach',
  'at the edge': 'at the edge',
  'out of reach': 'past',
  'between steps': 'between steps',
  'no spring wanted': 'words',
  'no adjuster': 'words',
} as const satisfies { readonly [K in Reach['kind']]: LaneView['kind'] };
