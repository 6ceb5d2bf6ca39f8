import { type JobDocument, jobFormat, jobVersion } from '@sagwright/records/schema';
import type { Adjuster, Setting } from '@sagwright/records/schema/adjusters';
import type { Place } from '@sagwright/records/schema/machine';
import type { Quantity } from '@sagwright/records/schema/quantity';
import { type Assumption, asQuantity } from '../inputs/assumptions.ts';
import { firstNote as noteOf, firstParts as words } from '../words/english/first.ts';
import type { FirstEntries } from './entries.ts';
import { usual, usualSaid } from './usual.ts';

/**
 * A job of eight entries, the same from the page and the terminal. What the job can leave out is left out of it, so that the sum
 * takes its named assumptions with their ±; what it cannot comes with its usual figure, and the job's note says so.
 * An entry out of its bound, or a collar with a fault (`collarFault`), makes a job whose problems say it.
 */
export function firstJob(entries: FirstEntries, name: string): JobDocument {
  const { rear, shocks, rate } = entries;
  const ratio = usualQuantity(usual.ratio[shocks]) as Quantity<'leverage'>;
  const { adjuster, at } = adjusterOf(entries);
  const side = { spring: 'fitted', at };
  const loadCases = loadsOf(entries);
  return {
    format: jobFormat,
    version: jobVersion,
    name,
    note: noteOf(usualSaid(shocks, entries.collarMost !== null), Object.keys(loadCases).length > 1),
    machine: {
      name: words.machine,
      kind: 'solo',
      weighing: { front: frontFrom(rear), rear, attitude: 'own sag' },
      rear: { travel: { kind: 'leverage', ratio }, shock: { count: shocks, adjuster } },
      front: {},
      places: placesOf(entries),
    },
    springs: { fitted: { name: words.spring, order: 1, end: 'rear', rate: { kind: 'linear', rate } } },
    things: thingsOf(entries),
    loadCases,
    targetSets: {},
    setups: { asFound: { rear: shocks === 1 ? { single: side } : { both: side } } },
  };
}

function frontFrom({ value, unit }: Quantity<'mass'>): Quantity<'mass'> {
  const { share, plusMinus } = usual.frontOfRear;
  return { value: Number((share * value).toPrecision(3)), unit, plusMinus, origin: 'usual' };
}

/** A usual figure as it stands in the job: told as such, so that the plan lists it with what is assumed. */
function usualQuantity(figure: Assumption): Quantity {
  return { ...asQuantity(figure), origin: 'usual' };
}

function adjusterOf({ collarNow, collarMost }: FirstEntries): {
  readonly adjuster: Adjuster;
  readonly at: Setting;
} {
  if (collarNow === null || collarMost === null) {
    return {
      adjuster: { kind: 'none' },
      at: { preload: usualQuantity(usual.preload) as Quantity<'length'> },
    };
  }
  return {
    adjuster: {
      kind: 'collar',
      lead: usualQuantity(usual.lead) as Quantity<'length'>,
      between: words.between,
      and: words.and,
      reading: 'grows with preload',
      least: { value: 0, unit: collarMost.unit },
      most: collarMost,
    },
    at: { reading: collarNow },
  };
}

function placesOf({ passenger, behind }: FirstEntries): Record<string, Place> {
  const { place } = words;
  return {
    rider: { name: place.rider, order: 1, kind: 'rider seat' },
    ...(passenger !== null && { passenger: { name: place.passenger, order: 2, kind: 'passenger seat' } }),
    ...(behind !== null && { behind: { name: place.behind, order: 3, kind: 'rear box' } }),
  };
}

function thingsOf({ rider, passenger, behind }: FirstEntries): JobDocument['things'] {
  const { thing } = words;
  return {
    rider: { name: thing.rider, order: 1, kind: 'person', mass: rider },
    ...(passenger !== null && {
      passenger: { name: thing.passenger, order: 2, kind: 'person', mass: passenger },
    }),
    ...(behind !== null && { behind: { name: thing.behind, order: 3, kind: 'item', mass: behind } }),
  };
}

/** The rider alone, then with a passenger, then with everything: each as often as the others, since nobody said. */
function loadsOf({ passenger, behind }: FirstEntries): JobDocument['loadCases'] {
  const on = (name: 'rider' | 'passenger' | 'behind') => ({ [name]: { thing: name, place: name } });
  const aboard = [
    { id: 'alone', aboard: on('rider') },
    ...(passenger === null ? [] : [{ id: 'two', aboard: { ...on('rider'), ...on('passenger') } }]),
    ...(behind === null
      ? []
      : [
          {
            id: 'laden',
            aboard: { ...on('rider'), ...(passenger === null ? {} : on('passenger')), ...on('behind') },
          },
        ]),
  ] as const;
  const share = Math.floor(100 / aboard.length);
  const cases = aboard.map(
    (each, i) =>
      [
        each.id,
        {
          name: words.load[each.id as keyof typeof words.load],
          order: i + 1,
          share: i === 0 ? 100 - share * (aboard.length - 1) : share,
          aboard: each.aboard,
        },
      ] as const,
  );
  return Object.fromEntries(cases);
}
