/** Why a part of a job is of this one machine today, and not of every machine like it. */
export type LeftOutBecause =
  /** Who rides, what they carry, what they want. */
  | 'who rides'
  /** Where hands had set it, or what it was set with. */
  | 'how it stood'
  /** Somebody may be hurt where it is taken for granted: it is read on the machine that is ridden. */
  | 'read it there'
  /** What wears, and what was read of this one part alone. */
  | 'this one only'
  /** Of what it is fitted to, and of the hands that fit it: bolts, sleeves, torques, steps that were done. */
  | 'around it'
  /** The van's, not the machine's. */
  | 'not in it';

/** Fields that no template takes along, by their path in a job; `*` stands for the id of a member. */
export const neverKept: Readonly<Record<string, LeftOutBecause>> = {
  note: 'who rides',
  things: 'who rides',
  loadCases: 'who rides',
  targetSets: 'who rides',
  targetSet: 'who rides',
  choice: 'who rides',
  steady: 'who rides',
  fitting: 'around it',
  'setups.asFound.rear': 'how it stood',
  'setups.asFound.front': 'how it stood',
  'machine.beam': 'how it stood',
  'machine.knobs.*.at': 'how it stood',
  'machine.front.fork.clampHeight': 'how it stood',
  'machine.rear.tyre.pressure': 'how it stood',
  'machine.front.tyre.pressure': 'how it stood',
  'machine.clearances': 'read it there',
  'machine.rear.shock.lengthAdjuster.thread': 'read it there',
  'machine.rear.shock.lengthAdjuster.mark': 'read it there',
  'machine.rear.tyre.state': 'read it there',
  'machine.front.tyre.state': 'read it there',
  'machine.weighing.raised': 'this one only',
  'machine.rear.shock.adjuster.touches': 'this one only',
  'machine.front.fork.adjuster.touches': 'this one only',
  'springs.*': 'not in it',
  'springs.*.where': 'not in it',
  'springs.*.hand': 'not in it',
};
