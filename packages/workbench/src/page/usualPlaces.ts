import type { Place } from '@sagwright/records/schema/machine';
import { placeAt } from '../inputs/assumptions.ts';
import type { JobPlan } from '../path.ts';
import type { UsualPlaceView } from './shapes.ts';

/** Half-width of a height that nobody measured [m], as the sum takes it (inputs/loads). */
const HEIGHT_HALF_WIDTH = 0.08;

/** Where the mass centre of each kind of place usually is on this machine, as the sum takes it where nobody measured it. */
export function usualPlaces({ inputs }: JobPlan): Readonly<Record<Place['kind'], UsualPlaceView>> {
  const { wheelbase } = inputs.question.machine.geometry;
  const usual = ({ share, height, width, why }: (typeof placeAt)[Place['kind']]): UsualPlaceView => ({
    x: { value: share * wheelbase, halfWidth: width / 1000, unit: 'mm', why },
    height: { value: height / 1000, halfWidth: HEIGHT_HALF_WIDTH, unit: 'mm', why },
  });
  return Object.fromEntries(Object.entries(placeAt).map(([kind, at]) => [kind, usual(at)])) as Record<
    Place['kind'],
    UsualPlaceView
  >;
}
