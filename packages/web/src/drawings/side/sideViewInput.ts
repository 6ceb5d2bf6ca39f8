/**
 * What the side view is drawn from. Lengths are millimetres (`…Mm`), angles radians. Points are body coordinates in the
 * reference attitude, as in docs/conventions.md: x forward from the rear axle, height from the ground, body level,
 * tyres unloaded. Words come ready; the drawing puts no units on.
 */
export interface SideViewInput {
  /** Null until a wheelbase and two wheel weights are known: then only a dashed outline and a sentence are drawn. */
  readonly machine: MachineFigures | null;
  readonly stance: Stance;
  readonly carried: readonly Carried[];
  /** Mass centre of everything on the wheels, a body point; null where it is not known. */
  readonly massCentre: BodyPoint | null;
  readonly axles: AxleWords | null;
}

export interface BodyPoint {
  readonly xMm: number;
  readonly heightMm: number;
}

/** How the machine stands: the state of docs/conventions.md in millimetres; pitch is nose-down positive. */
export interface Stance {
  readonly heaveMm: number;
  readonly pitch: number;
  readonly rearTravelMm: number;
  readonly frontTravelMm: number;
  /** By which a rear shock is shorter than fully out. */
  readonly shockStrokeMm: number;
}

/** The figures of a machine; what goes by one that is null or assumed is dashed. */
export interface MachineFigures {
  /** Those that nobody read: drawn to what is assumed for them. */
  readonly assumed: readonly ('wheelbase' | 'rake' | 'rear tyre' | 'front tyre')[];
  readonly wheelbaseMm: number;
  /** Steering axis from the vertical, leaning back. */
  readonly rake: number;
  /** Front axle ahead of the steering axis. */
  readonly forkOffsetMm: number | null;
  /** Of the swingarm. */
  readonly pivot: BodyPoint | null;
  readonly seat: BodyPoint | null;
  readonly rear: EndFigures & {
    readonly shocks: 1 | 2;
    /** Fully out, eye to eye. Where it is not known the shock is as long as its place allows. */
    readonly shockLengthMm: number | null;
  };
  readonly front: EndFigures & {
    /** Else nothing tells how the wheel is carried but its travel, straight along the body. */
    readonly isFork: boolean;
  };
}

export interface EndFigures {
  /** Of the tyre it stands on, unloaded. */
  readonly tyreRadiusMm: number;
  /** Of the axle in the reference attitude: the radius of the tyre that it was measured on. */
  readonly axleHeightMm: number;
  /** Wheel travel at which wheelbase, heights and places were read. */
  readonly referenceTravelMm: number;
}

/** Something with a place on the machine, or a place that carries other things. */
export interface Carried extends BodyPoint {
  readonly id: string;
  readonly label: string;
  /** `place`: a carrier that has a tag of its own because it has a limit. */
  readonly kind: 'person' | 'item' | 'fuel' | 'place';
  readonly place:
    | 'rider seat'
    | 'passenger seat'
    | 'rear box'
    | 'side cases'
    | 'rack'
    | 'tank bag'
    | 'tank'
    | 'other';
  /** What it stands on, where that is another thing or place in the list. */
  readonly standsOn: string | null;
  /** "7.5 kg", "2 × 6 kg", "11.5 of 10". */
  readonly mass: string;
  /** Where it is, for the dimension of the selected thing: "330 behind". */
  readonly offset: string;
  readonly selected: boolean;
  readonly overLimit: boolean;
}

/** The words below the ground line. */
export interface AxleWords {
  readonly rear: LoadWords;
  readonly whole: LoadWords;
  readonly front: LoadWords;
  /** What the limits were checked at: "at full tank". */
  readonly limitsAt: string;
}

export interface LoadWords {
  /** "336 kg", "± 2", "339 of 345". */
  readonly mass: string;
  readonly plusMinus: string;
  readonly limit: string;
  /** `unknown`: the figure is needed; its words stand in a dashed box. */
  readonly verdict: 'within' | 'over' | 'unknown';
}
