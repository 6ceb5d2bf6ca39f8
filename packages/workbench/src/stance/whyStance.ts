import type { Figure } from '@sagwright/model/plan/answer';
import { type Contribution, halfWidthOf } from '@sagwright/model/uncertainty/spread';
import { formatFigure } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import { inOrder } from '../inputs/desk.ts';
import type { JobPlan } from '../path.ts';
import { placeOf } from '../why/place.ts';
import type { Slopes } from '../why/standing.ts';
import { standingShown } from '../why/standingShown.ts';
import { words } from '../words/catalogue.ts';
import { stance as say, stanceWhy } from '../words/english/stance.ts';
import type { OpenedWords } from '../words/english/why.ts';
import { loadName } from '../words/names.ts';
import { type WhyWords, whyInputWords } from '../words/why.ts';
import { ownFigures } from './own.ts';
import { changeAt, figureAt, type Posture, postureAt } from './posture.ts';
import type { StanceFigure } from './rows.ts';
import { rowsOf } from './stance.ts';
import { stanceDimension, stanceName } from './words.ts';

/** A figure of how a load (null: the machine alone) stands and steers; of a point where it has one, by id. */
export interface StanceQuestion {
  readonly figure: StanceFigure;
  readonly point: string | null;
  readonly load: string | null;
  readonly of: 'asFound' | 'planned' | 'change';
}

/** Opens it up: value, equation, source, what its ± is made of; or a sentence that says why it cannot be. */
export function whyStance(planned: JobPlan, question: StanceQuestion, units: Units): WhyWords | string {
  const { figure, point, load, of } = question;
  const rows = rowsOf(planned);
  const place = rows.findIndex((row) => row.figure === figure && (row.point?.id ?? null) === point);
  const row = rows[place];
  const name = stanceName(planned, figure, point);
  if (row === undefined) return `${name}: ${say.noSuch}.`;
  if (row.needs !== null) return `${name}: ${say.needs[row.needs]}.`;
  const mine = ownFigures(planned);
  const posture = (setUp: 'asFound' | 'planned'): Posture | null => {
    const standing = standingShown(planned, load, setUp);
    return standing === null ? null : postureAt(planned, rows, standing, mine);
  };
  const now = posture(of === 'asFound' ? 'asFound' : 'planned');
  const before = of === 'change' ? posture('asFound') : null;
  const value = of === 'change' ? changeAt(now, before, place) : figureAt(now, place);
  if (now === null || value === null) return `${name}: ${say.never}.`;
  return {
    ...openedWords(figure),
    ...(of === 'change' && { title: say.changeOf(name) }),
    place: placeWords(planned, question),
    value: formatFigure(value, stanceDimension[figure], units),
    inputs: whyInputWords(
      planned,
      contributionsOf(value, place, now.slopes, before?.slopes ?? null),
      stanceDimension[figure],
      units,
    ),
  };
}

/** Figures that open up here and nowhere else, by their readable name. */
export const stanceNames = Object.keys(stanceWhy) as readonly (keyof typeof stanceWhy)[];

/**
 * Opens one up as planned, load and point by name or by id: the load that is ridden most and the first such point where none is
 * named.
 */
export function openStance(
  planned: JobPlan,
  asked: {
    readonly figure: keyof typeof stanceWhy;
    readonly point: string | null;
    readonly load: string | null;
  },
  units: Units,
): WhyWords | string {
  const { figure, point } = asked;
  const place = placeOf(planned, { figure: 'axle-load', end: 'rear', spring: null, loadCase: asked.load });
  if (place.kind === 'nowhere') return `${words.notToBeHad[place.because](words.quoted(place.found))}.`;
  const points = inOrder(planned.job.machine.points ?? {});
  const kinds = kindsOf[figure];
  const named = points.find(([id, { name }]) => id === point || name.toLowerCase() === point?.toLowerCase());
  const first = points.find(([, { kind }]) => kinds?.includes(kind));
  const of = kinds === undefined ? null : point === null ? (first?.[0] ?? null) : (named?.[0] ?? point);
  return whyStance(planned, { figure, point: of, load: place.loadCase.id, of: 'planned' }, units);
}

const kindsOf: { readonly [F in StanceFigure]?: readonly string[] } = {
  'peg-height': ['rider peg', 'passenger peg'],
  lean: ['hard part', 'rider peg', 'passenger peg'],
  'lean-in-bend': ['hard part', 'rider peg', 'passenger peg'],
  'stand-lean': ['side stand'],
  'lamp-height': ['headlamp'],
};

function openedWords(figure: StanceFigure): OpenedWords {
  switch (figure) {
    case 'seat-height':
    case 'rake':
    case 'trail':
    case 'wheelbase':
    case 'pitch':
      return words.why[figure];
    default:
      return stanceWhy[figure];
  }
}

function placeWords({ job }: JobPlan, { load, of }: StanceQuestion): string {
  const name = load === null ? null : loadName(job, load);
  if (of === 'change') return [name, say.against].filter((part) => part !== null).join(', ');
  return words.standPlace(null, name, of);
}

/** What the ± of a row, or of its change, is made of; the greatest first. */
function contributionsOf(
  { plusMinus }: Figure,
  place: number,
  now: Slopes,
  before: Slopes | null,
): readonly Contribution[] {
  const names = new Set([...now.keys(), ...(before?.keys() ?? [])]);
  const whole = plusMinus ?? 0;
  return [...names]
    .map((input) => {
      const slope = (now.get(input)?.[place] ?? 0) - (before?.get(input)?.[place] ?? 0);
      const halfWidth = halfWidthOf(Math.abs(slope));
      return { input, slope, halfWidth, share: whole > 0 ? (halfWidth / whole) ** 2 : 0 };
    })
    .filter(({ share }) => share > NOISE)
    .sort((a, b) => b.halfWidth - a.halfWidth);
}

/** What is left of an input that cancels out: the rounding of its differences. */
const NOISE = 1e-9;
