import type { LimitKind } from '../../limits/document.ts';
import type { OpenedWords } from './why.ts';

const balance =
  'Balance of both ends at once, tank full, derived in docs/decisions/0004; held against an independent energy minimiser (checks/energy-minimised-machines)';
const ratings = 'Axle and gross ratings as 49 CFR 571.3 defines them (checks/axle-ratings)';
const bears: OpenedWords['where'][number] = [
  'limit',
  "by its load index, a figure of its own, or its maker's table at the pressure read",
];

type LimitWhy = Omit<OpenedWords, 'title'>;

const wheels: LimitWhy = {
  equation: 'left = limit - load',
  where: [
    ['limit', 'what the plate or the manual allows'],
    ['load', 'what the wheels bear of machine and load, at rest as found'],
  ],
  source: `${ratings}. ${balance}`,
};

/** How what is left of each kind of limit comes about. */
export const limitWhy: { readonly [K in LimitKind]: LimitWhy } = {
  gross: wheels,
  axle: wheels,
  'tyre load': {
    equation: 'left = limit - load',
    where: [bears, ['load', 'what that wheel bears of machine and load, at rest as found']],
    source: `Masses by load index: ISO 4000-1 (checks/load-index-table). ${balance}`,
  },
  'tyre speed': {
    equation: 'left = v(symbol) - v',
    where: [
      ['v(symbol)', 'speed up to which the symbol holds, at the load of its index'],
      ['v', "the machine's top speed"],
    ],
    source: 'Table of speed symbols (checks/speed-symbols)',
  },
  'tyre pressure': {
    equation: 'left = p - p(placard)',
    where: [['p', 'pressure as read, cold']],
    source: 'Common practice, no source: never less than the placard asks for',
  },
  'most pressure': {
    equation: 'left = p(wall) - p',
    where: [
      ['p(wall)', "the greatest cold pressure that the tyre's wall allows"],
      ['p', 'pressure as read, cold'],
    ],
    source: 'Common practice, no source: never more than the wall of the tyre allows',
  },
  place: {
    equation: 'left = limit - Σ m',
    where: [['m', 'what lies there, and on what it carries where its limit counts all that stands on it']],
    source: 'Common practice, no source: limits of places that stand on each other all count',
  },
  preload: {
    equation: 'left = least(a, a max - a);  past an end: how far the wanted sag lies past it',
    where: [['a', 'where hands set the adjuster, from its loosest']],
    source: 'Definition of preload (docs/conventions.md)',
  },
  'shock length': {
    equation: 'left = least(most - at, engaged - needed, to the mark) - chosen',
    where: [
      ['at', 'where the adjuster stands'],
      ['needed', 'thread that must stay engaged: one diameter where nobody said'],
    ],
    source:
      "Common practice, no source: one diameter of thread, steel in steel; the maker's own mark goes before it",
  },
  'coil bind': {
    equation: 'left = L free - L solid - (s max + p) - kept',
    where: [
      ['s max', 'stroke at full bump'],
      ['p', 'preload at the planned setting'],
      ['kept', 'what stays in hand: 2 mm, common practice, no source'],
    ],
    source: 'Lengths of the fitted spring (docs/conventions.md)',
  },
  clearance: {
    equation: 'left = g2 + (g2 - g1) / (z2 - z1) (z max - z2) - kept',
    where: [
      ['g, z', 'room and wheel travel of the two readings next to full bump; read there, it is the reading'],
      ['kept', 'what must be left'],
    ],
    source: 'A straight line; that gaps close evenly near full bump is common practice, no source',
  },
  'side stand': {
    equation: 'left = least(lean - least, most - lean)',
    where: [['lean', "on the side stand's foot, nothing aboard, as planned"]],
    source: 'Plane geometry of the machine at rest',
  },
  clicks: {
    equation: 'left = least(n, n all - n)',
    where: [['n', 'clicks out from lightly closed']],
    source: 'What was counted',
  },
};

/** How the room at a place comes about, and what both figures are called where one asks for them by name. */
export const roomWhy: OpenedWords = {
  title: 'how much more may lie at a place',
  equation: 'limit - load(m) = 0, for the limit that is met first',
  where: [
    ['m', 'what is added at the place, and the room where the first limit is used up'],
    ['load(m)', 'what that limit counts, the machine at rest under it: it moves along'],
  ],
  source: `${balance}. That the first limit to be met ends it: common practice, no source`,
};

export const marginTitle = 'what is left of a limit, or by how much it fails';

/** The limit or the room that was asked for, and what it is held against. */
export const limitWhyWords = {
  left: (limit: string) => `what is left: ${limit}`,
  against: (found: string, allowed: string) => `${found} against ${allowed}`,
  with: (place: string, load: string) => `${place}, with ${load}`,
  room: (load: string, room: string) => `With ${load}: ${room}`,
  noLimits: 'There is no such limit. There are ',
  noPlace:
    'There is no room to tell of there: a seat that is taken, a load that was only weighed, or no such place.',
} as const;
