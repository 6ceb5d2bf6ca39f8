import type { Place } from '@sagwright/records/schema/machine';

/** Every word of the Machine tab. English; figures go in as text. */
export const picture = {
  limitNeeded: 'limit: figure needed',
  loadOf: (load: string, allowed: string) => `${load} of ${allowed}`,
  atFullTank: 'at full tank',
  openLoad: {
    'rear load': 'Open up: load on the rear wheel',
    'whole load': 'Open up: load on both wheels',
    'front load': 'Open up: load on the front wheel',
  },
} as const;

export const ladder = {
  label: 'Where both ends rest',
  which: 'What is shown',
  end: { rear: 'Rear travel', front: 'Front travel' },
  things: (count: number) => (count === 1 ? '1 thing' : `${count} things`),
  title: (end: 'rear' | 'front', unit: string) =>
    `${end === 'rear' ? 'Rear' : 'Front'} wheel travel, ${unit}`,
  hangs: (where: string) => `hangs ${where}`,
  tables: { picture: 'what is aboard', rear: 'rear travel', front: 'front travel' },
  earlier: 'Earlier loads',
  later: 'Later loads',
  choose: (end: 'rear' | 'front', letter: string | null) =>
    `${letter === null ? loads.alone : `Load ${letter}`}: look at it (${end} ladder)`,
  open: (end: 'rear' | 'front', letter: string | null) =>
    `${letter === null ? loads.alone : `Load ${letter}`}: open up where the ${end} wheel rests`,
} as const;

export const loads = {
  label: 'Loads',
  alone: 'Machine alone',
  newLoad: 'New load',
  newLoadName: (n: number) => `Load ${n}`,
  copyName: (name: string) => `${name.slice(0, 110)}, copy`,
  noMass: 'does not stand',
  refused: 'too much',
  spoken: (letter: string, name: string) => `Load ${letter}, ${name}`,
} as const;

export const setUps = {
  label: 'Set-up shown',
  asFound: 'as found',
  planned: 'planned',
  none: 'Nothing is planned for this load.',
} as const;

export const attitude = {
  label: 'How the machine stands',
  name: {
    pitch: 'nose down',
    rake: 'rake',
    trail: 'trail',
    wheelbase: 'wheelbase',
    'seat height': 'seat height',
  },
  unit: (unit: string) => (unit === 'deg' ? '°' : `\u00a0${unit}`),
  change: (change: string) => `(${change})`,
  changes: '(…) against as found',
  why: (why: string) => `This machine ${why}.`,
} as const;

export const sheetKeys = {
  close: 'Close',
  figures: 'This machine',
  stance: 'How it stands',
  alone: 'Machine alone',
  load: (letter: string) => `Load ${letter}`,
} as const;

export const narrowing = {
  title: 'What would narrow the plan most',
  end: { rear: 'Rear.', front: 'Front.' },
  goTo: 'Go to it',
} as const;

export const thing = {
  putOn: 'Put on …',
  whoWhat: 'who, what',
  doPutOn: 'Put it on',
  didPutOn: (name: string) => `put on: ${name}`,
  takeOff: 'Take off',
  tookOff: (name: string) => `took off: ${name}`,
  name: 'Name',
  renamed: (name: string) => `name of ${name}`,
  mass: 'Mass',
  massOf: (name: string) => `mass of ${name}`,
  place: 'Where it is',
  moved: (name: string) => `moved: ${name}`,
  moveThere: 'Move it there',
  whoOrWhat: 'Who or what',
  newThing: 'Somebody or something new',
  unnamed: { person: 'somebody', item: 'something' },
  isA: 'It is',
  kind: { person: 'a person', item: 'a thing' },
  where: 'Where',
  over: 'over its limit',
  noneAlone: 'Nothing is aboard: this is the machine as it was weighed.',
  weighed: 'What is aboard is given by two scales, read with all of it on.',
  onLoad: (letter: string, name: string) => `on load ${letter}, ${name}`,
  onWheels: (rear: string, front: string, unit: string) => `rear ${rear}, front ${front} ${unit}`,
} as const;

export const place = {
  title: (name: string) => `The place: ${name}`,
  /** What moves with a place. */
  moves: (things: readonly string[], loads: number) =>
    things.length === 0
      ? 'Nothing lies there in any load.'
      : `Moving it moves all that lies there (${things.join(', ')}), in ${loads === 1 ? 'one load' : `${loads} loads`}.`,
  moved: (name: string) => `where ${name} is`,
  at: { x: 'Ahead of rear axle (− behind)', height: 'Height above ground' },
  more: 'Its limit, and what it stands on',
  limit: 'May bear',
  limitOf: (name: string) => `limit of ${name}`,
  counts: 'The limit counts',
  countsWhat: [
    { value: 'all on it', word: 'all on it, box included' },
    { value: 'contents', word: 'contents only' },
  ],
  standsOn: 'Stands on',
  standing: (name: string) => `what ${name} stands on`,
  theMachine: 'the machine itself',
  another: 'A new place …',
  newPlace: 'A new place',
  whatKind: 'Kind of place',
  name: 'Name',
  kind: {
    rack: 'rack',
    'rear box': 'rear box',
    'side cases': 'side cases',
    'tank bag': 'tank bag',
    'passenger seat': 'passenger seat',
    'rider seat': 'rider seat',
    other: 'somewhere else',
  } satisfies Record<Place['kind'], string>,
} as const;

export const fuel = {
  label: 'Fuel in the tank',
  act: 'fuel',
  asWeighed: 'as at the weighing',
  noTank: 'Fuel as at the weighing. Figure needed: what the tank holds.',
} as const;

export const load = {
  title: (letter: string) => `Load ${letter}`,
  aloneNote: 'As it was weighed, nothing aboard. Every load begins here.',
  name: 'Name of the load',
  renamed: (name: string) => `name of ${name}`,
  share: 'Share of the riding',
  shareOf: (name: string) => `share of ${name}`,
  notRidden: 'Not ridden yet: it is looked at, but does not choose the spring.',
  scale: { front: 'Front scale, all aboard', rear: 'Rear scale, all aboard' },
  addedHeight: 'How high what is aboard lies',
  weighed: 'Weighed on scales instead',
  weighedNote:
    'Read both wheels with all of it aboard. The scales then stand for what is listed here; the list can be had back.',
  weigh: 'Go by the scales',
  didWeigh: (name: string) => `scales for ${name}`,
  list: 'List what is aboard instead',
  listed: (name: string) => `list of ${name}`,
  firstThing: 'New load',
  figures: 'This machine’s figures',
  copy: 'Copy this load',
  remove: 'Remove this load',
  removed: (name: string) => `removed: ${name}`,
  movedLoad: (name: string) => `order of ${name}`,
  earlier: 'Move earlier',
  later: 'Move later',
} as const;
