import type {
  CautionCode,
  FittedPart,
  MountCheck,
  MountNeed,
  Side,
  Stance,
  StepKind,
  ToolDocument,
  TorqueDocument,
  WhyCode,
} from '../../fitting/document.ts';
import { capital } from '../capital.ts';

/** How one step is told: what to do, how, what goes wrong there, and whose advice that is. */
export interface StepSaid {
  /** `end`: top or bottom; `of`: the part in the way. */
  readonly title: (end: string, of: string) => string;
  readonly how: string;
  readonly trap: string;
  readonly source: string;
}

/** A fact of the trade that stands in no publication we could name. */
const practice = 'common practice, no source';

function step(title: StepSaid['title'] | string, how: string, trap: string): StepSaid {
  return { title: typeof title === 'string' ? () => title : title, how, trap, source: practice };
}

/** Every word of the work list. English; what goes in arrives as text. */
export const fitting = {
  steps: {
    found: step(
      'Write down everything as it stands',
      'Collars, clicks and lengths on both sides; photographs of hoses and wires, and of where each spacer sits.',
      'Once a bolt is loose nobody can tell how it was.',
    ),
    uncover: step(
      (_, of) => `Take off ${of}`,
      'Screws laid out by place.',
      'Screws differ in length. Wires and pipes may hang behind it.',
    ),
    loosen: step(
      'Break the bolts loose',
      'A fraction of a turn, until they move; every nut stays on with its whole thread.',
      'A hard pull at a machine that was lifted brings it down.',
    ),
    compare: step(
      'Hold the new unit against the old one',
      'Length, eyes and sleeves; which way knobs, gas valve and hose point.',
      'It goes in upside down or from the wrong side as well, and its hose then fouls.',
    ),
    spring: step(
      'Put the spring on the unit',
      'Its free length first, then a compressor that is made for it.',
      'A pressed spring holds enough to kill: eyes covered, nobody in its line, no compressor that looks tired.',
    ),
    slacken: step(
      "Slacken the length adjuster's lock nut",
      'The eye is held meanwhile.',
      'What is held is the eye, never the shaft.',
    ),
    turn: step(
      'Turn the eye to the chosen length',
      'Turns counted, length measured.',
      'Both eyes end in one plane, and left and right alike to the half turn.',
    ),
    lock: step(
      'Tighten the lock nut',
      'The eye is held meanwhile.',
      'An eye that crept round with the nut has changed the length: measure again.',
    ),
    mark: step(
      "Look at the adjuster's thread",
      'Its mark or safety ring, the turns that are left, both eyes in one plane.',
      'A thread further out than its mark holds by too few turns. Then it is shortened, not ridden.',
    ),
    sleeve: step(
      (end) => `Put the sleeve into the ${end} eye`,
      'The right one for this eye: inside, outside and length.',
      'Too short, and the bolt clamps the eye itself. One may still sit in the old unit.',
    ),
    carry: step(
      'Carry the arm',
      'A jack that just touches it.',
      'Without its only shock arm and wheel drop, and pull on brake hose and wires.',
    ),
    out: step(
      'Take the old shock out',
      'Washers, spacers and sleeves laid out in their order.',
      'Where a bolt binds, the arm is not carried level: raise or lower it, no hammer.',
    ),
    clean: step(
      'Clean bolts, threads and faces',
      'Look at each while it is in the hand.',
      'A stretched or torn thread, a crack, a dry or worn bearing: stop here, that goes to the workshop.',
    ),
    in: step(
      'Put the new shock in',
      'Bolts by hand, from the side that they came from.',
      'A wire, sensor lead or hose gets pinched behind it. A bolt that will not go in by hand is crossed.',
    ),
    nuts: step(
      'Run new nuts down until they seat',
      'Prevailing-torque nuts are used once. A thread or two shows beyond them.',
      'Threadlocker only where the manual asks for it.',
    ),
    float: step(
      'Feel the float of both eyes',
      'Each eye moves along its bolt by hand.',
      'No float: the faces clamp the eye, metal to metal. Never grind the bush, find the right sleeve.',
    ),
    reservoir: step(
      'Put the reservoir into its clamp',
      'Hose without a twist, rubber under the clamp; the clamp stays slack.',
      'No tight bend at the fitting; valve outward and within reach, away from heat and boots.',
    ),
    bracket: step(
      "Fix the reservoir's bracket",
      'With its spacers, the reservoir in its clamp.',
      'Spacers take thread from its bolts: bolts longer by as much. The hose must not pull.',
    ),
    flush: step(
      'Lay a straight edge over the countersunk heads',
      'The next part lies on them.',
      'A head that stands proud holds that part off, and it works loose.',
    ),
    set: step(
      'Set collar and clicks as planned',
      'Read again once locked; clicks counted out from lightly closed.',
      'Left and right alike, unless a difference is meant.',
    ),
    tighten: step(
      (end) => `Tighten the ${end} bolt`,
      'Torque wrench on the nut, the head held; threads dry or oiled as the manual has them.',
      'What moved while slack may bind now: feel the float again.',
    ),
    witness: step(
      (end) => `Second person: check the ${end} bolt and mark it`,
      'The mark runs across nut and part.',
      'Nobody sees a nut creep that has no mark.',
    ),
    settle: step(
      'Let it settle at its ride height',
      'Pushed down and let up a few times.',
      'A rubber bush tightened while it hangs is a twisted spring: it holds the machine up, and tears.',
    ),
    sweep: step(
      'Move the wheel through its whole travel',
      'Pulled down by straps, or with the springs off; and steered from lock to lock.',
      'Hose, wires, bags, guard, pipe, chain or belt: watch each all the way. What could not be reached is not checked.',
    ),
    clamp: step("Tighten the reservoir's clamp", 'Label and valve can be read.', 'A thin tube dents.'),
    cover: step(
      (_, of) => `Put back ${of}`,
      'Each screw where it came from.',
      'Nothing may touch eye, knob, hose or reservoir.',
    ),
    height: step(
      'Look at what the new length moved',
      'Side stand, chain or belt, headlamp, brake hose.',
      'Chain and belt are checked at their tightest point, not where they happen to stand.',
    ),
    look: step(
      'Look over the whole machine',
      'Marks, hoses, wires, knobs, brakes, lights; both ends bounced together.',
      'Whoever fitted it sees what was meant. Let another look.',
    ),
    ridden: step(
      'Look again after the first ride',
      'Marks, hoses, collars; and once more some hundred kilometres later.',
      'A hose that shines was rubbed. A mark that no longer meets: do not ride on.',
    ),
  } satisfies Record<StepKind, StepSaid>,

  why: {
    'cannot be read later': 'once something is loose it cannot be read any more',
    'in the way': 'it is in the way',
    'never off': 'what was never off is not put back',
    'held while it stands': 'on its wheels it bears a hard pull',
    'known to fit first': 'what does not fit is found while nothing is open yet',
    'locked until slack': 'under a tight lock nut its thread suffers',
    'where it shall stand': 'it is locked where it shall stay',
    'seats only when tight': 'mark and ring tell only when the nut is tight',
    'out of reach once in': 'once the unit is in it cannot be reached',
    'arm would drop': 'the arm would drop',
    'one holds the arm': 'the other shock holds the arm in its place meanwhile',
    'place is taken': 'the old one is in its place',
    'not in yet': 'it goes on what is in its place',
    'dirt and damage': 'dirt spoils the torque, and damage is seen only now',
    'bolts are in it': 'its bolts are still in use',
    'all its thread': 'a nut on half its thread bears nothing',
    'felt while slack': 'it can only be felt, and mended, while the bolt is slack',
    'hose hangs on it': 'the reservoir hangs on the unit by its hose',
    'hose too stiff': 'with the bracket fixed the hose is too stiff to lead the reservoir in',
    'rubber twisted': 'rubber must be untwisted where it stands most of the time',
    'bears on it': 'from then on weight is on it',
    'second look at it': 'there is nothing to check yet',
    'seen through travel': 'only the whole travel shows where the hose goes',
    'lies on it': 'the next part lies on it',
    'hidden afterwards': 'it is hidden afterwards',
    'stands anew': 'it stands otherwise afterwards',
    'whole machine': 'it is looked at as it will be ridden',
    'ridden first': 'nothing settles before it is ridden',
  } satisfies Record<WhyCode, string>,

  stances: {
    wheels: 'On its wheels, held upright',
    air: 'Rear wheel in the air, held by the frame',
  } satisfies Record<Stance, string>,
  stanceTraps: {
    wheels: 'Two people. Straps slack enough that it stands on its springs.',
    air: 'Lift it by the frame, never by the swingarm; strap it; nobody beneath. Hot pipe: wait.',
  } satisfies Record<Stance, string>,

  sides: { left: 'LEFT', right: 'RIGHT' } satisfies Record<Side, string>,
  ends: { top: 'top', bottom: 'bottom' },
  sided: (title: string, side: string) => `${side}: ${title}`,

  cautions: {
    manual: "This machine's service manual, local rules and a qualified technician come before this list.",
    'two people': 'A heavy machine needs two people and level ground, and nobody under it.',
    spring: 'Springs are pressed: a compressor that is made for it, eyes covered, no face in their line.',
    gas: 'The unit holds gas under pressure: never heat, drill, open or throw it in a fire.',
    electronic: "Electronic dampers: unplugging and setting them up again is the dealer's procedure.",
    levelling: "Self-levelling: letting its pressure off and filling it is the dealer's procedure.",
  } satisfies Record<CautionCode, string>,

  tools: (kind: string, size: string | null, part: string) =>
    `${size === null ? '' : `${size} `}${kind} on the ${part}`,
  parts: {
    topBolt: 'top bolt',
    bottomBolt: 'bottom bolt',
    lockNut: 'lock nut',
    bracket: 'bracket',
    reservoirClamp: "reservoir's clamp",
    eye: 'eye',
    collar: 'collar',
  } satisfies Record<ToolDocument['on'], string>,

  torque: {
    none: "No figure. Read it from this machine's manual.",
    told: (value: string, page: string, who: string) => `${value}: ${page}, ${who}`,
    states: {
      'read once': (reader: string) => `read by ${reader}; a second person has still to read it`,
      'read twice by one': (reader: string) => `read twice by ${reader}`,
      'read by two': (reader: string, second: string) => `read by ${reader} and ${second}`,
    },
    notYet: {
      'no page': 'A figure without its page: not to be worked by. Add the page.',
      'no reader': 'A figure that nobody signed: not to be worked by. Add who read it.',
    },
  } satisfies { readonly notYet: Partial<Record<TorqueDocument['state'], string>> } & Record<string, unknown>,

  mount: {
    title: (end: string) => `${capital(end)} eye on its bolt`,
    needs: (outer: string, inner: string, wall: string, length: string) =>
      `Needs a sleeve ${inner} inside, ${outer} outside (wall ${wall})${length}.`,
    longerThan: (eye: string) => `, longer than the eye's ${eye}`,
    atMost: (room: string) => `, at most ${room} long`,
    checks: {
      'bolt play': 'play of the bolt',
      'sleeve play': 'play of the sleeve in the eye',
      'side float': 'side float of the eye',
      'face room': 'room between the faces',
      thread: 'thread beyond what must be engaged',
    } satisfies Record<MountCheck['of'], string>,
    fits: (name: string, found: string) => `${name} ${found}: fits.`,
    close: (name: string, found: string) => `${name} ${found}: too close to call. Try it by hand.`,
    tooMuch: (name: string, found: string, most: string) =>
      `${name} ${found}, more than ${most}: too loose, it knocks.`,
    tooLittle: {
      'bolt play': (found: string) => `the bolt does not go through, by ${found}.`,
      'sleeve play': (found: string) => `the sleeve does not go into the eye, by ${found}.`,
      'side float': (found: string) =>
        `side float ${found}: the faces clamp the eye, metal to metal. A longer sleeve.`,
      'face room': (found: string) => `it does not go between the faces, by ${found}.`,
      thread: (found: string) => `too little thread engaged, by ${found}.`,
    } satisfies Record<MountCheck['of'], (found: string) => string>,
    tooLittleFloat: (found: string, keep: string) =>
      `side float ${found}, less than the ${keep} that must remain.`,
    needed: (needs: string) => `Not checked, figure needed: ${needs}.`,
    need: {
      bore: 'bore of the eye',
      bolt: "diameter of the machine's bolt",
      sleeve: 'the sleeve, inside, outside and length',
      eyeWidth: 'width of the eye along the bolt',
      clampWidth: "room between the machine's faces",
      thread: "how much of the bolt's thread is engaged",
    } satisfies Record<MountNeed, string>,
    unknownBush: 'Bush not told: tightened at ride height, as a rubber one must be.',
    list: (parts: readonly string[]) => parts.join('; '),
  },

  offset: {
    fits: (found: string, most: string) => `The mounts lie ${found} beside each other: within ${most}.`,
    close: (found: string, most: string) =>
      `The mounts lie ${found} beside each other: too close to ${most} to call. Measure again.`,
    over: (found: string, most: string) =>
      `The mounts lie ${found} beside each other, more than ${most}: the shaft binds. Move spacers from one side to the other.`,
    needed: 'Not checked, figure needed: how far the two mounts lie beside each other.',
  },
  threadLeft: {
    fits: (found: string) => `Length adjuster: ${found} of thread left at the chosen length.`,
    close: (found: string) =>
      `Length adjuster: ${found} of thread left, too close to call. Measure its thread again.`,
    under: (found: string) => `Length adjuster: past its end by ${found}. The unit cannot be made so long.`,
  },
  bracket: {
    spacers: (count: string, off: string, offset: string) =>
      `Bracket: ${count} under each bolt stand it off ${off} (at least ${offset}). Bolts longer by as much.`,
    unknown: (offset: string) =>
      `Bracket: it must stand off ${offset}. Not checked, figure needed: the thickness of a spacer.`,
    count: (count: number) => (count === 1 ? 'one spacer' : `${count} spacers`),
  },

  usualWidths: (figures: string) => `Typed without a ±, a usual one stands in: ${figures}.`,
  widthOf: (name: string, width: string) => `${name} ± ${width}`,
  figures: {
    'fitting.rear.*.bore': (end: string) => `${end} bore`,
    'fitting.rear.*.bolt': (end: string) => `${end} bolt`,
    'fitting.rear.*.eyeWidth': (end: string) => `width of the ${end} eye`,
    'fitting.rear.*.clampWidth': (end: string) => `room between the ${end} faces`,
    'fitting.rear.*.sleeve.inner': (end: string) => `inside of the ${end} sleeve`,
    'fitting.rear.*.sleeve.outer': (end: string) => `outside of the ${end} sleeve`,
    'fitting.rear.*.sleeve.length': (end: string) => `length of the ${end} sleeve`,
    'fitting.rear.*.thread.engaged': (end: string) => `thread engaged by the ${end} bolt`,
    'fitting.rear.mountOffset': () => 'mounts beside each other',
  } as Readonly<Record<string, (end: string) => string>>,
  stop: (parts: string) => `Not yet: ${parts} does not fit as it was measured. See above.`,
  fitted: {
    top: 'the top eye on its bolt',
    bottom: 'the bottom eye on its bolt',
    offset: 'the place of the mounts beside each other',
    thread: "the length adjuster's thread",
  } satisfies Record<FittedPart, string>,
  after: (numbers: string, why: string) => `After ${numbers}: ${why}.`,
  undo: (title: string, whys: string) => `${title}: ${whys}.`,
  missing: (title: string, why: string) => `it came before "${title}"; ${why}`,
  rests: (title: string, why: string) => `it rests on "${title}": ${why}`,
  lost: (title: string, by: string) =>
    `"${title}" came too late: "${by}" was done before it. Write down what is still known.`,
  unknown: (ids: string) => `Noted as done, but no steps of this list: ${ids}.`,
  heads: {
    undo: 'UNDO FIRST, IN THIS ORDER',
    again: 'AND DO AGAIN, IN ITS PLACE BELOW',
    lost: 'TOO LATE',
    parts: 'EYES AND BOLTS',
    list: 'WORK LIST',
    cautions: 'BEFORE YOU BEGIN',
  },
  progress: (done: string, all: string, changes: string) => `${done} of ${all} done; ${changes}`,
  changes: (count: number) =>
    count === 0
      ? 'it stays standing as it is'
      : count === 1
        ? 'it is made to stand otherwise once'
        : `it is made to stand otherwise ${count} times`,
  allDone: 'All of it is done.',
  anyStance: 'However it stands',
  trap: (text: string) => `Mind: ${text}`,
  torqueLine: (part: string, text: string) => `Torque, ${part}: ${text}`,
  nothing: 'Nothing is being fitted: the job has no "fitting". See docs/job-file.md, or Set on the page.',
  whole: 'The whole unit',
  practice: 'Steps, traps and their order',
  sourced: (what: string, source: string) => `${what}: ${source}.`,
} as const;
