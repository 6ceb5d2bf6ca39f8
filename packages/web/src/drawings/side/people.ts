import type { Point } from '../box.ts';
import type { Landmarks } from './landmarks.ts';
import { type Spot, towards } from './pen.ts';
import type { BodyPoint } from './sideViewInput.ts';

/** A seated figure, joint by joint, in body coordinates. */
export interface Figure {
  readonly hip: Spot;
  readonly shoulder: Spot;
  readonly neck: Spot;
  readonly head: Spot;
  readonly knee: Spot;
  readonly ankle: Spot;
  readonly toe: Spot;
  readonly elbow: Spot;
  readonly hand: Spot;
}

/**
 * Proportions of a middling adult seated in riding gear (common practice, no source): for the eye only. The figure hangs
 * on its mass centre, which is given; nothing is worked out from the figure.
 */
const HIP_BEHIND = 75;
const HIP_BELOW = 165;
const HIP_OVER_SEAT = 95;
const TRUNK = 480;
const THIGH = 430;
const SHIN = 430;
const UPPER_ARM = 300;
const FOREARM = 300;
/** Half a helmet's height. */
export const HEAD_RADIUS = 138;
const SHOULDER_BELOW = 80;

/** Seat height that a person with this mass centre sits at. */
export function seatUnder(massCentre: BodyPoint): number {
  return massCentre.heightMm - HIP_BELOW - HIP_OVER_SEAT;
}

/** The rider: hands on the bar, feet on the boards. */
export function riderFigure(massCentre: BodyPoint, marks: Landmarks): Figure {
  const [x, height] = marks.board;
  return figure(massCentre, 0.13, marks.grip, [x - 65, height + SOLE_BELOW]);
}

/** Anyone else: hands on whoever sits in front, feet higher up. */
export function passengerFigure(massCentre: BodyPoint): Figure {
  const hip = hipOf(massCentre);
  return figure(massCentre, 0.05, [hip[0] + 430, hip[1] + 130], [hip[0] + 275, hip[1] - 455]);
}

/** The sole below the ankle. */
export const SOLE_BELOW = 78;

/** Top of the helmet over the mass centre, and how far the figure reaches behind and ahead of it, for laying out. */
export function figureExtent(person: Figure): {
  readonly back: number;
  readonly front: number;
  readonly top: number;
} {
  return {
    back: person.hip[0] - 110,
    front: Math.max(person.knee[0], person.hand[0]) + 70,
    top: person.head[1] + HEAD_RADIUS,
  };
}

function hipOf(massCentre: BodyPoint): Spot {
  return [massCentre.xMm - HIP_BEHIND, massCentre.heightMm - HIP_BELOW];
}

function figure(massCentre: BodyPoint, lean: number, hand: Spot, ankle: Spot): Figure {
  const hip = hipOf(massCentre);
  const neck: Spot = [hip[0] + TRUNK * Math.sin(lean), hip[1] + TRUNK * Math.cos(lean)];
  const shoulder = towards(neck, hip, SHOULDER_BELOW);
  const arm = bent(shoulder, hand, UPPER_ARM, FOREARM, -1);
  const leg = bent(hip, ankle, THIGH, SHIN, 1);
  return {
    hip,
    shoulder,
    neck,
    head: [neck[0] + 38, neck[1] + 160],
    knee: leg.joint,
    ankle: leg.end,
    toe: [leg.end[0] + 175, leg.end[1] - 48],
    elbow: arm.joint,
    hand: arm.end,
  };
}

/** A joint between two bones: `side` 1 bends it forward, −1 back and down. An end out of reach is drawn at full stretch. */
function bent(from: Spot, to: Spot, first: number, second: number, side: 1 | -1): { joint: Spot; end: Spot } {
  const far = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const reach = Math.min(far, (first + second) * 0.995);
  const ahead: Point = { x: (to[0] - from[0]) / far, y: (to[1] - from[1]) / far };
  const along = (first * first - second * second + reach * reach) / (2 * reach);
  const aside = Math.sqrt(Math.max(0, first * first - along * along)) * side;
  return {
    joint: [from[0] + ahead.x * along - ahead.y * aside, from[1] + ahead.y * along + ahead.x * aside],
    end: [from[0] + ahead.x * reach, from[1] + ahead.y * reach],
  };
}
