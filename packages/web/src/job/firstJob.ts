import { type JobDocument, jobFormat, jobVersion } from '@sagwright/records/schema';
import type { Place } from '@sagwright/records/schema/machine';
import type { Quantity } from '@sagwright/records/schema/quantity';

/** The eight entries of a first plan, as typed; null where nobody said. Two figures tell the collar: where it stands, and how far it goes. */
export interface FirstEntries {
  readonly rider: Quantity<'mass'>;
  readonly passenger: Quantity<'mass'> | null;
  /** What is carried behind the passenger, box included. */
  readonly behind: Quantity<'mass'> | null;
  /** Scales under the wheels, nobody aboard. */
  readonly front: Quantity<'mass'>;
  readonly rear: Quantity<'mass'>;
  readonly shocks: 1 | 2;
  /** Of one spring, as marked. */
  readonly rate: Quantity<'rate'>;
  /** Wheel travel per shock stroke; `usualRatio` stands in for two shocks. */
  readonly ratio: Quantity<'leverage'> | null;
  /** From its loosest end. */
  readonly collarNow: Quantity<'length'>;
  readonly collarMost: Quantity<'length'>;
}

/** Two shocks on a plain swingarm; a single one goes through a linkage that has to be read. Common practice, no source. */
export const usualRatio: Quantity<'leverage'> = {
  value: 1.15,
  unit: 'wheel/shock',
  plusMinus: { value: 0.15, unit: 'wheel/shock' },
};

/** Threads of preload collars have 1 to 2 mm a turn. It tells turns only, never where the collar belongs. Common practice, no source. */
export const usualLead: Quantity<'length'> = {
  value: 1.5,
  unit: 'mm',
  plusMinus: { value: 0.4, unit: 'mm' },
};

/** What a first job is called, and what is said in it; words come from the page. */
export interface FirstWords {
  readonly job: string;
  readonly machine: string;
  readonly note: string;
  readonly spring: string;
  readonly between: string;
  readonly and: string;
  readonly place: Readonly<Record<'rider' | 'passenger' | 'behind', string>>;
  readonly thing: Readonly<Record<'rider' | 'passenger' | 'behind', string>>;
  readonly load: Readonly<Record<'alone' | 'two' | 'laden', string>>;
}

/**
 * A job of eight entries. Everything else is left out of it, so that the sum takes its named assumptions with their ±; only the
 * ratio and the thread, which a job cannot leave out, come with usual figures where nobody read them.
 */
export function firstJob(entries: FirstEntries, words: FirstWords): JobDocument {
  const { front, rear, shocks, rate, ratio } = entries;
  const side = { spring: 'fitted', at: { reading: entries.collarNow } };
  return {
    format: jobFormat,
    version: jobVersion,
    name: words.job,
    note: words.note,
    machine: {
      name: words.machine,
      kind: 'solo',
      weighing: { front, rear, attitude: 'own sag' },
      rear: {
        travel: { kind: 'leverage', ratio: ratio ?? usualRatio },
        shock: { count: shocks, adjuster: collarOf(entries, words) },
      },
      front: {},
      places: placesOf(entries, words),
    },
    springs: { fitted: { name: words.spring, order: 1, end: 'rear', rate: { kind: 'linear', rate } } },
    things: thingsOf(entries, words),
    loadCases: loadsOf(entries, words),
    targetSets: {},
    setups: { asFound: { rear: shocks === 1 ? { single: side } : { both: side } } },
  };
}

function collarOf({ collarMost }: FirstEntries, { between, and }: FirstWords) {
  return {
    kind: 'collar',
    lead: usualLead,
    between,
    and,
    reading: 'grows with preload',
    least: { value: 0, unit: collarMost.unit },
    most: collarMost,
  } as const;
}

function placesOf({ passenger, behind }: FirstEntries, { place }: FirstWords): Record<string, Place> {
  return {
    rider: { name: place.rider, order: 1, kind: 'rider seat' },
    ...(passenger !== null && { passenger: { name: place.passenger, order: 2, kind: 'passenger seat' } }),
    ...(behind !== null && { behind: { name: place.behind, order: 3, kind: 'rear box' } }),
  };
}

function thingsOf({ rider, passenger, behind }: FirstEntries, { thing }: FirstWords): JobDocument['things'] {
  return {
    rider: { name: thing.rider, order: 1, kind: 'person', mass: rider },
    ...(passenger !== null && {
      passenger: { name: thing.passenger, order: 2, kind: 'person', mass: passenger },
    }),
    ...(behind !== null && { behind: { name: thing.behind, order: 3, kind: 'item', mass: behind } }),
  };
}

/** The rider alone, then with a passenger, then with everything: each as often as the others, since nobody said. */
function loadsOf({ passenger, behind }: FirstEntries, { load }: FirstWords): JobDocument['loadCases'] {
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
          name: load[each.id as keyof FirstWords['load']],
          order: i + 1,
          share: i === 0 ? 100 - share * (aboard.length - 1) : share,
          aboard: each.aboard,
        },
      ] as const,
  );
  return Object.fromEntries(cases);
}
