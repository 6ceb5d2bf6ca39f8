import { gasAt } from '@sagwright/model/dampers/gas';
import { rubberAt } from '@sagwright/model/dampers/rubber';
import type { StrutSI } from '@sagwright/model/dampers/strut';
import { topOutAt } from '@sagwright/model/dampers/topOut';
import { wheelTravelAt } from '@sagwright/model/rear/wheelMotion';
import { springAt } from '@sagwright/model/springs/spring';
import { strokeBare } from '@sagwright/model/statics/bareLeg';
import { strutAt } from '@sagwright/model/statics/endAt';
import { ATMOSPHERE, type EndSI } from '@sagwright/model/statics/machine';
import { type LegLevel, legLevel } from '../inputs/legAir.ts';
import { type Strut, sidesOf } from '../inputs/sides.ts';
import { takeAgain } from '../inputs/take.ts';
import type { JobPlan } from '../path.ts';
import { readAt, type Standing } from '../why/standing.ts';
import { standingShown } from '../why/standingShown.ts';
import type { ForkAirDocument, ForkDocument, ForkStepDocument, LegDocument } from './document.ts';

/** Steps of the stroke that are told: enough to draw a curve by. */
const STEPS = 10;
/** What a technician changes an oil level by in one go [m]: common practice, no source. */
const OIL_STEP = 0.01;
/** Legs of a fork, whichever hold a spring. */
const LEGS = 2;

/** The fork as found; null where the front is none. */
export function forkOf(planned: JobPlan): ForkDocument | null {
  const { machine } = planned.inputs.question;
  const { front } = machine;
  if (front.kinematics.kind !== 'fork') return null;
  const alone = standingShown(planned, null, 'asFound');
  const level = front.struts[0]!.gas === null ? null : levelOf(planned, front.strokeMax);
  return {
    legs: legsOf(planned, front),
    air: level === null ? null : airOf(front, level),
    oilStep: OIL_STEP,
    along: Array.from({ length: STEPS + 1 }, (_, i) => stepDocument(planned, alone, level, i / STEPS)),
  };
}

function legsOf({ job }: JobPlan, { struts, strokeMax }: EndSI): readonly LegDocument[] {
  const setting = job.setups.asFound.front;
  const names: readonly Strut[] =
    setting === undefined ? ['both'] : sidesOf(setting, struts.length).map(({ path }) => path);
  return struts.flatMap((strut, i): LegDocument[] => {
    const name = names[i];
    // Two legs that are alike are told once.
    if (name === undefined || (name === 'both' && i > 0)) return [];
    const pressed = strokeBare(strut, strokeMax);
    return [
      {
        strut: name,
        preload: strut.preload,
        topOut:
          strut.topOut === null
            ? null
            : {
                relaxed: strut.topOut.length,
                pressed,
                preload: strut.preload + pressed,
              },
      },
    ];
  });
}

function airOf({ struts, strokeMax }: EndSI, { gap }: LegLevel): ForkAirDocument | null {
  const gas = struts[0]!.gas;
  if (gas === null) return null;
  return { bareGap: gap, left: ((gas.volume - gas.area * strokeMax) * struts.length) / LEGS };
}

/** How each leg is filled, by the figures that went into the sum. */
function levelOf({ job, inputs }: JobPlan, strokeMax: number): LegLevel {
  const take = takeAgain(inputs.figures, '', 0);
  return legLevel(
    { job, take, tape: null, places: null, problems: [], notes: [] },
    job.machine.front.fork,
    strokeMax,
  );
}

function stepDocument(
  planned: JobPlan,
  alone: Standing | null,
  level: LegLevel | null,
  share: number,
): ForkStepDocument {
  const { front, geometry } = planned.inputs.question.machine;
  const stroke = share * front.strokeMax;
  const { struts } = front;
  const step = level === null ? 0 : level.bore * OIL_STEP;
  return {
    stroke,
    travel: wheelTravelAt(front, geometry.rake, stroke),
    springs: sumOver(struts, springForce, stroke),
    air: readAlong(front, alone, share, airForce),
    rubber: sumOver(struts, rubberForce, stroke),
    topOut: sumOver(struts, topOutForce, stroke),
    whole: readAlong(front, alone, share, wholeForce),
    airMoreOil: airWithOil(front, stroke, step),
    airLessOil: airWithOil(front, stroke, -step),
  };
}

type ForceOf = (strut: StrutSI, stroke: number) => number;

function sumOver(struts: readonly StrutSI[], of: ForceOf, stroke: number): number {
  return struts.reduce((sum, strut) => sum + of(strut, stroke), 0);
}

/** A force of all legs at a share of the stroke, however long that is; its ± from the machine alone, null where that has no rest. */
function readAlong(
  front: EndSI,
  alone: Standing | null,
  share: number,
  of: ForceOf,
): ForkStepDocument['whole'] {
  const read = ({ struts, strokeMax }: EndSI): number => sumOver(struts, of, share * strokeMax);
  if (alone === null) return { value: read(front), plusMinus: null };
  return readAt(alone, ({ machine }) => read(machine.front)).value;
}

/** Force of the air with so much more oil in each leg [m³]; null where it leaves none. */
function airWithOil({ struts, strokeMax }: EndSI, stroke: number, more: number): number | null {
  const perStrut = (more * LEGS) / struts.length;
  const locks = struts.some(({ gas }) => gas === null || gas.volume - perStrut <= gas.area * strokeMax);
  if (locks) return null;
  const of: ForceOf = ({ gas, ...strut }, at) =>
    airForce({ ...strut, gas: { ...gas!, volume: gas!.volume - perStrut } }, at);
  return sumOver(struts, of, stroke);
}

function springForce({ spring, preload }: StrutSI, stroke: number): number {
  springAt(spring, stroke + preload, part);
  return part.force;
}

function airForce({ gas }: StrutSI, stroke: number): number {
  if (gas === null) return 0;
  gasAt(gas, stroke, ATMOSPHERE, part);
  return part.force;
}

function rubberForce({ rubber }: StrutSI, stroke: number): number {
  if (rubber === null || stroke <= rubber.start) return 0;
  rubberAt(rubber, stroke, part);
  return part.force;
}

function topOutForce({ topOut }: StrutSI, stroke: number): number {
  if (topOut === null) return 0;
  topOutAt(topOut, stroke, part);
  return part.force;
}

function wholeForce(strut: StrutSI, stroke: number): number {
  strutAt(strut, stroke, part);
  return part.force;
}

const part = { force: 0, rate: 0, energy: 0 };
