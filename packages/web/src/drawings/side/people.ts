import type { Point } from '../box.ts';
import type { Landmarks } from './bodywork.ts';
import { disc, limb, outline, type Sheet } from './brush.ts';
import { pathThrough, type Spot, towards } from './pen.ts';
import type { Shape } from './shapes.ts';
import type { BodyPoint } from './sideViewInput.ts';

/** A seated figure, joint by joint, in body coordinates. */
export interface Figure {
  readonly hip: Spot;
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
const HIP_BEHIND = 65;
const HIP_BELOW = 165;
const HIP_OVER_SEAT = 95;
const TRUNK = 470;
const THIGH = 430;
const SHIN = 430;
const UPPER_ARM = 300;
const FOREARM = 300;
const HEAD_RADIUS = 132;

/** Seat height that a person with this mass centre sits at. */
export function seatUnder(massCentre: BodyPoint): number {
  return massCentre.heightMm - HIP_BELOW - HIP_OVER_SEAT;
}

/** The rider: hands on the bar, feet below the seat. */
export function riderFigure(massCentre: BodyPoint, marks: Landmarks): Figure {
  return figure(massCentre, 0.16, marks.grip, [325, -475]);
}

/** Anyone else: hands on whoever sits in front, feet higher up. */
export function passengerFigure(massCentre: BodyPoint): Figure {
  const hip = hipOf(massCentre);
  return figure(massCentre, 0.07, [hip[0] + 440, hip[1] + 150], [265, -445]);
}

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

export function personShapes(person: Figure, sheet: Sheet): readonly Shape[] {
  const width = (mm: number) => mm * sheet.pxPerMm;
  const path = (...spots: Spot[]) => pathThrough(spots, sheet.plot, true);
  const chest = towards(person.neck, person.hip, 95);
  return [
    {
      kind: 'limbs',
      look: 'load',
      guess: false,
      limbs: [
        { d: path(person.neck, person.head), width: width(110) },
        { d: path(person.hip, chest), width: width(212) },
        { d: path(person.hip, person.knee), width: width(158) },
        { d: path(person.knee, person.ankle), width: width(122) },
        { d: path(person.ankle, person.toe), width: width(84) },
      ],
    },
    limb([chest, person.elbow, person.hand], 92, sheet, false, 'load'),
    disc({ xMm: person.head[0], heightMm: person.head[1] }, HEAD_RADIUS, 'load', sheet),
    ...visor(person.head, sheet),
  ];
}

function visor([x, height]: Spot, sheet: Sheet): readonly Shape[] {
  return [
    outline(
      [
        [x + 134, height + 26],
        [x + 22, height + 42, 14],
        [x + 44, height - 46, 14],
        [x + 130, height - 36],
      ],
      sheet,
      false,
      'load',
    ),
  ];
}

function hipOf(massCentre: BodyPoint): Spot {
  return [massCentre.xMm - HIP_BEHIND, massCentre.heightMm - HIP_BELOW];
}

function figure(massCentre: BodyPoint, lean: number, hand: Spot, foot: Spot): Figure {
  const hip = hipOf(massCentre);
  const neck: Spot = [hip[0] + TRUNK * Math.sin(lean), hip[1] + TRUNK * Math.cos(lean)];
  const shoulder = towards(neck, hip, 95);
  const ankle: Spot = [hip[0] + foot[0], hip[1] + foot[1]];
  const arm = bent(shoulder, hand, UPPER_ARM, FOREARM, -1);
  const leg = bent(hip, ankle, THIGH, SHIN, 1);
  return {
    hip,
    neck,
    head: [neck[0] + 45, neck[1] + 165],
    knee: leg.joint,
    ankle: leg.end,
    toe: [leg.end[0] + 150, leg.end[1] - 30],
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
