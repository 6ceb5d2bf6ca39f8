import { type AxleRaise, massCentreHeight } from '@sagwright/model/masses/axleRaise';
import type { Figure } from '@sagwright/model/plan/answer';
import type { Raised } from '@sagwright/records/schema/stance';
import { type Desk, impossible, note } from './desk.ts';
import { ownFigure } from './ownFigure.ts';
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
  const weighed = weighedTwice(desk, weighing.raised, wheelbase);
  const { raised: by, total, frontLevel, frontRaised } = weighed;
  const isOnScale = (reading: number): boolean => reading > 0 && reading < total;
  if (!(by < 0.9 * wheelbase) || !isOnScale(frontLevel) || !isOnScale(frontRaised)) {
    impossible(
      desk,
      PATH,
      `Raised wheel: by ${(by * 1000).toFixed(0)} mm, ${frontLevel.toFixed(1)} and ${frontRaised.toFixed(1)} kg on it; the rise must be less than 90 % of the wheelbase, ${(900 * wheelbase).toFixed(0)} mm, and each reading less than the whole machine, ${total.toFixed(1)} kg. Check them.`,
    );
    return FALLBACK;
  }
  const { height } = massCentreHeight(weighed);
  if (height > LOWEST && height < HIGHEST) return height;
  impossible(
    desk,
    PATH,
    `Raised wheel: the readings put the mass centre ${(height * 1000).toFixed(0)} mm high; ${LOWEST * 1000} to ${HIGHEST * 1000} can be. Was the suspension locked, and is the scale the one that is named?`,
  );
  return FALLBACK;
}

/** What raising a wheel tells, and its weak point: how far a kilogram on the raised reading moves the height [m/kg]. */
export interface RaisedHeight {
  readonly height: Figure;
  readonly perKilogram: number;
}

/** The height of the mass centre by the wheel that was raised, with its ±; null where none was. */
export function raisedHeight(desk: Desk): RaisedHeight | null {
  const { raised } = desk.job.machine.weighing;
  if (raised === undefined) return null;
  const weighed = (at: Desk): AxleRaise =>
    weighedTwice(
      at,
      raised,
      at.take.orAssumed('machine.wheelbase', at.job.machine.wheelbase, 'geometry', 'wheelbase'),
    );
  return {
    height: ownFigure(desk, (at) => massCentreHeight(weighed(at)).height)!,
    perKilogram: Math.abs(massCentreHeight(weighed(desk)).perReading),
  };
}

/** Both readings as of the wheel that was raised. The sum raises the front; a raised rear wheel is the mirror of it. */
function weighedTwice({ take, job }: Desk, raised: Raised, wheelbase: number): AxleRaise {
  const { weighing } = job.machine;
  const total =
    take.known('machine.weighing.front', weighing.front, 'scale') +
    take.known('machine.weighing.rear', weighing.rear, 'scale');
  const { wheel, scale } = raised;
  const onRaised = (reading: number): number => (scale === wheel ? reading : total - reading);
  const radius = { rear: tyreRadius({ take, job }, 'rear'), front: tyreRadius({ take, job }, 'front') };
  return {
    wheelbase,
    rearRadius: wheel === 'front' ? radius.rear : radius.front,
    frontRadius: radius[wheel],
    total,
    frontLevel: onRaised(take.known(`${PATH}.level`, raised.level, 'scale')),
    frontRaised: onRaised(take.known(`${PATH}.raised`, raised.raised, 'scale')),
    raised: take.known(`${PATH}.by`, raised.by, 'geometry'),
  };
}

/** Stands in so that the rest of the job is looked at too; it is never planned with. */
const FALLBACK = 0.5;
