import type { Parameters } from '../statics/parameters.ts';
import type { EndName, Prepared } from '../statics/prepared.ts';
import { figureDerivatives, stateDerivatives } from '../uncertainty/derivatives.ts';
import type { Direction } from '../uncertainty/inputs.ts';
import { type Demand, type DemandAnswer, demandAt, demandHere } from './demand.ts';
import type { DemandSlope } from './positionSpread.ts';
import type { LoadCaseSI } from './question.ts';
import { wantedTravel } from './wanted.ts';

/** What one load wants of one end, whichever spring answers it: demands at the band's ends and at the aim. */
export type WantedLoad =
  | { readonly kind: 'not wanted' }
  | { readonly kind: 'outside travel'; readonly wanted: number; readonly travelMax: number }
  | { readonly kind: 'no rest'; readonly residual: number }
  | {
      readonly kind: 'wanted';
      readonly low: Demand;
      readonly aim: Demand;
      readonly high: Demand;
      /** With the other end at its own target as well; null where it has none. */
      readonly bothAtTarget: Demand | null;
      readonly slopes: readonly DemandSlope[];
    };

/**
 * Works out what a load wants of an end. The machine carries the load; the other end stands as it was found.
 * directions  the inputs that act on it (springs and preloads of this end left out: they do not matter while it is held)
 */
export function wantedOf(
  parameters: Parameters,
  prepared: Prepared,
  name: EndName,
  loadCase: LoadCaseSI,
  directions: readonly Direction[],
): WantedLoad {
  const wanted = loadCase.wanted[name];
  if (wanted === null) return { kind: 'not wanted' };
  const travels = [wanted.low, wanted.aim, wanted.high].map((sag) =>
    wantedTravel(prepared, name, wanted, sag),
  );
  const answers = travels.map((travel) => demandAt(prepared, name, travel));
  const failed = answers.find((answer) => answer.kind !== 'demand');
  if (failed !== undefined) return failure(failed);
  const [low, aim, high] = answers.map(
    (answer) => (answer as Extract<DemandAnswer, { kind: 'demand' }>).demand,
  );
  return {
    kind: 'wanted',
    low: low!,
    aim: aim!,
    high: high!,
    bothAtTarget: bothAtTarget(prepared, name, loadCase, aim!.travel),
    slopes: slopesOf(parameters, prepared, name, aim!, directions, (machine) =>
      wantedTravel(machine, name, wanted, wanted.aim),
    ),
  };
}

function failure(answer: DemandAnswer): WantedLoad {
  if (answer.kind === 'outside travel') {
    return { kind: 'outside travel', wanted: answer.travel, travelMax: answer.travelMax };
  }
  return { kind: 'no rest', residual: answer.kind === 'no rest' ? answer.residual : 0 };
}

function bothAtTarget(
  prepared: Prepared,
  name: EndName,
  loadCase: LoadCaseSI,
  travel: number,
): Demand | null {
  const other: EndName = name === 'rear' ? 'front' : 'rear';
  const wanted = loadCase.wanted[other];
  if (wanted === null) return null;
  const answer = demandAt(prepared, name, travel, wantedTravel(prepared, other, wanted, wanted.aim));
  return answer.kind === 'demand' ? answer.demand : null;
}

function slopesOf(
  parameters: Parameters,
  prepared: Prepared,
  name: EndName,
  demand: Demand,
  directions: readonly Direction[],
  heldTravel: (prepared: Prepared) => number,
): readonly DemandSlope[] {
  const derivatives = stateDerivatives(parameters, prepared, demand.state, directions, name, heldTravel);
  const slopes = figureDerivatives(
    parameters,
    prepared,
    demand.state,
    directions,
    derivatives,
    (machine, state, out) => {
      const beside = demandHere(machine, name, state);
      out[0] = beside.springForce;
      out[1] = beside.stroke;
    },
    2,
  );
  return directions.map((direction, j) => ({
    input: direction.input,
    force: slopes[2 * j]!,
    stroke: slopes[2 * j + 1]!,
  }));
}
