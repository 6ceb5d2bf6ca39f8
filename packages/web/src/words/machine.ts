/** Every word of the Machine tab. English; figures go in as text. */
export const picture = {
  limitNeeded: 'limit: figure needed',
  loadOf: (load: string, allowed: string) => `${load} of ${allowed}`,
  atFullTank: 'at full tank',
} as const;

export const ladder = {
  label: 'Where both ends rest',
  which: 'Which end',
  end: { rear: 'Rear', front: 'Front' },
  title: (end: 'rear' | 'front', unit: string) =>
    `${end === 'rear' ? 'Rear' : 'Front'} wheel travel, ${unit}`,
  hangs: (where: string) => `hangs ${where}`,
  earlier: 'Earlier loads',
  later: 'Later loads',
} as const;

export const loads = {
  alone: 'Machine alone',
  spoken: (letter: string, name: string) => `Load ${letter}, ${name}`,
} as const;

export const setUps = {
  label: 'Set-up shown',
  asFound: 'as found',
  planned: 'planned',
} as const;

export const attitude = {
  label: 'How the machine stands',
  name: {
    pitch: 'pitch, nose down',
    rake: 'rake',
    trail: 'trail',
    wheelbase: 'wheelbase',
    'seat height': 'seat height',
  },
  change: (change: string) => `(${change} against as found)`,
} as const;

export const thing = {
  putOn: 'Put on …',
  takeOff: 'Take off',
  name: 'Name',
  mass: 'Mass',
  place: 'Place',
  done: 'Done',
  whoOrWhat: 'Who or what',
  newThing: 'Somebody or something new',
  kind: { person: 'a person', item: 'a thing' },
  where: 'Where',
  forward: 'Ahead of the rear axle',
  height: 'Height above the ground',
  placeLimit: 'May bear',
  putOnTitle: (load: string) => `Put on: ${load}`,
} as const;

export const load = {
  name: 'Name of the load',
  share: 'Share of the riding',
  fuel: 'Fuel',
  copy: 'Copy this load',
  remove: 'Remove this load',
  earlier: 'Move earlier',
  later: 'Move later',
  title: 'This load',
} as const;
