import { type FinalDriveSI, type Squat, squatOf } from '../rear/finalDrive.ts';
import type { HardPoint } from '../rear/hardPoints.ts';
import { swingarmOf } from '../rear/wheelMotion.ts';
import { gradientAt, HEAVE, PITCH } from '../statics/gradient.ts';
import type { Prepared } from '../statics/prepared.ts';

/**
 * Squat of a machine driven steadily on level ground, in the attitude of a state [u, θ, z_r, z_f]: pitch, loaded tyre and
 * the centre of mass of all that is on it, wheels included.
 * Throws RangeError where the axle does not run about a known pivot.
 */
export function squatAtRest(prepared: Prepared, state: ArrayLike<number>, drive: FinalDriveSI): Squat {
  const scratch = Float64Array.from(state);
  gradientAt(prepared, scratch, 0);
  const { rear, front } = prepared.gradient;
  const { pivotX, pivotHeight } = swingarmOf(prepared.machine.rear.axlePath);
  const sin = Math.sin(state[PITCH]!);
  const cos = Math.cos(state[PITCH]!);
  const inWorld = ({ x, height }: HardPoint): HardPoint => ({
    x: x * cos + height * sin,
    height: state[HEAVE]! - x * sin + height * cos,
  });
  const places = {
    axle: { x: rear.forward, height: rear.height },
    pivot: inWorld({ x: pivotX, height: pivotHeight }),
    frontSprocket: drive.kind === 'shaft' ? null : inWorld(drive.frontSprocket),
  };
  return squatOf(drive, places, centreHeight(prepared, inWorld), front.forward - rear.forward);
}

/** Height of the whole machine's centre of mass above the ground [m], from the state whose gradient was written last. */
function centreHeight(prepared: Prepared, inWorld: (point: HardPoint) => HardPoint): number {
  const { machine, gradient } = prepared;
  const { sprung, load, rear, front } = machine;
  const body = sprung.mass + load.mass;
  const centre = inWorld({
    x: (sprung.mass * sprung.x + load.momentX) / body,
    height: (sprung.mass * sprung.height + load.momentHeight) / body,
  });
  const moment =
    body * centre.height + rear.unsprung * gradient.rear.height + front.unsprung * gradient.front.height;
  return moment / (body + rear.unsprung + front.unsprung);
}
