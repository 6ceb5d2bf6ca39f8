import type { JobPlan } from '../path.ts';
import { readAt, type Standing } from '../why/standing.ts';
import type { EarlierDocument } from './rearMotionDocument.ts';

/**
 * The leverage that was known before rows or hard points, against theirs over the whole travel: wheel travel / stroke. Their ± are
 * of different readings, so that of the difference is √(a² + b²). `alone` is the machine as found; null where it has no rest, or nothing was kept.
 */
export function earlierLeverage({ inputs }: JobPlan, alone: Standing | null): EarlierDocument | null {
  const kept = inputs.figures.get('machine.rear.travel.earlierLeverage');
  if (kept === undefined || alone === null) return null;
  const { value: now } = readAt(
    alone,
    ({ machine, rearTravelMax }) => rearTravelMax / machine.rear.strokeMax,
  );
  const value = now.value - kept.value;
  const plusMinus = Math.hypot(now.plusMinus ?? 0, kept.halfWidth);
  return {
    leverage: { value: kept.value, plusMinus: kept.halfWidth },
    now,
    difference: { value, plusMinus },
    verdict: Math.abs(value) <= plusMinus ? 'agrees' : 'differs',
  };
}
