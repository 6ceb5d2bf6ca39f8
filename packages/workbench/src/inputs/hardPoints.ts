import type { HardPoint, HardPointsSI } from '@sagwright/model/rear/hardPoints';
import { surveyRear } from '@sagwright/model/rear/survey';
import type { EndSI } from '@sagwright/model/statics/machine';
import { bounds } from '@sagwright/records/schema/bounds';
import type { Points, Rear } from '@sagwright/records/schema/machine';
import { type Desk, impossible, note } from './desk.ts';
import { type PartField, partFields } from './partFields.ts';
import { takeLengthened } from './shockLength.ts';
import { tellStuck } from './stuckRear.ts';
import { awayOf, placesNow } from './tapedPlaces.ts';
import { tellTape } from './tapeTrouble.ts';

/** How wheel and axle of the rear move, and from where their travel was read. */
export type RearMotion = Pick<EndSI, 'kinematics' | 'axlePath' | 'referenceTravel'>;

const PATH = 'machine.rear.travel';

/**
 * How far stroke and extended length may be moved on and the rear still move [m]: so that the small steps by which the
 * doubt of each figure is followed have an answer too.
 */
const TO_SPARE = 1e-4;

/**
 * How a rear moves that is known by its hard points. It is surveyed first: what cannot move through the whole stroke is
 * told with its place and figure, and is null; the reference travel follows.
 */
export function pointsMotion(
  desk: Desk,
  travel: Points,
  radius: number,
  strokeMax: number,
): RearMotion | null {
  const { rear } = desk.job.machine;
  const places = placesOf(desk, travel, rear, radius);
  if (places === null) return null;
  const points = pointsOf(desk, travel, rear, places);
  const pivot = places('pivot');
  const arm = { kind: 'circle' as const, pivotX: pivot.x, pivotHeight: pivot.height };
  const survey = surveyRear({ points, arm, axleHeight: radius }, strokeMax);
  if (survey.kind !== 'moves') {
    tellStuck(desk, survey, points, strokeMax);
    return null;
  }
  const further = surveyRear({ points: longer(points), arm, axleHeight: radius }, strokeMax + 2 * TO_SPARE);
  if (further.kind !== 'moves') {
    tellStuck(desk, further, points, strokeMax);
    return null;
  }
  if (survey.travelMax > bounds.wheelTravel.most) tellTravel(desk, survey.travelMax);
  tellEyes(desk, survey.eyeToEye, damperSpan(points, strokeMax));
  return { kinematics: points, axlePath: arm, referenceTravel: survey.referenceTravel };
}

function longer(points: HardPointsSI): HardPointsSI {
  const { damper } = points;
  return { ...points, damper: { ...damper, extendedLength: damper.extendedLength + TO_SPARE } };
}

type PlaceOf = (part: PartField['part']) => HardPoint;

/** Where each part stands: as typed, or as a tape says; null where the tape gives no points, which is told. */
function placesOf(desk: Desk, travel: Points, rear: Rear, radius: number): PlaceOf | null {
  const { take, places: taped } = desk;
  const fields = partFields(rear, travel);
  if (taped === null) {
    return (wanted) => {
      const { path, place } = fields.find(({ part }) => part === wanted)!;
      return {
        x: take.known(`${path}.x`, place.x, 'hardPoint'),
        height: take.known(`${path}.height`, place.height, 'hardPoint'),
      };
    };
  }
  tellTape(desk, taped);
  if (taped.answer.kind !== 'points') return null;
  const isRead = fields.every(({ place: { x, height } }) => x.plusMinus && height.plusMinus);
  if (!isRead) note(desk, 'places only looked for', `${PATH}.tape`);
  for (const { part, path } of fields) {
    if (awayOf(taped, part) > ELSEWHERE) note(desk, 'place found elsewhere', path);
  }
  const now = placesNow(taped, take, radius);
  return (part) => now[part]!;
}

/** A hand's breadth: further from where it was looked for, a part may be its own mirrored place [m]. */
const ELSEWHERE = 0.1;

function pointsOf(desk: Desk, travel: Points, { shock }: Rear, at: PlaceOf): HardPointsSI {
  const { take } = desk;
  if (travel.sideways === undefined) note(desk, 'sideways not known', `${PATH}.sideways`);
  const damper = {
    extendedLength: take.known('machine.rear.shock.length', shock.length!, 'tape') + takeLengthened(desk),
    sideways: travel.sideways === undefined ? 0 : take.known(`${PATH}.sideways`, travel.sideways, 'tape'),
  };
  if (travel.kind === 'direct') {
    return { kind: 'direct', damper, armEye: at('arm eye'), frameEye: at('frame eye') };
  }
  return {
    kind: 'linkage',
    damper,
    rocker: { on: travel.rocker.on, pivot: at('rocker pivot'), pin: at('link pin') },
    linkEnd: at('link end'),
    rockerEye: at('rocker eye'),
    farEye: { on: travel.farEye.on, ...at('far eye') },
  };
}

function tellTravel(desk: Desk, travelMax: number): void {
  impossible(
    desk,
    PATH,
    `Hard points: the stroke gives ${inMm(travelMax)} of wheel travel; allowed: up to ${inMm(bounds.wheelTravel.most)}. Check the points and the stroke.`,
  );
}

/** By how much more than the shock reaches its eyes may have been read apart, and it still be the tape [m]. */
const TAPE = 0.002;

interface Span {
  readonly shortest: number;
  readonly longest: number;
}

function damperSpan({ damper }: HardPointsSI, strokeMax: number): Span {
  return { shortest: damper.extendedLength - strokeMax, longest: damper.extendedLength };
}

/**
 * Points read where the shock cannot be were read with the shock off, which is said; further off than a whole stroke they
 * are of another shock, or mistaken.
 */
function tellEyes(desk: Desk, eyeToEye: number, { shortest, longest }: Span): void {
  const off = Math.max(eyeToEye - longest, shortest - eyeToEye);
  if (off > longest - shortest) {
    impossible(
      desk,
      'machine.rear.shock.length',
      `Length of the shock: ${inMm(longest)} fully out and ${inMm(shortest)} fully in, but by the hard points its eyes stand ${inMm(eyeToEye)} apart. Check the length, and the places of both eyes.`,
    );
  } else if (off > TAPE) note(desk, 'points beyond shock', PATH);
}

function inMm(length: number): string {
  return `${(length * 1000).toFixed(1)} mm`;
}
