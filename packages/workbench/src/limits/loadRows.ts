import type { LimitOf, LimitResult } from '@sagwright/model/limits/limits';
import { gradientAt } from '@sagwright/model/statics/gradient';
import { GRAVITY } from '@sagwright/model/statics/machine';
import type { Contribution } from '@sagwright/model/uncertainty/spread';
import { inOrder } from '../inputs/desk.ts';
import { capacityFrom, isUnderPressure } from '../inputs/limits.ts';
import { isListed } from '../inputs/loads.ts';
import type { JobPlan } from '../path.ts';
import { readAt, standingFullTank } from '../why/standing.ts';
import type { LimitNeed, LimitNeeded, LimitNote } from './document.ts';
import { checkedRow, type Held, type LimitRow, needed, neededRow, type RowName } from './row.ts';

type WheelLimit = Exclude<LimitOf['kind'], 'place'>;

/** Gross, axles and tyres, each with the load that is worst for it. */
export function wheelRows(planned: JobPlan): readonly LimitRow[] {
  return (['gross', 'rear axle', 'front axle', 'rear tyre', 'front tyre'] as const).map((kind) =>
    wheelRow(planned, kind),
  );
}

/** Every place of the machine; a seat only where somebody gave it a limit. */
export function placeRows(planned: JobPlan): readonly LimitRow[] {
  return inOrder(planned.job.machine.places)
    .filter(([, place]) => isListed(place))
    .map(([id]) => placeRow(planned, id));
}

function wheelRow(planned: JobPlan, kind: WheelLimit): LimitRow {
  const name = wheelName(kind);
  const path = wheelPath(planned, kind);
  const end = name.end;
  const notes = end !== null && name.kind === 'tyre load' ? tyreNotes(planned, end) : [];
  const resting = planned.plan.loadCases.filter(({ loadsFullTank }) => loadsFullTank !== null);
  const held = resting.flatMap(({ loadCase, limits }) =>
    heldAgainst(
      limits,
      (of) => of.kind === kind,
      loadCase,
      () => wheelContributions(planned, loadCase, kind, path),
    ),
  );
  const row = held.length === 0 ? null : checkedRow(name, held, notes);
  if (row?.told.verdict === 'over') return row;
  const needs = [
    ...(planned.inputs.question.limits[limitField[kind]] === null
      ? [needed(needOf(planned, kind), path)]
      : []),
    ...(name.kind === 'tyre load' ? underPressure(planned, end!) : []),
    ...planned.plan.loadCases
      .filter(({ loadsFullTank }) => loadsFullTank === null)
      .map(({ loadCase }) => needed('rest', `loadCases.${loadCase}`)),
    ...(planned.plan.loadCases.length === 0 ? [needed('rest', 'loadCases')] : []),
  ];
  return row === null || needs.length > 0 ? neededRow(name, needs, notes) : row;
}

const limitField = {
  gross: 'gross',
  'rear axle': 'rearAxle',
  'front axle': 'frontAxle',
  'rear tyre': 'rearTyre',
  'front tyre': 'frontTyre',
} as const satisfies Record<WheelLimit, string>;

function wheelName(kind: WheelLimit): RowName {
  const end = kind === 'gross' ? null : kind.startsWith('rear') ? 'rear' : 'front';
  const of = kind === 'gross' ? 'gross' : kind.endsWith('axle') ? 'axle' : 'tyre load';
  return { id: kind.replace(' ', '-'), kind: of, end, of: null, dimension: 'mass' };
}

function needOf({ job }: JobPlan, kind: WheelLimit): LimitNeed {
  if (kind === 'gross') return 'gross rating';
  if (kind.endsWith('axle')) return 'axle rating';
  const from = capacityFrom(job.machine[kind === 'rear tyre' ? 'rear' : 'front'].tyre);
  return from === 'pressure beyond table' ? 'capacity at pressure' : 'tyre capacity';
}

function wheelPath({ job }: JobPlan, kind: WheelLimit): string {
  if (kind !== 'rear tyre' && kind !== 'front tyre') return `machine.limits.${limitField[kind]}`;
  const end = kind === 'rear tyre' ? 'rear' : 'front';
  const path = `machine.${end}.tyre`;
  switch (capacityFrom(job.machine[end].tyre)) {
    case 'pressure beyond table':
    case 'table':
      return `${path}.byPressure`;
    case 'own figure':
      return `${path}.capacity`;
    default:
      return `${path}.loadIndex`;
  }
}

/** With less air than its plate asks for, a tyre bears less than its index says: how much less only its maker knows. */
function underPressure({ job }: JobPlan, end: 'rear' | 'front'): readonly LimitNeeded[] {
  const { tyre } = job.machine[end];
  return isUnderPressure(tyre) && capacityFrom(tyre) !== 'table'
    ? [needed('capacity at pressure', `machine.${end}.tyre.byPressure`)]
    : [];
}

function tyreNotes({ job }: JobPlan, end: 'rear' | 'front'): readonly LimitNote[] {
  const { tyre } = job.machine[end];
  const from = capacityFrom(tyre);
  const state = { sound: [], worn: ['tyre worn'], aged: ['tyre aged'] } as const;
  return [
    ...(from === 'load index' ? (['from load index'] as const) : []),
    ...(from === 'table' ? (['from table'] as const) : (['at placard pressure'] as const)),
    ...(tyre?.state === undefined ? (['tyre not looked at'] as const) : state[tyre.state]),
  ];
}

function placeRow(planned: JobPlan, id: string): LimitRow {
  const { job, plan, inputs } = planned;
  const name = { id: `place-${id}`, kind: 'place', end: null, of: id, dimension: 'mass' } as const;
  const path = `machine.places.${id}.limit`;
  const held = plan.loadCases.flatMap(({ loadCase, limits }) =>
    heldAgainst(
      limits,
      (of) => of.kind === 'place' && of.place === id,
      loadCase,
      () => placeContributions(planned, loadCase, id, path),
    ),
  );
  const rating = inputs.limits.places[id] ?? null;
  const empty: readonly Held[] =
    rating === null
      ? []
      : [
          {
            loadCase: null,
            found: { value: 0, plusMinus: 0 },
            allowed: rating,
            margin: rating,
            contributions: () => ofPath(planned, path),
          },
        ];
  const row = held.length > 0 ? checkedRow(name, held) : empty.length > 0 ? checkedRow(name, empty) : null;
  if (row?.told.verdict === 'over') return row;
  const needs = [
    ...(rating === null ? [needed('place limit', path)] : []),
    ...plan.loadCases
      .filter(({ loadsFullTank }) => loadsFullTank === null)
      .map(({ loadCase }) => needed('rest', `loadCases.${loadCase}`)),
    ...Object.entries(job.loadCases).flatMap(([load, loadCase]) =>
      'scales' in loadCase ? [needed('what lies where', `loadCases.${load}.scales`)] : [],
    ),
  ];
  return row === null || needs.length > 0 ? neededRow(name, needs) : row;
}

function heldAgainst(
  limits: readonly LimitResult[],
  isMine: (of: LimitOf) => boolean,
  loadCase: string,
  contributions: () => readonly Contribution[],
): readonly Held[] {
  return limits
    .filter(({ of, allowed }) => isMine(of) && allowed !== null)
    .map(({ load, plusMinus, allowed, allowedPlusMinus }) => ({
      loadCase,
      found: { value: load, plusMinus },
      allowed: { value: allowed!, plusMinus: allowedPlusMinus },
      margin: { value: allowed! - load, plusMinus: Math.hypot(plusMinus, allowedPlusMinus) },
      contributions,
    }));
}

function wheelContributions(
  planned: JobPlan,
  loadCase: string,
  kind: WheelLimit,
  path: string,
): readonly Contribution[] {
  const load = planned.inputs.question.loadCases.find(({ id }) => id === loadCase)!;
  const standing = standingFullTank(planned, load);
  if (standing === null) return ofPath(planned, path);
  const { contributions } = readAt(standing, (prepared, state) => {
    gradientAt(prepared, state, 0);
    const { rear, front } = prepared.gradient;
    const both = rear.wheelLoad + front.wheelLoad;
    const newtons = kind === 'gross' ? both : kind.startsWith('rear') ? rear.wheelLoad : front.wheelLoad;
    return newtons / GRAVITY;
  });
  return together([...contributions, ...ofPath(planned, path)]);
}

function placeContributions(
  planned: JobPlan,
  loadCase: string,
  place: string,
  path: string,
): readonly Contribution[] {
  const things = thingsOn(planned, loadCase, place);
  return together([
    ...things.flatMap((thing) => ofPath(planned, `things.${thing}.mass`)),
    ...ofPath(planned, path),
  ]);
}

function thingsOn({ job }: JobPlan, loadCase: string, place: string): readonly string[] {
  const load = job.loadCases[loadCase]!;
  if ('scales' in load) return [];
  const { places } = job.machine;
  const isOn = (at: string): boolean => {
    if (at === place) return true;
    const { carriedBy } = places[at]!;
    return places[place]!.limitCounts !== 'contents' && carriedBy !== undefined && isOn(carriedBy);
  };
  return Object.values(load.aboard).flatMap(({ thing, place: at }) => (isOn(at) ? [thing] : []));
}

/** What a figure of the job alone adds. */
function ofPath({ inputs }: JobPlan, path: string): readonly Contribution[] {
  const used = inputs.figures.get(path);
  if (used === undefined || used.halfWidth === 0) return [];
  return [{ input: path, slope: 1, halfWidth: used.halfWidth, share: 1 }];
}

/** Shares of the whole that parts make together, the greatest first. */
function together(parts: readonly Contribution[]): readonly Contribution[] {
  const whole = Math.hypot(...parts.map(({ halfWidth }) => halfWidth));
  return parts
    .map((part) => ({ ...part, share: whole > 0 ? (part.halfWidth / whole) ** 2 : 0 }))
    .sort((a, b) => b.halfWidth - a.halfWidth);
}
