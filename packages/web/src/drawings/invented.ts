import { axisInMm } from './ladder/axis.ts';
import type { LadderInput, LadderLane } from './ladder/ladderInput.ts';
import type { ReachHeadInput } from './reach/reachHead.ts';
import type { ReachInput, ReachLane } from './reach/reachInput.ts';
import type { AxleWords, Carried, MachineFigures, SideViewInput, Stance } from './side/sideViewInput.ts';
import { frontAxle, rearAxle } from './side/standing.ts';

/** Invented machines and loads for the gallery and the tests of the drawings. No machine that exists is meant. */

export const tourer: MachineFigures = {
  assumed: [],
  wheelbaseMm: 1655,
  rake: (28.4 / 180) * Math.PI,
  forkOffsetMm: 38,
  pivot: { xMm: 540, heightMm: 356 },
  seat: { xMm: 520, heightMm: 742 },
  rear: { tyreRadiusMm: 322, axleHeightMm: 322, referenceTravelMm: 0, shocks: 2, shockLengthMm: 340 },
  front: { isFork: true, tyreRadiusMm: 312, axleHeightMm: 312, referenceTravelMm: 0 },
};

/** Shorter and taller, one shock, little known of it. */
export const traveller: MachineFigures = {
  assumed: ['rake', 'front tyre'],
  wheelbaseMm: 1540,
  rake: (28 / 180) * Math.PI,
  forkOffsetMm: null,
  pivot: null,
  seat: null,
  rear: { tyreRadiusMm: 325, axleHeightMm: 325, referenceTravelMm: 0, shocks: 1, shockLengthMm: null },
  front: { isFork: true, tyreRadiusMm: 310, axleHeightMm: 310, referenceTravelMm: 0 },
};

/** Long and low. */
export const cruiser: MachineFigures = {
  assumed: [],
  wheelbaseMm: 1735,
  rake: (32 / 180) * Math.PI,
  forkOffsetMm: 45,
  pivot: { xMm: 560, heightMm: 330 },
  seat: { xMm: 500, heightMm: 690 },
  rear: { tyreRadiusMm: 318, axleHeightMm: 318, referenceTravelMm: 0, shocks: 2, shockLengthMm: 340 },
  front: { isFork: true, tyreRadiusMm: 330, axleHeightMm: 330, referenceTravelMm: 0 },
};

/**
 * The stance in which both axles stand over the ground by their loaded radii, for these travels:
 * B cos θ − A sin θ = C, with A, B the axles' distances in the body and C the difference of their heights.
 */
export function stanceOn(
  machine: MachineFigures,
  rearTravelMm: number,
  frontTravelMm: number,
  rearPressedMm: number,
  frontPressedMm: number,
): Stance {
  const rearRadius = machine.rear.tyreRadiusMm;
  const frontRadius = machine.front.tyreRadiusMm;
  const rake = machine.front.isFork ? machine.rake : 0;
  const rear = rearAxle(
    machine.rear.axleHeightMm,
    rearTravelMm - machine.rear.referenceTravelMm,
    machine.pivot,
  );
  const front = frontAxle(
    machine.wheelbaseMm,
    machine.front.axleHeightMm,
    frontTravelMm - machine.front.referenceTravelMm,
    rake,
  );
  const apart = front.xMm - rear.xMm;
  const higher = front.heightMm - rear.heightMm;
  const loaded = frontRadius - frontPressedMm - (rearRadius - rearPressedMm);
  const pitch = Math.atan2(higher, apart) - Math.asin(loaded / Math.hypot(apart, higher));
  const heaveMm = rearRadius - rearPressedMm + rear.xMm * Math.sin(pitch) - rear.heightMm * Math.cos(pitch);
  return { heaveMm, pitch, rearTravelMm, frontTravelMm, shockStrokeMm: 0.9 * rearTravelMm };
}

function thing(
  id: string,
  kind: Carried['kind'],
  place: Carried['place'],
  at: readonly [number, number],
  mass: string,
  more: Partial<Pick<Carried, 'standsOn' | 'selected' | 'overLimit' | 'label'>> = {},
): Carried {
  const [xMm, heightMm] = at;
  const offset = xMm < 0 ? `${-xMm} behind` : `${xMm} ahead`;
  return {
    id,
    label: id,
    kind,
    place,
    xMm,
    heightMm,
    mass,
    offset,
    standsOn: null,
    selected: false,
    overLimit: false,
    ...more,
  };
}

const rider = thing('Perrin', 'person', 'rider seat', [585, 1005], '91 kg');
const passenger = thing('Odalys', 'person', 'passenger seat', [150, 1075], '64 kg');
const fuel = thing('fuel, half', 'fuel', 'tank', [890, 830], '7.9 kg');
const bag = thing('tank bag', 'item', 'tank bag', [850, 1015], '3 kg');

/** Nine things, one of them selected and one place over its limit. */
export const nineThings: readonly Carried[] = [
  rider,
  passenger,
  fuel,
  bag,
  thing('carrier', 'place', 'rack', [-330, 862], '11.5 of 10', { overLimit: true }),
  thing('top box', 'item', 'rear box', [-330, 1005], '7.5 kg', { standsOn: 'carrier' }),
  thing('bed roll', 'item', 'other', [-330, 1205], '4 kg', { standsOn: 'top box', selected: true }),
  thing('side cases, both', 'item', 'side cases', [-70, 610], '2 × 6 kg'),
  thing('tools under the seat', 'item', 'other', [330, 640], '2.4 kg'),
];

export const threeThings: readonly Carried[] = [
  thing('Perrin', 'person', 'rider seat', [585, 1005], '91 kg', { selected: true }),
  fuel,
  thing('side cases', 'item', 'side cases', [-70, 610], '2 × 6 kg'),
];

const axles: AxleWords = {
  rear: { mass: '336 kg', plusMinus: '± 2', limit: '339 of 345', verdict: 'within' },
  whole: { mass: '541 kg', plusMinus: '', limit: '548 of 560', verdict: 'within' },
  front: { mass: '205 kg', plusMinus: '± 2', limit: '209 of 225', verdict: 'within' },
  limitsAt: 'at full tank',
};

const overAxles: AxleWords = {
  ...axles,
  rear: { mass: '361 kg', plusMinus: '± 3', limit: '364 of 345', verdict: 'over' },
  front: { mass: '189 kg', plusMinus: '± 2', limit: 'limit not read', verdict: 'unknown' },
};

const neededAxles: AxleWords = {
  rear: { mass: '741 lb', plusMinus: '± 11', limit: 'limit: figure needed', verdict: 'unknown' },
  whole: { mass: '1193 lb', plusMinus: '± 13', limit: '1208 of 1235', verdict: 'within' },
  front: { mass: '452 lb', plusMinus: '± 9', limit: 'limit: figure needed', verdict: 'unknown' },
  limitsAt: 'at full tank',
};

const LONG_NAMES = [
  'Perrin, in winter gear',
  'Odalys, with the rucksack',
  'fuel, as at the weighing',
  'what is in the tank bag',
  'the box itself with its plate',
  'stove, pans and rain suits',
  'what is in the left case',
  'Reiseapothekenwerkzeugtasche',
];

export const sideViews: Readonly<Record<string, SideViewInput>> = {
  'nine things on a tourer': {
    machine: tourer,
    stance: stanceOn(tourer, 59, 41, 16, 11),
    carried: nineThings,
    massCentre: { xMm: 600, heightMm: 745 },
    axles,
  },
  'machine alone': {
    machine: tourer,
    stance: stanceOn(tourer, 17, 28, 10, 9),
    carried: [],
    massCentre: { xMm: 770, heightMm: 560 },
    axles,
  },
  'three things, little known, one shock': {
    machine: traveller,
    stance: stanceOn(traveller, 45, 60, 14, 11),
    carried: threeThings,
    massCentre: { xMm: 680, heightMm: 660 },
    axles: overAxles,
  },
  'long and low, nose high': {
    machine: cruiser,
    stance: stanceOn(cruiser, 95, 5, 18, 8),
    carried: [
      rider,
      thing('Odalys', 'person', 'passenger seat', [140, 1040], '64 kg', { selected: true }),
      thing('soft bag', 'item', 'rack', [-300, 960], '9 kg'),
    ],
    massCentre: { xMm: 610, heightMm: 720 },
    axles,
  },
  'ten things, rear on the metal, front fully out': {
    machine: traveller,
    stance: stanceOn(traveller, 170, 0, 22, 6),
    carried: [
      ...nineThings.map((each) => ({ ...each, selected: each.label === 'side cases, both' })),
      thing('rain suits', 'item', 'rear box', [-330, 1005], '1.8 kg', { standsOn: 'carrier' }),
    ],
    massCentre: { xMm: 560, heightMm: 760 },
    axles: overAxles,
  },
  'one thing': {
    machine: tourer,
    stance: stanceOn(tourer, 35, 40, 13, 10),
    carried: [rider],
    massCentre: { xMm: 740, heightMm: 650 },
    axles,
  },
  'fuel only': {
    machine: tourer,
    stance: stanceOn(tourer, 18, 29, 10, 9),
    carried: [fuel],
    massCentre: { xMm: 770, heightMm: 570 },
    axles,
  },
  'eight things with long names': {
    machine: tourer,
    stance: stanceOn(tourer, 59, 41, 16, 11),
    carried: nineThings
      .filter((each) => each.kind !== 'place')
      .map((each, index) => ({ ...each, standsOn: null, label: LONG_NAMES[index] ?? each.label })),
    massCentre: { xMm: 600, heightMm: 745 },
    axles: neededAxles,
  },
  'a bag ahead of the front axle, a hitch far behind, a roll high on a box': {
    machine: traveller,
    stance: stanceOn(traveller, 60, 70, 15, 12),
    carried: [
      rider,
      fuel,
      thing('fork bag', 'item', 'other', [1650, 900], '3.5 kg'),
      thing('hitch', 'item', 'other', [-640, 400], '22 kg'),
      thing('top box', 'item', 'rear box', [-300, 1000], '8 kg'),
      thing('roll', 'item', 'other', [-300, 1420], '4 kg', { standsOn: 'top box', selected: true }),
    ],
    massCentre: { xMm: 590, heightMm: 740 },
    axles: neededAxles,
  },
  'nothing known': {
    machine: null,
    stance: { heaveMm: 0, pitch: 0, rearTravelMm: 0, frontTravelMm: 0, shockStrokeMm: 0 },
    carried: [],
    massCentre: null,
    axles: null,
  },
};

function lane(
  letter: string | null,
  rests: readonly [number, number, number],
  more: Partial<Pick<LadderLane, 'wanted' | 'measured' | 'note' | 'ghost' | 'rest'>> = {},
): LadderLane {
  const [fromMm, toMm, plusMinusMm] = rests;
  return {
    id: letter ?? 'alone',
    letter,
    name: letter === null ? 'Machine alone' : `Load ${letter}`,
    rest: {
      fromMm,
      toMm,
      plusMinusMm,
      words: String(Math.round((fromMm + toMm) / 2)),
      plusMinusWords: String(plusMinusMm),
    },
    measured: null,
    wanted: null,
    note: null,
    ghost: null,
    ...more,
  };
}

function wanted(fromMm: number, toMm: number): LadderLane['wanted'] {
  return { fromMm, toMm, words: `${fromMm} to ${toMm}` };
}

function measured(atMm: number): LadderLane['measured'] {
  return { atMm, words: atMm % 1 === 0.5 ? `${Math.floor(atMm)} and a half` : String(atMm) };
}

export const rearLadder: LadderInput = {
  end: 'rear',
  title: 'Rear wheel travel, mm',
  axis: axisInMm,
  travelMaxMm: 86,
  travelMaxWords: '86',
  hangsAtMm: 0,
  hangsWords: 'hangs 0',
  rubberFromMm: 60,
  chosenId: 'C',
  firstLoad: 0,
  lanes: [
    lane(null, [15.5, 18.5, 2], { measured: measured(16) }),
    lane('A', [33, 36.5, 2], {
      wanted: wanted(25, 29),
      measured: measured(35),
      ghost: { fromMm: 40, toMm: 43 },
    }),
    lane('B', [49.5, 53, 2], { wanted: wanted(27, 31) }),
    lane('C', [57.5, 61, 2], { wanted: wanted(29, 33), measured: measured(60.5), note: 'on the rubber' }),
  ],
};

export const frontLadder: LadderInput = {
  ...rearLadder,
  end: 'front',
  title: 'Front wheel travel, mm',
  travelMaxMm: 110,
  travelMaxWords: '110',
  hangsAtMm: 4,
  hangsWords: 'hangs 4',
  rubberFromMm: 94,
  lanes: [
    lane(null, [22, 33, 3], { measured: measured(27) }),
    lane('A', [34, 45, 3], { wanted: wanted(36, 42), measured: measured(41) }),
    lane('B', [36, 47, 3], { wanted: wanted(37, 43) }),
    lane('C', [35, 46, 3], { wanted: wanted(37, 43), measured: measured(42) }),
  ],
};

/** More loads than fit, one of them not worked out, one past the metal. */
export const longLadder: LadderInput = {
  ...rearLadder,
  lanes: [
    ...rearLadder.lanes,
    lane('D', [0, 0, 0], { rest: null, note: 'figure needed: rider’s mass' }),
    lane('E', [82, 86, 2], { wanted: wanted(29, 33), note: 'on the metal' }),
    lane('F', [27, 32, 2], { wanted: wanted(29, 33) }),
    lane('G', [0, 0, 1.5], { wanted: wanted(5, 9), note: 'fully out' }),
  ],
  chosenId: 'F',
  firstLoad: 1,
};

function planned(
  letter: string,
  verdict: 'in reach' | 'only at the edge' | 'past the end',
  span: readonly [number, number],
  doubt: number,
  label: string,
): ReachLane {
  const [fromMm, toMm] = span;
  return {
    id: letter,
    letter,
    name: `Load ${letter}`,
    kind: 'planned',
    verdict,
    fromMm,
    toMm,
    fromPlusMinusMm: doubt,
    toPlusMinusMm: doubt,
    label,
    words: `${fromMm} to ${toMm} mm`,
    plusMinusWords: `${doubt} mm`,
  };
}

const collar = { fromMm: 5, toMm: 29.5 };
const adjuster = { counts: 'preload', collar, reaches: 'collar, mm: 5 to 29.5', stepsMm: [] } as const;

export const reachHeadInput: Omit<ReachHeadInput, 'domain'> = {
  collar,
  title: 'collar, mm',
  marks: [
    { atMm: 5, words: '5' },
    { atMm: 29.5, words: '29.5' },
  ],
  past: 'past its end',
};

export const reachRows: readonly Omit<ReachInput, 'domain'>[] = [
  {
    spring: '22.8 newtons per millimetre',
    ...adjuster,
    lanes: [
      planned('A', 'in reach', [22.9, 26.4], 2, '24.6'),
      planned('B', 'past the end', [35.1, 38.6], 2.3, 'past by 5.6'),
      planned('C', 'past the end', [40.2, 43.7], 2.5, 'past by 10.7'),
    ],
  },
  {
    spring: '27.1 newtons per millimetre',
    ...adjuster,
    lanes: [
      planned('A', 'in reach', [15.2, 18.6], 1.7, '16.9'),
      planned('B', 'in reach', [25.1, 28.5], 2, '26.8'),
      planned('C', 'only at the edge', [29.1, 32.6], 2.1, 'only at the edge'),
    ],
  },
  {
    spring: '30.6 newtons per millimetre',
    ...adjuster,
    lanes: [
      planned('A', 'only at the edge', [2.4, 5.9], 1.5, 'only at the edge'),
      { id: 'B', letter: 'B', name: 'Load B', kind: 'not planned', label: 'sag not read' },
      { id: 'C', letter: 'C', name: 'Load C', kind: 'refused', label: '9 kg over the plate' },
      planned('D', 'in reach', [23.6, 25], 1.9, '24.2'),
    ],
  },
];
