import type { CollarFault, FirstEntries } from '../../first/entries.ts';

/** An entry of a first plan: as it is asked for, named in a sentence, and how to come by it; `without` where it may be left out. */
interface EntryWords {
  readonly ask: string;
  readonly name: string;
  readonly hint: string;
  readonly without: string | null;
}

const onAScale = 'A platform scale under the wheel, the machine upright and level.';

export const firstEntries: { readonly [N in keyof FirstEntries]: EntryWords } = {
  rider: {
    ask: 'Rider, in gear',
    name: 'rider',
    hint: 'Dressed as for the ride, on any scale.',
    without: null,
  },
  passenger: { ask: 'Passenger, in gear', name: 'passenger', hint: '', without: 'nobody' },
  behind: {
    ask: 'Things behind, box included',
    name: 'things behind',
    hint: '',
    without: 'nothing',
  },
  rear: { ask: 'Rear scale, nobody aboard', name: 'rear scale', hint: onAScale, without: null },
  shocks: { ask: 'Shocks at the rear', name: 'shocks', hint: '', without: null },
  rate: {
    ask: 'Rear spring, as marked, one of them',
    name: 'spring mark',
    hint: 'It is marked on the spring or its box: 25, or 140 lbf/in.',
    without: null,
  },
  collarNow: {
    ask: 'Collar now, from its loosest end',
    name: 'collar now',
    hint: 'A caliper tells how far it was wound up from where its thread begins.',
    without: 'no collar',
  },
  collarMost: {
    ask: 'Collar at its tightest, from there',
    name: 'collar at its tightest',
    hint: 'How far it goes from its loosest end to where the thread ends.',
    without: 'no collar',
  },
};

export const collarFaults: { readonly [F in CollarFault]: string } = {
  'nothing to set': 'A collar that goes 0 leaves nothing to set. Read both again, from its loosest end.',
  'beyond its end': 'The collar stands beyond its tightest end. Read both again, from its loosest end.',
};

/** What a first job calls its parts. */
export const firstParts = {
  machine: 'a machine',
  spring: 'as it came',
  between: 'its loosest end',
  and: 'where it stands',
  place: { rider: "rider's seat", passenger: "passenger's seat", behind: 'behind' },
  thing: { rider: 'rider', passenger: 'passenger', behind: 'things behind' },
  load: { alone: 'rider alone', two: 'two aboard', laden: 'all aboard' },
} as const;

/** The usual figures of a first job, each with its ± and its reason. */
export const firstUsual = {
  ratio: (figure: string, why: string) => `wheel travel per shock stroke ${figure} (${why})`,
  front: (share: string, why: string) => `front scale ${share} of the rear one (${why})`,
  lead: (figure: string, why: string) => `one turn of the collar ${figure} (${why})`,
  preload: (figure: string, why: string) => `preload of the spring ${figure} (${why})`,
} as const;

/** What a first job says of itself. */
export function firstNote(usual: readonly string[], isShared: boolean): string {
  const shared = isShared ? ' How often each load is ridden was not asked: alike.' : '';
  return `Begun with eight entries. Nobody read: ${usual.join('; ')}.${shared}`;
}
