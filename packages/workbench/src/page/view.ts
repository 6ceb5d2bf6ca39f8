import type { LoadCaseResult, Stand } from '@sagwright/model/plan/answer';
import { asChosen, type PlanQuestion } from '@sagwright/model/plan/question';
import type { JobDocument } from '@sagwright/records/schema';
import { siOf } from '@sagwright/records/schema/quantity';
import type { Units } from '../format/units.ts';
import { inOrder } from '../inputs/desk.ts';
import type { Inputs } from '../inputs/inputs.ts';
import { lengthened } from '../inputs/shockLength.ts';
import { type JobPlan, planInputs } from '../path.ts';
import { type SetUpShown, standingShown } from '../why/standingShown.ts';
import { attitudeSlopes } from './attitudeDoubt.ts';
import { attitudeViews, type Posture } from './attitudeView.ts';
import { endView } from './ends.ts';
import { limitViews } from './limits.ts';
import { messageViews } from './messages.ts';
import { assumedViews, noteViews } from './notes.ts';
import type { AssumedPart, LoadView, PageView, PictureView, StandView } from './shapes.ts';
import { shockView } from './shock.ts';
import { standView } from './stands.ts';
import { thingViews } from './things.ts';
import { usualPlaces } from './usualPlaces.ts';

/** What the page shows of a plan. */
export function pageView(planned: JobPlan, units: Units): PageView {
  const { job, inputs, plan } = planned;
  const letters = lettersOf(job);
  const { id, set } = inputs.targetSet;
  return {
    loads: [
      aloneView(planned, units),
      ...plan.loadCases.map((result) => loadView(planned, result, letters, units)),
    ],
    picture: pictureView(planned),
    rear: endView(planned, 'rear', letters, units),
    front: endView(planned, 'front', letters, units),
    shock: shockView(planned, units),
    targets: { id, name: set.name, origin: set.origin, shipped: job.targetSets[id] === undefined },
    notes: noteViews(planned, units),
    assumed: assumedViews(planned, units),
    usualPlaces: usualPlaces(planned),
    lengthUnit: units.unit.length,
    massUnit: units.unit.mass,
  };
}

/**
 * One load (null: the machine alone) as the page shows it, worked out by itself, with given springs planned: what is looked at is
 * there long before every spring with every load is. `springs` are those of the last plan: where a change makes another one the
 * suggested, the whole view puts that right.
 */
export function loadInSight(
  job: JobDocument,
  inputs: Inputs,
  load: string | null,
  springs: Readonly<Record<'rear' | 'front', string | null>>,
  units: Units,
): LoadView | null {
  const { question } = inputs;
  const only = (name: 'rear' | 'front'): PlanQuestion['rear'] => ({
    ...question[name],
    choices: question[name].choices.filter(({ id }) => id === springs[name]),
  });
  const planned = planInputs(job, {
    ...inputs,
    question: {
      ...question,
      loadCases: question.loadCases.filter(({ id }) => id === load),
      rear: only('rear'),
      front: only('front'),
      choice: {
        ...(springs.rear !== null && { rear: springs.rear }),
        ...(springs.front !== null && { front: springs.front }),
      },
    },
  });
  if (load === null) return aloneView(planned, units);
  const result = planned.plan.loadCases[0];
  return result === undefined ? null : loadView(planned, result, lettersOf(job), units);
}

function lettersOf(job: JobDocument): ReadonlyMap<string, string> {
  return new Map(inOrder(job.loadCases).map(([id], i) => [id, letterOf(i)]));
}

/** A, B … Z, then AA, AB … in the order of the loads. */
function letterOf(place: number): string {
  const letter = String.fromCharCode(65 + (place % 26));
  return place < 26 ? letter : letterOf(Math.floor(place / 26) - 1) + letter;
}

function aloneView(planned: JobPlan, units: Units): LoadView {
  const { machine } = planned.inputs.question;
  const { alone } = planned.plan;
  const posture = postureOf(planned, null, alone, 'asFound');
  const asFound = standView(alone, machine, machine.load, attitudeViews(posture, null, units), units);
  return {
    id: null,
    letter: null,
    name: '',
    sharePercent: null,
    total: asFound.loads?.total ?? null,
    weighed: false,
    things: [],
    asFound,
    planned: null,
    limits: [],
    refused: false,
    messages: [],
  };
}

function loadView(
  planned: JobPlan,
  result: LoadCaseResult,
  letters: ReadonlyMap<string, string>,
  units: Units,
): LoadView {
  const { plan, inputs, job } = planned;
  const { machine } = inputs.question;
  const id = result.loadCase;
  const loadCase = job.loadCases[id]!;
  const carried = inputs.question.loadCases.find((each) => each.id === id)!;
  const found = postureOf(planned, id, result.asFound, 'asFound');
  const stand = (of: Stand, attitude: StandView['attitude']): StandView =>
    standView(of, machine, carried.load, attitude, units);
  const set = plan.planned.loadCases.find((each) => each.loadCase === id)!;
  const isSet = set.rear !== null || set.front !== null || inputs.question.chosen !== undefined;
  const posture = isSet ? postureOf(planned, id, set.stand, 'planned') : null;
  const asFound = stand(result.asFound, attitudeViews(found, null, units));
  return {
    id,
    letter: letters.get(id)!,
    name: loadCase.name,
    sharePercent: loadCase.share,
    total: asFound.loads?.total ?? null,
    weighed: 'scales' in loadCase,
    things: thingViews(planned, id, result, units),
    asFound,
    planned: isSet
      ? drawnFrom(inputs.question, stand(set.stand, attitudeViews(posture, found, units)))
      : null,
    limits: limitViews(result.limits, units),
    refused: result.refused,
    messages: messageViews(planned, result, units),
  };
}

/**
 * A stand of the machine on another shock length or clamp height, its travels counted as found for the drawing, which has the machine
 * as found: so that each wheel is drawn where it is in the body.
 */
function drawnFrom({ machine, chosen }: PlanQuestion, stand: StandView): StandView {
  if (chosen === undefined || stand.state === null) return stand;
  const [heave, pitch, rear, front] = stand.state;
  const shift = (end: 'rear' | 'front'): number =>
    chosen.machine[end].referenceTravel - machine[end].referenceTravel;
  return { ...stand, state: [heave, pitch, rear - shift('rear'), front - shift('front')] };
}

function postureOf(
  planned: JobPlan,
  load: string | null,
  { attitude }: Stand,
  setUp: SetUpShown,
): Posture | null {
  const standing = standingShown(planned, load, setUp);
  return attitude === null || standing === null ? null : { attitude, slopes: attitudeSlopes(standing) };
}

function pictureView(planned: JobPlan): PictureView {
  const { question, figures } = planned.inputs;
  const { geometry, rear, front } = question.machine;
  const { machine } = planned.job;
  const isTold = (path: string): boolean =>
    figures.get(path)!.typed !== null ||
    (path === 'machine.rear.tyre.radius' && machine.rear.tyre?.size !== undefined) ||
    (path === 'machine.front.tyre.radius' && machine.front.tyre?.size !== undefined);
  const { pivot, shock } = planned.job.machine.rear;
  const shockLength = shock.length === undefined ? null : siOf(shock.length) + lengthened(shock);
  const longer = planned.job.choice?.shockLength;
  const { rear: rearThen, front: frontThen } = asChosen(question).machine;
  return {
    assumed: partsDrawn.flatMap(([part, path]) => (isTold(path) ? [] : [part])),
    wheelbase: geometry.wheelbase,
    rake: geometry.rake,
    forkOffset: geometry.forkOffset,
    pivot:
      pivot === undefined || rear.axlePath.kind !== 'circle'
        ? null
        : { x: rear.axlePath.pivotX, height: rear.axlePath.pivotHeight },
    seat: geometry.seat,
    rearRadius: rear.tyre.radius,
    frontRadius: front.tyre.radius,
    rearShocks: rear.struts.length === 1 ? 1 : 2,
    shockLength,
    rearReferenceTravel: rear.referenceTravel,
    frontReferenceTravel: front.referenceTravel,
    isFork: front.kinematics.kind === 'fork',
    planned: {
      rearRadius: rearThen.tyre.radius,
      frontRadius: frontThen.tyre.radius,
      shockLength: shockLength === null ? null : shockLength + (longer === undefined ? 0 : siOf(longer)),
    },
  };
}

/** What the picture is drawn to that has an assumption, and the job's field for it. */
const partsDrawn: readonly (readonly [AssumedPart, string])[] = [
  ['wheelbase', 'machine.wheelbase'],
  ['rake', 'machine.rake'],
  ['rear tyre', 'machine.rear.tyre.radius'],
  ['front tyre', 'machine.front.tyre.radius'],
];
