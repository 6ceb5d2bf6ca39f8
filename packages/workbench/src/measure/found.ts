import { isBeyondChance } from '@sagwright/model/estimation/chance';
import type { Estimate } from '@sagwright/model/estimation/mostProbable';
import type { Inquiry } from '@sagwright/model/estimation/readings';
import { type Fault, likeness, suspectsOf } from '@sagwright/model/estimation/suspects';
import { varianceOf } from '@sagwright/model/estimation/variance';
import type { PlanCell, Planned } from '@sagwright/model/plan/answer';
import { halfWidthOf } from '@sagwright/model/uncertainty/spread';
import type { UsedFigure } from '../inputs/take.ts';
import type { JobPlan } from '../path.ts';
import { readDimension } from './asRead.ts';
import type {
  CollarFound,
  Doubted,
  FoundDocument,
  InputFound,
  SuspectDocument,
  Suspected,
} from './document.ts';

/** A score that chance passes once in a thousand: |standard normal| > 3.29. */
const SURPRISING = 3.29;
/** Faults that look alike to this degree are told together. */
const ALIKE = 0.9;
/** An input is told of where it moved by this many of its deviations, or keeps no more than this share of its ±. */
const MOVED = 0.1;
const NARROWED = 0.9;

/** The figures behind the inputs by their paths: those of the job, and where adjusters stood for a reading. */
export type Figures = (path: string) => UsedFigure | undefined;

/**
 * The most probable machine in words of the job: what does not fit, which inputs it moved, where collars go.
 * before, after  the job planned as it stands, and as readings have it
 */
export function foundDocument(
  before: JobPlan,
  after: JobPlan,
  figures: Figures,
  inquiry: Inquiry,
  estimate: Estimate,
): FoundDocument {
  return {
    misfit: estimate.misfit,
    freedom: estimate.freedom,
    beyondChance: isBeyondChance(estimate.misfit, estimate.freedom),
    suspect: suspectOf(figures, inquiry, estimate),
    inputs: inputsFound(figures, inquiry, estimate),
    collars: ends.flatMap((end) => collarsOf(end, before, after)),
    springs: ends
      .filter((end) => before.plan[end].suggestion.kind !== 'nothing to choose')
      .map((end) => ({ end, before: suggested(before, end), after: suggested(after, end) })),
  };
}

const ends = ['rear', 'front'] as const;

function suggested({ plan }: JobPlan, end: 'rear' | 'front'): string | null {
  const { suggestion } = plan[end];
  return suggestion.kind === 'spring' ? suggestion.spring : null;
}

function suspectOf(figures: Figures, inquiry: Inquiry, estimate: Estimate): SuspectDocument | null {
  const { readings, inputs } = inquiry;
  const faults: readonly Fault[] = [
    ...readings.map(({ id }, i): Fault => ({ name: id, readings: [[i, 1]], known: [] })),
    ...inputs.map(({ name }, j): Fault => ({ name, readings: [], known: [[j, 1]] })),
  ];
  const worst = suspectsOf(estimate, faults)[0];
  if (worst === undefined || Math.abs(worst.score) < SURPRISING) return null;
  const { fault, size, deviation, score } = worst;
  const reading = readings.find(({ id }) => id === fault.name);
  const unit = reading?.evidence.deviation ?? -inputs.find(({ name }) => name === fault.name)!.deviation;
  return {
    ...suspected(inquiry, fault),
    dimension: reading === undefined ? (figures(fault.name)?.dimension ?? null) : readDimension(reading),
    off: { value: size * unit, plusMinus: halfWidthOf(deviation * Math.abs(unit)) },
    score: Math.abs(score),
    alike: faults
      .filter((other) => other !== fault && Math.abs(likeness(estimate, fault, other)) > ALIKE)
      .map((other) => suspected(inquiry, other)),
  };
}

function suspected({ readings }: Inquiry, { name }: Fault): Suspected {
  return { kind: readings.some(({ id }) => id === name) ? 'figure' : 'input', id: name };
}

/** Inputs that readings moved or narrowed; those that no figure of the job stands for (axes of a fit) are left to the sum. */
function inputsFound(figures: Figures, { inputs }: Inquiry, estimate: Estimate): readonly InputFound[] {
  const found = inputs.flatMap(({ name, deviation }, j): InputFound[] => {
    const figure = figures(name);
    if (figure === undefined) return [];
    const moved = estimate.unknowns.known[j]!;
    const itself = inputs.map((_, k) => (k === j ? 1 : 0));
    const left = Math.sqrt(Math.max(0, varianceOf(estimate, itself)));
    if (Math.abs(moved) < MOVED && left > NARROWED) return [];
    const { value, dimension } = figure;
    const plusMinus = halfWidthOf(deviation);
    return [
      {
        path: name,
        dimension,
        before: { value, plusMinus },
        after: { value: value + moved * deviation, plusMinus: left * plusMinus },
        moved,
      },
    ];
  });
  return found.sort((a, b) => Math.abs(b.moved) - Math.abs(a.moved));
}

/** Where the collar answers each load with the fitted spring, before the readings and after them. */
function collarsOf(end: 'rear' | 'front', before: JobPlan, after: JobPlan): readonly CollarFound[] {
  const fitted = before.plan[end].springs.find((each) => each.fitted);
  if (fitted === undefined) return [];
  const now = after.plan[end].springs.find((each) => each.fitted)!;
  const { adjuster } = before.inputs.question[end];
  const scale = adjuster?.kind === 'continuous' ? adjuster : { readingAtZero: 0, sense: 1 };
  const along = adjuster?.kind === 'continuous' ? 'reading' : 'from loosest';
  const read = ({ value, plusMinus }: Doubted): Doubted => ({
    value: scale.readingAtZero + scale.sense * value,
    plusMinus,
  });
  return fitted.cells.flatMap((cell, i): CollarFound[] => {
    const [one, other] = [positionIn(cell), positionIn(now.cells[i]!)];
    const reach = reachIn(now.cells[i]!);
    return one === null || other === null || reach === null
      ? []
      : [
          {
            end,
            loadCase: cell.loadCase,
            spring: fitted.spring,
            along,
            before: read(one),
            after: read(other),
            reach,
          },
        ];
  });
}

function reachIn(cell: PlanCell): CollarFound['reach'] | null {
  return cell.kind === 'planned' ? cell.cell.reach.kind : null;
}

function positionIn(cell: PlanCell): Doubted | null {
  const positions: Planned['positions'] = cell.kind === 'planned' ? cell.cell.positions : null;
  if (positions === null || positions.aim.plusMinus === null) return null;
  return { value: positions.aim.value, plusMinus: positions.aim.plusMinus };
}
