import type { LimitOf, LimitResult } from '@sagwright/model/limits/limits';
import type { Contribution } from '@sagwright/model/uncertainty/spread';
import { inOrder } from '../inputs/desk.ts';
import { isListed } from '../inputs/loads.ts';
import { capacityFrom } from '../inputs/tyreCapacity.ts';
import type { JobPlan } from '../path.ts';
import {
  placeContributions,
  ratingContributions,
  type WheelLimit,
  wheelContributions,
} from './contributions.ts';
import type { LimitNeeded, LimitNote } from './document.ts';
import { limitNeeds, needed } from './needs.ts';
import { type Held, judgedRow, type LimitRow, type RowName } from './row.ts';

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
  const held = heldAgainst(
    planned,
    (of) => of.kind === kind,
    (loadCase) => wheelContributions(planned, loadCase, kind),
  );
  const needs = [
    ...limitNeeds(planned, { kind }),
    ...withoutRest(planned),
    ...(planned.plan.loadCases.length === 0 ? [needed('rest', 'loadCases')] : []),
  ];
  const notes = name.kind === 'tyre load' ? tyreNotes(planned, name.end!) : [];
  return judgedRow(name, held, needs, notes);
}

/** Loads under which the machine does not stand: nobody knows what they put on a wheel, or what lies where then. */
function withoutRest({ plan }: JobPlan): readonly LimitNeeded[] {
  return plan.loadCases.flatMap(({ loadCase, loadsFullTank }) =>
    loadsFullTank === null ? [needed('rest', `loadCases.${loadCase}`)] : [],
  );
}

function wheelName(kind: WheelLimit): RowName {
  const end = kind === 'gross' ? null : kind.startsWith('rear') ? 'rear' : 'front';
  const of = kind === 'gross' ? 'gross' : kind.endsWith('axle') ? 'axle' : 'tyre load';
  return { id: kind.replace(' ', '-'), kind: of, end, of: null, dimension: 'mass' };
}

function tyreNotes({ job }: JobPlan, end: 'rear' | 'front'): readonly LimitNote[] {
  const { tyre } = job.machine[end];
  const from = capacityFrom(tyre);
  const state = { sound: [], worn: ['tyre worn'], aged: ['tyre aged'] } as const;
  return [
    ...(from === 'load index' ? (['from load index'] as const) : []),
    ...(from === 'table' ? (['from table'] as const) : []),
    ...(from === 'own figure' || from === 'load index' ? (['at placard pressure'] as const) : []),
    ...(tyre?.state === undefined ? (['tyre not looked at'] as const) : state[tyre.state]),
  ];
}

function placeRow(planned: JobPlan, id: string): LimitRow {
  const { job, inputs } = planned;
  const name = { id: `place-${id}`, kind: 'place', end: null, of: id, dimension: 'mass' } as const;
  const of = { kind: 'place', place: id } as const;
  const held = heldAgainst(
    planned,
    (each) => each.kind === 'place' && each.place === id,
    (loadCase) => placeContributions(planned, loadCase, id),
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
            contributions: () => ratingContributions(planned, of),
          },
        ];
  const needs = [
    ...limitNeeds(planned, of),
    ...withoutRest(planned),
    ...Object.entries(job.loadCases).flatMap(([load, loadCase]) =>
      'scales' in loadCase ? [needed('what lies where', `loadCases.${load}.scales`)] : [],
    ),
  ];
  return judgedRow(name, held.length > 0 ? held : empty, needs);
}

/** Every load that is held against a limit; where that is known at best only, those that are over even so. */
function heldAgainst(
  { plan }: JobPlan,
  isMine: (of: LimitOf) => boolean,
  contributions: (loadCase: string) => readonly Contribution[],
): readonly Held[] {
  return plan.loadCases.flatMap(({ loadCase, limits }) =>
    limits
      .filter(({ of, verdict }) => isMine(of) && verdict !== 'not checked')
      .map(({ load, plusMinus, allowed, allowedPlusMinus }: LimitResult) => ({
        loadCase,
        found: { value: load, plusMinus },
        allowed: { value: allowed!, plusMinus: allowedPlusMinus },
        margin: { value: allowed! - load, plusMinus: Math.hypot(plusMinus, allowedPlusMinus) },
        contributions: () => contributions(loadCase),
      })),
  );
}
