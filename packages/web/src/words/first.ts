import type { FirstWords } from '../job/firstJob.ts';

/** Every word of the three-minute way in. English; figures go in as text. */
export const first = {
  title: 'A first plan, three minutes',
  note: 'Eight entries. The rest is assumed, with a wide ±, and said.',
  rider: '1  Rider, in gear',
  passenger: '2  Passenger, in gear',
  behind: '3  Things behind, box included',
  nobody: 'Nobody.',
  nothing: 'Nothing.',
  rear: '4  Rear scale, nobody aboard',
  front: '5  Front scale, nobody aboard',
  rate: '6  Rear spring, as marked, one of them',
  shocks: 'Shocks at the rear',
  counts: { 1: 'one', 2: 'two' },
  ratio: '7  Wheel travel per shock stroke',
  usualRatio: 'two shocks on a plain swingarm have 1.0 to 1.3',
  collarNow: '8  Collar now, from its loosest end',
  collarMost: '8  Collar at its tightest, from there',
  make: 'Make the plan',
  missing: (names: readonly string[]) => `Still needed: ${names.join(', ')}.`,
  names: {
    rider: 'rider',
    rear: 'rear scale',
    front: 'front scale',
    rate: 'spring mark',
    ratio: 'wheel per shock (a single shock has a linkage: it must be read)',
    collarNow: 'collar now',
    collarMost: 'collar at its tightest',
  },
  collarBeyond: 'The collar stands beyond its tightest end. Read both again, from the loosest end.',
  narrowing: 'What would narrow it most',
  act: 'a first plan',
} as const;

/** What a first job says of itself. */
export function firstWords(ratioIsUsual: boolean): FirstWords {
  const usual = [
    ...(ratioIsUsual ? ['wheel travel per shock stroke 1.15 ± 0.15'] : []),
    'one turn of the collar 1.5 ± 0.4 mm',
  ];
  return {
    job: 'First plan',
    machine: 'a machine',
    note: `Begun in three minutes. Nobody read: ${usual.join('; ')}. How often each load is ridden was not asked: alike.`,
    spring: 'as it came',
    between: 'its loosest end',
    and: 'where it stands',
    place: { rider: 'rider’s seat', passenger: 'passenger’s seat', behind: 'behind' },
    thing: { rider: 'rider', passenger: 'passenger', behind: 'things behind' },
    load: { alone: 'rider alone', two: 'two aboard', laden: 'all aboard' },
  };
}
