/** What is tightened, each with the tools that go on it and the torque that the manual asks for. */
export const fastenings = ['topBolt', 'bottomBolt', 'lockNut', 'bracket', 'reservoirClamp'] as const;

/** What a tool goes on. */
export const gripped = [...fastenings, 'eye', 'collar'] as const;

export const toolKinds = [
  'spanner',
  'socket',
  'hex key',
  'star key',
  'hook spanner',
  'pin spanner',
  'screwdriver',
] as const;

export type Fastening = (typeof fastenings)[number];
export type Gripped = (typeof gripped)[number];
