import type { TargetSet, Wanted } from '@sagwright/records/schema/targets';
import { plainDecimal } from '@sagwright/workbench/format/plainNumber';
import { unitWord } from './fields.ts';

/** Every word of wanted sags in the Choose tab. English; figures go in as text. */
export const targets = {
  wanted: (end: 'rear' | 'front') => (end === 'rear' ? 'Wanted rear sag' : 'Wanted front sag'),
  ofTravel: (most: string, unit: string) => `of ${most} ${unit}`,
  otherOrChange: 'Change',
  own: 'this job’s own',
  shipped: 'comes with the program',
  other: 'Other set',
  sets: 'Sets of wanted sags',
  rename: 'Name, origin',
  copyIn: 'Copy it into this job, to change it',
  remove: 'Take this set out',
  removeAct: (name: string) => `take out: ${name}`,
  takeAct: (name: string) => `wanted sag: ${name}`,
  copyName: (name: string) => `${name.slice(0, 110)}, copy`,
  name: 'Name of the set',
  origin: 'Who says so',
  editAct: 'wanted sag',
  withIt: 'With it',
  rowsOf: (end: 'rear' | 'front') => (end === 'rear' ? 'Rear' : 'Front'),
  firstTaken: 'The first row that fits who and what is aboard is taken.',
  noLoad: 'no load',
  end: 'End',
  ends: { rear: 'rear', front: 'front' },
  least: 'People, at least',
  most: 'People, at most',
  people: 'people',
  luggage: 'Luggage',
  luggages: { either: 'with or without', with: 'with', without: 'without' },
  unit: 'Told in',
  low: 'No less than',
  aim: 'Aim, moves all',
  high: 'No more than',
  from: 'Counted from',
  froms: { stop: 'the extension stop', hanging: 'where the wheel hangs' },
  along: 'Along',
  alongs: { wheel: 'the wheel', stroke: 'the shock or fork' },
  addRow: 'New row',
  up: 'Up',
  down: 'Down',
  copyRow: 'Copy',
  removeRow: 'Take out',
  byLoad: 'Load by load',
  byLoadNote: 'A load may want what no row says.',
  byNone: 'nothing wanted',
  itsOwn: 'its own',
  ownWith: (length: string) => `own: ${length}`,
  giveOwn: 'Give it its own',
  leaveToSet: 'Leave it to the set',
  ownAct: (load: string) => `wanted sag: ${load}`,
} as const;

/** For whom a row holds: "1 person, with luggage", "2 to 10 people". */
export function rowFor({ people: { least, most }, luggage }: TargetSet['rows'][string]): string {
  const count = least === most ? `${least}` : `${least} to ${most}`;
  const people =
    least === 0 && most === 10 ? 'anybody' : `${count} ${least === 1 && most === 1 ? 'person' : 'people'}`;
  return luggage === undefined ? people : `${people}, ${luggage} luggage`;
}

/** A band as typed: "26 to 34 %, aim 30". */
export function bandWords({ low, aim, high }: Wanted): string {
  const [least, middle, most] = [low, aim, high].map(({ value }) => plainDecimal(value));
  const unit = low.unit === aim.unit && aim.unit === high.unit ? unitWord(aim.unit) : '';
  return `${least} to ${most} ${unit}, aim ${middle}`;
}

/** How it is counted, where that is not the usual way: from the stop, along the wheel. */
export function countedWords({ from, along }: Wanted): string {
  const parts = [
    ...(from === 'hanging' ? ['from where it hangs'] : []),
    ...(along === 'stroke' ? ['along the shock or fork'] : []),
  ];
  return parts.join(', ');
}
