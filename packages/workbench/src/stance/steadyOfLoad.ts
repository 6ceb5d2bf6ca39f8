import type { Figure } from '@sagwright/model/plan/answer';
import type { FinalDriveSI } from '@sagwright/model/rear/finalDrive';
import { FRONT_TRAVEL, gradientAt, PITCH, REAR_TRAVEL } from '@sagwright/model/statics/gradient';
import { GRAVITY } from '@sagwright/model/statics/machine';
import type { Prepared } from '@sagwright/model/statics/prepared';
import { steadyDerivatives, steadyShift } from '@sagwright/model/steady/derivatives';
import { gainOf, type SteadyAction, wholeMass } from '@sagwright/model/steady/forces';
import { liftsFrom } from '@sagwright/model/steady/lift';
import { type SteadyStand, steadyOf } from '@sagwright/model/steady/steady';
import { figureDerivatives, stateDerivatives } from '@sagwright/model/uncertainty/derivatives';
import { directionsOf } from '@sagwright/model/uncertainty/inputs';
import { halfWidthOf } from '@sagwright/model/uncertainty/spread';
import { LEAST_DEVIATION } from '../inputs/moves.ts';
import type { JobPlan } from '../path.ts';
import type { Standing } from '../why/standing.ts';
import type { SteadyDocument, SteadyEnd, SteadyNeed } from './document.ts';

/** Steady braking and driving of a load where it rests. */
export function steadyOfLoad(planned: JobPlan, standing: Standing): readonly SteadyDocument[] {
  return [brakingOf(planned, standing), drivingOf(planned, standing)];
}

/** An action with the figures of the job that state it, so that their ± is followed too. */
interface Stated {
  readonly action: SteadyAction;
  readonly by: readonly { readonly path: string; readonly at: (by: number) => SteadyAction }[];
  readonly ofGain: (gain: number) => SteadyAction;
}

function brakingOf(planned: JobPlan, standing: Standing): SteadyDocument {
  const { braking } = planned.inputs.stance;
  if (braking === null) return needs('braking', 'deceleration');
  const action: SteadyAction = { kind: 'braking', ...braking };
  return steadyDocument(planned, standing, {
    action,
    by: (['deceleration', 'frontShare'] as const).map((name) => ({
      path: `steady.braking.${name}`,
      at: (by) => ({ ...action, [name]: braking[name] + by }),
    })),
    ofGain: (deceleration) => ({ ...action, deceleration }),
  });
}

function drivingOf(planned: JobPlan, standing: Standing): SteadyDocument {
  const { stance, drive } = planned.inputs;
  const { driving } = stance;
  if (driving === null) return needs('driving', 'thrust');
  if (standing.prepared.machine.rear.axlePath.kind !== 'circle') return needs('driving', 'pivot');
  if (drive === null) return needs('driving', 'drive');
  const at = (by: typeof driving): SteadyAction => ({ kind: 'driving', by, drive });
  const own =
    'thrust' in driving
      ? { path: 'steady.driving.thrust', at: (by: number) => at({ thrust: driving.thrust + by }) }
      : {
          path: 'steady.driving.acceleration',
          at: (by: number) => at({ acceleration: driving.acceleration + by }),
        };
  return steadyDocument(planned, standing, {
    action: at(driving),
    by: [own, ...sprocketOf(drive, driving)],
    ofGain: (acceleration) => at({ acceleration }),
  });
}

/** The front sprocket's place has a ± of its own. */
function sprocketOf(drive: FinalDriveSI, by: Extract<SteadyAction, { kind: 'driving' }>['by']): Stated['by'] {
  if (drive.kind === 'shaft') return [];
  return (['x', 'height'] as const).map((name) => ({
    path: `machine.rear.drive.frontSprocket.${name}`,
    at: (moved) => ({
      kind: 'driving',
      by,
      drive: {
        ...drive,
        frontSprocket: { ...drive.frontSprocket, [name]: drive.frontSprocket[name] + moved },
      },
    }),
  }));
}

function needs(action: 'braking' | 'driving', need: SteadyNeed): SteadyDocument {
  return { action, kind: 'needs', needs: need };
}

function steadyDocument(planned: JobPlan, standing: Standing, stated: Stated): SteadyDocument {
  const { prepared, state } = standing;
  const { action } = stated;
  const answer = steadyOf(prepared, state, action);
  if (answer.kind === 'not found') return { action: action.kind, kind: 'not found' };
  const shared = {
    action: action.kind,
    gain: gainOf(prepared, action),
    liftsFrom: liftsFrom(prepared, state, stated.ofGain),
  };
  if (answer.kind === 'lifts') return { ...shared, kind: 'lifts', wheel: answer.wheel };
  const figures = figuresAt(planned, standing, answer.stand, stated);
  const push = Math.abs(shared.gain) * wholeMass(prepared);
  const share = action.kind === 'braking' ? action.frontShare : 0;
  const end = (name: 'rear' | 'front', places: Places): SteadyEnd => ({
    travel: figures[places.travel]!,
    change: figures[places.change]!,
    left: figures[places.left]!,
    load: figures[places.load]!,
    grip:
      ((name === 'front' ? share : 1 - share) * push) /
      (name === 'front' ? answer.stand.frontLoad : answer.stand.rearLoad),
  });
  return {
    ...shared,
    kind: 'stands',
    rear: end('rear', { travel: 0, left: 2, load: 4, change: 6 }),
    front: end('front', { travel: 1, left: 3, load: 5, change: 7 }),
    pitch: figures[8]!,
  };
}

interface Places {
  readonly travel: number;
  readonly change: number;
  readonly left: number;
  readonly load: number;
}

/** Travels, what is left to metal, loads; then how travels and pitch changed against standing. */
function figuresAt(
  planned: JobPlan,
  { parameters, prepared, state, inputs }: Standing,
  stand: SteadyStand,
  stated: Stated,
): readonly Figure[] {
  const directions = directionsOf(parameters, inputs);
  const at = Float64Array.from(stand.state);
  const moved = steadyDerivatives(parameters, prepared, stand, stated.action, directions);
  const resting = stateDerivatives(parameters, prepared, state, directions);
  const values = new Float64Array(COUNT);
  readFigures(prepared, at, values);
  const slopes =
    moved === null
      ? null
      : figureDerivatives(parameters, prepared, at, directions, moved, readFigures, COUNT);
  const variance = new Float64Array(COUNT + 3);
  directions.forEach(({ input }, j) => {
    for (let i = 0; i < COUNT; i += 1)
      variance[i]! += ((slopes?.[COUNT * j + i] ?? 0) * input.deviation) ** 2;
    changed.forEach((place, i) => {
      const slope = (moved?.[4 * j + place] ?? 0) - resting[4 * j + place]!;
      variance[COUNT + i]! += (slope * input.deviation) ** 2;
    });
  });
  addStated(planned, prepared, stand, stated, variance);
  const doubt = (i: number): number | null => (moved === null ? null : halfWidthOf(Math.sqrt(variance[i]!)));
  return [
    ...Array.from(values, (value, i) => ({ value, plusMinus: doubt(i) })),
    ...changed.map((place, i) => ({ value: at[place]! - state[place]!, plusMinus: doubt(COUNT + i) })),
  ];
}

/** The stated deceleration, thrust and sprocket move the stand too; they do not move the rest. */
function addStated(
  planned: JobPlan,
  prepared: Prepared,
  stand: SteadyStand,
  { action, by }: Stated,
  variance: Float64Array,
): void {
  for (const { path, at } of by) {
    const { deviation } = planned.inputs.figures.get(path)!;
    if (!(deviation > LEAST_DEVIATION)) continue;
    const step = 1e-3 * deviation;
    const shift = steadyShift(prepared, stand, action, at(step), at(-step), step);
    if (shift === null) continue;
    const [above, below] = [1, -1].map((side) => {
      const figures = new Float64Array(COUNT);
      readFigures(
        prepared,
        Float64Array.from(stand.state, (each, i) => each + side * step * shift[i]!),
        figures,
      );
      return figures;
    });
    for (let i = 0; i < COUNT; i += 1) {
      variance[i]! += (((above![i]! - below![i]!) / (2 * step)) * deviation) ** 2;
    }
    changed.forEach((place, i) => {
      variance[COUNT + i]! += (shift[place]! * deviation) ** 2;
    });
  }
}

const COUNT = 6;
const changed = [REAR_TRAVEL, FRONT_TRAVEL, PITCH] as const;

function readFigures(prepared: Prepared, state: Float64Array, out: Float64Array): void {
  gradientAt(prepared, state, 0);
  const { rear, front } = prepared.gradient;
  out[0] = state[REAR_TRAVEL]!;
  out[1] = state[FRONT_TRAVEL]!;
  out[2] = prepared.rearTravelMax - out[0];
  out[3] = prepared.frontTravelMax - out[1];
  out[4] = rear.wheelLoad / GRAVITY;
  out[5] = front.wheelLoad / GRAVITY;
}
