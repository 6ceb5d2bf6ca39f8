import type { Reach } from '@sagwright/model/plan/answer';
import type { FaultCode, Trouble } from '../../measure/document.ts';

/** What is said of readings held against the sum. */
export const measure = {
  sags: 'SAG',
  sagsWords: 'Hanging, less what it settled at. Expected is what the sum says with no reading of it.',
  alone: 'the machine alone',
  ends: { rear: 'rear', front: 'front' },
  sides: { left: 'left', right: 'right' },
  turned: 'collars turned',
  along: { wheel: 'wheel', stroke: 'along the tube' },
  verdicts: { agrees: 'agrees', apart: 'apart' },
  apart: 'Apart by more than both ±: do not ride on it yet, find out why.',
  heads: {
    load: ['', 'load'],
    end: ['', 'end'],
    sag: ['', 'read'],
    expected: ['', 'expected'],
    band: ['friction', 'band'],
    verdict: ['', 'verdict'],
    where: ['', 'load and end'],
    figure: ['', 'reading'],
    read: ['', 'read'],
    found: ['most probable', 'machine'],
    miss: ['off by', 'its own σ'],
    input: ['', 'figure'],
    before: ['as the job', 'stands'],
    after: ['as readings', 'have it'],
    reach: ['', 'reach'],
  },
  fields: {
    hanging: 'hanging',
    afterPush: 'after a push',
    afterLift: 'after a lift',
    front: 'front scale',
    rear: 'rear scale',
  } as Readonly<Record<string, string>>,
  faults: {
    'lift below push':
      'It settled lower after a lift than after a push: the two are swapped, or it was not let settle slowly.',
    'hangs shorter':
      'Hanging it is shorter than standing: the wheel did not hang, or the tape came from another mark.',
    'band too wide':
      'The friction band is too wide to conclude anything: find the bind first (axle not floated, clamps, bushes, dry bearings).',
    'beyond travel': 'It sags more than there is travel: another mark, or a slip of the pen.',
    'unit of another':
      'One length is about 25.4 times another: inches typed as millimetres? Mend it first: until then it still counts in what follows.',
    'sides apart':
      'Left and right are apart by more than both ±: compare collars, springs and marks of both sides.',
    'settled once':
      'It settled one way only: half the friction band is in this reading, and nobody knows how wide that is.',
    'never hanging':
      'These marks were never read hanging, so that there is no sag; the reading still counts against others of the same marks.',
  } satisfies Readonly<Record<FaultCode, string>>,
  figures: 'READINGS',
  figuresWords: 'Each against the one machine that explains all of them best.',
  suspect: 'WHAT DOES NOT FIT',
  sound: (misfit: string, freedom: string) =>
    `No single reading or figure stands out more than chance allows: squares of ${misfit} are left, about ${freedom} are usual.`,
  allOff: (misfit: string, freedom: string) =>
    `Readings and sum do not agree, and no single one is to blame: squares of ${misfit} are left, about ${freedom} are usual. Several are off, or the machine is not as the job has it. Set nothing by what follows.`,
  explained:
    'What is apart above comes of figures of the job being off within chance, all at once; the next table tells which.',
  notToSetBy: 'Set nothing by what follows before that is found.',
  off: (name: string, by: string, score: string) =>
    `Most likely off: ${name}, by ${by} (${score} times its own σ). Look at it before anything else.`,
  offUnnamed: (name: string, score: string) =>
    `Most likely off: ${name} (${score} times its own σ). Look at it before anything else.`,
  alike: (names: string) => `These readings can hardly tell it from ${names}. A further reading must.`,
  inputs: 'WHAT READINGS SAY OF THE MACHINE',
  inputsNone: 'Nothing that was not known as well before.',
  collars: 'WHERE THE COLLAR ANSWERS EACH LOAD',
  collarsWords: (spring: string) =>
    `For ${spring}, as the adjuster is read (a cam, a cap or a knob: from its loosest end).`,
  reaches: {
    reached: 'ok',
    'at the edge': 'edge',
    'out of reach': 'past its end',
    'between steps': 'between',
    'no spring wanted': 'none',
    'no adjuster': 'fixed',
  } satisfies Readonly<Record<Reach['kind'], string>>,
  spring: (end: string, before: string | null, after: string | null) =>
    before === after
      ? `At the ${end} the spring to choose stays ${after ?? 'none'}.`
      : `At the ${end} the spring to choose was ${before ?? 'none'}; as readings have it, it is ${after ?? 'none of those listed'}.`,
  troubles: {
    'nothing read': 'The job has no readings. Write them under "readings": docs/job-file.md.',
    'no rest': 'The machine as the job has it does not stand where it was read: see "sagwright plan".',
    'not told': 'These readings do not tell where their marks are.',
    'not found':
      'No machine like this one gives these readings. See what numbers alone show to be wrong with them, above.',
  } satisfies Readonly<Record<Trouble, string>>,
} as const;
