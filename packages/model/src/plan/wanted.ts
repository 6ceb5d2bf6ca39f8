import { damperAt, wheelTravelAt } from '../rear/wheelMotion.ts';
import { hangingTravel } from '../statics/hanging.ts';
import type { EndName, Prepared } from '../statics/prepared.ts';

/** A wanted sag: metres, or a share of the whole travel (0 to 1). */
export type SagSI =
  | { readonly kind: 'length'; readonly length: number }
  | { readonly kind: 'share'; readonly share: number };

/** What sag is wanted of one end: a band with an aim, as the target set says it. */
export interface WantedSI {
  readonly low: SagSI;
  readonly aim: SagSI;
  readonly high: SagSI;
  /** Counted from the hard extension stop, or from where the wheel hangs. */
  readonly from: 'stop' | 'hanging';
  /** Along the body's vertical at the wheel, or along the damper (a fork read on its tube). */
  readonly along: 'wheel' | 'stroke';
}

/**
 * Wheel travel [m] from the extension stop that a wanted sag asks for, on the machine as it stands; may lie outside its travel.
 * No travel belongs to a stroke that the damper has not got: such a sag is told in proportion, past the whole travel.
 */
export function wantedTravel(prepared: Prepared, name: EndName, wanted: WantedSI, sag: SagSI): number {
  const end = prepared.machine[name];
  const { rake } = prepared.machine.geometry;
  const travelMax = name === 'rear' ? prepared.rearTravelMax : prepared.frontTravelMax;
  const start = wanted.from === 'hanging' ? hangingTravel(end, rake, travelMax) : 0;
  if (wanted.along === 'wheel') {
    return start + (sag.kind === 'length' ? sag.length : sag.share * travelMax);
  }
  const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  damperAt(end, rake, start, at);
  const stroke = at.stroke + (sag.kind === 'length' ? sag.length : sag.share * end.strokeMax);
  if (stroke > end.strokeMax) return (travelMax * stroke) / end.strokeMax;
  return wheelTravelAt(end, rake, stroke);
}
