import { throughShockLength } from '@sagwright/model/attitude/lengthInputs';
import { withClampHeight, withShockLength, withTyreRadius } from '@sagwright/model/attitude/otherGeometry';
import type { PlanQuestion } from '@sagwright/model/plan/question';
import { isHardPoints } from '@sagwright/model/rear/kinematics';
import type { MachineSI } from '@sagwright/model/statics/machine';
import type { UncertainInput } from '@sagwright/model/uncertainty/inputs';
import { type Desk, impossible } from './desk.ts';
import { LEAST_DEVIATION } from './moves.ts';
import { radiusBySize, sizeDoubt } from './tyreRadius.ts';

type Chosen = NonNullable<PlanQuestion['chosen']>;

/** The machine on the shock length, clamp height and tyres that a person chose, with what is uncertain about it; null: as found. */
export function chosenMachine(
  desk: Desk,
  machine: MachineSI,
  inputs: readonly UncertainInput[],
): Chosen | null {
  const { choice } = desk.job;
  const asFound: Chosen = { machine, inputs };
  let chosen = asFound;
  for (const end of ['rear', 'front'] as const) {
    const size = choice?.[`${end}Tyre`];
    if (size !== undefined) chosen = onTyre(desk, chosen, end, size);
  }
  if (choice?.shockLength !== undefined) chosen = onLength(desk, chosen);
  if (choice?.clampHeight !== undefined) chosen = onClamps(desk, chosen);
  return chosen === asFound ? null : chosen;
}

/** The old tyre's radius only says where the axle was measured; the new one brings its own. */
function onTyre(desk: Desk, { machine, inputs }: Chosen, end: 'rear' | 'front', size: string): Chosen {
  const path = `choice.${end}Tyre`;
  const { halfWidth, why } = sizeDoubt;
  const radius = desk.take.workedOut(path, radiusBySize(size), halfWidth, 'length', 'mm', why);
  const was = `${end}.tyre.radius`;
  const moved = inputs.map((input) => ({
    ...input,
    moves: input.moves.map((move) =>
      move.parameter === was ? { ...move, parameter: `${end}.axleHeight` } : move,
    ),
  }));
  return {
    machine: withTyreRadius(machine, end, radius),
    inputs: [...moved, ...own(desk, path, [{ parameter: was, by: 1 }])],
  };
}

/** Step by which it is found how the wheel moves with the length [m]. */
const STEP = 1e-5;

function onLength(desk: Desk, { machine, inputs }: Chosen): Chosen {
  const path = 'choice.shockLength';
  const change = desk.take.known(path, desk.job.choice!.shockLength!, 'collar');
  const moved = withShockLength(machine, change);
  const beside = withShockLength(machine, change + STEP);
  if (moved === null || beside === null) {
    impossible(
      desk,
      path,
      `Change of shock length: ${(change * 1000).toFixed(1)} mm; arm, ratio or hard points do not let the wheel go through its travel then. Choose less, or check the hard points.`,
    );
    return { machine, inputs };
  }
  const move = isHardPoints(moved.rear.kinematics)
    ? { parameter: 'rear.kinematics.damper.extendedLength', by: 1 }
    : {
        parameter: 'rear.referenceTravel',
        by: (beside.rear.referenceTravel - moved.rear.referenceTravel) / STEP,
      };
  const through = throughShockLength(machine, change, inputs);
  return { machine: moved, inputs: [...through, ...own(desk, path, [move])] };
}

function onClamps(desk: Desk, { machine, inputs }: Chosen): Chosen {
  const path = 'choice.clampHeight';
  const change = desk.take.known(path, desk.job.choice!.clampHeight!, 'collar');
  const move = { parameter: 'front.referenceTravel', by: -Math.cos(machine.geometry.rake) };
  return { machine: withClampHeight(machine, change), inputs: [...inputs, ...own(desk, path, [move])] };
}

/** The figure of a choice as an input; nothing where it has no ± to speak of. */
function own({ take }: Desk, path: string, moves: UncertainInput['moves']): readonly UncertainInput[] {
  const { deviation } = take.figures.get(path)!;
  return deviation > LEAST_DEVIATION ? [{ name: path, deviation, moves }] : [];
}
