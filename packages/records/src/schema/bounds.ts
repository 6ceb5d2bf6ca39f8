import type { Dimension } from '../units.ts';

/**
 * What a typed quantity may be, in SI, whatever unit it was typed in. These are not the trade's usual values: they
 * keep out slips of the unit or of the decimal point and figures that no sum could use. Common practice, no source.
 */
export interface Bound {
  readonly dimension: Dimension;
  readonly least: number;
  readonly most: number;
}

export const bounds = {
  // Machine
  wheelbase: { dimension: 'length', least: 0.8, most: 2.6 },
  rake: { dimension: 'angle', least: 0, most: Math.PI / 3 },
  forkOffset: { dimension: 'length', least: -0.1, most: 0.2 },
  forwardOfRearAxle: { dimension: 'length', least: -2, most: 3 },
  height: { dimension: 'length', least: 0, most: 2.5 },
  massOnWheel: { dimension: 'mass', least: 1, most: 2000 },
  unsprungMass: { dimension: 'mass', least: 1, most: 200 },
  unsprungPart: { dimension: 'mass', least: 0, most: 100 },
  ratedMass: { dimension: 'mass', least: 0.1, most: 2000 },
  thingMass: { dimension: 'mass', least: 0.01, most: 2000 },
  addedHeight: { dimension: 'length', least: 0, most: 2.5 },
  tank: { dimension: 'volume', least: 1e-4, most: 0.1 },
  fuel: { dimension: 'volume', least: 0, most: 0.1 },

  // Tyres
  tyreRadius: { dimension: 'length', least: 0.1, most: 0.5 },
  tyreRate: { dimension: 'rate', least: 2e4, most: 2e6 },
  tyrePressure: { dimension: 'pressure', least: 2e4, most: 1e6 },

  // Room and speed
  gap: { dimension: 'length', least: 0, most: 0.5 },
  standLean: { dimension: 'angle', least: 0, most: 0.6 },
  speed: { dimension: 'speed', least: 2, most: 140 },

  // Movement
  leverage: { dimension: 'leverage', least: 0.5, most: 6 },
  motion: { dimension: 'motion', least: 0.15, most: 2 },
  wheelTravel: { dimension: 'length', least: 0, most: 0.5 },
  stroke: { dimension: 'length', least: 0.01, most: 0.4 },
  shockLength: { dimension: 'length', least: 0.1, most: 0.8 },
  tapedLength: { dimension: 'length', least: 0.01, most: 1.5 },
  besideAxle: { dimension: 'length', least: -0.5, most: 1.5 },
  sideways: { dimension: 'length', least: 0, most: 0.3 },
  drivePitch: { dimension: 'length', least: 0.004, most: 0.04 },
  clampHeight: { dimension: 'length', least: -0.02, most: 0.15 },
  threadDiameter: { dimension: 'length', least: 0.004, most: 0.04 },
  threadEngaged: { dimension: 'length', least: 0, most: 0.1 },
  markLeft: { dimension: 'length', least: -0.05, most: 0.1 },
  lengthChange: { dimension: 'length', least: -0.1, most: 0.1 },

  // Forces beside the spring
  shaftDiameter: { dimension: 'length', least: 0.004, most: 0.04 },
  gasPressure: { dimension: 'pressure', least: 0, most: 5e6 },
  airDiameter: { dimension: 'length', least: 0.01, most: 0.15 },
  gaugeVolume: { dimension: 'volume', least: 0, most: 1e-4 },
  gasVolume: { dimension: 'volume', least: 1e-6, most: 5e-3 },
  temperature: { dimension: 'temperature', least: 233.15, most: 423.15 },
  rubberStart: { dimension: 'length', least: 0, most: 0.4 },
  rubberRate: { dimension: 'rate', least: 0, most: 5e6 },
  rubberHardening: { dimension: 'hardening', least: 0, most: 1e12 },
  rubberCompression: { dimension: 'length', least: 0, most: 0.2 },
  rubberForce: { dimension: 'force', least: 0, most: 1e5 },
  topOutLength: { dimension: 'length', least: 0.0005, most: 0.2 },
  topOutRate: { dimension: 'rate', least: 500, most: 5e6 },
  friction: { dimension: 'force', least: 0, most: 2000 },
  tubeDiameter: { dimension: 'length', least: 0.01, most: 0.1 },
  displaced: { dimension: 'volume', least: 0, most: 5e-4 },
  oil: { dimension: 'volume', least: 5e-5, most: 3e-3 },
  airGap: { dimension: 'length', least: 0.01, most: 0.5 },

  // Springs
  springRate: { dimension: 'rate', least: 500, most: 1e6 },
  springLength: { dimension: 'length', least: 0.01, most: 1 },
  springCompression: { dimension: 'length', least: 0, most: 0.6 },
  springForce: { dimension: 'force', least: 0, most: 1e5 },
  softCloses: { dimension: 'length', least: 0.0005, most: 0.4 },
  wire: { dimension: 'length', least: 0.001, most: 0.03 },
  coilDiameter: { dimension: 'length', least: 0.008, most: 0.2 },
  pitch: { dimension: 'length', least: 0.0015, most: 0.15 },
  springSpacer: { dimension: 'length', least: 0, most: 0.1 },

  // Adjusters and where they stand
  lead: { dimension: 'length', least: 0.0002, most: 0.006 },
  collarReading: { dimension: 'length', least: 0, most: 0.4 },
  camRise: { dimension: 'length', least: 0, most: 0.06 },
  perClick: { dimension: 'length', least: 1e-5, most: 0.005 },
  spacer: { dimension: 'length', least: 0, most: 0.5 },
  washer: { dimension: 'length', least: 1e-4, most: 0.03 },
  spacerCut: { dimension: 'length', least: 1e-4, most: 0.05 },
  preload: { dimension: 'length', least: -0.05, most: 0.2 },

  // How it stands, is braked and driven
  fromMiddle: { dimension: 'length', least: 0.01, most: 1 },
  beamDrop: { dimension: 'length', least: -1, most: 3 },
  beamDistance: { dimension: 'length', least: 1, most: 50 },
  raisedBy: { dimension: 'length', least: 0.05, most: 1.5 },
  acceleration: { dimension: 'acceleration', least: 0, most: 15 },
  frontShare: { dimension: 'share', least: 0, most: 1 },
  thrust: { dimension: 'force', least: 0, most: 20000 },

  // What is being fitted
  eyeBore: { dimension: 'length', least: 0.004, most: 0.06 },
  boltDiameter: { dimension: 'length', least: 0.004, most: 0.04 },
  mountWidth: { dimension: 'length', least: 0.003, most: 0.15 },
  mountFloat: { dimension: 'length', least: 0, most: 0.02 },
  mountOffset: { dimension: 'length', least: 0, most: 0.1 },
  bracketOffset: { dimension: 'length', least: 0, most: 0.1 },
  toolSize: { dimension: 'length', least: 0.0015, most: 0.1 },
  torque: { dimension: 'torque', least: 0.2, most: 400 },

  // Targets
  wantedShare: { dimension: 'share', least: 0, most: 1 },
  wantedLength: { dimension: 'length', least: 0, most: 0.4 },
} as const satisfies Record<string, Bound>;
