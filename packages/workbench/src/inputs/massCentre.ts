import { massCentreHeight } from '@sagwright/model/masses/axleRaise';
import { type Desk, impossible, note } from './desk.ts';
import { tyreRadius } from './tyreRadius.ts';

const PATH = 'machine.weighing.raised';

/** Between which heights the mass centre of a machine alone can lie [m]. Common practice, no source. */
const LOWEST = 0.2;
const HIGHEST = 1.2;

/**
 * Height of the mass centre of the machine alone [m]: by a wheel that was raised, else as told, else assumed. The readings
 * hold in the attitude the machine was measured in, since its suspension was locked: that is said.
 */
export function massCentreHeightOf(desk: Desk, wheelbase: number): number {
  const { take, job } = desk;
  const { weighing } = job.machine;
  if (weighing.raised === undefined) {
    return take.orAssumed(
      'machine.weighing.massCentreHeight',
      weighing.massCentreHeight,
      'massCentre',
      'massCentreHeight',
    );
  }
  note(desk, 'locked as measured', PATH);
  const { wheel, scale } = weighing.raised;
  const total =
    take.known('machine.weighing.front', weighing.front, 'scale') +
    take.known('machine.weighing.rear', weighing.rear, 'scale');
  const by = take.known(`${PATH}.by`, weighing.raised.by, 'geometry');
  const level = take.known(`${PATH}.level`, weighing.raised.level, 'scale');
  const read = take.known(`${PATH}.raised`, weighing.raised.raised, 'scale');
  const radius = { rear: tyreRadius(desk, 'rear'), front: tyreRadius(desk, 'front') };
  if (!(by < 0.9 * wheelbase) || !(Math.max(level, read) < total)) {
    impossible(
      desk,
      PATH,
      `Raised wheel: by ${(by * 1000).toFixed(0)} mm, scale ${level.toFixed(1)} and ${read.toFixed(1)} kg; the rise must be less than 90 % of the wheelbase, ${(900 * wheelbase).toFixed(0)} mm, and each reading less than the whole machine, ${total.toFixed(1)} kg. Check them.`,
    );
    return FALLBACK;
  }
  const onRaised = (reading: number): number => (scale === wheel ? reading : total - reading);
  // The function raises the front; a raised rear wheel is the mirror of it.
  const { height } = massCentreHeight({
    wheelbase,
    rearRadius: wheel === 'front' ? radius.rear : radius.front,
    frontRadius: radius[wheel],
    total,
    frontLevel: onRaised(level),
    frontRaised: onRaised(read),
    raised: by,
  });
  if (height > LOWEST && height < HIGHEST) return height;
  impossible(
    desk,
    PATH,
    `Raised wheel: the readings put the mass centre ${(height * 1000).toFixed(0)} mm high; ${LOWEST * 1000} to ${HIGHEST * 1000} can be. Was the suspension locked, and is the scale the one that is named?`,
  );
  return FALLBACK;
}

/** Stands in so that the rest of the job is looked at too; it is never planned with. */
const FALLBACK = 0.5;
