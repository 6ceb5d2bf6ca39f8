import type { PointSI } from '@sagwright/model/attitude/leanAngle';
import { heavier, leanInBend } from '@sagwright/model/attitude/leanInBend';
import { parametersOf } from '@sagwright/model/statics/parameters';
import { prepare } from '@sagwright/model/statics/prepared';
import type { UncertainInput } from '@sagwright/model/uncertainty/inputs';
import type { StanceFigures } from '../inputs/stance.ts';
import { type Standing, slopesOf } from '../why/standing.ts';
import type { OwnFigures } from './own.ts';
import type { ReadStance } from './rows.ts';

/** A lean in a steady bend [rad], and how the angle at which the part touches moves there with each input. */
export interface Bend {
  readonly angle: number;
  readonly through: ReadonlyMap<string, readonly number[]>;
  /** How much more it moves since what is pressed further touches sooner: 1/(1 − dφ'/dφ). */
  readonly share: number;
  readonly at: Standing;
}

/**
 * The lean in a bend of what touches, by `touch`, at the rest that this lean itself makes: φ = touch(x(φ), q), so that
 * dφ = ∂touch/(1 − dφ'/dφ). Null where it never touches.
 */
export function bendOf(
  standing: Standing,
  point: PointSI,
  crowns: StanceFigures['crowns'],
  touch: ReadStance,
  { own }: OwnFigures,
): Bend | null {
  const { machine } = standing.parameters;
  const thin = { rear: crowns.rear ?? 0, front: crowns.front ?? 0 };
  const lean = leanInBend(machine, { ...point, sideways: point.sideways! }, thin);
  if (lean === null) return null;
  const times = 1 / Math.cos(lean.angle);
  const parameters = parametersOf(heavier(machine, times));
  const at: Standing = {
    parameters,
    prepared: prepare(parameters.machine),
    state: Float64Array.from(lean.state),
    inputs: heavierInputs(standing.inputs, times),
  };
  const through = slopesOf(
    at,
    (prepared, beside, out) => {
      out[0] = touch(prepared, beside, own) ?? 0;
    },
    1,
  );
  return { angle: lean.angle, through, share: 1 / (1 - lean.feedback), at };
}

/** What is typed as a mass is so many times heavier there. */
function heavierInputs(inputs: readonly UncertainInput[], times: number): readonly UncertainInput[] {
  const isMass = /^(?:sprung\.mass|load\.(?:mass|momentX|momentHeight)|(?:rear|front)\.unsprung)$/;
  return inputs.map((input) => ({
    ...input,
    moves: input.moves.map((move) => (isMass.test(move.parameter) ? { ...move, by: times * move.by } : move)),
  }));
}
