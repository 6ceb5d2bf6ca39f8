import type { LimitsSI } from '@sagwright/model/limits/limits';
import type { Desk } from './desk.ts';
import { ratingOf } from './rating.ts';
import { tyreRating } from './tyreCapacity.ts';

/** The maker's limits, each only where somebody read it. */
export function limitsFigures(desk: Desk): LimitsSI {
  const { limits } = desk.job.machine;
  return {
    gross: ratingOf(desk, 'machine.limits.gross', limits?.gross),
    frontAxle: ratingOf(desk, 'machine.limits.frontAxle', limits?.frontAxle),
    rearAxle: ratingOf(desk, 'machine.limits.rearAxle', limits?.rearAxle),
    frontTyre: tyreRating(desk, 'front'),
    rearTyre: tyreRating(desk, 'rear'),
  };
}
