import { type Attitude, attitudeAt } from '@sagwright/model/attitude/attitude';
import { readingAt } from '@sagwright/model/plan/adjuster';
import type { Planned, SpringPlan } from '@sagwright/model/plan/answer';
import type { LoadCaseSI } from '@sagwright/model/plan/question';
import { springAt } from '@sagwright/model/springs/spring';
import { gradientAt } from '@sagwright/model/statics/gradient';
import { hangingTravel } from '@sagwright/model/statics/hanging';
import { ATMOSPHERE, GRAVITY } from '@sagwright/model/statics/machine';
import type { Prepared } from '@sagwright/model/statics/prepared';
import { adjusterPath } from '../inputs/adjusters.ts';
import { deskAgain } from '../inputs/deskAgain.ts';
import { ownParts } from '../inputs/ownFigure.ts';
import { spreadOf } from '../limits/row.ts';
import type { JobPlan } from '../path.ts';
import type { End } from '../result/inView.ts';
import { forceAtFullBump, travelAtRubber } from '../rubber/rubber.ts';
import { rateReader } from '../springs/rate.ts';
import type { FigureName } from './figures.ts';
import { coilBind, springLength } from './lengths.ts';
import type { Opened } from './question.ts';
import { isRearFigure, type RearFigure, rearFigure } from './rearFigures.ts';
import { readAt, standingOfCell, summed, travelOf } from './standing.ts';

/** A figure of one spring with one load. */
export function cellFigure(
  planned: JobPlan,
  figure: FigureName,
  end: End,
  spring: SpringPlan,
  loadCase: LoadCaseSI,
): Opened {
  if (figure === 'spring-rate') return springRate(planned, spring);
  const planCell = spring.cells.find((each) => each.loadCase === loadCase.id);
  if (planCell?.kind !== 'planned') return 'not planned';
  const { cell } = planCell;
  switch (figure) {
    case 'collar':
      return aimOfAdjuster(planned, end, cell);
    case 'preload':
      return cell.preload === null || cell.positions === null
        ? 'nothing to set'
        : { value: cell.preload, contributions: cell.contributions };
    case 'spring-length':
      return springLength(planned, end, spring, cell);
    case 'pressure':
      return pressureOfCell(cell);
    case 'coil-bind':
      return coilBind(planned, end, spring, cell);
    default:
      return figureAtRest(planned, figure, end, spring, cell, loadCase);
  }
}

/** Of the spring by itself, where the load that is ridden most presses it. */
function springRate(planned: JobPlan, { spring: id, rate }: SpringPlan): Opened {
  const desk = deskAgain(planned);
  const read = rateReader(desk, id, planned.job.springs[id]!, rate);
  if (read === null) return 'no coil';
  const { value, moves } = ownParts(desk.take, (take) => read({ ...desk, take }))!;
  const { figure, contributions } = spreadOf(value, moves);
  return { value: figure, contributions };
}

/** Where the adjuster meets the aim: the reading where it has one, else how far it squeezes the spring from its loosest end. */
function aimOfAdjuster(planned: JobPlan, end: End, { positions, contributions }: Planned): Opened {
  const { adjuster } = planned.inputs.question[end];
  if (adjuster === null || positions === null) return 'nothing to set';
  const { value, plusMinus } = positions.aim;
  const reading = adjuster.kind === 'continuous' ? readingAt(adjuster, value) : value;
  return { value: { value: reading, plusMinus }, contributions };
}

/** The pressure that answers the load, as a gauge reads it with the shock fully out. */
function pressureOfCell({ pressure }: Planned): Opened {
  if (pressure === undefined) return 'no air';
  const { value, plusMinus } = pressure.aim;
  return { value: { value: value - ATMOSPHERE, plusMinus }, contributions: pressure.contributions };
}

function figureAtRest(
  planned: JobPlan,
  figure: FigureName,
  end: End,
  spring: SpringPlan,
  cell: Planned,
  loadCase: LoadCaseSI,
): Opened {
  // As the plan has it: on a stop, or where the wheel rate is below 0, an end has no frequency of its own.
  if (figure === 'ride-frequency' && cell.set.rest !== null && cell.set.rideFrequency === null)
    return 'nothing swings';
  if (isRearFigure(figure)) {
    const standing = standingOfCell(planned, end, spring, cell, loadCase);
    return standing === null ? 'no rest' : rearFigure(planned, figure, end, standing);
  }
  const read = readerOf(planned, figure, end);
  if (typeof read === 'string') return read;
  const standing = standingOfCell(planned, end, spring, cell, figure === 'free-sag' ? null : loadCase);
  if (standing === null) return 'no rest';
  const opened =
    figure === 'kg-per-turn' ? withLead(planned, end, readAt(standing, read)) : readAt(standing, read);
  // On a stop derivatives say nothing about the free side: there the plan's own ± stands, also where it is unknown.
  const onStop = opened.contributions.length === 0;
  const travel =
    figure === 'free-sag' ? cell.set.alone?.travel : figure === 'sag' ? cell.set.travel : undefined;
  return onStop && travel !== undefined
    ? { ...opened, value: { ...opened.value, plusMinus: travel.plusMinus } }
    : opened;
}

/** What one turn answers is in proportion to the lead of the thread: its ± is added. */
function withLead(
  planned: JobPlan,
  end: End,
  { value, contributions }: ReturnType<typeof readAt>,
): ReturnType<typeof readAt> {
  const lead = planned.inputs.figures.get(`${adjusterPath(end)}.lead`);
  if (lead === undefined) return { value, contributions };
  const slopes = new Map(contributions.map(({ input, slope }) => [input, slope]));
  slopes.set(lead.path, (slopes.get(lead.path) ?? 0) + value.value / lead.value);
  return summed(value.value, slopes, (input) => planned.inputs.figures.get(input)!.deviation);
}

type Reader = (prepared: Prepared, state: Float64Array) => number;

/** How a figure is read off a machine at rest; or the figure that is needed for it. */
function readerOf(
  planned: JobPlan,
  figure: Exclude<FigureName, RearFigure>,
  end: End,
): Reader | Extract<Opened, string> {
  const { machine, [end]: question } = planned.inputs.question;
  switch (figure) {
    case 'sag':
    case 'free-sag':
      return (prepared, state) => travelOf(end, state) - hangs(prepared, end);
    case 'travel-left':
      return (prepared, state) => travelMax(prepared, end) - travelOf(end, state);
    case 'rubber-left':
      if (machine[end].struts.every(({ rubber }) => rubber === null)) return 'rubber not known';
      return (prepared, state) => travelAtRubber(prepared.machine, end) - travelOf(end, state);
    case 'rubber-force':
      if (machine[end].struts.every(({ rubber }) => rubber === null)) return 'rubber not known';
      return (prepared) => forceAtFullBump(prepared.machine, end);
    case 'wheel-rate':
      return (prepared, state) => wheelAt(prepared, state, end).at.wheelRate;
    case 'ride-frequency':
      return (prepared, state) => frequencyOf(prepared, state, end);
    case 'kg-per-turn': {
      const lead = question.adjuster?.kind === 'continuous' ? question.adjuster.lead : null;
      return lead === null
        ? 'nothing is turned'
        : (prepared, state) => (perMetre(prepared, state, end) * lead) / GRAVITY;
    }
    case 'trail':
      return machine.geometry.forkOffset === null ? 'fork offset not known' : attitude('groundTrail');
    case 'seat-height':
      return machine.geometry.seat === null ? 'seat not known' : attitude('seatHeight');
    case 'pitch':
    case 'rake':
    case 'wheelbase':
      return attitude(figure);
    default:
      throw new RangeError(`readerOf: ${figure} is not read off a machine at rest`);
  }
}

function attitude(part: keyof Attitude): Reader {
  return (prepared, state) => attitudeAt(prepared, state)[part]!;
}

function travelMax(prepared: Prepared, end: End): number {
  return end === 'rear' ? prepared.rearTravelMax : prepared.frontTravelMax;
}

function hangs(prepared: Prepared, end: End): number {
  const { machine } = prepared;
  return hangingTravel(machine[end], machine.geometry.rake, travelMax(prepared, end));
}

function wheelAt(prepared: Prepared, state: Float64Array, end: End): Prepared['gradient']['rear'] {
  gradientAt(prepared, state, 0);
  return prepared.gradient[end];
}

/** As in `Rest`: f = √(ride rate / sprung mass of that end) / 2π. */
function frequencyOf(prepared: Prepared, state: Float64Array, end: End): number {
  const { at, wheelLoad } = wheelAt(prepared, state, end);
  const { tyre, unsprung } = prepared.machine[end];
  const rate = (at.wheelRate * tyre.rate) / (at.wheelRate + tyre.rate);
  return Math.sqrt(rate / (wheelLoad / GRAVITY - unsprung)) / (2 * Math.PI);
}

/** Force at the wheel for each metre that the adjusters of an end squeeze their springs: Σ k·MR [N/m]. */
function perMetre(prepared: Prepared, state: Float64Array, end: End): number {
  const { at } = wheelAt(prepared, state, end);
  const spring = { force: 0, rate: 0, energy: 0 };
  let sum = 0;
  for (const strut of prepared.machine[end].struts) {
    springAt(strut.spring, at.stroke + strut.preload, spring);
    sum += spring.rate * at.motionRatio;
  }
  return sum;
}
