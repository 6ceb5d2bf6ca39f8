import { type GasSI, gasAt, quickAbout } from '@sagwright/model/dampers/gas';
import { rubberAt } from '@sagwright/model/dampers/rubber';
import type { StrutSI } from '@sagwright/model/dampers/strut';
import { topOutAt } from '@sagwright/model/dampers/topOut';
import type { Figure } from '@sagwright/model/plan/answer';
import { damperAt, wheelTravelAt } from '@sagwright/model/rear/wheelMotion';
import { springAt } from '@sagwright/model/springs/spring';
import { strokeBare } from '@sagwright/model/statics/bareLeg';
import { strutAt } from '@sagwright/model/statics/endAt';
import { FRONT_TRAVEL } from '@sagwright/model/statics/gradient';
import { ATMOSPHERE, type EndSI, type MachineSI } from '@sagwright/model/statics/machine';
import type { Prepared } from '@sagwright/model/statics/prepared';
import { deskAgain } from '../inputs/deskAgain.ts';
import { legLevels } from '../inputs/legAir.ts';
import { type Strut, sidesOf } from '../inputs/sides.ts';
import type { JobPlan } from '../path.ts';
import { mainLoad } from '../why/place.ts';
import { doubtAt, readAt, type Standing, slopesOf } from '../why/standing.ts';
import { standingShown } from '../why/standingShown.ts';
import type { ForkDocument, ForkStepDocument, LegDocument, QuickDocument } from './document.ts';

/** Steps of the stroke that are told: enough to draw a curve by. */
const STEPS = 10;
/** What a technician changes an oil level by in one go [m]: common practice, no source. */
const OIL_STEP = 0.01;
/** Legs of a fork, whichever hold a spring. */
const LEGS = 2;
/** Of dry air that loses no heat: `quickAbout`. */
const ADIABATIC = 1.4;

/** The fork as found; null where the front is none. */
export function forkOf(planned: JobPlan): ForkDocument | null {
  const stands = forkStands(planned);
  if (stands === null) return null;
  const { front, levels, about } = stands;
  return {
    legs: legsOf(planned, front),
    air: levels.flatMap(({ leg, level }) =>
      level === null ? [] : [{ leg, bareGap: level.gap, left: level.bore * level.gap - level.solid }],
    ),
    quick: about?.quick ?? null,
    oilStep: OIL_STEP,
    along: alongOf(stands),
  };
}

/** What the fork's forces are read at. */
export interface ForkStands {
  readonly front: EndSI;
  readonly rake: number;
  readonly levels: ReturnType<typeof legLevels>;
  /** The machine alone, as found; null where it has no rest. */
  readonly alone: Standing | null;
  /** The load that a quick stroke is about, at its rest as found. */
  readonly about: { readonly standing: Standing; readonly quick: QuickDocument } | null;
}

/** Null where the front is no fork. */
export function forkStands(planned: JobPlan): ForkStands | null {
  const { job, inputs } = planned;
  const { front, geometry } = inputs.question.machine;
  if (front.kinematics.kind !== 'fork') return null;
  return {
    front,
    rake: geometry.rake,
    levels: legLevels(deskAgain(planned), job.machine.front.fork, front.strokeMax),
    alone: standingShown(planned, null, 'asFound'),
    about: aboutOf(planned, front),
  };
}

function aboutOf(planned: JobPlan, { struts }: EndSI): ForkStands['about'] {
  const main = mainLoad(planned.inputs.question.loadCases);
  if (main === undefined || struts.every(({ gas }) => gas === null)) return null;
  const standing = standingShown(planned, main.id, 'asFound');
  if (standing === null) return null;
  const stroke = strokeAtRest(standing.prepared.machine, standing.state);
  return { standing, quick: { loadCase: main.id, stroke, exponent: ADIABATIC } };
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

/** What the steps tell with a ± of its own, at each share of the stroke. */
interface Along {
  readonly springs: readonly Figure[];
  readonly air: readonly Figure[];
  readonly whole: readonly Figure[];
  /** Null without a rest to be about. */
  readonly airQuick: readonly Figure[] | null;
}

function alongOf(stands: ForkStands): readonly ForkStepDocument[] {
  const shares = Array.from({ length: STEPS + 1 }, (_, i) => i / STEPS);
  const along = {
    springs: figuresAlong(stands, 'springs', shares),
    air: figuresAlong(stands, 'air', shares),
    whole: figuresAlong(stands, 'whole', shares),
    airQuick: stands.about === null ? null : figuresAlong(stands, 'airQuick', shares),
  };
  return shares.map((share, i) => stepDocument(stands, along, share, i));
}

function stepDocument(
  stands: ForkStands,
  { springs, air, whole, airQuick }: Along,
  share: number,
  i: number,
): ForkStepDocument {
  const { front, rake } = stands;
  const { struts } = front;
  const stroke = share * front.strokeMax;
  return {
    stroke,
    travel: wheelTravelAt(front, rake, stroke),
    springs: springs[i]!,
    air: air[i]!,
    airQuick: airQuick?.[i] ?? null,
    rubber: sumOver(struts, rubberForce, stroke),
    topOut: sumOver(struts, topOutForce, stroke),
    whole: whole[i]!,
    airMoreOil: airWithOil(stands, stroke, OIL_STEP),
    airLessOil: airWithOil(stands, stroke, -OIL_STEP),
  };
}

/** Forces of all legs that have a ± of their own. */
export type ForkForce = 'springs' | 'air' | 'airQuick' | 'whole';

/** A force at every share of the stroke, all in one pass through the balance; its ± null where nothing has a rest. */
function figuresAlong(stands: ForkStands, force: ForkForce, shares: readonly number[]): readonly Figure[] {
  const standing = standingFor(stands, force);
  if (standing === null) {
    const { struts, strokeMax } = stands.front;
    return shares.map((share) => ({
      value: sumOver(struts, forces[force], share * strokeMax),
      plusMinus: null,
    }));
  }
  const { prepared, state } = standing;
  const slopes = slopesOf(
    standing,
    (machine, beside, out) => {
      for (let i = 0; i < shares.length; i += 1) out[i] = forceAt(machine, beside, force, shares[i]!);
    },
    shares.length,
  );
  return shares.map((share, i) => ({
    value: forceAt(prepared, state, force, share),
    plusMinus: doubtAt(i, slopes),
  }));
}

/**
 * A force of all legs at a share of the stroke, however long that is, with what its ± is made of: from the machine alone, a quick
 * stroke from the rest that it is about. Null where that has none.
 */
export function openForce(
  stands: ForkStands,
  force: ForkForce,
  share: number,
): ReturnType<typeof readAt> | null {
  const standing = standingFor(stands, force);
  if (standing === null) return null;
  return readAt(standing, (prepared, state) => forceAt(prepared, state, force, share));
}

function standingFor({ alone, about }: ForkStands, force: ForkForce): Standing | null {
  return force === 'airQuick' ? (about?.standing ?? null) : alone;
}

function forceAt({ machine }: Prepared, state: ArrayLike<number>, force: ForkForce, share: number): number {
  const { struts, strokeMax } = machine.front;
  const settled = force === 'airQuick' ? strokeAtRest(machine, state) : 0;
  return sumOver(struts, forces[force], share * strokeMax, settled);
}

function strokeAtRest({ front, geometry }: MachineSI, state: ArrayLike<number>): number {
  damperAt(front, geometry.rake, state[FRONT_TRAVEL]!, damper);
  return damper.stroke;
}

const damper = { stroke: 0, motionRatio: 0, ratioSlope: 0 };

type ForceOf = (strut: StrutSI, stroke: number, settled: number) => number;

function sumOver(struts: readonly StrutSI[], of: ForceOf, stroke: number, settled = 0): number {
  return struts.reduce((sum, strut) => sum + of(strut, stroke, settled), 0);
}

const forces: { readonly [F in ForkForce]: ForceOf } = {
  springs: springForce,
  air: airForce,
  airQuick: (strut, stroke, settled) =>
    gasesOf(strut).reduce((sum, gas) => sum + gasForce(quickAbout(gas, settled, ADIABATIC), stroke), 0),
  whole: wholeForce,
};

/** Force of the air with the oil higher in every leg [m]; null where that leaves none, or there is none. */
function airWithOil({ front, levels }: ForkStands, stroke: number, higher: number): number | null {
  const gases = front.struts.flatMap(gasesOf);
  if (gases.length === 0) return null;
  const bores = levels.flatMap(({ leg, level }) => {
    if (level === null) return [];
    // Told as one, both legs are in as many gases as there are struts.
    return leg === 'both' ? gases.map(() => (LEGS * level.bore) / gases.length) : [level.bore];
  });
  const filled = gases.map((gas, i) => ({ ...gas, volume: gas.volume - bores[i]! * higher }));
  if (filled.some(({ volume, area }) => volume <= area * front.strokeMax)) return null;
  return filled.reduce((sum, gas) => sum + gasForce(gas, stroke), 0);
}

function springForce({ spring, preload }: StrutSI, stroke: number): number {
  springAt(spring, stroke + preload, part);
  return part.force;
}

function airForce(strut: StrutSI, stroke: number): number {
  return gasesOf(strut).reduce((sum, gas) => sum + gasForce(gas, stroke), 0);
}

/** The air that a strut works against: of its own leg, and of the other where it stands for both. */
function gasesOf({ gas, air }: StrutSI): readonly GasSI[] {
  return [...(gas === null ? [] : [gas]), ...(air === undefined ? [] : [air])];
}

function gasForce(gas: GasSI, stroke: number): number {
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
