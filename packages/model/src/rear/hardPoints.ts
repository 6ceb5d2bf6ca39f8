/**
 * A point of the side view in the reference attitude: x forward from the rear axle, height above the ground [m].
 * The rear axle itself is (0, radius of the unloaded tyre); the swingarm's pivot stands in the axle path.
 */
export interface HardPoint {
  readonly x: number;
  readonly height: number;
}

/** What a pivot, an eye or the end of a link is bolted to. */
export type Carrier = 'frame' | 'arm';

/**
 * A rear known by its hard points. Which way round the linkage was put together is said by the points themselves: it
 * stays on that side of its dead centres. Twin dampers share one side view; each is a strut of the end.
 */
export type HardPointsSI = DirectSI | LinkageSI;

/** Damper between swingarm and frame. */
export interface DirectSI {
  readonly kind: 'direct';
  readonly damper: DamperLengthSI;
  readonly armEye: HardPoint;
  readonly frameEye: HardPoint;
}

/** Damper worked by a rocker, which a link turns. */
export interface LinkageSI {
  readonly kind: 'linkage';
  readonly damper: DamperLengthSI;
  readonly rocker: RockerSI;
  /** The link's other end, on the frame if the rocker turns on the arm, on the arm if it turns on the frame. */
  readonly linkEnd: HardPoint;
  readonly rockerEye: HardPoint;
  /** The damper's other eye. */
  readonly farEye: HardPoint & { readonly on: Carrier };
}

/** A rocker: what carries its pivot, and the pin where the link holds it. */
export interface RockerSI {
  readonly on: Carrier;
  readonly pivot: HardPoint;
  readonly pin: HardPoint;
}

/** Lengths of a damper that no side view shows [m]. */
export interface DamperLengthSI {
  /** Eye to eye at the hard extension stop. */
  readonly extendedLength: number;
  /** How far one eye stands further out from the machine's middle than the other: 0 for a damper that does not splay. */
  readonly sideways: number;
}

/** Parts of a rear that have a place in the side view. */
export type PartName =
  | 'axle'
  | 'pivot'
  | 'arm eye'
  | 'frame eye'
  | 'rocker pivot'
  | 'link pin'
  | 'link end'
  | 'rocker eye'
  | 'far eye';
