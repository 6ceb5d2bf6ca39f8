import type { ForceInput, ForceLine } from '../drawings/fork/forcePlot.ts';

/** Words of the fork's own figures and of its forces. English. */
export const fork = {
  title: 'The fork, each leg',
  frontKind: 'What carries the front wheel',
  frontKinds: {
    fork: 'a telescopic fork',
    leverage: 'no fork: wheel per spring unit',
    motion: 'no fork: spring unit per wheel',
    table: 'no fork: table of wheel and spring unit',
    force: 'no fork: table of wheel and force',
  },
  travelTold: 'How the wheel moves its springs',
  ratio: { leverage: 'Wheel per spring unit', motion: 'Spring unit per wheel' },
  springUnit: 'Spring unit, eye to eye',
  forceAtWheel: 'Force at the wheel',
  tubes: 'The clamps hold',
  build: { conventional: 'the thin tubes', inverted: 'the thick tubes' },
  damping: 'Damped by',
  dampers: { 'damping rod': 'a damping rod', cartridge: 'a cartridge' },
  notKnown: 'not known',
  eachLeg: 'each leg by itself',
  legs: 'Air and oil of the legs',
  legsAlike: 'both alike',
  dampingOf: { left: 'Left leg damped by', right: 'Right leg damped by' },
  noDamping: 'nothing',
  airOf: {
    both: 'Air above the oil',
    left: 'Air above the oil, left leg',
    right: 'Air above the oil, right leg',
  },
  clampNow: 'Tubes above the upper clamp, now',
  clampWhenMeasured: 'The same when the machine was measured',
  gap: 'Air gap, leg fully in',
  readWith: 'In the leg when it was read',
  inLeg: {
    nothing: 'neither spring nor spacer',
    spring: 'the spring',
    spacer: 'the spacer',
    'spring and spacer': 'spring and spacer',
  },
  springVolume: 'The spring displaces',
  spacerVolume: 'The spacer displaces',
  oilFilled: 'Oil filled into the leg',
  oilForGap: 'Oil volume that the gap is for',
  bore: 'Tube bore, where the oil stands',
  seal: 'Diameter that the seal runs on',
  temperature: 'Temperature when it was closed',
  pressure: 'Air pressure, fully out',
  stack: 'Spring stack',
  room: 'From the cap down to the spring seat',
  readAt: 'The leg when that was read',
  readAts: { 'fully out': 'fully out', relaxed: 'at rest, no spring in it' },
  washers: 'Washers',
  thickness: 'Thickness',
  spacer: 'Spacer that stays',
  forces: 'Forces in the fork',
  forcesNote: 'Both legs together, along the tubes, as found and settled; shaded: ±.',
  at: 'Place in the stroke',
  atStroke: (stroke: string) => `At ${stroke} of stroke; touch a force to see what it is made of`,
  tenth: 'a tenth of it',
  travel: 'Wheel travel',
  stroke: 'Stroke',
  rubber: 'Rubber',
  topOut: 'Top-out spring',
  lines: {
    whole: 'In all',
    springs: 'Springs alone',
    air: 'Air',
    airQuick: 'Air, quick stroke',
    moreOil: (step: string) => `Air, oil ${step} higher`,
    lessOil: (step: string) => `Air, oil ${step} lower`,
  },
  /** "In all: 400 N fully out, 3000 N, plus or minus 500, at full bump." */
  spoken: ({ name, force, doubt }: ForceLine, { forceUnit }: ForceInput) => {
    const [first, last] = [force[0], force.at(-1)];
    const at = (value: number | null | undefined): string =>
      value === null || value === undefined ? 'nothing' : `${value.toFixed(0)} ${forceUnit}`;
    const by = doubt === null ? '' : `, plus or minus ${doubt.at(-1)!.toFixed(0)},`;
    return `${name}: ${at(first)} fully out, ${at(last)}${by} at full bump.`;
  },
} as const;
